import { demoBarrel } from '../calculators/demo-engine.ts';
import { expansion } from './expansion.ts';

const { bore } = demoBarrel;

/** Piston and ring of the demo engine, mm on the bench, and how hot they are taken to run, °C: invented. */
export const fit = {
  piston: 51.935,
  ringGap: 0.2,
  bench: 20,
  barrel: 90,
  skirt: 110,
  crown: 250,
  ring: 150,
} as const;

/** By how much a diameter of the bore's size grows from the bench to a temperature, mm. */
const growth = (share: number, temperature: number): number =>
  bore * share * (temperature - fit.bench);

export const cold = bore - fit.piston;
/** Clearance, mm, with barrel and skirt each at its own temperature. */
export const hot = (share: number, barrel: number, skirt: number): number =>
  cold + growth(share, barrel) - growth(expansion.piston, skirt);
/** The temperature of the skirt at which nothing is left while the barrel is at its own. */
export const fillsAt = (share: number, barrel: number): number =>
  fit.bench + (cold + growth(share, barrel)) / (bore * expansion.piston);
/** The ring's gap while ring and iron bore run at their temperatures, mm. */
export const hotGap = (barrel: number, ring: number): number =>
  fit.ringGap + Math.PI * (growth(expansion.iron, barrel) - growth(expansion.iron, ring));
/** By how much the crown must be smaller than the skirt so that both are alike when hot, mm. */
export const taper = growth(expansion.piston, fit.crown) - growth(expansion.piston, fit.skirt);
