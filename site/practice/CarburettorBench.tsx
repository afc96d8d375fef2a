import { useMemo, useState } from 'preact/hooks';
import { floatWords, slidesWords } from '../../calculators/practice/acts.ts';
import { fixed, showFixed } from '../../calculators/frame/text/format.ts';
import {
  gaugeShows,
  inventFloat,
  reckonFloat,
  setUpFloat,
  tubeShows,
  workFloat,
  type FloatAct,
  type FloatBench as FloatState,
} from '../../calculators/practice/float.ts';
import type { Reckoning } from '../../calculators/practice/reckoning.ts';
import {
  DRILLS,
  drillFits,
  inventSlides,
  reckonSlides,
  setUpSlides,
  workSlides,
  type SlidesAct,
  type SlidesBench as SlidesState,
} from '../../calculators/practice/slides.ts';
import { Asked } from './Asked.tsx';
import { Card } from './Card.tsx';
import { Finish } from './Finish.tsx';
import { FloatDrawing } from './FloatDrawing.tsx';
import type { Places } from './places.ts';
import { Press } from './Press.tsx';
import { floatQueries, slidesQueries } from './queries.ts';
import { SlidesDrawing } from './SlidesDrawing.tsx';
import { Telling } from './Telling.tsx';
import { useActs } from './use-acts.ts';
import { useSaid } from './use-said.ts';
import { useLengths } from './lengths.ts';
import { length, moved, signed } from './words.ts';

interface Props {
  readonly number: number;
  /** What has been done on it beforehand, in the words of its acts. */
  readonly begun: string;
  readonly places: Places;
  readonly finished: boolean;
  readonly onFinish: (reckoning: Reckoning, spread: number | undefined) => void;
  /** What was to be done beforehand cannot be read. */
  readonly onUnread: () => void;
}

const FIT = {
  loose: 'passes with room',
  drags: 'just drags',
  'no-go': 'does not pass',
} as const;

/** Three slides, their adjusters and a set of drills. */
export function SlidesBench({ number, begun, places, finished, onFinish, onUnread }: Props) {
  const lengths = useLengths();
  /** In the unit of the whole set of drills. */
  const shank = (thick: number): string => length(thick, lengths, 1, DRILLS);
  const slides = useMemo(() => inventSlides(number), [number]);
  const [bench, done] = useActs<SlidesState, SlidesAct>({
    work: { engine: number, task: 'slides', done: begun },
    onUnread,
    words: slidesWords,
    setUp: () => setUpSlides(slides),
    after: (before, what) =>
      what.act === 'slide' && what.slide >= before.turns.length
        ? undefined
        : workSlides(slides, before, what),
  });
  const [drill, setDrill] = useState(slides.card.target);
  const [acts, count] = useState(0);
  const act = (what: SlidesAct): void => {
    done(what);
    count((before) => before + 1);
  };
  const take = (by: number): void => {
    const next = DRILLS.find((each) => Math.abs(each - drill - by) < 0.01);
    if (next !== undefined) setDrill(next);
    act({ act: 'try', drill: next ?? drill });
  };
  const fit = `The ${shank(drill)} shank ${FIT[drillFits(bench, drill)]} under slide ${bench.slide + 1}.`;
  const said = useSaid(`${bench.said} ${fit}`, acts);
  const { card } = slides;
  return (
    <>
      <Asked task="slides" wanted={[['Opening wanted', shank(card.target)]]} />
      <div class={finished ? undefined : 'practice-bench'}>
        {!finished && (
          <div class="bench-view no-print">
            <SlidesDrawing bench={bench} drill={drill} />
            <Telling fit={fit} done={bench.said} said={said} />
          </div>
        )}
        <div class="tools">
          {!finished && (
            <div class="no-print">
              <section class="tool">
                <h3>Which slide</h3>
                <div class="presses" role="group" aria-label="The shank is under">
                  {bench.turns.map((_, slide) => (
                    <Press
                      key={slide}
                      pressed={bench.slide === slide}
                      onPress={() => act({ act: 'slide', slide })}
                    >
                      Slide {slide + 1}
                    </Press>
                  ))}
                </div>
              </section>
              <section class="tool">
                <h3>Drill shank of {shank(drill)}</h3>
                <div class="presses" role="group" aria-label="Drill shank">
                  <Press repeats onPress={() => take(-0.1)}>
                    {shank(0.1)} thinner
                  </Press>
                  <Press repeats onPress={() => take(0.1)}>
                    {shank(0.1)} thicker
                  </Press>
                  <Press onPress={() => act({ act: 'grip' })}>Work the grip</Press>
                </div>
              </section>
              <section class="tool">
                <h3>
                  Adjuster of slide {bench.slide + 1}: {signed(bench.turns[bench.slide]!, 3)} turns
                </h3>
                <div class="screw-steps" role="group" aria-label="Adjuster">
                  {[
                    [-0.5, '½ shut'],
                    [-0.0625, '1⁄16 shut'],
                    [0.0625, '1⁄16 open'],
                    [0.5, '½ open'],
                  ].map(([by, words]) => (
                    <Press
                      key={by}
                      repeats
                      label={`Adjuster, turns: ${words}`}
                      onPress={() => act({ act: 'adjust', by: by as number })}
                    >
                      {words}
                    </Press>
                  ))}
                </div>
                <p class="screw-ways">Screwed out, it lifts the slide.</p>
              </section>
            </div>
          )}
          <Card
            task="slides"
            number={number}
            places={places}
            queries={slidesQueries(card, bench)}
            rows={[['Thread of each adjuster', `${length(card.thread, lengths, 1)} a turn`]]}
          />
        </div>
      </div>
      {!finished && (
        <Finish task="slides" finish={(spread) => onFinish(reckonSlides(slides, bench), spread)} />
      )}
    </>
  );
}

