import { CENTRE, gudgeonAt, PIN, place } from './places.ts';

interface Props {
  /** Degrees after the top at which the crank stands, and at which the piston was stopped. */
  readonly crank: number;
  readonly half: number;
  /** A positive stop, or else an indicator on the crown. */
  readonly stop: boolean;
  /** The head, user units. */
  readonly top: number;
}

const HALF_BORE = 36;
const CROWN = 22;
const SKIRT = 26;
const FOOT = 196;

/** Barrel and piston above the disc, with what tells that the piston stands equally high. Not to scale. */
export function Barrel({ crank, half, stop, top }: Props) {
  const { x } = CENTRE;
  const pin = gudgeonAt(crank);
  const crown = pin - CROWN;
  const stopped = gudgeonAt(half) - CROWN;
  const [bigX, bigY] = place(crank, PIN);
  const [left, right] = [x - HALF_BORE, x + HALF_BORE];
  return (
    <g aria-hidden="true">
      <path
        class="casting barrel"
        d={`M${left} ${FOOT}V${top}H${right}V${FOOT}h12V${top - 12}H${left - 12}V${FOOT}Z`}
      />
      <path
        class="part part-moving piston"
        d={`M${left + 2} ${pin + SKIRT}V${crown}H${right - 2}V${pin + SKIRT}Z`}
      />
      <path class="part-rod" d={`M${bigX} ${bigY}L${x} ${pin}`} />
      <circle class="part gudgeon-pin" cx={x} cy={pin} r={7} />
      {stop ? (
        <path class="part stop" d={`M${x - 5} ${top - 12}V${stopped}h10V${top - 12}`} />
      ) : (
        <>
          <path class="rule-line" d={`M${left} ${stopped}H${right}`} />
          <path class="part indicator" d={`M${x - 2} ${top - 12}V${crown}h4V${top - 12}`} />
        </>
      )}
      <text x={right + 20} y={top + 22}>
        {stop ? 'stop' : 'indicator'}
      </text>
      <path class="leader" d={`M${x + (stop ? 5 : 2)} ${top + 18}H${right + 17}`} />
      <text x={left - 18} y={top + 22} text-anchor="end">
        barrel
      </text>
    </g>
  );
}
