import { arrowHead } from '../../../calculators/picture/label.tsx';
import { polar, type Place } from './polar.ts';

/** An arrow along which something moves. */
export const Move = ({ from, to }: { readonly from: Place; readonly to: Place }) => (
  <g>
    <path class="motion" d={`M${from.join(' ')}L${to.join(' ')}`} />
    <path class="motion-head" d={arrowHead(from, to)} />
  </g>
);

interface TurnProps {
  readonly centre: Place;
  readonly radius: number;
  /** Directions, degrees clockwise from straight up; clockwise if `to` is the larger. */
  readonly from: number;
  readonly to: number;
}

/** An arrow round a centre. */
export function Turn({ centre, radius, from, to }: TurnProps) {
  const at = polar(centre);
  const clockwise = to > from ? 1 : 0;
  const large = Math.abs(to - from) > 180 ? 1 : 0;
  const back = (8 / radius) * (180 / Math.PI);
  const before = at(radius, to - (clockwise ? back : -back));
  return (
    <g>
      <path
        class="motion"
        d={`M${at(radius, from).join(' ')}A${radius} ${radius} 0 ${large} ${clockwise} ${at(radius, to).join(' ')}`}
      />
      <path class="motion-head" d={arrowHead(before, at(radius, to))} />
    </g>
  );
}
