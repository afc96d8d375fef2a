import { describe, expect, it } from 'vitest';
import { thrown } from './thrown.ts';

/** One limit of a public function, as its documentation states it. */
export interface Limit {
  /** The code of the refusal; `out-of-range` where none is given. */
  readonly code?: string;
  /** The names that the refusal bears, in order. */
  readonly of: readonly string[];
  /** Hands one figure to the function and leaves the others sound. */
  readonly run: (figure: number) => unknown;
  /** Figures at the very edge that are still taken. */
  readonly takes: readonly number[];
  /** Figures just beyond, and others that are no figure. */
  readonly refuses: readonly number[];
  /** What the sentence must tell: the quantity, its range and its unit, or what was given. */
  readonly says: RegExp;
}

/** Holds a function to each of its limits: taken at the edge, refused beyond it, and said so. */
export function holdsTo(limits: readonly Limit[]): void {
  describe.each(limits)('$of', ({ code = 'out-of-range', of, run, takes, refuses, says }) => {
    it.each(takes)('takes %d', (figure) => {
      expect(() => run(figure)).not.toThrow();
    });

    it.each(refuses)('refuses %d', (figure) => {
      const error = thrown(() => run(figure));
      expect(error.code).toBe(code);
      expect(error.quantities).toEqual(of);
      expect(error.message).toMatch(says);
    });
  });
}

/** What a refusal of `assertWithin` says: whose figure, the range, what was given, and why. */
export const range = (words: string, span: string): RegExp =>
  new RegExp(`^${words} must be ${span}, not (no number|-?[\\d.]+.*)\\. \\p{Lu}.{15,}\\.$`, 'u');
