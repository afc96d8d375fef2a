import { fixed } from '../../frame/text/format.ts';
import type { PictureProps } from '../../frame/types.ts';
import { partsOf } from '../../maths/fuel/fuel-and-oil.ts';
import { Chart, Guides, type EndLabel } from '../../picture/chart/chart.tsx';
import { Curve, type Point } from '../../picture/chart/curve.tsx';
import { Handle } from '../../picture/common/handle.tsx';
import type { KeyEntry } from '../../picture/common/key.tsx';
import { PLOT_WIDTH } from '../../picture/common/plot.tsx';
import { useFrozen } from '../../picture/redraw/frozen.ts';
import { intoRange, onStep } from '../../maths/numeric/steps.ts';
import { ratioOf } from './compute.ts';
import { inputs } from './inputs.ts';
import type { results } from './results.ts';
import { Tank } from './Tank.tsx';

const HEIGHT = 366;
/** Room below the field for the tank. */
const TANK = 128;
/** Ends of the axis of petrol, litres: a mixing bottle, a can. */
const ENDS = [1, 10] as const;
/** Ratios drawn for comparison. */
const USUAL = [20, 25, 32, 40, 50] as const;

/** Oil against petrol for this ratio and the usual ones, and below it what is then in the tank. */
export function Picture(props: PictureProps<typeof inputs, typeof results>) {
  const { values: v, results: computed, idPrefix, set, commit } = props;
  const ratio = ratioOf(v);
  const oil = computed.oil as number;
  const end = useFrozen(ENDS.find((most) => v.fuel <= 0.9 * most) ?? v.fuel * 1.25);
  const drawn = { min: 0.1, max: Math.min(end, inputs.fuel.max) };
  const key: readonly KeyEntry[] = [
    { as: 'line', look: 'curve', words: `${fixed(ratio, 0)} : 1` },
    { as: 'line', look: 'curve curve-other', words: 'other ratios' },
  ];
  const others = USUAL.filter((usual) => Math.abs(usual - ratio) > 0.5);
  const ends = [ratio, ...others].map((each, index): EndLabel => ({
    at: (1000 * end) / each,
    words: fixed(each, 0),
    bold: index === 0,
  }));
  const there = partsOf({ volume: v.already, ratio: v['already-ratio'] });

  return (
    <Chart
      id={`${idPrefix}oil-field`}
      height={HEIGHT}
      label={`Oil against petrol: ${fixed(oil, 0)} ml for ${fixed(v.fuel, 2)} litres`}
      meaning={key}
      ends={ends}
      below={TANK}
      x={{ domain: [0, end], label: 'petrol put in, litres' }}
      y={{ domain: [0, (1060 * end) / Math.min(ratio, USUAL[0])], label: 'oil, ml' }}
      marks={(frame) => {
        const { x, y } = frame;
        const line = (each: number): readonly Point[] => [
          [x(0), y(0)],
          [x(end), y((1000 * end) / each)],
        ];
        return (
          <>
            {others.map((usual) => (
              <Curve key={usual} kind="other" points={line(usual)} />
            ))}
            <Curve points={line(ratio)} />
            <Guides frame={frame} at={[x(v.fuel), y(oil)]} />
          </>
        );
      }}
    >
      {({ x, y, field }) => (
        <>
          <Tank
            parts={[
              { words: 'petrol there', volume: there.petrol, look: 'fuel' },
              { words: 'put in', volume: v.fuel, look: 'petrol-new' },
              { words: 'oil', volume: there.oil + oil / 1000, look: 'oil-part' },
            ]}
            words={`in the tank then: ${fixed(computed.total as number, 2)} litres at ${fixed(computed['mixed-ratio'] as number, 1)} : 1`}
            top={HEIGHT - TANK + 16}
            width={PLOT_WIDTH}
            left={field.left}
            right={field.right}
            room={TANK - 16}
          />
          <Handle
            x={x(v.fuel)}
            y={y(oil)}
            label="Petrol"
            value={v.fuel}
            min={inputs.fuel.min}
            max={inputs.fuel.max}
            step={0.5}
            valueText={`${fixed(v.fuel, 1)} litres of petrol, ${fixed(oil, 0)} ml of oil`}
            onDrag={(px) => set('fuel', intoRange(drawn, onStep(x.invert(px), 0.1)))}
            onStep={(value) => set('fuel', value)}
            onEnd={commit}
          />
        </>
      )}
    </Chart>
  );
}
