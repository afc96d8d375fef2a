import type { Spot } from '../../calculators/sheet/due.ts';
import { dayWords, readingsAt } from '../../calculators/sheet/log.ts';
import { kindWords, readingWords } from '../../calculators/sheet/log-words.ts';
import type { BoxProps } from './FigureBox.tsx';

interface Props extends Pick<BoxProps, 'engine' | 'lengths'> {
  readonly spot: Spot;
}

/** The readings taken at this place before, the last first. */
export function Earlier({ engine, spot, lengths }: Props) {
  const { step, index } = spot;
  const entries = [...readingsAt(engine, step, index)].reverse().slice(0, 4);
  if (entries.length === 0) return null;
  return (
    <ul class="one-earlier" aria-label="Readings so far">
      {entries.map((entry, i) => (
        <li key={entries.length - i}>
          <b>{readingWords(step, entry.value, lengths)}</b>{' '}
          {[dayWords(entry.on), kindWords[entry.kind]].filter(Boolean).join(', ')}
        </li>
      ))}
    </ul>
  );
}
