import { sliderCrank } from '../../position/engine-inputs.ts';
import { fixed } from '../../frame/text/format.ts';
import type { PictureProps } from '../../frame/types.ts';
import { squishVelocityAt } from '../../maths/cylinder/squish-velocity.ts';
import { Chart, Guides } from '../../picture/chart/chart.tsx';
import { Band, Curve } from '../../picture/chart/curve.tsx';
import { Handle } from '../../picture/common/handle.tsx';
import { useFrozen } from '../../picture/redraw/frozen.ts';
import { evenly, onStep } from '../../maths/numeric/steps.ts';
import { textWidth } from '../../picture/common/text-width.ts';
import type { inputs, results } from './calculator.tsx';
import { headOf } from './head.ts';

const HEIGHT = 290;

/** Squish velocity against crank angle before the top. */
export function Picture(props: PictureProps<typeof inputs, typeof results>) {
  const { values: v, results, spreads, idPrefix, set, commit } = props;
  const engine = sliderCrank(v);
  const head = headOf(v);
  const speed = (angle: number): number => squishVelocityAt(engine, head, v.rpm, angle);
  const peak = results.peak as number;
  const peakAngle = results['peak-angle'] as number;
  const end = useFrozen(v.at > 58 || peakAngle > 50 ? 90 : 60);
  const angles = evenly(0, end, 60);
  const peakWords = `${fixed(peak, 1)} m/s`;
  const peakRoom = textWidth(peakWords, { bold: true }) / 2 + 3;
  const share = (spreads().peak ?? 0) / peak;
  const words = `${fixed(speed(v.at), 1)} metres a second ${fixed(v.at, 1)} degrees before the top`;
  return (
    <Chart
      id={`${idPrefix}squish-field`}
      height={HEIGHT}
      label="Squish velocity against crank angle before the top"
      x={{ domain: [0, end], label: 'crank angle, degrees before top' }}
      y={{ domain: [0, peak * 1.25], label: 'squish velocity, m/s' }}
      marks={(frame) => {
        const { x, y } = frame;
        return (
          <>
            <Band
              edges={angles.map((angle) => [
                x(angle),
                y(speed(angle) * (1 - share)),
                y(speed(angle) * (1 + share)),
              ])}
            />
            <Curve points={angles.map((angle) => [x(angle), y(speed(angle))])} />
            <Guides frame={frame} at={[x(v.at), y(speed(v.at))]} />
          </>
        );
      }}
    >
      {({ field: { left, right }, x, y }) => (
        <>
          <g aria-hidden="true">
            <path class="dimension" d={`M${x(peakAngle)} ${y(peak) - 9}v-9`} />
            <text
              class="dimension-text"
              x={Math.min(right - peakRoom, Math.max(left + peakRoom, x(peakAngle)))}
              y={y(peak) - 22}
              text-anchor="middle"
            >
              {peakWords}
            </text>
          </g>
          <Handle
            x={x(v.at)}
            y={y(speed(v.at))}
            label="Crank angle before the top"
            value={v.at}
            min={0}
            max={90}
            step={0.5}
            valueText={words}
            onDrag={(place) => set('at', onStep(Math.min(90, Math.max(0, x.invert(place))), 0.5))}
            onStep={(angle) => set('at', angle)}
            onEnd={commit}
          />
        </>
      )}
    </Chart>
  );
}
