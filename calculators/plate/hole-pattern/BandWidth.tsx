import { hundredth } from '../../maths/numeric/steps.ts';
import { arrowHead } from '../../picture/label.tsx';
import type { BandMark, Point } from './band-mark.ts';

const write = ([x, y]: Point): string => `${hundredth(x)} ${hundredth(y)}`;

/** The dimension of the band (ISO 129-1): arrows from outside, since the band is narrow. */
export const BandWidth = ({ outer, inner, outside, within, words, at }: BandMark) => (
  <g>
    <path
      class="size-line"
      d={`M${write(outside)}L${write(outer)}M${write(within)}L${write(inner)}`}
    />
    <path class="size-head" d={`${arrowHead(outside, outer)}${arrowHead(within, inner)}`} />
    <text x={hundredth(at.x)} y={hundredth(at.y)}>
      {words}
    </text>
  </g>
);
