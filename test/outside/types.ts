/** Where the figure we are checked against comes from. */
export type SourceKind =
  | 'standard'
  | 'published'
  | 'open data'
  | 'library'
  | 'hand-worked'
  | 'common practice'
  | 'from memory';

/**
 * One check of our own arithmetic against something our code did not compute. The list is run by
 * `outside.test.ts` and printed on the site's page of sources.
 */
export interface OutsideCheck {
  /** Slug of the calculator, or name of the maths module, that the check is about. */
  readonly topic: string;
  /** What is compared, in words and with its inputs. */
  readonly what: string;
  /** Full citation, or library and version. Says so where a value is recalled from memory. */
  readonly source: string;
  readonly kind: SourceKind;
  readonly unit: string;
  readonly expected: number | (() => number);
  readonly ours: () => number;
  /** Largest difference allowed, in `unit`, with the reason for it in `why` where not obvious. */
  readonly tolerance: number;
  readonly why?: string;
}
