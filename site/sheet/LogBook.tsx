import { useState } from 'preact/hooks';
import { readFigure, type FieldSpec } from '../../calculators/frame/fields.ts';
import { addHours, addNote, dropEntry } from '../../calculators/sheet/edit.ts';
import { fileName } from '../../calculators/sheet/file-name.ts';
import { dayWords, hoursRun, tickedLines } from '../../calculators/sheet/log.ts';
import type { LogEntry } from '../../calculators/sheet/log-entry.ts';
import { logCsv } from '../../calculators/sheet/log-csv.ts';
import { entryWords, kindWords } from '../../calculators/sheet/log-words.ts';
import { LIMITS } from '../../calculators/sheet/model.ts';
import { save } from '../browser/save.ts';
import { siteAddress } from '../browser/site-address.ts';
import { today } from '../browser/today.ts';
import type { BoxProps } from './FigureBox.tsx';
import { TextProblem } from './TextProblem.tsx';
import { rememberedText, rememberText } from './typed-texts.ts';

const SHOWN = 40;

const hoursSpec: FieldSpec = {
  label: 'Hours run',
  help: '',
  unit: 'h',
  min: 0.01,
  max: LIMITS.hours,
  why: 'an engine that ran less has not run, and none runs longer between two notes',
  step: 0.1,
};

/** A text that is not entered yet: kept until it is. */
function useDraft(place: string): readonly [text: string, write: (text: string) => void] {
  const [text, setText] = useState(() => rememberedText(place, 'draft') ?? '');
  const write = (next: string): void => {
    setText(next);
    rememberText(place, next === '' ? 'draft' : next, 'draft');
  };
  return [text, write];
}

/** Hours that the engine has run, entered as a sum of runs. */
function Hours({ engine, edit }: Pick<BoxProps, 'engine' | 'edit'>) {
  const [text, write] = useDraft(`${engine.id} log:hours`);
  const field = readFigure('hours', hoursSpec, text, undefined, undefined, { lengths: 'mm' });
  const problem = text.trim() === '' ? undefined : field.problem;
  const { value } = field;
  const total = hoursRun(engine);
  return (
    <form
      class={problem === undefined ? 'log-form' : 'log-form field-wrong'}
      onSubmit={(event) => {
        event.preventDefault();
        if (problem !== undefined || value === undefined || text.trim() === '') return;
        edit((now) => addHours(now, value, today()));
        write('');
      }}
    >
      <label>
        Ran for, hours (or 20 min)
        <input
          type="text"
          inputMode="decimal"
          autocomplete="off"
          value={text}
          aria-invalid={problem === undefined ? undefined : 'true'}
          aria-describedby={problem === undefined ? undefined : 'log-hours-problem'}
          onInput={(event) => write(event.currentTarget.value)}
        />
      </label>
      <button type="submit" class="plain">
        Enter the run
      </button>
      <output name="hours-run">
        {total === 0 ? 'No run entered yet.' : `${String(Number(total.toFixed(2)))} h in all.`}
      </output>
      <TextProblem id="log-hours-problem" problem={problem} />
    </form>
  );
}

function Note({ engine, edit }: Pick<BoxProps, 'engine' | 'edit'>) {
  const [text, write] = useDraft(`${engine.id} log:note`);
  const long = [...text.trim()].length;
  const problem =
    long > LIMITS.entry
      ? `The note has ${String(long)} characters, and one entry has room for ${String(LIMITS.entry)}. Enter it in two.`
      : undefined;
  return (
    <form
      class={problem === undefined ? 'log-form' : 'log-form field-wrong'}
      onSubmit={(event) => {
        event.preventDefault();
        if (problem !== undefined || text.trim() === '') return;
        edit((now) => addNote(now, text.trim(), today()));
        write('');
      }}
    >
      <label>
        Note for the log
        <textarea
          rows={2}
          value={text}
          aria-invalid={problem === undefined ? undefined : 'true'}
          aria-describedby={problem === undefined ? undefined : 'log-note-problem'}
          onInput={(event) => write(event.currentTarget.value)}
        />
      </label>
      <button type="submit" class="plain">
        Enter the note
      </button>
      <TextProblem id="log-note-problem" problem={problem} />
    </form>
  );
}

/** The whole log of an engine, the last first, with runs and notes to enter. */
export function LogBook({ engine, lengths, edit }: BoxProps) {
  const [all, setAll] = useState(false);
  const [gone, setGone] = useState<LogEntry>();
  const { log } = engine;
  const latest = [...log].reverse().slice(0, all ? undefined : SHOWN);
  const ticks = tickedLines(engine).size;
  return (
    <div class="log-book">
      <Hours engine={engine} edit={edit} />
      <Note engine={engine} edit={edit} />
      <p>
        <a href={siteAddress('first-start/#list')}>The list of the first start</a>:{' '}
        {ticks === 0 ? 'nothing ticked.' : `${String(ticks)} ticked.`}
      </p>
      <p>
        {log.length === 0
          ? 'Nothing is in the log yet: each reading that you write comes into it with its day.'
          : `${String(log.length)} entries, in the order in which they were written, the last first.`}
      </p>
      <ul class="log-entries">
        {latest.map((entry, i) => {
          const [about, says] = entryWords(entry, lengths);
          const words = says === '' ? about : `${about}: ${says}`;
          return (
            <li key={log.length - i}>
              <span>
                <b>{words}</b>{' '}
                {[dayWords(entry.on), kindWords[entry.kind]].filter(Boolean).join(', ')}
              </span>
              <button
                type="button"
                class="as-link"
                aria-label={`Take out ${words}`}
                onClick={() => {
                  setGone(entry);
                  edit((now) => dropEntry(now, entry));
                }}
              >
                Take out
              </button>
            </li>
          );
        })}
      </ul>
      <p role="status">{gone ? 'The entry was taken out of the log.' : ''}</p>
      <div class="bar-buttons">
        {!all && log.length > SHOWN ? (
          <button type="button" onClick={() => setAll(true)}>
            Show all {log.length}
          </button>
        ) : null}
        {log.length === 0 ? null : (
          <button
            type="button"
            onClick={() =>
              save(
                fileName('engine-log', engine.name, today(), 'csv'),
                new Blob([logCsv([engine])], { type: 'text/csv' }),
              )
            }
          >
            Save the log as CSV
          </button>
        )}
      </div>
    </div>
  );
}
