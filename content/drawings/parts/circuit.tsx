import {
  fixedContact,
  movingContact,
  sparkAcross,
  sparkGap,
  SWITCH_RING,
  switchLever,
} from '../../../calculators/picture/circuit-signs.ts';

/** Symbols of IEC 60617 for the circuits of the articles; places in user units. */

interface At {
  readonly x: number;
  readonly y: number;
}

/** A lamp: a circle with a cross; lit, it is filled and has rays. */
export function Lamp({ x, y, lit }: At & { readonly lit: boolean }) {
  const rays = [0, 45, 90, 135, 180, 225, 270, 315]
    .map((angle) => {
      const [cos, sin] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
      return `M${(x + 15 * cos).toFixed(1)} ${(y + 15 * sin).toFixed(1)}L${(x + 21 * cos).toFixed(1)} ${(y + 21 * sin).toFixed(1)}`;
    })
    .join('');
  return (
    <g class={lit ? 'lamp lamp-lit' : 'lamp'}>
      <circle class={lit ? 'part part-moving' : 'edge edge-filled'} cx={x} cy={y} r={11} />
      <path class="edge edge-thin" d={`M${x - 8} ${y - 8}l16 16M${x - 8} ${y + 8}l16 -16`} />
      {lit ? <path class="motion" d={rays} /> : null}
    </g>
  );
}

/** One cell, its wires upright: the long plate, which is +, above. */
export const Battery = ({ x, y }: At) => (
  <path class="edge" d={`M${x - 12} ${y - 4}h24M${x - 6} ${y + 4}h12`} />
);

/** Earth: the engine's metal. */
export const Earth = ({ x, y }: At) => (
  <path
    class="edge edge-thin"
    d={`M${x} ${y}v6M${x - 9} ${y + 6}h18M${x - 6} ${y + 10}h12M${x - 3} ${y + 14}h6`}
  />
);

/** A winding of four half turns, 48 units down. */
export const Winding = ({ x, y }: At) => (
  <path class="edge" d={`M${x} ${y}${'a6 6 0 0 1 0 12'.repeat(4)}`} />
);

/** Points in an upright wire: the fixed contact at `y`, the foot of the other below it. */
export const Points = ({ x, y, open }: At & { readonly open: boolean }) => (
  <g class={open ? 'points open' : 'points shut'}>
    <path class="contact-still" d={fixedContact(x, y)} />
    <path class="contact-moving" d={movingContact(x, y, open)} />
  </g>
);

/** A plug in an upright wire, its gap at `y`. */
export const Plug = ({ x, y, fires }: At & { readonly fires: boolean }) => (
  <>
    <path class="pointer" d={sparkGap(x, y)} />
    {fires ? <path class="spark" d={sparkAcross(x, y)} /> : null}
  </>
);

/** A switch in a level wire, shut; the wire ends at its contacts. */
export const Switch = ({ from, to, y }: { from: number; to: number; y: number }) => (
  <>
    <path class="edge" d={switchLever(from, to, y)} />
    <circle class="edge edge-filled" cx={from} cy={y} r={SWITCH_RING} />
    <circle class="edge edge-filled" cx={to} cy={y} r={SWITCH_RING} />
  </>
);

export const Joint = ({ x, y }: At) => <circle class="joint" cx={x} cy={y} r={3} />;
