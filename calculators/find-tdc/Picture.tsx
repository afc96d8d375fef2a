import type { PictureProps } from '../frame/types.ts';
import { fixed } from '../frame/format.ts';
import { discScale } from '../maths/find-tdc.ts';
import { Handle } from '../picture/handle.tsx';
import { hundredth, onStep } from '../picture/steps.ts';
import { Plot } from '../picture/plot.tsx';

const SIZE = 340;
const MIDDLE = SIZE / 2;
const RIM = 138;

const place = (angle: number, radius: number): readonly [x: number, y: number] => {
  const turn = (angle * Math.PI) / 180;
  return [hundredth(MIDDLE + radius * Math.sin(turn)), hundredth(MIDDLE - radius * Math.cos(turn))];
};
const spoke = (angle: number, from: number, to: number): string =>
  `M${place(angle, from).join(' ')}L${place(angle, to).join(' ')}`;

const sector = (from: number, to: number, radius: number): string => {
  const large = Math.abs(to - from) > 180 ? 1 : 0;
  return `M${MIDDLE} ${MIDDLE}L${place(from, radius).join(' ')}A${radius} ${radius} 0 ${large} 1 ${place(to, radius).join(' ')}Z`;
};

/** The disc with both stops, the arc the crank can turn between them, and the found top. */
export function Picture({ values, results, set, commit }: PictureProps) {
  const v = values as { before: number; after: number; scale: string };
  const scale = v.scale === 'auto' ? discScale(v.before, v.after) : v.scale;
  const bothWays = scale === 'both-ways';
  const top = results['tdc-reading'] as number;
  const spread = results.spread as number;
  const stops = { before: bothWays ? -v.before : v.before, after: v.after };
  const arc = (((stops.after - stops.before) % 360) + 360) % 360;
  const marks = Array.from({ length: 36 }, (_, i) => i * 10);
  const label = (mark: number): number => (bothWays ? (mark > 180 ? 360 - mark : mark) : mark);

  const handle = (key: 'before' | 'after', name: string) => {
    const [x, y] = place(stops[key], RIM);
    const sign = bothWays && key === 'before' ? -1 : 1;
    const write = (angle: number): void => {
      const next = onStep(sign * angle, 0.5);
      set(key, bothWays ? Math.min(180, Math.max(0, next)) : ((next % 360) + 360) % 360);
    };
    return (
      <Handle
        x={x}
        y={y}
        label={name}
        value={v[key]}
        min={bothWays ? 0 : -360}
        max={bothWays ? 180 : 360}
        step={0.5}
        valueText={`${name}: ${fixed(v[key], 1)} degrees on the disc, top at ${fixed(top, 2)}`}
        onDrag={(px, py) => write((Math.atan2(px - MIDDLE, MIDDLE - py) * 180) / Math.PI)}
        onStep={(value) => set(key, value)}
        onEnd={commit}
      />
    );
  };

  return (
    <Plot width={SIZE} height={SIZE} label="The degree disc with both readings and the found top">
      <circle class="part" cx={MIDDLE} cy={MIDDLE} r={RIM} />
      <path class="part part-moving" d={sector(stops.before, stops.before + arc, RIM - 34)} />
      <path class="band band-error" d={sector(top - spread, top + spread, RIM)} />
      <g aria-hidden="true">
        {marks.map((mark) => {
          const [x, y] = place(mark, RIM - 22);
          return (
            <g key={mark}>
              <path class="tick" d={spoke(mark, RIM - (mark % 30 === 0 ? 12 : 7), RIM)} />
              {mark % 30 === 0 ? (
                <text x={x} y={y} dy="0.32em" text-anchor="middle">
                  {label(mark)}
                </text>
              ) : null}
            </g>
          );
        })}
        <path class="dimension" d={spoke(top, 0, RIM + 12)} />
        <text
          class="dimension-text"
          x={place(top, RIM + 20)[0]}
          y={place(top, RIM + 20)[1]}
          dy="0.32em"
          text-anchor="middle"
        >
          top
        </text>
      </g>
      {handle('before', 'Reading before the top')}
      {handle('after', 'Reading after the top')}
      <text x={6} y={SIZE - 8}>
        disc held still, crank turning clockwise
      </text>
    </Plot>
  );
}
