/**
 * Drills for ISO metric coarse threads from M2 to M8.
 *
 * Thread and pitch: ISO 261. Tapping drills: ISO 2306. Clearance holes: ISO 273. All are compared
 * with open tables, which the tests name.
 */
import { MathsError } from '../numeric/errors.ts';

export interface ThreadHoles {
  /** Such as `M4`. */
  readonly thread: string;
  /** Nominal diameter, mm. */
  readonly nominal: number;
  /** Coarse pitch, mm. */
  readonly pitch: number;
  /** Drill before tapping, mm. */
  readonly tappingDrill: number;
  /** Clearance hole, fine series, mm: to locate by the screw. */
  readonly fine: number;
  /** Clearance hole, medium series, mm: for general work. */
  readonly medium: number;
  /** Clearance hole, coarse series, mm: where holes do not line up. */
  readonly coarse: number;
}

const row = (
  nominal: number,
  pitch: number,
  tappingDrill: number,
  fine: number,
  medium: number,
  coarse: number,
): ThreadHoles => ({
  thread: `M${nominal}`,
  nominal,
  pitch,
  tappingDrill,
  fine,
  medium,
  coarse,
});

/** By nominal diameter, rising. */
export const threadHoles: readonly ThreadHoles[] = [
  row(2, 0.4, 1.6, 2.2, 2.4, 2.6),
  row(2.5, 0.45, 2.05, 2.7, 2.9, 3.1),
  row(3, 0.5, 2.5, 3.2, 3.4, 3.6),
  row(4, 0.7, 3.3, 4.3, 4.5, 4.8),
  row(5, 0.8, 4.2, 5.3, 5.5, 5.8),
  row(6, 1, 5, 6.4, 6.6, 7),
  row(8, 1.25, 6.8, 8.4, 9, 10),
];

/**
 * The drills for one thread.
 *
 * @param thread `M2`, `M2.5`, `M3`, `M4`, `M5`, `M6` or `M8`.
 * @throws MathsError `thread-unknown`.
 */
export function holesFor(thread: string): ThreadHoles {
  const found = threadHoles.find((entry) => entry.thread === thread);
  if (found === undefined) {
    throw new MathsError(
      'thread-unknown',
      ['thread'],
      `There are no drills here for ${thread}. Choose one of ${threadHoles.map((entry) => entry.thread).join(', ')}; for other threads look in a table of that thread.`,
    );
  }
  return found;
}

/**
 * Diameters of thread that a steel screw wants engaged, so that it breaks before the thread strips:
 * common practice.
 */
const ENGAGED = { aluminium: 1.5, steel: 1 } as const;

/**
 * The least length of thread that a steel screw wants in a metal, mm.
 *
 * @param nominal Diameter of the screw, mm.
 */
export function leastEngagement(nominal: number, metal: keyof typeof ENGAGED): number {
  return ENGAGED[metal] * nominal;
}
