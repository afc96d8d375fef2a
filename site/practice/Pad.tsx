import { units } from '../../calculators/frame/text/units.ts';
import type { Act, Bench } from '../../calculators/practice/bench.ts';
import type { Engine } from '../../calculators/practice/engine.ts';
import { hasPoints } from '../../calculators/practice/tasks.ts';
import { useLengths } from './lengths.ts';
import { Press } from './Press.tsx';
import { dialFigure, signed } from './words.ts';

interface Props {
  readonly engine: Engine;
  readonly bench: Bench;
  readonly act: (act: Act) => void;
}

/** The note pad: readings as they stood. */
export function Pad({ engine, bench, act }: Props) {
  const lengths = useLengths();
  const several = engine.card.cylinders > 1;
  const points = hasPoints(engine.task);
  const opposite = engine.task === 'disc';
  return (
    <section class="tool pad">
      <h3>Note pad</h3>
      {bench.notes.length === 0 ? (
        <p>Nothing written yet. “Write down” puts what is shown here.</p>
      ) : (
        <div class="table-wrap" role="region" aria-label="Readings" tabIndex={0}>
          <table>
            <caption>{opposite ? 'Pointers A and B' : 'Disc'}: − before its 0, + after it</caption>
            <thead>
              <tr>
                {several && <th scope="col">Cyl.</th>}
                <th scope="col">Dial, {units[dialFigure(0, lengths).unit].label}</th>
                {opposite ? (
                  <>
                    <th scope="col">A, °</th>
                    <th scope="col">B, °</th>
                  </>
                ) : (
                  <th scope="col">Disc, °</th>
                )}
                {points && <th scope="col">Lamp</th>}
                <th scope="col">Way</th>
                <th scope="col" class="no-print">
                  <span class="spoken">Strike out</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {bench.notes.map((note, index) => (
                <tr key={index}>
                  {several && <td>{note.cylinder + 1}</td>}
                  <td>{note.dial === undefined ? '–' : dialFigure(note.dial, lengths).figure}</td>
                  <td class="figure">{signed(note.disc, 2)}</td>
                  {note.opposite !== undefined && (
                    <td class="figure">{signed(note.opposite, 2)}</td>
                  )}
                  {points && <td>{note.lamp}</td>}
                  <td>{note.way > 0 ? 'fwd' : 'back'}</td>
                  <td class="no-print">
                    <Press
                      class="strike"
                      label={`Strike out line ${index + 1}`}
                      onPress={() => act({ act: 'strike-out', note: index })}
                    >
                      ×
                    </Press>
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
    </section>
  );
}
