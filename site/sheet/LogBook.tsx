import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { readFigure, type FieldSpec } from '../../calculators/frame/field/fields.ts';
import { looksLikeSum } from '../../calculators/frame/field/sums.ts';
import { addHours, addNote } from '../../calculators/sheet/edit-log.ts';
import { fileName } from '../../calculators/sheet/file-name.ts';
import { hoursRun, tickedLines } from '../../calculators/sheet/log.ts';
import { logCsv } from '../../calculators/sheet/log-csv.ts';
import { entryWords } from '../../calculators/sheet/log-words.ts';
import { LIMITS } from '../../calculators/sheet/model.ts';
import { save } from '../browser/save.ts';
import { siteAddress } from '../browser/site-address.ts';
import { today } from '../browser/today.ts';
import { useSumReader } from '../fields/use-sum-reader.ts';
import type { BoxProps } from './FigureBox.tsx';
import { LogLine } from './LogLine.tsx';
import { TextProblem } from './TextProblem.tsx';
import { rememberedText, rememberText } from './typed-texts.ts';
import { useTakeOut } from './use-take-out.tsx';

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

interface FormProps {
  readonly name: 'hours' | 'note';
  readonly label: string;
  readonly draft: ReturnType<typeof useDraft>;
  readonly problem: string | undefined;
  /** Says what the button does. */
  readonly act: string;
  /** Enters what is typed; nothing where it is not there yet. */
  readonly enter: (() => void) | undefined;
  readonly children?: ComponentChildren;
}

/** One thing to be entered in the log: a box, and the button that enters it and empties the box. */
function LogForm({ name, label, draft, problem, act, enter, children }: FormProps) {
  const [text, write] = draft;
  const id = `log-${name}-problem`;
  const box = {
    name: `log:${name}`,
    value: text,
    'aria-invalid': problem === undefined ? undefined : ('true' as const),
    'aria-describedby': problem === undefined ? undefined : id,
    onInput: (event: { currentTarget: { value: string } }) => write(event.currentTarget.value),
  };
  return (
    <form
      class={problem === undefined ? 'log-form' : 'log-form field-wrong'}
      onSubmit={(event) => {
        event.preventDefault();
        if (problem !== undefined || text.trim() === '' || !enter) return;
        enter();
        write('');
      }}
    >
      <label>
        {label}
        {name === 'note' ? (
          <textarea rows={2} {...box} />
        ) : (
          <input type="text" inputMode="decimal" autocomplete="off" {...box} />
        )}
      </label>
      <button type="submit" class="plain">
        {act}
      </button>
      {children}
      <TextProblem id={id} problem={problem} />
    </form>
  );
}

type EditProps = Pick<BoxProps, 'engine' | 'edit'>;

/** Hours that the engine has run, entered run by run. */
function Hours({ engine, edit }: EditProps) {
  const draft = useDraft(`${engine.id} log:hours`);
  const [text] = draft;
  const [sums, want] = useSumReader();
  useEffect(() => want(looksLikeSum(text) ? text : ''), [text]);
  const { value, problem } = readFigure('hours', hoursSpec, text, undefined, undefined, {
    lengths: 'mm',
    sums,
  });
  const total = hoursRun(engine);
  return (
    <LogForm
      name="hours"
      label="Ran for, hours (or 20 min)"
      draft={draft}
      problem={text.trim() === '' ? undefined : problem}
      act="Enter the run"
      enter={value === undefined ? undefined : () => edit((now) => addHours(now, value, today()))}
    >
      <output name="hours-run">
        {total === 0 ? 'No run entered yet.' : `${String(Number(total.toFixed(2)))} h in all.`}
      </output>
    </LogForm>
  );
}

function Note({ engine, edit }: EditProps) {
  const draft = useDraft(`${engine.id} log:note`);
  const text = draft[0].trim();
  const long = [...text].length;
  return (
    <LogForm
      name="note"
      label="Note for the log"
      draft={draft}
      problem={
        long > LIMITS.entry
          ? `The note has ${String(long)} characters, and one entry has room for ${String(LIMITS.entry)}. Enter it in two.`
          : undefined
      }
      act="Enter the note"
      enter={() => edit((now) => addNote(now, text, today()))}
    />
  );
}

/** The whole log of an engine, the last first, with runs and notes to enter. */
export function LogBook({ engine, lengths, edit }: BoxProps) {
  const [all, setAll] = useState(false);
  const { takeOut, said } = useTakeOut({ engine, edit });
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
          const [about, says] = entryWords(entry, engine, lengths);
          const words = says === '' ? about : `${about}: ${says}`;
          return (
            <LogLine key={log.length - i} {...{ words, entry }} takeOut={() => takeOut(entry)} />
          );
        })}
      </ul>
      {said}
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
