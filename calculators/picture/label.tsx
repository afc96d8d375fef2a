import { hundredth } from '../maths/numeric/steps.ts';
import { textWidth } from './common/text-width.ts';

type Place = readonly [x: number, y: number];

export const LETTERING = 13;
const CLEAR = 4;
/** From the middle of a line of lettering down to its foot. */
const FOOT = 0.32 * LETTERING;

interface Props {
  readonly words: string;
  /** Where the middle of the lettering's near edge stands, user units. */
  readonly at: Place;
  readonly anchor?: 'start' | 'middle' | 'end';
  /** The part that it names: a thin line leads there, with a dot on a surface, an arrow at an edge. */
  readonly to?: Place;
  readonly ends?: 'dot' | 'arrow';
}

/** The point of the lettering from which its leader starts: the side that faces what it names. */
function startOf({ words, at: [x, y], anchor = 'start' }: Props, [toX, toY]: Place): Place {
  const wide = textWidth(words, { size: LETTERING });
  const left = x - (anchor === 'middle' ? wide / 2 : anchor === 'end' ? wide : 0);
  if (toX > left + wide) return [left + wide + CLEAR, y];
  if (toX < left) return [left - CLEAR, y];
  const half = LETTERING / 2 + CLEAR;
  return [Math.min(left + wide - 6, Math.max(left + 6, toX)), y + (toY > y ? half : -half)];
}

/** An arrow head with its tip at a place, pointing away from where the line comes from. */
export function arrowHead([fromX, fromY]: Place, [x, y]: Place, long = 8, half = 2.6): string {
  const length = Math.hypot(x - fromX, y - fromY) || 1;
  const [ux, uy] = [(x - fromX) / length, (y - fromY) / length];
  const [bx, by] = [x - ux * long, y - uy * long];
  const corner = (side: number): string =>
    `${hundredth(bx - uy * half * side)} ${hundredth(by + ux * half * side)}`;
  return `M${hundredth(x)} ${hundredth(y)}L${corner(1)}L${corner(-1)}Z`;
}

/** A name in a drawing, with a leader to what it names (ISO 128-2). */
export function Label(props: Props) {
  const { words, at, anchor = 'start', to, ends = 'dot' } = props;
  const from = to && startOf(props, to);
  return (
    <g>
      {to && from ? (
        <>
          <path
            class="leader"
            d={`M${hundredth(from[0])} ${hundredth(from[1])}L${hundredth(to[0])} ${hundredth(to[1])}`}
          />
          {ends === 'dot' ? (
            <circle class="leader-end" cx={hundredth(to[0])} cy={hundredth(to[1])} r={2} />
          ) : (
            <path class="leader-end" d={arrowHead(from, to)} />
          )}
        </>
      ) : null}
      <text x={hundredth(at[0])} y={hundredth(at[1] + FOOT)} text-anchor={anchor}>
        {words}
      </text>
    </g>
  );
}
