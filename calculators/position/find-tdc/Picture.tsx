import { useState } from 'preact/hooks';
import type { PictureProps } from '../../frame/types.ts';
import { fixed } from '../../frame/text/format.ts';
import { discScale } from '../../maths/crank/find-tdc.ts';
import { Handle } from '../../picture/common/handle.tsx';
import { belowKey, Key, type KeyEntry } from '../../picture/common/key.tsx';
import { onStep } from '../../maths/numeric/steps.ts';
import { Plot } from '../../picture/common/plot.tsx';
import { useFrozen } from '../../picture/redraw/frozen.ts';
import { Barrel } from './Barrel.tsx';
import type { inputs, results } from './calculator.tsx';
import { Disc } from './Disc.tsx';
import { angleAt, CENTRE, HEIGHT, PIN, place, POINTER, READINGS, WIDTH } from './places.ts';

const turned = (angle: number): number => ((angle % 360) + 360) % 360;
const besideZero = (angle: number): number => turned(angle + 180) - 180;

/**
 * The disc on the crank, turning with it under a pointer fixed to the case, and the piston between
 * its two places of equal height. The crank is turned by its pin; it comes to rest where the first
 * reading was taken.
 */
export function Picture(props: PictureProps<typeof inputs, typeof results>) {
  const { values: v, results: computed, set, commit } = props;
  // How the disc counts is told from the readings, and must not turn over under the finger.
  const scale = useFrozen(v.scale === 'auto' ? discScale(v.before, v.after) : v.scale);
  const bothWays = scale === 'both-ways';
  const stop = v.method === 'stop';
  const first = bothWays ? -v.before : v.before;
  /** Crank degrees from each place to the top between them. */
  const half = turned(v.after - first) / 2;
  const top = first + half;

  const [left, setLeft] = useState<number>();
  /** Where the piston stops while a reading is dragged: a disc that turned meanwhile would carry it off. */
  const stops = useFrozen(half);
  const within = (angle: number): number =>
    stop ? Math.min(360 - stops, Math.max(stops, turned(angle))) : turned(angle);
  /** Degrees after the top at which the crank stands. */
  const crank = left === undefined ? turned(-stops) : within(left);
  const shown = top + crank;
  const reads = bothWays
    ? [`${fixed(Math.abs(besideZero(shown)), 1)}°`, besideZero(shown) < 0 ? 'before 0' : 'after 0']
    : [`${fixed(turned(shown), 1)}°`];

  const turnTo = (angle: number): void => setLeft(within(onStep(angle, 0.5)));
  const reading = (key: 'before' | 'after', name: string) => {
    const side = key === 'before' ? 1 : -1;
    const [x, y] = place(POINTER + crank + side * half, READINGS);
    const drag = (px: number, py: number): void => {
      const away = turned(side * (angleAt(px, py) - POINTER - crank));
      const other = key === 'before' ? v.after : first;
      const next = onStep(other - side * 2 * Math.min(179, away), 0.5);
      if (!bothWays) return set(key, turned(next));
      set(key, Math.min(180, Math.max(0, key === 'before' ? -next : next)));
    };
    return (
      <Handle
        x={x}
        y={y}
        label={name}
        form={key === 'before' ? 'square' : 'diamond'}
        value={v[key]}
        min={bothWays ? 0 : -360}
        max={bothWays ? 180 : 360}
        step={0.5}
        valueText={`${name}: ${fixed(v[key], 1)} degrees on the disc, top at ${fixed(computed['tdc-reading'] as number, 2)}`}
        along={Math.abs(x - CENTRE.x) > Math.abs(y - CENTRE.y) ? 'y' : 'x'}
        onDrag={drag}
        onStep={(value) => set(key, value)}
        onEnd={commit}
      />
    );
  };

  const key: readonly KeyEntry[] = [
    {
      as: 'area',
      look: 'band-stop',
      words: stop ? 'kept from the piston by the stop' : 'between the equal heights',
    },
    { as: 'line', look: 'dimension', words: 'true top' },
    { as: 'square', look: 'handle-dot', words: 'before' },
    { as: 'diamond', look: 'handle-dot', words: 'after' },
    { as: 'mark', look: 'handle-dot', words: 'crank' },
  ];
  const [pinX, pinY] = place(crank, PIN);

  return (
    <Plot
      width={WIDTH}
      height={HEIGHT}
      label={`The degree disc on the crank, under a pointer fixed to the case: the pointer shows ${reads.join(' ')}, the piston ${fixed(turned(crank), 1)} degrees after the found top`}
    >
      <Key entries={key} width={WIDTH} />
      <Barrel crank={crank} half={half} stop={stop} top={belowKey(key, WIDTH) + 18} />
      <Disc
        shown={shown}
        top={top}
        half={half}
        spread={computed.spread as number}
        label={(mark) => (bothWays && mark > 180 ? 360 - mark : mark)}
        crank={crank}
        reads={reads}
      />
      {reading('before', 'Reading before the top')}
      {reading('after', 'Reading after the top')}
      <Handle
        x={pinX}
        y={pinY}
        label="Crank, degrees after the found top"
        value={Number(crank.toFixed(2))}
        min={stop ? Number(half.toFixed(2)) : 0}
        max={stop ? Number((360 - half).toFixed(2)) : 360}
        step={1}
        valueText={`${fixed(crank, 1)} degrees after the top, the pointer shows ${reads.join(' ')}`}
        along={Math.abs(pinX - CENTRE.x) > Math.abs(pinY - CENTRE.y) ? 'y' : 'x'}
        onDrag={(x, y) => turnTo(angleAt(x, y))}
        onStep={turnTo}
        onEnd={commit}
      />
    </Plot>
  );
}
