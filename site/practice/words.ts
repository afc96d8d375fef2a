import {
  fixed,
  showFigure,
  showFixed,
  shownText,
  type Shown,
} from '../../calculators/frame/text/format.ts';
import type { LengthDisplay } from '../../calculators/frame/text/units.ts';
import type { Bench } from '../../calculators/practice/bench.ts';
import type { Engine } from '../../calculators/practice/engine.ts';
import {
  DIAL_RANGE,
  dialShows,
  discShows,
  lampWord,
} from '../../calculators/practice/instruments.ts';
import { hasPoints } from '../../calculators/practice/tasks.ts';

/** With its sign; what is shown as nothing has none. */
export function withSign(value: number, show: (value: number) => string): string {
  const text = show(value);
  return value > 0 && text !== show(0) ? `+${text}` : text;
}

export const signed = (value: number, decimals: number): string =>
  withSign(value, (figure) => fixed(figure, decimals));

/**
 * A length with its unit.
 *
 * @param among Others in mm that it is compared with, and shares its unit with.
 */
export const length = (
  value: number,
  lengths: LengthDisplay,
  decimals = 2,
  among: readonly number[] = [],
): string => showFixed(value, 'mm', decimals, lengths, among);

/** A reading of the indicator: in one unit over its whole range. */
export const dialFigure = (value: number, lengths: LengthDisplay): Shown =>
  showFigure(value, 'mm', 2, lengths, undefined, { among: [DIAL_RANGE] });

/** What the indicator shows, or is to show. */
export const onDial = (value: number, lengths: LengthDisplay): string =>
  shownText(dialFigure(value, lengths));

/** A coarse step of what is moved, mm: what has not been moved is told in its unit. */
const STEP = 0.5;

/** A length by which something was moved, with its sign. */
export const moved = (by: number, lengths: LengthDisplay): string =>
  withSign(by, (figure) => length(figure, lengths, 2, [by, STEP]));

/** What the disc shows, in words that need no sign. */
export function discWords(angle: number): string {
  if (angle === 0) return '0°';
  return `${fixed(Math.abs(angle), 2)}° ${angle < 0 ? 'before' : 'after'} 0`;
}

/** Where what is moved stands, beside where it was found. */
export function standsWords(
  { cylinder, discShift, pointer, screws, plate, slots }: Bench,
  what: 'disc' | 'pointer' | 'screw' | 'plate' | 'slot',
  lengths: LengthDisplay,
): string {
  switch (what) {
    case 'disc':
      return `shifted ${signed(discShift, 2)}°`;
    case 'pointer':
      return pointer === 0 ? 'not bent' : `bent ${signed(pointer, 2)}°`;
    case 'screw':
      return `turned ${signed(screws[cylinder]!, 0)}°`;
    case 'plate':
      return `${moved(plate, lengths)} at the line`;
    case 'slot':
      return `moved ${moved(slots[cylinder]!, lengths)}`;
  }
}

export function dialWords(engine: Engine, bench: Bench, lengths: LengthDisplay): string {
  if (bench.inHole === 'nothing') return 'none fitted';
  if (bench.inHole === 'stop') return 'stop fitted';
  const shown = dialShows(engine, bench);
  return shown === undefined ? 'out of reach' : onDial(shown, lengths);
}

/** All that can be read, as it is heard. */
export function heard(engine: Engine, bench: Bench, lengths: LengthDisplay): string {
  const parts = [
    ...(bench.inHole === 'indicator' ? [`Indicator ${dialWords(engine, bench, lengths)}`] : []),
    `disc ${discWords(discShows(engine, bench))}`,
    ...(engine.task === 'disc' ? [`pointer B ${discWords(discShows(engine, bench, 'B'))}`] : []),
    ...(hasPoints(engine.task) ? [`lamp ${lampWord(engine, bench)}`] : []),
  ];
  return parts.join(', ');
}
