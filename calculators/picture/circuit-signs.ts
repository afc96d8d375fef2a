/** Signs of IEC 60617 that the circuits of calculators and articles share, as paths in user units. */

/** From the fixed contact down to the foot of the moving one. */
export const CONTACT_HIGH = 16;
/** How far the fixed contact reaches out from its wire. */
const REACH = 7;
/** The tip of the moving contact from its foot: on the fixed one, or swung off it. */
const TIPS = { shut: [-8, -19], open: [-15, -14] } as const;

/** The fixed contact at the lower end of an upright wire, at `y`. */
export const fixedContact = (x: number, y: number): string => `M${x} ${y}h${-REACH}`;

/** The moving contact, on the wire that goes on below. */
export function movingContact(x: number, y: number, open: boolean): string {
  const [across, up] = TIPS[open ? 'open' : 'shut'];
  return `M${x} ${y + CONTACT_HIGH}l${across} ${up}`;
}

/** From the middle of a spark gap up and down to the wires. */
export const GAP_HALF = 11;
const GAP_OPEN = 4;

/** A spark gap in an upright wire, its middle at `y`: two arrows, point to point. */
export function sparkGap(x: number, y: number): string {
  const arrow = (side: 1 | -1): string =>
    `M${x} ${y + side * GAP_OPEN}l-4.5 ${side * (GAP_HALF - GAP_OPEN)}h9z`;
  return arrow(-1) + arrow(1);
}

/** What jumps across it. */
export const sparkAcross = (x: number, y: number): string => `M${x} ${y - GAP_OPEN}l-4 3 8 2 -4 3`;

/** The lever of a switch that is shut, from the left contact to just off the right one. */
export const switchLever = (from: number, to: number, y: number): string =>
  `M${from} ${y}L${to} ${y - 3.5}`;
/** Radius of a switch's contacts. */
export const SWITCH_RING = 3.5;
