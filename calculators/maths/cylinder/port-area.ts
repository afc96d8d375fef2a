/** How much of a port is open, from how far the piston has uncovered it. */
import { MathsError } from '../numeric/errors.ts';
import { sayNumber } from '../numeric/rounding.ts';

/** A port with straight sides and rounded corners, or several alike beside one another. */
export interface PortWindow {
  /** Width across the bore, measured straight (the chord), mm. Of one port. */
  readonly width: number;
  /** Height from top edge to bottom edge, mm. */
  readonly height: number;
  /** Radius of the corners, mm: 0 to half the smaller of width and height. */
  readonly cornerRadius: number;
  /** Number of equal ports, 1 or more. */
  readonly count: number;
}

/** Throws a MathsError unless the window is one that can be cut. */
export function assertWindow({ width, height, cornerRadius, count }: PortWindow): void {
  for (const [name, value] of [
    ['width', width],
    ['height', height],
  ] as const) {
    if (!(value > 0 && value < Infinity)) {
      throw new MathsError(
        `port-${name}`,
        [name],
        `The port’s ${name} must be more than 0 mm, not ${sayNumber(value)} mm. Measure it straight across the opening in the bore.`,
      );
    }
  }
  const largest = Math.min(width, height) / 2;
  if (!(cornerRadius >= 0 && cornerRadius <= largest)) {
    throw new MathsError(
      'corner-radius',
      ['cornerRadius', 'width', 'height'],
      `The corners’ radius must be from 0 to ${sayNumber(largest)} mm (half of the port’s smaller side), not ${sayNumber(cornerRadius)} mm.`,
    );
  }
  if (!(Number.isInteger(count) && count >= 1)) {
    throw new MathsError(
      'port-count',
      ['count'],
      `The number of equal ports must be a whole number, 1 or more, not ${sayNumber(count)}.`,
    );
  }
}

/**
 * The widest that each of so many equal ports at one height can be, mm, measured straight across: the
 * chord of its share of the bore's circle. A single port reaches across the whole bore.
 *
 * @param bore mm, more than 0.
 * @param count 1 or more.
 */
export const widestPort = (bore: number, count: number): number =>
  count < 2 ? bore : bore * Math.sin(Math.PI / count);

/** Throws a MathsError where equal ports at one height do not find room round the bore. */
export function assertRoundBore({ width, count }: PortWindow, bore: number): void {
  const widest = widestPort(bore, count);
  if (width <= widest) return;
  throw new MathsError(
    'port-wider-than-bore',
    ['width', 'bore'],
    count < 2
      ? `A port of ${sayNumber(width)} mm is wider than its bore of ${sayNumber(bore)} mm. Its width is measured straight across, as a chord of the bore, and is at most the bore.`
      : `${sayNumber(count)} ports of ${sayNumber(width)} mm do not find room round a bore of ${sayNumber(bore)} mm: measured straight across, each is at most ${sayNumber(widest)} mm wide. Give the width of one, and how many there are.`,
  );
}

/**
 * Area in mm² uncovered from one end of the window to `depth` mm from it. Below 0 nothing is open;
 * beyond the height all of it is.
 */
export function uncoveredArea(window: PortWindow, depth: number): number {
  const { width, height, cornerRadius: r, count } = window;
  const open = Math.min(Math.max(depth, 0), height);
  const far = Math.min(Math.max(open - (height - r), 0), r);
  const missing =
    2 * cornerLoss(r, Math.min(open, r)) + 2 * (cornerLoss(r, r) - cornerLoss(r, r - far));
  return count * (width * open - missing);
}

/**
 * What one rounded corner takes off a square one over its first `depth` mm, 0 to the radius `r`:
 * exact, from the circle's half segment.
 */
function cornerLoss(r: number, depth: number): number {
  const rest = r - depth;
  const across = Math.sqrt(depth * (r + rest));
  const segment = (r * r * Math.atan2(across, rest) - rest * across) / 2;
  return r * depth - segment;
}
