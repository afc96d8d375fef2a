import { fixed } from '../../calculators/frame/text/format.ts';
import type { Bench } from '../../calculators/practice/bench.ts';
import type { Engine } from '../../calculators/practice/engine.ts';
import { dialShows, discShows, lampWord } from '../../calculators/practice/instruments.ts';
import { hasPoints } from '../../calculators/practice/tasks.ts';

/** With its sign; what is shown as nothing has none. */
export function signed(value: number, decimals: number): string {
  const text = fixed(value, decimals);
  return value > 0 && text !== fixed(0, decimals) ? `+${text}` : text;
}

export const mm = (value: number, decimals = 2): string => `${fixed(value, decimals)} mm`;

/** What the disc shows, in words that need no sign. */
export function discWords(angle: number): string {
  if (angle === 0) return '0°';
  return `${fixed(Math.abs(angle), 2)}° ${angle < 0 ? 'before' : 'after'} 0`;
}

/** Where what is moved stands, beside where it was found. */
export function standsWords(
  { cylinder, discShift, pointer, screws, plate, slots }: Bench,
  moved: 'disc' | 'pointer' | 'screw' | 'plate' | 'slot',
): string {
  switch (moved) {
    case 'disc':
      return `shifted ${signed(discShift, 2)}°`;
    case 'pointer':
      return pointer === 0 ? 'not bent' : `bent ${signed(pointer, 2)}°`;
    case 'screw':
      return `turned ${signed(screws[cylinder]!, 0)}°`;
    case 'plate':
      return `${signed(plate, 2)} mm at the line`;
    case 'slot':
      return `moved ${signed(slots[cylinder]!, 2)} mm`;
  }
}

export function dialWords(engine: Engine, bench: Bench): string {
  if (bench.inHole === 'nothing') return 'none fitted';
  if (bench.inHole === 'stop') return 'stop fitted';
  const shown = dialShows(engine, bench);
  return shown === undefined ? 'out of reach' : mm(shown);
}

/** All that can be read, as it is heard. */
export function heard(engine: Engine, bench: Bench): string {
  const parts = [
    ...(bench.inHole === 'indicator' ? [`Indicator ${dialWords(engine, bench)}`] : []),
    `disc ${discWords(discShows(engine, bench))}`,
    ...(engine.task === 'disc' ? [`pointer B ${discWords(discShows(engine, bench, 'B'))}`] : []),
    ...(hasPoints(engine.task) ? [`lamp ${lampWord(engine, bench)}`] : []),
  ];
  return parts.join(', ');
}
