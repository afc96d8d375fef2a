import { hundredth } from '../maths/numeric/steps.ts';

interface Props {
  readonly x: number;
  /** Where it starts, in user units. */
  readonly from: number;
  /** User units; positive points down. */
  readonly length: number;
  readonly label: string;
  /** On which side of the arrow its letter stands. */
  readonly side: 'left' | 'right';
}

const HEAD = 7;

/** A force: an upright arrow with its letter; nothing where there is no force. */
export function ForceArrow({ x, from, length, label, side }: Props) {
  if (length === 0) return null;
  const sign = length < 0 ? -1 : 1;
  const tip = hundredth(from + length);
  const head = sign * Math.min(HEAD, Math.abs(length));
  return (
    <g class="force" aria-hidden="true">
      <path class="force-shaft" d={`M${x} ${from}V${tip}`} />
      <path class="force-head" d={`M${x} ${tip}l-4 ${-head}h8z`} />
      <text
        x={x + (side === 'left' ? -7 : 7)}
        y={(from + tip) / 2}
        dy="0.32em"
        text-anchor={side === 'left' ? 'end' : 'start'}
      >
        {label}
      </text>
    </g>
  );
}
