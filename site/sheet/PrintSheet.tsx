import { units, type LengthDisplay } from '../../calculators/frame/text/units.ts';
import { fieldUnit } from '../../calculators/frame/field/field-unit.ts';
import { finenessOf, showIn } from '../../calculators/frame/text/format.ts';
import { readingOf } from '../../calculators/sheet/readings.ts';
import {
  appliesTo,
  figureGroups,
  sheetFigures,
  type FigureKey,
} from '../../calculators/sheet/figures.ts';
import { firedByBox, orderWords } from '../../calculators/sheet/firing-order.ts';
import { idleFigures } from '../../calculators/sheet/idle-figures.ts';
import { leadWords } from '../../calculators/sheet/leads.ts';
import { figureDoubt } from '../../calculators/sheet/figure-doubt.ts';
import { NO_FIGURE, targetWords } from '../../calculators/sheet/judge.ts';
import { dayWords, lastDay } from '../../calculators/sheet/log.ts';
import { entryWords, kindWords } from '../../calculators/sheet/log-words.ts';
import {
  boxesOf,
  countedAs,
  cylindersOf,
  type Engine,
  type Entry,
  setsOf,
} from '../../calculators/sheet/model.ts';
import { concerned, jobOf, progressOf, stateTold } from '../../calculators/sheet/progress.ts';
import { readingDigits } from '../../calculators/sheet/step-units.ts';
import { order, steps, type StepId, type StepReading } from '../../calculators/sheet/steps.ts';

interface Props {
  readonly engine: Engine;
  readonly lengths: LengthDisplay;
  /** Every step, also those that fall away by what the sheet says: nothing is known of the engine. */
  readonly every?: boolean;
}

/** More than this has no room beside the figures; the rest stays in the sheet. */
const MOST_KEPT = 4;
const MOST_NOTES = 300;

const figureIn = (
  entry: Entry | undefined,
  reading: StepReading,
  lengths: LengthDisplay,
): string => (entry === null || entry === undefined ? '' : readingDigits(entry, reading, lengths));

/** The pole that is earthed, or both for the pen: it stands with the battery, in no line of its own. */
const earthed = ({ figures }: Engine): string => ['−', '+'][figures.earth ?? 2] ?? '− / +';

function Figures({ engine, lengths, every }: Props) {
  const idle = every ? [] : idleFigures(engine);
  const isAsked = (key: FigureKey): boolean =>
    key !== 'earth' &&
    appliesTo(key, setsOf(engine)) &&
    (engine.figures[key] !== undefined || !idle.includes(key));
  return (
    <div class="paper-figures">
      {figureGroups.map(({ heading, keys }) => (
        <section key={heading}>
          <h2>{heading}</h2>
          <dl>
            {keys.filter(isAsked).map((key) => {
              const spec = sheetFigures[key];
              const shown = fieldUnit(spec, lengths);
              const value = engine.figures[key];
              return (
                <div key={key}>
                  <dt>{spec.label}</dt>
                  <dd>
                    {value === undefined
                      ? units[shown].label
                      : `${showIn(value, shown, finenessOf(spec))}${figureDoubt(engine, key) ? ', doubted' : ''}`}
                    {key === 'volts' ? `, ${earthed(engine)} earthed` : ''}
                  </dd>
                </div>
              );
            })}
          </dl>
        </section>
      ))}
    </div>
  );
}

/** What a step is set to, with a line for the pen where the sheet has no figure. */
const forPen = (target = ''): string => target.replaceAll(NO_FIGURE, '____');

/** The same in the room of its column. */
function toWords(engine: Engine, id: StepId, lengths: LengthDisplay): string {
  const { earth } = engine.figures;
  if (id === 'polarity') return earth === undefined ? '' : `${earth === 0 ? '−' : '+'} to points`;
  const { reading, figures = [] } = steps[id];
  if (reading === undefined && id !== 'fuel') return '';
  const setTo = reading === undefined ? figures : [reading.target];
  const doubted = setTo.some((key) => key !== undefined && figureDoubt(engine, key) !== undefined);
  return `${forPen(targetWords(engine, id, lengths))}${doubted ? ', doubted' : ''}`;
}

/** The unit of a step's boxes, and what their numbers count where they are not cylinders. */
const countedIn = (engine: Engine, reading: StepReading, lengths: LengthDisplay): string =>
  [units[fieldUnit(reading, lengths)].label || 'number', countedAs(reading, engine)]
    .filter(Boolean)
    .join(', ');

/** Which cylinders each set fires, in the room that an engine of fewer sets than cylinders leaves. */
const firesOf = (engine: Engine, reading: StepReading): string =>
  Array.from({ length: setsOf(engine) }, (_, i) => firedByBox(reading, i, engine))
    .flatMap((fired, i) =>
      fired === undefined ? [] : [`set ${String(i + 1)}: cylinders ${fired.join(', ')}`],
    )
    .join('; ');

