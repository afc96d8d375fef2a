import { useState } from 'preact/hooks';
import type { Places } from './places.ts';
import { isBegun, readingOf } from '../../calculators/sheet/readings.ts';
import { setDone } from '../../calculators/sheet/set-entry.ts';
import { spotFragment, spotOf } from '../../calculators/sheet/due.ts';
import { sheetFigures } from '../../calculators/sheet/figures.ts';
import { boxTitle, firedByBox } from '../../calculators/sheet/firing-order.ts';
import { howOf } from '../../calculators/sheet/how-of.ts';
import {
  judge,
  ofBefore,
  passMark,
  saidOfAll,
  targetOrWanted,
  type Verdict,
} from '../../calculators/sheet/judge.ts';
import { dayWords, lastDay, readingsAt } from '../../calculators/sheet/log.ts';
import { lastGoodWords, whenWords } from '../../calculators/sheet/log-words.ts';
import { boxesOf, entriesOf, perOf } from '../../calculators/sheet/model.ts';
import { stateTold, type Progress } from '../../calculators/sheet/progress.ts';
import { steps, type StepId } from '../../calculators/sheet/steps.ts';
import { fieldUnit } from '../../calculators/frame/field/field-unit.ts';
import { proseIn } from '../../calculators/frame/text/prose.ts';
import { units } from '../../calculators/frame/text/units.ts';
import type { Copied } from '../browser/copy.ts';
import { CopyState } from '../browser/CopyState.tsx';
import { Spoken } from '../browser/Spoken.tsx';
import type { BoxProps } from './FigureBox.tsx';
import { figureLinks } from './figure-links.tsx';
import { today } from '../browser/today.ts';
import { isUnread, momentHeads, momentWords } from '../../calculators/sheet/box-places.ts';
import { Asked } from './Asked.tsx';
import { HowTo } from './HowTo.tsx';
import { useTurn } from './in-turn.ts';
import { Later } from './Later.tsx';
import { keepPlace } from './keeper.ts';
import { ReadingBox } from './ReadingBox.tsx';
import { StepCaution } from './StepCaution.tsx';
import { Again, Against, Evenly, Links, Moved, Waits } from './step-parts.tsx';

interface Props extends BoxProps {
  readonly id: StepId;
  readonly number: number;
  readonly progress: Progress;
  /** Whether it is the one to do next, and so stands open. */
  readonly next: boolean;
  readonly places: Places;
  readonly copyStep: (id: StepId) => void;
  /** How copying this step went, where it was the last one copied. */
  readonly copied: Copied | undefined;
}

export const marks = {
  open: '○',
  part: '◐',
  unjudged: '●',
  fail: '✕',
  again: '↻',
  pass: '✓',
} as const;

function verdictMark({ result, words }: Verdict): string {
  if (result === 'pass') return passMark(words);
  return result === 'fail' ? '✕ To correct:' : '';
}

/** The day and the manner of what stands, after its verdict. */
const When = ({ words }: { words: string }) =>
  words === '' ? null : <span class="when"> {words}</span>;

/** The cylinders that a set fires, below its number. */
const Fires = ({ cylinders }: { readonly cylinders: readonly number[] | undefined }) =>
  cylinders === undefined ? null : (
    <small class="boxes-fires">cylinders {cylinders.join(', ')}</small>
  );

function Rows({ id, progress, ...props }: Omit<Props, 'number' | 'next' | 'places'>) {
  const { engine, lengths } = props;
  const reading = steps[id].reading!;
  const judgement = judge(engine, id, lengths);
  const { rows } = judgement;
  const [isCheck, setIsCheck] = useState(false);
  const anyFound = readingOf(engine, id).found.some((entry) => entry !== null);
  const before = rows.map((row, i) => (progress.stale.includes(i) ? ofBefore(row) : undefined));
  const { label } = units[fieldUnit(reading, lengths)];
  /** Beside a text that is refused stands no verdict of what was read before it, and below it no advice. */
  const said = rows.map((row, i) => {
    const held = entriesOf(engine, id)[i] ?? null;
    return isUnread(engine, id, i)
      ? { result: 'empty', mark: '', words: lastGoodWords(id, held, lengths) }
      : before[i]
        ? { result: row.result, ...before[i] }
        : { result: row.result, mark: verdictMark(row), words: row.words };
  });
  const failed = rows.flatMap(({ result }, i) => (result === 'fail' ? [i] : []));
  const isPast = failed.length > 0 && failed.every((i) => before[i]);
  const advice = isPast ? [] : saidOfAll(judgement, isUnread(engine, id));
  return (
    <>
      <div class="boxes" role="group" aria-label={`${steps[id].title}: readings`}>
        <p class="boxes-caption">
          {reading.label}
          {label === '' ? '' : `, ${label}`}
        </p>
        <p class="boxes-head" aria-hidden="true">
          <span>{perOf(reading, engine)}</span>
          <span>{momentHeads.found}</span>
          <span>{momentHeads.left}</span>
        </p>
        {Array.from({ length: boxesOf(engine, id) }, (_, i) => (
          <div class="boxes-row" key={i}>
            <span class="boxes-name" aria-hidden="true">
              {reading.once ? '' : i + 1}
              <Fires cylinders={firedByBox(reading, i, engine)} />
            </span>
            {(Object.keys(momentWords) as (keyof typeof momentWords)[]).map((moment) => (
              <ReadingBox
                key={`${engine.id} ${moment}`}
                step={id}
                index={i}
                moment={moment}
                kind={isCheck ? 'check' : undefined}
                {...props}
              />
            ))}
            <p class={`verdict verdict-${said[i]?.result ?? 'empty'}`}>
              {said[i] && (said[i].mark !== '' || said[i].words !== '')
                ? [<b key="mark">{said[i].mark}</b>, ' ', figureLinks(said[i].words)]
                : null}
              <When words={whenWords(engine, id, i)} />
            </p>
          </div>
        ))}
      </div>
      {anyFound ? (
        <label class="option">
          <input
            type="checkbox"
            checked={isCheck}
            onChange={(event) => setIsCheck(event.currentTarget.checked)}
          />
          <span>What I write as last is a check: nothing was turned.</span>
        </label>
      ) : null}
      <Moved id={id} engine={engine} lengths={lengths} edit={props.edit} />
      <Asked engine={engine} id={id} lengths={lengths} now={advice} />
      <Spoken
        lines={[
          ...said.flatMap(({ mark, words }, i) =>
            mark === '' && words === ''
              ? []
              : [`${boxTitle(reading, i, engine)}: ${[mark, words].filter(Boolean).join(' ')}`],
          ),
          ...advice,
        ]}
      />
    </>
  );
}

