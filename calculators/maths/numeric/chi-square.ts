/** The normal deviate that is exceeded 5 times in 1000. */
const DEVIATE = 2.5758;

/**
 * The most that the squares of misfits over their ± add up to by chance, but for 5 times in 1000: the
 * upper bound of chi-square. It lies up to 1% above the true one.
 *
 * Source: E. B. Wilson and M. M. Hilferty, The distribution of chi-square, Proceedings of the National
 * Academy of Sciences 17, 1931, as in M. Abramowitz and I. A. Stegun (eds), Handbook of Mathematical
 * Functions, 1964, formula 26.4.17. Named from memory.
 *
 * @param freedom Degrees of freedom, 1 or more.
 */
export function mostByChance(freedom: number): number {
  const share = 2 / (9 * freedom);
  return freedom * (1 - share + DEVIATE * Math.sqrt(share)) ** 3;
}
