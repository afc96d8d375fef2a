/** Whether two values hold the same, as they would be written to a file. */
export const alike = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** What stands at one place after two changed what stood there before: nothing is decided where they differ. */
export function pick<T>(was: T, mine: T, theirs: T): { readonly value: T } | undefined {
  if (alike(mine, theirs) || alike(theirs, was)) return { value: mine };
  return alike(mine, was) ? { value: theirs } : undefined;
}

const counted = <T>(list: readonly T[]): Map<string, number> => {
  const counts = new Map<string, number>();
  for (const item of list) {
    const name = JSON.stringify(item);
    counts.set(name, (counts.get(name) ?? 0) + 1);
  }
  return counts;
};

/**
 * Two lists that both came from one before, as one: what either added is in it once, what either
 * took out is gone. Those of before keep their order; what was added follows in an order that
 * depends on nothing but itself.
 */
export function pickAll<T>(was: readonly T[], mine: readonly T[], theirs: readonly T[]): T[] {
  const [before, here, there] = [counted(was), counted(mine), counted(theirs)];
  const left = new Map<string, number>();
  for (const name of new Set([...here.keys(), ...there.keys()])) {
    const [b, m, t] = [before, here, there].map((counts) => counts.get(name) ?? 0) as [
      number,
      number,
      number,
    ];
    left.set(name, pick(b, m, t)?.value ?? Math.max(m, t));
  }
  const take = (list: readonly T[]): T[] =>
    list.filter((item) => {
      const name = JSON.stringify(item);
      const count = left.get(name) ?? 0;
      left.set(name, count - 1);
      return count > 0;
    });
  const kept = take(was);
  const added = take([...mine, ...theirs]);
  const byText = (a: T, b: T): number => (JSON.stringify(a) < JSON.stringify(b) ? -1 : 1);
  return [...kept, ...added.sort(byText)];
}

/** Whether every line of a text stands in another, in the same order. */
function holds(text: readonly string[], lines: readonly string[]): boolean {
  let at = 0;
  for (const line of text) if (line === lines[at]) at += 1;
  return at >= lines.length;
}

/** Two texts as one that holds each line of both. */
export function bothTexts(a: string, b: string): string {
  const [mine, theirs] = [a.split('\n'), b.split('\n')];
  if (holds(mine, theirs)) return a;
  if (holds(theirs, mine)) return b;
  const most = Math.min(mine.length, theirs.length);
  let before = 0;
  while (before < most && mine[before] === theirs[before]) before += 1;
  let after = 0;
  while (after < most - before && mine.at(-1 - after) === theirs.at(-1 - after)) after += 1;
  const between = [mine, theirs]
    .map((lines) => lines.slice(before, lines.length - after))
    .sort((one, other) => (one.join('\n') < other.join('\n') ? -1 : 1));
  return [...mine.slice(0, before), ...between.flat(), ...mine.slice(mine.length - after)].join(
    '\n',
  );
}
