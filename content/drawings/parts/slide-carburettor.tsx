import { Cut, Hatching } from '../../../calculators/picture/cut.tsx';

/** The places of a slide carburettor's parts in its section, user units: air comes from the left. */
export const at = {
  left: 40,
  right: 268,
  /** Roof and floor of the bore. */
  roof: 120,
  floor: 184,
  /** The slide's way up, and the needle in its middle. */
  slideLeft: 116,
  slideRight: 188,
  slideTop: 36,
  needle: 152,
  /** The mouth of the needle jet, its foot, and the foot of the main jet. */
  mouth: 184,
  jetFoot: 262,
  mainFoot: 282,
  /** The chamber: its face, the fuel, its floor. */
  face: 214,
  fuel: 236,
  bottom: 306,
  /** Pilot jet, and where its mixture comes out behind the slide. */
  pilot: 206,
  outlet: 222,
  airScrew: 72,
} as const;

interface Props {
  /** Names the hatching; unique on the page. */
  readonly id: string;
  /** How far the slide is lifted, from 0 (on the floor of the bore) to 1 (clear of it). */
  readonly lifted: number;
}

const WALL = 10;
const { left, right, roof, floor, slideLeft, slideRight, slideTop, needle } = at;

/** The cast body above and below the bore, with the slide's way, the passages and the chamber left open. */
const body = [
  `M${left} ${roof - WALL}H${slideLeft - WALL}V${slideTop}H${slideLeft - 2}V${roof}H${left}Z`,
  `M${right} ${roof - WALL}H${slideRight + WALL}V${slideTop}H${slideRight + 2}V${roof}H${right}Z`,
  `M${left} ${floor}H${needle - 8}V${at.face + 18}H${needle - 16}V${at.face}H${left + 24}V${floor + WALL}H${left}Z`,
  `M${needle + 8} ${floor}H${at.outlet - 3}V${at.face - 8}H${at.pilot + 5}V${at.face}H${needle + 16}V${at.face + 18}H${needle + 8}Z`,
  `M${at.outlet + 3} ${floor}H${right}V${floor + WALL}H${right - 16}V${at.face}H${at.outlet + 3}Z`,
].join('');

const chamber = `M${left + 24} ${at.face}V${at.bottom}H${right - 16}V${at.face}`;

/** The section of a slide carburettor: body and chamber cut, slide and needle whole. */
export function SlideCarburettor({ id, lifted }: Props) {
  const foot = floor - lifted * (floor - roof);
  const cutaway = 12;
  const tip = foot + 62;
  return (
    <g>
      <Hatching id={`${id}-body`} />
      <path
        class="liquid"
        d={`M${left + 25} ${at.fuel}H${right - 17}V${at.bottom - 1}H${left + 25}Z`}
      />
      <path class="fuel-line" d={`M${left + 25} ${at.fuel}H${right - 17}`} />
      <path class="edge" d={chamber} />
      <Cut d={body} hatching={`${id}-body`} />
      <path
        class="edge edge-filled jet-tube"
        d={`M${needle - 8} ${at.mouth}H${needle - 3}V${at.jetFoot}H${needle + 3}V${at.mouth}H${needle + 8}V${at.jetFoot + 4}H${needle + 5}V${at.mainFoot}H${needle - 5}V${at.jetFoot + 4}H${needle - 8}Z`}
      />
      <path
        class="edge edge-filled pilot-tube"
        d={`M${at.pilot - 5} ${at.face}V${at.face + 40}H${at.pilot + 5}V${at.face}`}
      />
      <path
        class="part part-moving slide"
        d={`M${slideLeft} ${foot - cutaway}V${foot - 92}H${slideRight}V${foot}H${slideLeft + 26}Z`}
      />
      <path
        class="edge edge-filled needle"
        d={`M${needle - 2.5} ${foot - 60}V${foot}L${needle - 0.8} ${tip}H${needle + 0.8}L${needle + 2.5} ${foot}V${foot - 60}Z`}
      />
      <path class="edge edge-thin" d={`M${needle} ${foot - 92}V22`} />
    </g>
  );
}
