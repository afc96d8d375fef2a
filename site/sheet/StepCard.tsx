import type { Places } from './places.ts';
import { confirm, readingOf, setDone } from '../../calculators/sheet/edit.ts';
import { queryFor } from '../../calculators/sheet/fill.ts';
import { sheetFigures } from '../../calculators/sheet/figures.ts';
import { askedAsFound, judge, targetWords, type Verdict } from '../../calculators/sheet/judge.ts';
import { boxesOf } from '../../calculators/sheet/model.ts';
import { isLeftFull, stateWords, type Progress } from '../../calculators/sheet/progress.ts';
import { evenDirections, setEven, setKeys } from '../../calculators/sheet/sets.ts';
import {
  boxName,
  needsReading,
  reopening,
  steps,
  type StepId,
} from '../../calculators/sheet/steps.ts';
import { fieldUnit } from '../../calculators/frame/field-unit.ts';
import { showInput } from '../../calculators/frame/format.ts';
import { proseIn } from '../../calculators/frame/prose.ts';
import { units } from '../../calculators/frame/units.ts';
import type { Copied } from '../browser/copy.ts';
import { CopyState } from '../browser/CopyState.tsx';
import { Spoken } from '../browser/Spoken.tsx';
import type { BoxProps } from './FigureBox.tsx';
import { goToFigure } from './Figures.tsx';
import { siteAddress } from '../browser/site-address.ts';
import { momentWords } from '../../calculators/sheet/boxes.ts';
import { HowTo } from './HowTo.tsx';
import { ReadingBox } from './ReadingBox.tsx';

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

const verdictMarks: Readonly<Record<Verdict['result'], string>> = {
  empty: '',
  unjudged: '',
  pass: '✓ Pass',
  fail: '✕ Correct',
};

/** Sentences, one under the other, under a heading where it needs one. */
function Said({ title, sentences }: { title?: string; sentences: readonly string[] }) {
  if (sentences.length === 0) return null;
  return (
    <>
      {title === undefined ? null : <p class="said-title">{title}</p>}
      <ul class="remarks">
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </>
  );
}

function Rows({ id, progress, ...props }: Omit<Props, 'number' | 'next' | 'places'>) {
  const { engine, lengths } = props;
  const reading = steps[id].reading!;
  const { rows, whole } = judge(engine, id, lengths);
  const asked = askedAsFound(engine, id, lengths);
  const markOf = (result: Verdict['result'], i: number): string =>
    progress.stale.includes(i) && result === 'pass' ? '↻ Passed when read' : verdictMarks[result];
  const { label } = units[fieldUnit(reading, lengths)];
  return (
    <>
      <div class="boxes" role="group" aria-label={`${steps[id].title}: readings`}>
        <p class="boxes-caption">
          {reading.label}
          {label === '' ? '' : `, ${label}`}
        </p>
        <p class="boxes-head" aria-hidden="true">
          <span>{reading.per}</span>
          <span>found</span>
          <span>left</span>
        </p>
        {Array.from({ length: boxesOf(engine, id) }, (_, i) => (
          <div class="boxes-row" key={i}>
            <span class="boxes-name" aria-hidden="true">
              {reading.once ? '' : i + 1}
            </span>
            {(Object.keys(momentWords) as (keyof typeof momentWords)[]).map((moment) => (
              <ReadingBox
                key={`${engine.id} ${moment}`}
                step={id}
                index={i}
                moment={moment}
                {...props}
              />
            ))}
            <p class={`verdict verdict-${rows[i]?.result ?? 'empty'}`}>
              {rows[i] && markOf(rows[i].result, i) !== '' ? (
                <>
                  <b>{markOf(rows[i].result, i)}</b> {rows[i].words}
                </>
              ) : null}
            </p>
          </div>
        ))}
      </div>
      <Said
        {...(asked.length > 0 && whole.length > 0 ? { title: 'As it stands now' } : {})}
        sentences={whole}
      />
      <Said title="What it asked for as found" sentences={asked} />
      <Spoken
        lines={[
          ...rows.map((row, i) => `${boxName(reading, i)}: ${markOf(row.result, i)} ${row.words}`),
          ...whole,
        ]}
      />
    </>
  );
}