/** One float, its tang, a gauge and a sight tube. */
export function FloatBench({ number, begun, places, finished, onFinish, onUnread }: Props) {
  const lengths = useLengths();
  const float = useMemo(() => inventFloat(number), [number]);
  const [bench, act] = useActs<FloatState, FloatAct>({
    work: { engine: number, task: 'float', done: begun },
    onUnread,
    words: floatWords,
    setUp: setUpFloat,
    after: workFloat,
  });
  const { lever, feed, level } = float.card;
  const gauge = gaugeShows(float, bench);
  const tube = tubeShows(float, bench);
  const shown =
    tube === undefined
      ? `Upside down and empty, the gauge shows ${length(gauge!, lengths, 1)} from the gasket face to the far edge of the float.`
      : `Upright and full, the tube shows the fuel ${length(tube, lengths)} below the gasket face.`;
  const said = useSaid(`${bench.said} ${shown}`, bench.acts);
  return (
    <>
      <Asked task="float" wanted={[['Fuel below the gasket face', length(level, lengths, 1)]]} />
      <div class={finished ? undefined : 'practice-bench'}>
        {!finished && (
          <div class="bench-view no-print">
            <FloatDrawing float={float} bench={bench} gauge={gauge} tube={tube} />
            <Telling fit={shown} done={bench.said} said={said} />
          </div>
        )}
        <div class="tools">
          {!finished && (
            <div class="no-print">
              <section class="tool">
                <h3>Carburettor</h3>
                <div class="presses">
                  <Press pressed={!bench.filled} onPress={() => act({ act: 'drain' })}>
                    Drain, turn upside down
                  </Press>
                  <Press pressed={bench.filled} onPress={() => act({ act: 'fill' })}>
                    Set upright, fill
                  </Press>
                </div>
              </section>
              <section class="tool">
                <h3>Tang, bent {moved(bench.bend, lengths)} at the needle</h3>
                <div class="screw-steps" role="group" aria-label="Tang">
                  {[-0.5, -0.05, 0.05, 0.5].map((by) => (
                    <Press
                      key={by}
                      repeats
                      label={`Bend the tang ${moved(by, lengths)}, ${by > 0 ? 'towards' : 'away from'} the needle`}
                      onPress={() => act({ act: 'bend', by })}
                    >
                      {moved(by, lengths)}
                    </Press>
                  ))}
                </div>
                <p class="screw-ways">
                  + towards the needle: the valve shuts sooner, and the fuel stands lower.
                </p>
              </section>
            </div>
          )}
          <Card
            task="float"
            number={number}
            places={places}
            queries={floatQueries(float.card, gauge)}
            rows={[
              ['Pivot to needle', length(lever.pivotToNeedle, lengths, 1)],
              ['Pivot to float', length(lever.pivotToFloat, lengths, 1)],
              ['Float, mass', `${fixed(lever.floatMass, 1)} g`],
              ['Float, area', showFixed(lever.floatArea, 'mm2', 0, lengths)],
              ['Float, depth', length(lever.floatDepth, lengths, 1)],
              ['Seat', length(feed.seat, lengths, 1)],
              ['Head of fuel', length(feed.head, lengths, 0)],
              ['Density', `${feed.density} kg/m³`],
            ]}
          />
        </div>
      </div>
      {!finished && (
        <Finish task="float" finish={(spread) => onFinish(reckonFloat(float, bench), spread)} />
      )}
    </>
  );
}
