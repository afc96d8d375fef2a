/**
 * A pure function that remembers its last results. For work that a ± asks for over and over: each
 * reading is moved a little while all the others stay, so most of it has been done just before.
 *
 * @param work A function of plain numbers and readonly objects of them, without side effects.
 * @param most How many results are kept; the oldest goes first.
 */
export function memoize<A extends readonly unknown[], R>(
  work: (...args: A) => R,
  most = 500,
): (...args: A) => R {
  const known = new Map<string, R>();
  return (...args) => {
    const key = JSON.stringify(args);
    if (known.has(key)) return known.get(key)!;
    const result = work(...args);
    if (known.size >= most) known.delete(known.keys().next().value!);
    known.set(key, result);
    return result;
  };
}
