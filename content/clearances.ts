import { demoBarrel } from '../calculators/demo/barrel.ts';
import { demoClearance } from '../calculators/demo/clearance.ts';
import { inputs } from '../calculators/geometry/piston-clearance/inputs.ts';
import { expansions, grown } from '../calculators/maths/cylinder/expansion.ts';
import {
  fillsAt as filled,
  hotRingGap,
  pistonClearance,
  type PistonInBore,
} from '../calculators/maths/cylinder/piston-clearance.ts';

const { bore } = demoBarrel;

/** Piston and ring of the demo engine, mm on the bench, and how hot they are taken to run, °C. */
export const fit = {
  piston: demoClearance.piston,
  ringGap: demoClearance.ringGap,
  bench: inputs['measured-at'].default,
  barrel: inputs['bore-temperature'].default,
  skirt: inputs['piston-temperature'].default,
  ring: inputs['ring-temperature'].default,
  /** A guess of the usual size. */
  crown: 250,
} as const;

/** The demo's piston in a barrel of a metal, 10⁻⁶ for each K. */
const inBore = (expansion: number): PistonInBore => ({
  bore: { size: bore, expansion, temperature: fit.barrel },
  piston: { size: fit.piston, expansion: expansions.piston, temperature: fit.skirt },
  measuredAt: fit.bench,
});

export const cold = bore - fit.piston;
/** Clearance, mm, with barrel and skirt each at its own temperature. */
export const hot = (expansion: number): number => pistonClearance(inBore(expansion)).hot;
/** The temperature of the skirt, °C, at which nothing is left while the barrel keeps its own. */
export const fillsAt = (expansion: number): number => filled(inBore(expansion));
/** The ring's gap while ring and iron bore run at their temperatures, mm. */
export const hotGap = hotRingGap(
  inBore(expansions.iron).bore,
  { size: fit.ringGap, expansion: expansions.iron, temperature: fit.ring },
  fit.bench,
);
/** What a length of a metal gains from the bench to a temperature, mm. */
export const gain = (length: number, expansion: number, temperature: number): number =>
  grown(length, expansion, temperature - fit.bench) - length;
/** By how much the crown must be smaller than the skirt so that both are alike when hot, mm. */
export const taper =
  gain(fit.piston, expansions.piston, fit.crown) - gain(fit.piston, expansions.piston, fit.skirt);
