/** What is said of a verdict that lies nearer to its limit than the ± of what is judged; nothing of any other. */
export const noSurer = (distance: number, spread: number | undefined): string =>
  Math.abs(distance) < (spread ?? 0)
    ? ' The readings are no surer than that: measure again before you go by it.'
    : '';
