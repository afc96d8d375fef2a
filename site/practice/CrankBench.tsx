import { useEffect, useMemo, useState } from 'preact/hooks';
import { crankWords } from '../../calculators/practice/acts.ts';
import { canBeDone, setUp, type Act, type Bench } from '../../calculators/practice/bench.ts';
import { inventEngine } from '../../calculators/practice/engine.ts';
import { lampWord } from '../../calculators/practice/instruments.ts';
import { reckon, type Reckoning } from '../../calculators/practice/reckoning.ts';
import { hasPoints, type CrankTask } from '../../calculators/practice/tasks.ts';
import { work } from '../../calculators/practice/work.ts';
import { Asked } from './Asked.tsx';
import { Card } from './Card.tsx';
import { cardRows, wantedRows } from './card-rows.ts';
import { EngineDrawing } from './EngineDrawing.tsx';
import { Finish } from './Finish.tsx';
import { Pad } from './Pad.tsx';
import type { Places } from './places.ts';
import { Press } from './Press.tsx';
import { crankQueries } from './queries.ts';
import { Readout } from './Readout.tsx';
import { Telling } from './Telling.tsx';
import { DiscTool, PlugHole, PointsTool } from './Tools.tsx';
import { Turning } from './Turning.tsx';
import { useActs } from './use-acts.ts';
import { useSaid } from './use-said.ts';
import { useLengths } from './lengths.ts';
import { heard, standsWords } from './words.ts';

interface Props {
  readonly number: number;
  /** What has been done on it beforehand, in the words of its acts. */
  readonly begun: string;
  readonly task: CrankTask;
  readonly places: Places;
  readonly finished: boolean;
  readonly onFinish: (reckoning: Reckoning, spread: number | undefined) => void;
  /** What was to be done beforehand cannot be read. */
  readonly onUnread: () => void;
}

const KICK_MS = 450;
/** What stands where the bench has nothing to tell. */
const RESTS = 'Drag the disc, or use the steps.';

/** The bench with a crank on it. */
export function CrankBench(props: Props) {
  const { number, begun, task, places, finished, onFinish, onUnread } = props;
  const lengths = useLengths();
  const engine = useMemo(() => inventEngine(number, task), [number, task]);
  const [bench, done, now] = useActs<Bench, Act>({
    work: { engine: number, task, done: begun },
    onUnread,
    words: crankWords,
    setUp: () => setUp(engine),
    after: (before, what) => (canBeDone(before, what) ? work(engine, before, what) : undefined),
  });
  const [leaf, tryLeaf] = useState<number>();
  const [blurred, blur] = useState(false);
  const [words, setWords] = useState('');

  const act = (what: Act): void => {
    const before = now();
    const after = done(what);
    const lamp = lampWord(engine, after);
    const changed = !hasPoints(task) || lamp === lampWord(engine, before) ? '' : `Lamp ${lamp}. `;
    setWords(`${changed}${after.said}`);
  };
  /** A press of a button says where it has led; a drag or a key in the drawing is heard by itself. */
  const press = (what: Act): void => {
    act(what);
    const after = now();
    if (what.act === 'turn') setWords(`${after.said} ${heard(engine, after, lengths)}`);
    if (what.act === 'disc' || what.act === 'pointer')
      setWords(
        `${after.said} ${standsWords(after, what.act, lengths)}, ${heard(engine, after, lengths)}`,
      );
    if (what.act === 'screw' || what.act === 'plate' || what.act === 'slot')
      setWords((told) => `${told} ${standsWords(after, what.act, lengths)}`);
  };
  const kick = (): void => {
    act({ act: 'kick' });
    blur(true);
  };
  useEffect(() => {
    if (!blurred) return;
    const timer = setTimeout(() => blur(false), KICK_MS);
    return () => clearTimeout(timer);
  }, [blurred]);
  const said = useSaid(words, bench.acts);
  const ignition = hasPoints(task);
  const { cylinders } = engine.card;

  return (
    <>
      <Asked task={task} wanted={wantedRows(engine, lengths)} />
      <div class={finished ? undefined : 'practice-bench'}>
        {!finished && (
          <div class="bench-engine no-print">
            <div class="bench-view">
              <EngineDrawing
                engine={engine}
                bench={bench}
                leaf={leaf}
                blurred={blurred}
                turn={(by) => act({ act: 'turn', by })}
                bend={(by) => act({ act: 'pointer', by })}
              />
            </div>
            <div class="bench-bar">
              <Readout engine={engine} bench={bench} blurred={blurred} />
              <Telling done={bench.said || RESTS} said={said} />
              <div class="bench-hands">
                <Turning turn={(by) => press({ act: 'turn', by })} />
                <Press label="Write down what is shown" onPress={() => act({ act: 'note' })}>
                  Write down
                </Press>
              </div>
            </div>
          </div>
        )}
        <div class="tools">
          {!finished && (
            <div class="no-print">
              <section class="tool">
                <h3>Turning it over</h3>
                <p>
                  Drag the disc, roll the wheel over it, or use its arrow keys (Page up and Page
                  down for 10°, Shift for 0.1°). The steps are a spanner’s; held, they go on.
                </p>
                <div class="presses">
                  <Press onPress={kick}>Kick it over</Press>
                </div>
              </section>
              {cylinders > 1 && (
                <section class="tool">
                  <h3>At which cylinder</h3>
                  <div class="presses" role="group" aria-label="Indicator and lamp are on">
                    {Array.from({ length: cylinders }, (_, cylinder) => (
                      <Press
                        key={cylinder}
                        pressed={bench.cylinder === cylinder}
                        onPress={() => act({ act: 'cylinder', cylinder })}
                      >
                        Cylinder {cylinder + 1}
                      </Press>
                    ))}
                  </div>
                </section>
              )}
              <PlugHole engine={engine} bench={bench} act={act} />
              <DiscTool engine={engine} bench={bench} act={press} />
              {ignition && (
                <PointsTool
                  engine={engine}
                  bench={bench}
                  leaf={leaf}
                  act={press}
                  tryLeaf={tryLeaf}
                />
              )}
            </div>
          )}
          <Card
            task={task}
            number={number}
            places={places}
            queries={crankQueries(engine, bench)}
            rows={cardRows(engine, lengths)}
          />
        </div>
      </div>
      <Pad engine={engine} bench={bench} act={act} />
      {!finished && (
        <Finish
          task={task}
          finish={(spread, answer) => onFinish(reckon(engine, now(), answer), spread)}
        />
      )}
    </>
  );
}
