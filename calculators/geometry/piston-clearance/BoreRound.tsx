import { fixed, showFixed } from '../../frame/text/format.ts';
import { toDisplay, units, displayUnit, type LengthDisplay } from '../../frame/text/units.ts';
import { boreWear } from '../../maths/cylinder/bore-wear.ts';
import { evenly, hundredth } from '../../maths/numeric/steps.ts';
import { belowKey, Key, type KeyEntry } from '../../picture/common/key.tsx';

interface Props {
  readonly heights: readonly number[];
  readonly along: readonly number[];
  readonly across: readonly number[];
  readonly lengths: LengthDisplay;
}

const WIDTH = 340;
/** Radius of the least reading, and how much further out the widest is drawn. */
const ROUND = 96;
const OUT = 36;
const COLUMNS = { depth: 116, along: 168, across: 226 } as const;
const ROW = 17;

/** How far the reading in a direction stands over the least: half of it at each end. */
const over = (along: number, across: number, degrees: number): number => {
  const cos = Math.cos((degrees * Math.PI) / 180);
  return along * cos ** 2 + across * (1 - cos ** 2);
};

/** The bore from above, what is over its least reading enlarged, with the readings. */
export function BoreRound({ heights, along, across, lengths }: Props) {
  const { least, widest } = boreWear({ along, across });
  const key: KeyEntry[] = heights.map((height, i) => ({
    as: 'line',
    look: `level level-${String(i + 1)}`,
    words: `${showFixed(height, 'mm', 0, lengths)} down`,
  }));
  const top = belowKey(key, WIDTH);
  const centre = { x: WIDTH / 2, y: top + ROUND + OUT + 8 };
  const height = centre.y + ROUND + OUT + 50;
  const scale = widest > least ? OUT / ((widest - least) / 2) : 0;
  const outline = (i: number): string =>
    evenly(0, 360, 72)
      .map((degrees) => {
        const out = over(along[i]! - least, across[i]! - least, degrees) / 2;
        const radius = ROUND + out * scale;
        const radians = (degrees * Math.PI) / 180;
        return `${hundredth(centre.x + radius * Math.cos(radians))} ${hundredth(centre.y - radius * Math.sin(radians))}`;
      })
      .join('L');
  const unit = units[displayUnit('mm', lengths)].label;
  const figure = (mm: number): string =>
    fixed(toDisplay(mm, 'mm', lengths), lengths === 'in' ? 4 : 3);
  const first = centre.y - ((heights.length - 1) * ROW) / 2 + 10;
  const say = (mm: number): string => showFixed(mm, 'mm', 3, lengths);

  return (
    <svg
      class="plot bore-from-above"
      viewBox={`0 0 ${WIDTH} ${height}`}
      role="img"
      aria-label={`The bore from above, what is over its least reading of ${say(least)} enlarged: ${heights.map((down, i) => `${showFixed(down, 'mm', 0, lengths)} down ${say(along[i]!)} along the crank and ${say(across[i]!)} across`).join('; ')}`}
    >
      <Key entries={key} width={WIDTH} />
      <path
        class="centre-line"
        d={[-1, 1]
          .flatMap((way) => [
            `M${centre.x + way * (ROUND - 8)} ${centre.y}h${way * (OUT + 12)}`,
            `M${centre.x} ${centre.y + way * (ROUND - 8)}v${way * (OUT + 12)}`,
          ])
          .join('')}
      />
      <circle class="zone least-round" cx={centre.x} cy={centre.y} r={ROUND} />
      {heights.map((_, i) => (
        <path key={i} class={`level level-${String(i + 1)} bore-round`} d={`M${outline(i)}Z`} />
      ))}
      <g aria-hidden="true">
        {Object.entries(COLUMNS).map(([name, x]) => (
          <text key={name} class="axis-text" x={x} y={first - ROW} text-anchor="middle">
            {name === 'depth' ? unit : name}
          </text>
        ))}
        {heights.map((down, i) => (
          <g key={i}>
            <text x={COLUMNS.depth} y={first + ROW * i} text-anchor="middle">
              {fixed(toDisplay(down, 'mm', lengths), lengths === 'in' ? 1 : 0)}
            </text>
            <text x={COLUMNS.along} y={first + ROW * i} text-anchor="middle">
              {figure(along[i]!)}
            </text>
            <text x={COLUMNS.across} y={first + ROW * i} text-anchor="middle">
              {figure(across[i]!)}
            </text>
          </g>
        ))}
      </g>
      <text x={8} y={height - 24}>
        crank runs from left to right
      </text>
      <text x={8} y={height - 8}>
        {`widest over least: ${say(widest - least)}`}
      </text>
    </svg>
  );
}
