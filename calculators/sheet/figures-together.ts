import { assertGap } from '../maths/ignition/breaker-cam.ts';
import { assertDwell } from '../maths/ignition/coil-charge.ts';
import { sayNumber } from '../maths/numeric/rounding.ts';
import { farFromPractice } from './common-practice.ts';
import type { FigureKey } from './figures.ts';
import { attempted } from './judge-words.ts';
import type { Engine } from './model.ts';

type Figures = Engine['figures'];

/** What the maths package refuses, or nothing. */
export const refused = (check: () => unknown): string | undefined => {
  const said = attempted(check);
  return typeof said === 'string' ? said : undefined;
};

export const gapOdds = (gap: number | undefined, lift: number | undefined): string | undefined =>
  gap === undefined || lift === undefined ? undefined : refused(() => assertGap({ lift }, gap));

export const dwellOdds = (figures: Figures): string | undefined => {
  const { 'dwell-angle': dwell, lobes } = figures;
  return dwell === undefined || lobes === undefined
    ? undefined
    : refused(() => assertDwell(dwell, lobes));
};

/** Rods of such engines for their stroke, at the very least and the very most: well beyond the 1.7 to 2.2 of common practice. */
const SHORTEST = 1.4;
const LONGEST = 3;

/** What speaks against a rod beside its stroke; nothing of one that other checks refuse. */
function rodOdds({ rod, stroke }: Figures): string | undefined {
  if (rod === undefined || stroke === undefined || rod <= stroke / 2) return undefined;
  const strokes = rod / stroke;
  return strokes < SHORTEST || strokes > LONGEST
    ? `A rod of ${sayNumber(rod)} mm on a stroke of ${sayNumber(stroke)} mm is ${strokes.toFixed(1)} strokes long, and 1.7 to 2.2 is common practice: check both, and their unit. A rod is measured from centre to centre of its two eyes.`
    : undefined;
}

/** What a plate's bore, rim and slots say against one another; mm. */
function plateOdds(figures: Figures): string | undefined {
  const { 'plate-bore': bore, 'plate-outside': outside, 'slot-radius': radius } = figures;
  const say = (length: number): string => `${sayNumber(length)} mm`;
  if (bore !== undefined && outside !== undefined && bore >= outside) {
    return `A bore of ${say(bore)} leaves nothing of a plate of ${say(outside)}. Measure both again.`;
  }
  if (radius !== undefined && outside !== undefined && 2 * radius >= outside) {
    return `Slots at a radius of ${say(radius)} lie beyond the rim of a plate of ${say(outside)}. Measure both again: the radius goes from the middle of the shaft, the other is right across.`;
  }
  if (radius !== undefined && bore !== undefined && 2 * radius <= bore) {
    return `Slots at a radius of ${say(radius)} lie within the bore of ${say(bore)}. Measure both again: the radius goes from the middle of the shaft, the other is right across.`;
  }
  return undefined;
}

const checks: Partial<Record<FigureKey, (figures: Figures) => string | undefined>> = {
  gap: ({ gap, lift }) => gapOdds(gap, lift),
  lift: ({ gap, lift }) => gapOdds(gap, lift),
  rod: rodOdds,
  stroke: rodOdds,
  'dwell-angle': dwellOdds,
  lobes: dwellOdds,
  'plate-bore': plateOdds,
  'plate-outside': plateOdds,
  'slot-radius': plateOdds,
};

/** What speaks against a figure, by the others of its sheet or by common practice, in millimetres; nothing where they go together. */
export const besideOthers = (figures: Figures, key: FigureKey): string | undefined =>
  checks[key]?.(figures) ?? farFromPractice(figures, key);
