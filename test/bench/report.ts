/** The value below which the given share of the sorted figures lies. */
export function quantile(figures: readonly number[], share: number): number {
  const sorted = [...figures].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]!;
}

export const most = (figures: Iterable<number>): number => Math.max(0, ...figures);

export const kilobytes = (bytes: number): string => (bytes / 1000).toFixed(1);
export const milliseconds = (time: number): string => time.toFixed(1);

/** Prints rows as a table whose first column is words and whose others are figures. */
export function table(
  title: string,
  head: readonly string[],
  rows: readonly (readonly string[])[],
): void {
  const all = [head, ...rows];
  const widths = head.map((_, column) => Math.max(...all.map((row) => row[column]!.length)));
  const line = (row: readonly string[]): string =>
    row
      .map((cell, i) => (i === 0 ? cell.padEnd(widths[i]!) : cell.padStart(widths[i]!)))
      .join('  ');
  console.log(`\n${title}\n`);
  console.log(line(head));
  console.log(widths.map((width) => '─'.repeat(width)).join('  '));
  for (const row of rows) console.log(line(row));
}

export interface Aim {
  readonly what: string;
  readonly aim: number;
  readonly found: number;
  readonly unit: string;
}

/** Prints each aim beside what was found; returns whether all are met. */
export function aims(list: readonly Aim[]): boolean {
  table(
    'Aims',
    ['', 'aim, at most', 'found', ''],
    list.map(({ what, aim, found, unit }) => [
      what,
      `${Number(aim.toFixed(1))} ${unit}`,
      `${found.toFixed(1)} ${unit}`,
      found <= aim ? 'met' : 'MISSED',
    ]),
  );
  return list.every(({ aim, found }) => found <= aim);
}
