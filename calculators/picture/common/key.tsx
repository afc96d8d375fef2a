import { handleOutline } from './handle.tsx';
import { textWidth } from './text-width.ts';

/** One line of a key: a stroke, a patch, a mark or the form of a handle, of this class, and its name. */
export interface KeyEntry {
  readonly as: 'line' | 'area' | 'mark' | 'square' | 'diamond';
  readonly look: string;
  readonly words: string;
}

const ROW = 18;
const SWATCH = 22;
const AFTER_SWATCH = 28;
const BETWEEN = 14;
const LEFT = 6;
/** Middle of the first row. */
const FIRST = 13;
/** From the last row down to the field, with an axis label between. */
const BELOW = 36;

interface Placed extends KeyEntry {
  readonly x: number;
  readonly row: number;
}

function laid(entries: readonly KeyEntry[], width: number): readonly Placed[] {
  let x = LEFT;
  let row = 0;
  return entries.map((entry) => {
    const long = AFTER_SWATCH + textWidth(entry.words);
    if (x > LEFT && x + long > width - LEFT) {
      x = LEFT;
      row += 1;
    }
    const placed = { ...entry, x, row };
    x += long + BETWEEN;
    return placed;
  });
}

/** Where a key of these entries ends, so that what it explains comes below it. */
export function belowKey(entries: readonly KeyEntry[], width: number): number {
  return FIRST + ROW * (laid(entries, width).at(-1)?.row ?? -1) + 9;
}

/** Where the field of a plot begins that has this key and an axis label above it. */
export const fieldTop = (entries: readonly KeyEntry[], width: number): number =>
  belowKey(entries, width) - 9 + BELOW;

function Swatch({ as, look }: KeyEntry) {
  if (as === 'line') return <path class={look} d={`M0 0h${SWATCH}`} />;
  if (as === 'area') return <path class={look} d={`M1 -5.5h${SWATCH - 4}v11h${4 - SWATCH}z`} />;
  if (as === 'mark') return <circle class={look} cx={SWATCH / 2} r={5} />;
  return (
    <path class={look} d={handleOutline[as]} transform={`translate(${String(SWATCH / 2)} 0)`} />
  );
}

/** What the lines, patches and marks of a picture mean: above it, where nothing crosses it. */
export function Key({ entries, width }: { readonly entries: readonly KeyEntry[]; width: number }) {
  return (
    <g class="key" aria-hidden="true">
      {laid(entries, width).map((entry) => (
        <g
          key={entry.words}
          transform={`translate(${String(entry.x)} ${String(FIRST + ROW * entry.row)})`}
        >
          <Swatch {...entry} />
          <text x={AFTER_SWATCH} dy="0.32em">
            {entry.words}
          </text>
        </g>
      ))}
    </g>
  );
}
