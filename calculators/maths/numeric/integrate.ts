/** Step of the rule, and how many there are to each side: up to 3, where the weight is below 10⁻¹². */
const STEP = 0.2;
const STEPS = 15;

/** Places between −1 and 1 with their weights. */
const places = Array.from({ length: 2 * STEPS + 1 }, (_, index) => {
  const t = (index - STEPS) * STEP;
  const bend = (Math.PI / 2) * Math.sinh(t);
  return {
    at: Math.tanh(bend),
    weight: (STEP * (Math.PI / 2) * Math.cosh(t)) / Math.cosh(bend) ** 2,
  };
});

/**
 * Integral of a function that is smooth inside an interval but may bend at its ends, as an opening
 * port does: the double exponential rule, which crowds its points towards both ends.
 *
 * Source: H. Takahasi and M. Mori, "Double exponential formulas for numerical integration",
 * Publications of the Research Institute for Mathematical Sciences 9 (1974), pages 721-741
 * (recalled from memory).
 *
 * @param f Any function that is finite on the interval.
 * @param from Start of the interval.
 * @param to End of the interval, not less than `from`.
 * @returns Unit of `f` times the unit of the interval; to about ten figures.
 */
export function integrate(f: (x: number) => number, from: number, to: number): number {
  const middle = (from + to) / 2;
  const half = (to - from) / 2;
  let sum = 0;
  for (const { at, weight } of places) sum += weight * f(middle + half * at);
  return sum * half;
}
