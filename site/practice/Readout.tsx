import type { Bench } from '../../calculators/practice/bench.ts';
import type { Engine } from '../../calculators/practice/engine.ts';
import { discShows, lampWord } from '../../calculators/practice/instruments.ts';
import { hasPoints } from '../../calculators/practice/tasks.ts';
import { useLengths } from './lengths.ts';
import { dialWords, discWords } from './words.ts';

interface Props {
  readonly engine: Engine;
  readonly bench: Bench;
  readonly blurred: boolean;
}

/** What the instruments show, in figures. It is silent: the crank's own words are heard. */
export function Readout({ engine, bench, blurred }: Props) {
  const lengths = useLengths();
  const rows: readonly (readonly [name: string, words: string])[] = blurred
    ? [['All', 'too fast to read']]
    : [
        ['Indicator', dialWords(engine, bench, lengths)],
        [engine.task === 'disc' ? 'Pointer A' : 'Disc', discWords(discShows(engine, bench))],
        ...(engine.task === 'disc'
          ? [['Pointer B', discWords(discShows(engine, bench, 'B'))] as const]
          : []),
        ...(hasPoints(engine.task) ? [['Lamp', lampWord(engine, bench)] as const] : []),
      ];
  return (
    <dl class="readout" data-part="readout">
      {rows.map(([name, words]) => (
        <div key={name} class={name === 'Lamp' ? `lamp-${words}` : undefined}>
          <dt>{name}</dt>
          <dd>{words}</dd>
        </div>
      ))}
    </dl>
  );
}
