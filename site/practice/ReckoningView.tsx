import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { showFigure, showFixed, shownUnit } from '../../calculators/frame/text/format.ts';
import { proseIn } from '../../calculators/frame/text/prose.ts';
import { units } from '../../calculators/frame/text/units.ts';
import { DIAL_RANGE } from '../../calculators/practice/instruments.ts';
import type { Cost, Line, Reckoning } from '../../calculators/practice/reckoning.ts';
import { tasks, type TaskName } from '../../calculators/practice/tasks.ts';
import { copyText, type Copied } from '../browser/copy.ts';
import { CopyState } from '../browser/CopyState.tsx';
import { siteAddress } from '../browser/site-address.ts';
import { writeAddress } from './address.ts';
import type { Places } from './places.ts';
import { useLengths } from './lengths.ts';
import { Press } from './Press.tsx';
import { withSign } from './words.ts';

interface Props {
  readonly task: TaskName;
  readonly number: number;
  readonly reckoning: Reckoning;
  /** What the reader trusts the work to, in the unit of the lines; none where it was not said. */
  readonly spread: number | undefined;
  readonly places: Places;
  readonly onAgain: () => void;
  readonly onAnother: () => void;
}

/** Figures of one reckoning, which share a unit; readings of the indicator are told in its own. */
const sharing = (lines: readonly Line[], task?: TaskName): readonly number[] => [
  ...lines.flatMap(({ truth, set }) => [truth, set]),
  ...(task === 'reading' ? [DIAL_RANGE] : []),
];

function Truths({
  caption,
  lines,
  among,
  spread,
  truthName = 'Wanted',
  setName = 'Set',
}: {
  caption: string;
  lines: readonly Line[];
  among: readonly number[];
  spread: number | undefined;
  truthName?: string;
  setName?: string;
}) {
  const lengths = useLengths();
  const { unit } = lines[0]!;
  /** The unit stands once over each column: beside every figure it would leave a phone no room. */
  const over = units[shownUnit(among, unit, lengths)].label;
  const figure = (value: number): string =>
    showFigure(value, unit, 2, lengths, undefined, { among }).figure;
  return (
    <div class="table-wrap" role="region" aria-label={caption} tabIndex={0}>
      <table class="reckoned">
        <caption>{caption}</caption>
        <thead>
          <tr>
            <th scope="col">
              <span class="spoken">What</span>
            </th>
            {[truthName, setName, 'Out by'].map((name) => (
              <th scope="col" key={name}>
                {name}, <span class="over">{over}</span>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {lines.map(({ label, truth, set, error, right }) => (
            <tr key={label}>
              <th scope="row">{label}</th>
              <td>{figure(truth)}</td>
              <td>
                {figure(set)}
                {spread === undefined ? null : (
                  <>
                    {' '}
                    <span class="figure">± {figure(spread)}</span>
                  </>
                )}
              </td>
              <td class={right ? 'right' : 'not-right'}>
                <span aria-hidden="true">{right ? '✓ ' : '✗ '}</span>
                {withSign(error, figure)}
                <span class="spoken">{right ? ', right' : ', out of tolerance'}</span>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

interface CostProps {
  readonly cost: Cost;
  readonly among: readonly number[];
  readonly places: Places;
}

function CostItem({ cost, among, places }: CostProps) {
  const lengths = useLengths();
  const { article, heading } = cost.read;
  return (
    <li>
      <b>{showFixed(cost.cost, cost.unit, 2, lengths, among)}.</b> {proseIn(cost.say, lengths)}{' '}
      <a
        href={siteAddress(`articles/${article}/${heading === undefined ? '' : `#${heading}`}`)}
        target="_blank"
      >
        {places.articles[article]}
      </a>
    </li>
  );
}

/** The truth beside what was set, what cost the most, and how to send the engine on. */
export function ReckoningView(props: Props) {
  const { task, number, reckoning, spread, places, onAgain, onAnother } = props;
  const { lines, gaps, costs, remarks, right } = reckoning;
  const head = useRef<HTMLHeadingElement>(null);
  const [copied, setCopied] = useState<Copied>();
  useLayoutEffect(() => head.current?.focus(), []);
  const share = async (): Promise<void> => {
    const address = siteAddress(`practice/${writeAddress({ engine: number, task })}`);
    setCopied(await copyText('Link', address));
  };
  const lengths = useLengths();
  const unit = lines[0]!.unit;
  const among = sharing(lines, task);
  const told =
    task === 'reading' ? 'Right: that is the bad reading' : 'Right: within the tolerance';
  const worst = Math.max(...lines.map(({ error }) => Math.abs(error)));
  return (
    <section class="reckoning" data-part="reckoning">
      <h2 tabIndex={-1} ref={head}>
        {right ? told : 'Not right yet'}
      </h2>
      <Truths
        caption={`Engine ${number}: ${tasks[task].title}`}
        lines={lines}
        among={among}
        spread={task === 'reading' ? undefined : spread}
        truthName={task === 'reading' ? 'True' : undefined}
        setName={task === 'reading' ? 'Written' : task === 'figure' ? 'Stands at' : 'Set'}
      />
      {gaps.length > 0 && (
        <Truths caption="The gaps" lines={gaps} among={sharing(gaps)} spread={undefined} />
      )}
      {spread !== undefined && task !== 'reading' && (
        <p>
          {lines.every(({ error }) => Math.abs(error) <= spread)
            ? `Your ±${showFixed(spread, unit, 2, lengths, among)} holds the truth.`
            : `Your ±${showFixed(spread, unit, 2, lengths, among)} was too small: the truth lies outside it.`}
        </p>
      )}
      {costs.length > 0 && (
        <>
          <h3>{right ? 'What cost the most' : 'What it was'}</h3>
          {costs.some((cost) => cost.unit === unit && cost.cost > worst) && (
            <p>
              Causes that work opposite ways take back part of one another, so that one may be
              larger than what was left.
            </p>
          )}
          <ul class="costs">
            {costs.slice(0, 4).map((cost) => (
              <CostItem
                key={cost.say}
                cost={cost}
                among={cost.unit === unit ? among : []}
                places={places}
              />
            ))}
          </ul>
        </>
      )}
      {costs.length === 0 && right && task !== 'reading' && (
        <p>Nothing that can be named cost anything worth telling.</p>
      )}
      {costs.length === 0 && !right && (
        <p>The work was done in order; what is left is in how near each setting was brought.</p>
      )}
      {remarks.map((remark) => (
        <p key={remark}>{proseIn(remark, lengths)}</p>
      ))}
      <div class="presses no-print">
        <Press onPress={onAnother}>Another engine</Press>
        <Press onPress={onAgain}>This engine again</Press>
        <Press onPress={() => void share()}>Copy a link to engine {number}</Press>
        <Press onPress={() => print()}>Print the bench sheet</Press>
      </div>
      <CopyState copied={copied} />
    </section>
  );
}
