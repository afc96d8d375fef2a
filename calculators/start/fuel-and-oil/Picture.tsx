import { fixed } from '../../frame/format.ts';
import type { PictureProps } from '../../frame/types.ts';
import { partsOf } from '../../maths/fuel/fuel-and-oil.ts';
import { AxisBottom, AxisLeft, roomLeft } from '../../picture/axis.tsx';
import { Curve } from '../../picture/curve.tsx';
import { fieldOf, InField } from '../../picture/field.tsx';
import { Handle } from '../../picture/handle.tsx';
import { fieldTop, Key, type KeyEntry } from '../../picture/key.tsx';
import { spreadOut } from '../../picture/labels.ts';
import { Plot } from '../../picture/plot.tsx';
import { scaleLinear } from '../../picture/scale.ts';
import { useFrozen } from '../../picture/frozen.ts';
import { hundredth, onStep } from '../../maths/numeric/steps.ts';
import { ratioOf } from './compute.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';
import { Tank } from './Tank.tsx';

const WIDTH = 360;
const HEIGHT = 390;
/** Room below the field for the tank. */
const TANK = 128;
/** Ratios drawn for comparison. */
const USUAL = [20, 25, 32, 40, 50] as const;

/** Oil against petrol for this ratio and the usual ones, and below it what is then in the tank. */
export function Picture(props: PictureProps<typeof inputs, typeof results>) {
  const { values: v, results: computed, idPrefix, set, commit } = props;
  const ratio = ratioOf(v);
  const oil = computed.oil as number;
  const end = useFrozen(v.fuel <= 9 ? 10 : v.fuel * 1.25);
  const oils = [0, (1060 * end) / Math.min(ratio, USUAL[0])] as const;
  const key: readonly KeyEntry[] = [
    { as: 'line', look: 'curve', words: `${fixed(ratio, 0)} : 1` },
    { as: 'line', look: 'curve curve-other', words: 'other ratios' },
  ];
  const field = fieldOf(WIDTH, HEIGHT, {
    top: fieldTop(key, WIDTH),
    right: 40,
    bottom: TANK + 40,
    left: roomLeft(oils),
  });
  const { left, right, top, bottom } = field;
  const x = scaleLinear([0, end], [left, right]);
  const y = scaleLinear(oils, [bottom, top]);
  const others = USUAL.filter((usual) => Math.abs(usual - ratio) > 0.5);
  const named = [ratio, ...others].map((each) => ({ each, place: y((1000 * end) / each) }));
  const labels = spreadOut(
    named.map(({ place }) => place),
    top,
    bottom,
  );
  const there = partsOf({ volume: v.already, ratio: v['already-ratio'] });
  const line = (each: number): readonly (readonly [number, number])[] => [
    [x(0), y(0)],
    [x(end), y((1000 * end) / each)],
  ];

  return (
    <Plot
      width={WIDTH}
      height={HEIGHT}
      label={`Oil against petrol: ${fixed(oil, 0)} ml for ${fixed(v.fuel, 2)} litres`}
    >
      <Key entries={key} width={WIDTH} />
      <AxisBottom scale={x} field={field} label="petrol put in, litres" />
      <AxisLeft scale={y} field={field} label="oil, ml" />
      <InField field={field} id={`${idPrefix}oil-field`}>
        {others.map((usual) => (
          <Curve key={usual} kind="other" points={line(usual)} />
        ))}
        <Curve points={line(ratio)} />
        <path class="rule-line" fill="none" d={`M${left} ${y(oil)}H${x(v.fuel)}V${bottom}`} />
      </InField>
      <g aria-hidden="true">
        {named.map(({ each }, index) => (
          <text
            key={index}
            {...(index === 0 ? { class: 'dimension-text' } : {})}
            x={right + 4}
            y={hundredth(labels[index]!)}
            dy="0.32em"
          >
            {fixed(each, 0)}
          </text>
        ))}
      </g>
      <Tank
        parts={[
          { words: 'petrol there', volume: there.petrol, look: 'fuel' },
          { words: 'put in', volume: v.fuel, look: 'petrol-new' },
          { words: 'oil', volume: there.oil + oil / 1000, look: 'oil-part' },
        ]}
        words={`in the tank then: ${fixed(computed.total as number, 2)} litres at ${fixed(computed['mixed-ratio'] as number, 1)} : 1`}
        top={HEIGHT - TANK + 16}
        width={WIDTH}
      />
      <Handle
        x={x(v.fuel)}
        y={y(oil)}
        label="Petrol"
        value={v.fuel}
        min={0}
        max={1000}
        step={0.5}
        valueText={`${fixed(v.fuel, 1)} litres of petrol, ${fixed(oil, 0)} ml of oil`}
        onDrag={(px) => set('fuel', Math.min(end, Math.max(0.1, onStep(x.invert(px), 0.1))))}
        onStep={(value) => set('fuel', value)}
        onEnd={commit}
      />
    </Plot>
  );
}