function Missing({ id, engine, lengths, edit }: Pick<Props, 'id' | 'engine' | 'lengths' | 'edit'>) {
  const { missing } = judge(engine, id, lengths);
  if (missing.length === 0) return null;
  const sets = setKeys(engine.figures.cylinders ?? 1);
  const asksForSets = missing.some((key) => sets.includes(key));
  const even = evenDirections(engine).map((direction) => showInput(direction, 'deg', lengths));
  return (
    <>
      <p class="missing">
        Enter in the sheet first:{' '}
        {missing.map((key) => (
          <button key={key} type="button" class="as-link" onClick={() => goToFigure(key)}>
            {sheetFigures[key].label}
          </button>
        ))}
      </p>
      {asksForSets ? (
        <p class="missing">
          Does it fire evenly, with the cam on the crankshaft? Then the sets belong at 0°,{' '}
          {even.join(', ')}:{' '}
          <button type="button" class="plain" onClick={() => edit(setEven)}>
            It fires evenly: enter these
          </button>
        </p>
      ) : null}
    </>
  );
}

function Again({
  id,
  engine,
  progress,
  lengths,
  edit,
}: Pick<Props, 'id' | 'engine' | 'progress' | 'lengths' | 'edit'>) {
  if (progress.because.length === 0) return null;
  const anew = needsReading(id, progress.because);
  const { reading } = steps[id];
  const all = progress.stale.length === boxesOf(engine, id);
  const which =
    reading && !all
      ? `: ${progress.stale.map((i) => boxName(reading, i).toLowerCase()).join(', ')}`
      : '';
  const left = isLeftFull(engine, id);
  return (
    <div class="again">
      <p class="again-title">To be checked again{which}</p>
      <ul>
        {progress.because.map((other) => (
          <li key={other}>
            <b>{steps[other].title}</b> was changed since.{' '}
            {proseIn(reopening(id, other) ?? '', lengths)}
          </li>
        ))}
      </ul>
      {anew && !left ? (
        <p>
          Measure it again and write what you read in the boxes as left, also where it is the same.
        </p>
      ) : (
        <button type="button" class="plain" onClick={() => edit((now) => confirm(now, id))}>
          {anew ? 'Measured again: it reads the same' : 'Checked again, still right'}
        </button>
      )}
    </div>
  );
}

function Links({
  id,
  engine,
  places,
  copyStep,
}: Pick<Props, 'id' | 'engine' | 'places' | 'copyStep'>) {
  const { calculators, articles, list, reading } = steps[id];
  const known = calculators.filter((slug) => Object.hasOwn(places.calculators, slug));
  const read = articles.filter((slug) => Object.hasOwn(places.articles, slug));
  return (
    <p class="task-links">
      {known.map((slug) => {
        const { title, keys } = places.calculators[slug]!;
        const query = queryFor(engine, slug, keys);
        return (
          <a
            key={slug}
            href={siteAddress(`calculators/${slug}/${query === '' ? '' : `?${query}`}`)}
          >
            {title}
          </a>
        );
      })}
      {read.map((slug) => (
        <a key={slug} href={siteAddress(`articles/${slug}/`)}>
          Why: {places.articles[slug]}
        </a>
      ))}
      {list ? <a href={siteAddress('first-start/')}>The list of the first start</a> : null}
      {reading ? (
        <button type="button" class="plain" onClick={() => copyStep(id)}>
          Copy with its link
        </button>
      ) : null}
    </p>
  );
}

/** One step of the job: why, with what, to which figure, the readings, and what they say. */
export function StepCard(props: Props) {
  const { id, number, progress, next, engine, lengths, edit } = props;
  const step = steps[id];
  const target = targetWords(engine, id, lengths);
  return (
    <details class={`task task-${progress.state}`} id={`step-${id}`} open={next}>
      <summary>
        <span class="task-number">{number}</span>
        <span class="task-title">{step.title}</span>
        <span class="task-state">
          <span aria-hidden="true">{marks[progress.state]} </span>
          {stateWords[progress.state]}
        </span>
      </summary>
      <Again {...props} />
      {progress.waits.length > 0 && progress.because.length === 0 ? (
        <p class="waits">
          Comes after: {progress.waits.map((other) => steps[other].title.toLowerCase()).join('; ')}.
        </p>
      ) : null}
      <p class="task-why">{proseIn(step.why, lengths)}</p>
      <HowTo step={step} lengths={lengths} />
      <dl class="task-facts">
        <div>
          <dt>With</dt>
          <dd>{proseIn(step.tool, lengths)}</dd>
        </div>
        {target === undefined ? null : (
          <div>
            <dt>To</dt>
            <dd>{target}</dd>
          </div>
        )}
      </dl>
      {step.caution === undefined ? null : (
        <div class="caution">
          <p class="caution-title">Take care</p>
          <p>{proseIn(step.caution, lengths)}</p>
        </div>
      )}
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
              edit((now) => setDone(now, id, checked));
            }}
          />
          <span>Done: {step.title.toLowerCase()}</span>
        </label>
      )}
      <Links {...props} />
      {step.reading ? <CopyState copied={props.copied} /> : null}
    </details>
  );
}
