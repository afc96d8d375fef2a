import { orderFigure } from '../../frame/text/order.ts';
import { fixed } from '../../frame/text/format.ts';
import type { Firing } from '../../maths/crank/firing-order.ts';
import { overlap, type Box } from '../../picture/common/overlap.ts';
import { spreadRound } from '../../picture/common/labels.ts';
import { textWidth } from '../../picture/common/text-width.ts';
import { sequenceOf } from './compute.ts';
import { BADGE, CylinderBadge, polar } from './marks.tsx';

interface Props {
  /** Degrees of each set from set 1, the way the cam turns. */
  readonly sets: readonly number[];
  readonly firing: Firing;
  readonly turned: number;
  readonly clockwise: boolean;
}

const WIDTH = 340;
const HEIGHT = 290;
const CENTRE = { x: 170, y: 134 };
const PLATE = 88;
const SETS = 76;
const NAMES = 106;
const INTERVALS = 52;
const CAM = 16;
const LOBE = 27;
const ARROW = 124;

const at = polar(CENTRE.x, CENTRE.y);

/** The plate with its sets and the cam, set 1 at the top, as the reader looks at it. */
export function PlateView({ sets, firing, turned, clockwise }: Props) {
  const way = clockwise ? 1 : -1;
  const gap = ((2 * BADGE + 2) / NAMES) * (180 / Math.PI);
  const names = spreadRound(
    sets.map((set) => way * set),
    gap,
  ).map((angle) => at(angle, NAMES));
  const lobe = way * turned;
  const [flank, tip, other] = [at(lobe - 48, CAM), at(lobe, LOBE), at(lobe + 48, CAM)];
  const [start, end] = clockwise
    ? [at(210, ARROW), at(236, ARROW)]
    : [at(236, ARROW), at(210, ARROW)];

  const taken: Box[] = [];
  let from = 0;
  const order = orderFigure(sequenceOf(firing.order, firing.intervals));
  const figures = firing.intervals.flatMap((interval, k) => {
    const middle = at(way * (from + interval / 2), INTERVALS);
    from += interval;
    const words = `${fixed(interval, Math.abs(interval - Math.round(interval)) < 0.05 ? 0 : 1)}°`;
    const wide = textWidth(words) / 2;
    const box: Box = {
      left: middle.x - wide - 2,
      right: middle.x + wide + 2,
      top: middle.y - 8,
      bottom: middle.y + 8,
    };
    if (interval === 0 || taken.some((each) => overlap(each, box))) return [];
    taken.push(box);
    return [{ k, words, ...middle }];
  });

  return (
    <svg
      class="plot"
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      role="img"
      aria-label={`The plate with set 1 at the top, the cam turning ${clockwise ? 'clockwise' : 'anticlockwise'}: sets at ${sets.map((set, i) => `${String(i + 1)}: ${fixed(set, 1)}`).join(', ')} degrees. Firing order ${order}.`}
    >
      <circle class="part plate" cx={CENTRE.x} cy={CENTRE.y} r={PLATE} />
      <path
        class="reading-marks set-marks"
        d={sets
          .map((set) => {
            const [inner, outer] = [at(way * set, SETS), at(way * set, PLATE + 4)];
            return `M${inner.x} ${inner.y}L${outer.x} ${outer.y}`;
          })
          .join('')}
      />
      <path
        class="part part-moving cam"
        d={`M${flank.x} ${flank.y}L${tip.x} ${tip.y}L${other.x} ${other.y}A${CAM} ${CAM} 0 1 1 ${flank.x} ${flank.y}Z`}
      />
      <path
        class="turning"
        d={`M${start.x} ${start.y}A${ARROW} ${ARROW} 0 0 ${clockwise ? 1 : 0} ${end.x} ${end.y}${clockwise ? 'm0 0l9 3m-9-3l1 10' : 'm0 0l-10 1m10-1l-5-9'}`}
      />
      {figures.map(({ k, words, x, y }) => (
        <text key={k} x={x} y={y} dy="0.32em" text-anchor="middle">
          {words}
        </text>
      ))}
      {names.map(({ x, y }, i) => (
        <CylinderBadge key={i} x={x} y={y} number={i + 1} />
      ))}
      <text class="axis-text" x={8} y={HEIGHT - 8}>
        {`Firing order ${order}`}
      </text>
    </svg>
  );
}
