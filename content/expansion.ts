import { expansions } from '../calculators/maths/cylinder/expansion.ts';

/**
 * Linear expansion of the metals of an engine for each °C, and where die-cast zinc begins to melt.
 *
 * Source: W. D. Callister and D. G. Rethwisch, Fundamentals of Materials Science and Engineering,
 * 3rd edition, Wiley 2008, table B.6, pages 815 and 816 (grey iron, free-cutting brass C36000, cast
 * aluminium 356.0). NADCA Product Specification Standards for Die Castings, zinc alloy no. 3:
 * 27.4·10⁻⁶ and a melting range of 381 to 387 °C. Piston alloy with 12% of silicon: 20·10⁻⁶ at the
 * skirt's heat, common practice.
 */
export const expansion = {
  zinc: 27.4e-6,
  aluminium: expansions.aluminium * 1e-6,
  brass: 20.5e-6,
  iron: expansions.iron * 1e-6,
  piston: expansions.piston * 1e-6,
} as const;

export const ZINC_MELTS = 381;
