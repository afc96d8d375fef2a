import { MOST, type Act, type Bench, type InHole } from '../../calculators/practice/bench.ts';
import type { Engine } from '../../calculators/practice/engine.ts';
import { fitOf, LEAVES } from '../../calculators/practice/instruments.ts';
import { showFigure } from '../../calculators/frame/text/format.ts';
import { units } from '../../calculators/frame/text/units.ts';
import { PlateDrawing } from './PlateDrawing.tsx';
import { Press } from './Press.tsx';
import { useLengths } from './lengths.ts';
import { length, moved, signed, standsWords } from './words.ts';

interface Props {
  readonly engine: Engine;
  readonly bench: Bench;
  readonly leaf: number | undefined;
  readonly act: (act: Act) => void;
  readonly tryLeaf: (leaf: number | undefined) => void;
}

const FIT = {
  loose: 'goes in loose',
  drags: 'goes in and drags: tight',
  'no-go': 'does not go in',
} as const;

/** A screw with two steps either way. */
function Screw({
  name,
  stands,
  less,
  more,
  steps,
  unit,
  move,
}: {
  name: string;
  stands: string;
  less: string;
  more: string;
  steps: readonly [fine: number, coarse: number];
  unit: '°' | 'mm';
  move: (by: number) => void;
}) {
  const lengths = useLengths();
  const [fine, coarse] = steps;
  const button = (by: number) => {
    const figure =
      unit === 'mm' ? moved(by, lengths) : `${signed(by, fine < 1 && Math.abs(by) < 1 ? 2 : 0)}°`;
    return (
      <Press
        key={by}
        repeats
        label={`${name}: ${figure}, ${by > 0 ? more : less}`}
        onPress={() => move(by)}
      >
        {figure}
      </Press>
    );
  };
  return (
    <div class="screw" role="group" aria-label={name}>
      <p>
        <b>{name}</b> <span class="screw-stands">{stands}</span>
      </p>
      <div class="screw-steps">{[-coarse, -fine, fine, coarse].map(button)}</div>
      <p class="screw-ways">
        − {less}, + {more}
      </p>
    </div>
  );
}

const HOLE: Readonly<Record<InHole, string>> = {
  nothing: 'Nothing',
  indicator: 'Indicator',
  stop: 'Positive stop',
};

export function PlugHole({ engine, bench, act }: Pick<Props, 'engine' | 'bench' | 'act'>) {
  const ways: readonly InHole[] =
    engine.task === 'heights' ? ['nothing', 'indicator'] : ['nothing', 'indicator', 'stop'];
  return (
    <section class="tool">
      <h3>In the plug hole</h3>
      <div class="presses" role="group" aria-label="In the plug hole">
        {ways.map((way) => (
          <Press
            key={way}
            pressed={bench.inHole === way}
            onPress={() => act({ act: 'put', inHole: way })}
          >
            {HOLE[way]}
          </Press>
        ))}
      </div>
      {bench.inHole === 'indicator' && (
        <div class="presses">
          <Press onPress={() => act({ act: 'zero' })}>Zero the indicator here</Press>
          {!bench.upright && (
            <Press onPress={() => act({ act: 'straighten' })}>Set the indicator upright</Press>
          )}
        </div>
      )}
      {bench.inHole === 'indicator' && !bench.upright && (
        <p>The indicator leans out of the line of the bore.</p>
      )}
    </section>
  );
}

export function DiscTool({ engine, bench, act }: Pick<Props, 'engine' | 'bench' | 'act'>) {
  const lengths = useLengths();
  const pointer = engine.task === 'disc' ? 'pointer A' : 'the pointer';
  const ways = {
    less: 'against the turning',
    more: 'the way the engine turns',
    unit: '°',
  } as const;
  return (
    <section class="tool">
      <h3>Disc and pointer</h3>
      <Screw
        {...ways}
        name="Disc on the crank"
        stands={standsWords(bench, 'disc', lengths)}
        steps={[0.25, 5]}
        move={(by) => act({ act: 'disc', by })}
      />
      <div class="presses">
        <Press onPress={() => act({ act: 'disc-zero' })}>Shift the disc to 0 here</Press>
      </div>
      <Screw
        {...ways}
        name={`Tip of ${pointer}`}
        stands={standsWords(bench, 'pointer', lengths)}
        steps={[0.25, 2]}
        move={(by) => act({ act: 'pointer', by })}
      />
      <div class="presses">
        <Press onPress={() => act({ act: 'pointer-zero' })}>Bend {pointer} to 0 here</Press>
      </div>
      <p class="screw-ways">
        The tip bends by {MOST.pointer}° either way, here or under your finger in the drawing.
      </p>
    </section>
  );
}

export function PointsTool({ engine, bench, leaf, act, tryLeaf }: Props) {
  const lengths = useLengths();
  const onLeaf = (thick: number) =>
    showFigure(thick, 'mm', 2, lengths, undefined, { among: LEAVES });
  const set = bench.cylinder;
  const who = engine.card.cylinders > 1 ? ` of set ${set + 1}` : '';
  return (
    <section class="tool">
      <h3>The points{who}</h3>
      <div class="presses" role="group" aria-label="The coil’s wire">
        <Press pressed={bench.coil} onPress={() => act({ act: 'coil', on: true })}>
          Coil’s wire on
        </Press>
        <Press pressed={!bench.coil} onPress={() => act({ act: 'coil', on: false })}>
          Coil’s wire off
        </Press>
      </div>
      <p>
        The lamp has a battery of its own.{' '}
        {bench.coil
          ? 'With the coil’s wire on, its winding lies across the points.'
          : 'With the coil’s wire off, it is lit while the points are shut.'}
      </p>
      <div
        class="leaves"
        role="group"
        aria-label={`Feeler gauge between the contacts${who}, ${units[onLeaf(0).unit].label}`}
      >
        {LEAVES.map((each) => (
          <Press
            key={each}
            label={`Leaf of ${length(each, lengths)}`}
            pressed={leaf === each}
            onPress={() => tryLeaf(leaf === each ? undefined : each)}
          >
            {onLeaf(each).figure}
          </Press>
        ))}
      </div>
      <p class="fit" role="status">
        {leaf === undefined
          ? `Feeler gauge, leaves in ${units[onLeaf(0).unit].label}: none in hand.`
          : `The ${length(leaf, lengths)} leaf ${FIT[fitOf(engine, bench, leaf)]}.`}
      </p>
      <Screw
        name={`Gap screw${who}`}
        stands={standsWords(bench, 'screw', lengths)}
        less="narrower"
        more="wider"
        steps={[5, 30]}
        unit="°"
        move={(by) => act({ act: 'screw', by })}
      />
      <PlateDrawing engine={engine} bench={bench} />
      <Screw
        name="Plate"
        stands={standsWords(bench, 'plate', lengths)}
        less="later"
        more="earlier"
        steps={[0.05, 0.5]}
        unit="mm"
        move={(by) => act({ act: 'plate', by })}
      />
      {engine.card.cylinders > 1 && (
        <Screw
          name={`Set ${set + 1} in its slot`}
          stands={standsWords(bench, 'slot', lengths)}
          less="later"
          more="earlier"
          steps={[0.05, 0.5]}
          unit="mm"
          move={(by) => act({ act: 'slot', by })}
        />
      )}
      <p class="screw-ways">
        The line is {length(engine.card.plateRadius, lengths, 0)} from the middle of the shaft
        {engine.card.cylinders > 1 && `, the slots ${length(engine.card.slotRadius, lengths, 1)}`}.
        The cam is on the crankshaft.
      </p>
    </section>
  );
}