function Missing({ id, engine, lengths, edit }: Pick<Props, 'id' | 'engine' | 'lengths' | 'edit'>) {
  const { missing } = judge(engine, id, lengths);
  if (missing.length === 0) return null;
  return (
    <>
      <p class="missing">
        Enter in the sheet first:{' '}
        {missing.map((key) => (
          <a key={key} class="as-link" href={`#figure-${key}`}>
            {sheetFigures[key].label}
          </a>
        ))}
      </p>
      <Evenly missing={missing} {...{ engine, lengths, edit }} />
    </>
  );
}

/** One step of the job, of which a line is seen while it is shut. */
export function StepCard(props: Props) {
  const { id, number, progress, next, engine } = props;
  const [isDrawn, draw] = useTurn(next);
  return (
    <details
      class={`task task-${progress.state}`}
      id={`step-${id}`}
      open={next}
      onToggle={(event) => event.currentTarget.open && draw()}
    >
      <summary
        onClick={() => {
          draw();
          keepPlace(engine.id, `step-${id}`);
        }}
      >
        <span class="task-number">{number}</span>
        <span class="task-title">{steps[id].title}</span>
        <span class="task-state">
          <span aria-hidden="true">{marks[progress.state]} </span>
          {stateTold(engine, id, progress.state)}
        </span>
      </summary>
      {isDrawn ? <Work {...props} /> : null}
    </details>
  );
}

/** Why a step is done, with what, to which figure, the readings, and what they say. */
function Work(props: Props) {
  const { id, progress, engine, lengths, edit } = props;
  const step = steps[id];
  const target = targetOrWanted(engine, id, lengths);
  return (
    <>
      <Again {...props} />
      <Against {...props} />
      <Waits progress={progress} place={(other) => `step-${other}`} />
      <p class="one-way">
        <a href={`#${spotFragment(spotOf(engine, progress, id))}`}>One reading at a time</a>
      </p>
      <p class="task-why">{proseIn(step.why, lengths)}</p>
      <StepCaution id={id} lengths={lengths} />
      <HowTo how={howOf(engine, id)} lengths={lengths} />
      <dl class="task-facts">
        <div>
          <dt>With</dt>
          <dd>{proseIn(step.tool, lengths)}</dd>
        </div>
        {target === undefined || step.reading?.judging === 'noted' ? null : (
          <div>
            <dt>To</dt>
            <dd>{target}</dd>
          </div>
        )}
      </dl>
      <Missing {...props} />
      {step.reading ? (
        <Rows {...props} />
      ) : (
        <label class="option">
          <input
            type="checkbox"
            checked={readingOf(engine, id).done}
            onChange={(event) => {
              const { checked } = event.currentTarget;
              edit((now) => setDone(now, id, checked, today()));
            }}
          />
          <span>
            Done: {step.title.toLowerCase()}
            <When words={dayWords(lastDay(engine, id))} />
          </span>
        </label>
      )}
      {step.reading && readingsAt(engine, id).length > 0 ? (
        <Later
          name="All readings of this step"
          load={() => import('./StepLog.tsx').then(({ StepLog }) => StepLog)}
          given={{ id, engine, lengths, edit }}
        />
      ) : null}
      {step.reading && !step.reading.once && boxesOf(engine, id) > 1 && isBegun(engine, id) ? (
        <Later
          name="Written under the wrong number?"
          load={() => import('./Exchange.tsx').then(({ Exchange }) => Exchange)}
          given={{ id, engine, lengths, edit }}
        />
      ) : null}
      <Links {...props} />
      {step.reading ? <CopyState copied={props.copied} /> : null}
    </>
  );
}