function Steps({ engine, lengths, every }: Props) {
  const cylinders = Array.from({ length: cylindersOf(engine) }, (_, i) => i);
  const progress = progressOf(engine);
  return (
    <table class={`paper-steps${cylinders.length > 4 ? ' paper-many' : ''}`}>
      <caption>
        Order of work: <b>{engine.name}</b>. Columns 1, 2, … are cylinders, unless the step names
        something else.
      </caption>
      <thead>
        <tr>
          <th scope="col" rowSpan={2} class="paper-step">
            Step
          </th>
          <th scope="col" rowSpan={2} class="paper-to">
            To
          </th>
          {cylinders.map((i) => (
            <th scope="colgroup" colSpan={2} key={i}>
              {i + 1}
            </th>
          ))}
          <th scope="col" rowSpan={2} class="paper-day">
            Date
          </th>
          <th scope="col" rowSpan={2} class="paper-state">
            State
          </th>
        </tr>
        <tr>
          {cylinders.map((i) => [
            <th scope="col" key={`found ${String(i)}`}>
              found
            </th>,
            <th scope="col" key={`left ${String(i)}`}>
              last
            </th>,
          ])}
        </tr>
      </thead>
      <tbody>
        {(every ? order : jobOf(engine)).map((id, number) => {
          const { title, reading } = steps[id];
          const { found, left } = readingOf(engine, id);
          const { state } = progress[id];
          const which = concerned(engine, id, progress[id]).map((i) => i + 1);
          return (
            <tr key={id}>
              <th scope="row">
                {number + 1}. {title}
                {reading ? <span> ({countedIn(engine, reading, lengths)})</span> : null}
              </th>
              <td>{toWords(engine, id, lengths)}</td>
              {reading ? (
                cylinders.slice(0, boxesOf(engine, id)).map((i) => [
                  <td class="pen" key={`found ${String(i)}`}>
                    {figureIn(found[i], reading, lengths)}
                  </td>,
                  <td class="pen" key={`left ${String(i)}`}>
                    {figureIn(left[i], reading, lengths)}
                  </td>,
                ])
              ) : (
                <td colSpan={cylinders.length * 2} class="tick">
                  {readingOf(engine, id).done ? '✓ done' : '☐ done'}
                </td>
              )}
              {reading && boxesOf(engine, id) < cylinders.length ? (
                <td colSpan={2 * (cylinders.length - boxesOf(engine, id))} class="paper-fires">
                  {firesOf(engine, reading)}
                </td>
              ) : null}
              <td class="paper-day">{dayWords(lastDay(engine, id))}</td>
              <td>
                {state === 'open' ? '☐' : stateTold(engine, id, state)}
                {which.length === 0
                  ? ''
                  : `: ${which.length === cylinders.length ? 'all' : which.join(',')}`}
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

/** The whole log, oldest first, on pages of its own. */
function Log({ engine, lengths }: Props) {
  return (
    <section class="paper-log">
      <p class="paper-title">Log of {engine.name}</p>
      <table>
        <thead>
          <tr>
            <th scope="col">Date</th>
            <th scope="col">What</th>
            <th scope="col">Reading</th>
            <th scope="col">How</th>
          </tr>
        </thead>
        <tbody>
          {engine.log.map((entry, i) => {
            const [about, says] = entryWords(entry, engine, lengths);
            return (
              <tr key={i}>
                <td>{dayWords(entry.on)}</td>
                <td>{about}</td>
                <td>{says}</td>
                <td>{kindWords[entry.kind]}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}

/** The sheet on both sides of A4 or Letter: what is known, then the job with boxes for a pen. */
export function PrintSheet({ withLog = false, ...props }: Props & { withLog?: boolean }) {
  const { engine, lengths } = props;
  const notes = engine.notes.trim();
  const leads = leadWords(engine);
  const more = engine.kept.length - MOST_KEPT;
  return (
    <div class="paper" aria-hidden="true">
      <p class="paper-title">Engine sheet</p>
      <p class="paper-name">
        <b>{engine.name}</b>
        {engine.invented ? ' (invented)' : ''}
        <span>Firing order: {orderWords(engine) || '______'}</span>
        <span>Date: __________</span>
        <span>By: __________</span>
        {leads === undefined ? null : <span class="paper-leads">{leads}</span>}
      </p>
      <Figures {...props} />
      {engine.kept.length === 0 ? null : (
        <p class="paper-kept">
          {engine.kept
            .slice(0, MOST_KEPT)
            .map(({ label, text }) => `${label}: ${text}`)
            .join(' · ')}
          {more > 0 ? ` · and ${String(more)} more in the sheet` : ''}
        </p>
      )}
      <p class="paper-notes">
        Notes: {notes.slice(0, MOST_NOTES)}
        {notes.length > MOST_NOTES ? '… (more in the sheet)' : ''}
      </p>
      <p class="paper-foot">
        The maker’s manual, the product’s safety sheet and local rules come before this sheet.
        Before the first start: outdoors, extinguisher at hand, ears protected, two ways to stop.
      </p>
      <Steps {...props} />
      {withLog ? <Log engine={engine} lengths={lengths} /> : null}
    </div>
  );
}
