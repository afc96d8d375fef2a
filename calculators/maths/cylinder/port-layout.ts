/**
 * All ports of one cylinder together: their timing, the time between them, and what happens to all of
 * it when metal or a gasket is changed.
 */
import { MathsError } from '../numeric/errors.ts';
import {
  crownPort,
  discPort,
  skirtPort,
  type PistonInBarrel,
  type PortEvents,
} from './port-timing.ts';

export type Inlet =
  | { readonly kind: 'piston'; readonly bottomEdge: number; readonly skirtLength: number }
  | { readonly kind: 'disc'; readonly discOpens: number; readonly discCloses: number }
  | { readonly kind: 'reed' };

export interface PortLayout {
  readonly barrel: PistonInBarrel;
  /** Top edge of the highest exhaust port, mm below the deck. */
  readonly exhaust: number;
  /** Top edges of the transfer ports, highest or not, mm below the deck. At least one. */
  readonly transfers: readonly number[];
  readonly inlet: Inlet;
}

export interface LayoutTiming {
  readonly exhaust: PortEvents;
  /** In the order given. */
  readonly transfers: readonly PortEvents[];
  /** A reed opens by pressure, not by the crank, and has no timing. */
  readonly inlet: PortEvents | undefined;
  /** Crank degrees from the exhaust's opening to the first transfer's; negative if it is later. */
  readonly blowdown: number;
  /** Crank degrees from the last transfer's closing to the exhaust's; as blowdown if no offset. */
  readonly exhaustLag: number;
}

/** The timing of every port. Errors as `crownPort`, `skirtPort` and `discPort`; `no-transfer`. */
export function layoutTiming({ barrel, exhaust, transfers, inlet }: PortLayout): LayoutTiming {
  if (transfers.length === 0) {
    throw new MathsError(
      'no-transfer',
      ['transfers'],
      'At least one transfer port is needed to tell the blowdown. Measure the highest of them.',
    );
  }
  const exhaustEvents = crownPort(barrel, exhaust);
  const transferEvents = transfers.map((edge) => crownPort(barrel, edge));
  return {
    exhaust: exhaustEvents,
    transfers: transferEvents,
    inlet: inletEvents(barrel, inlet),
    blowdown: Math.min(...transferEvents.map(({ opens }) => opens)) - exhaustEvents.opens,
    exhaustLag: exhaustEvents.closes - Math.max(...transferEvents.map(({ closes }) => closes)),
  };
}

function inletEvents(barrel: PistonInBarrel, inlet: Inlet): PortEvents | undefined {
  switch (inlet.kind) {
    case 'piston':
      return skirtPort(barrel, inlet.bottomEdge, inlet.skirtLength);
    case 'disc':
      return discPort(inlet.discOpens, inlet.discCloses);
    case 'reed':
      return undefined;
  }
}

/**
 * The layout with the barrel raised by `by` mm, as a thicker base gasket does; negative lowers it.
 * The edges keep their places in the barrel and the crown stands lower in it.
 */
export function raiseBarrel(layout: PortLayout, by: number): PortLayout {
  const { barrel } = layout;
  return { ...layout, barrel: { ...barrel, deckClearance: barrel.deckClearance + by } };
}

/** The layout with the exhaust's top edge cut `by` mm higher; negative where metal is added. */
export function raiseExhaust(layout: PortLayout, by: number): PortLayout {
  return { ...layout, exhaust: layout.exhaust - by };
}

/** The layout with every transfer's top edge cut `by` mm higher. */
export function raiseTransfers(layout: PortLayout, by: number): PortLayout {
  return { ...layout, transfers: layout.transfers.map((edge) => edge - by) };
}

/**
 * The layout with a skirt-controlled inlet's bottom edge cut `by` mm lower. A disc or a reed is not
 * touched by it.
 */
export function lowerInlet(layout: PortLayout, by: number): PortLayout {
  const { inlet } = layout;
  if (inlet.kind !== 'piston') return layout;
  return { ...layout, inlet: { ...inlet, bottomEdge: inlet.bottomEdge + by } };
}

/** Largest less smallest of a list: how far cylinders differ. Any unit; 0 for a single one. */
export function spreadOf(values: readonly number[]): number {
  return Math.max(...values) - Math.min(...values);
}
