import { DEMO_SPEED, demoEngine } from '../demo/engine.ts';
import { demoBarrel } from '../demo/barrel.ts';
import type { AnyValues, NumberInput } from '../frame/types.ts';

export { demoBarrel };

/** What several calculators ask about barrel and piston, always in the same words. */
export const barrelInputs = {
  bore: {
    kind: 'number',
    group: 'The barrel',
    label: 'Bore',
    help: 'Diameter of the cylinder.',
    measure:
      'Bore gauge, or inside micrometer, at three heights and in two directions. Take the mean for volumes, and look up the wear limit for the rest.',
    unit: 'mm',
    min: 10,
    max: 200,
    why: 'smaller or larger than that is not a cylinder of the kind this page serves',
    default: demoBarrel.bore,
    step: 0.5,
    error: 0.02,
  },
  deck: {
    kind: 'number',
    group: 'The barrel',
    label: 'Crown to deck at the top',
    help: 'With the piston at top dead centre, from the top face of the barrel down to the edge of the crown. Minus where the crown stands above the face.',
    measure:
      'Barrel nuts tight on the base gasket you mean to use. Depth gauge over the gudgeon pin on both sides, where the piston does not rock; take the mean. Use the edge of the crown and not the middle of a dome.',
    unit: 'mm',
    min: -20,
    max: 60,
    why: 'a crown further from the deck belongs to another engine',
    default: demoBarrel.deck,
    step: 0.1,
    error: 0.03,
  },
} as const satisfies Record<string, NumberInput>;

/**
 * A port uncovered by the crown, of the demo's barrel, in one for another stroke: where not all of
 * them would be opened by it they move together, so that they open in their order.
 */
export function portGivesWay(own: number, values: AnyValues): number | undefined {
  const { deck, stroke } = values as { deck: number; stroke: number };
  const two = [values['exhaust-edge'], values['transfer-edge']];
  const edges = (values['port'] ?? two) as readonly number[];
  return edges.every((edge) => edge >= deck && edge < deck + stroke)
    ? undefined
    : deck + ((own - demoBarrel.deck) * stroke) / demoEngine.stroke;
}

/** The demo's inlet, in a barrel for a piston of another length or another stroke. */
export function inletGivesWay(own: number, values: AnyValues): number | undefined {
  const { deck, stroke, skirt } = values as { deck: number; stroke: number; skirt: number };
  const { inlet, deck: demoDeck, skirt: demoSkirt } = demoBarrel;
  if (own > deck + skirt && own < deck + skirt + stroke) return undefined;
  return deck + skirt + ((inlet - demoDeck - demoSkirt) * stroke) / demoEngine.stroke;
}

/** The edge of a port, as deep in the barrel as it lies. */
export const edge = {
  unit: 'mm',
  min: 0,
  max: 300,
  why: 'edges are measured down from the top face of the barrel, and no barrel here is longer',
  step: 0.1,
  error: 0.1,
} as const satisfies Partial<NumberInput>;

/** Engine speed, for what goes by the clock. */
export const speedInput = {
  assumed: true,
  kind: 'number',
  label: 'Engine speed',
  help: 'Revolutions of the crank in a minute.',
  unit: 'rpm',
  min: 100,
  max: 20_000,
  why: 'such an engine neither runs slower nor faster',
  default: DEMO_SPEED,
  step: 250,
} as const satisfies NumberInput;
