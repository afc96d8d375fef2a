import { sliderCrank } from '../engine-inputs.ts';
import { fixed } from '../frame/format.ts';
import type { PictureProps } from '../frame/types.ts';
import { squishVelocityAt } from '../maths/squish-velocity.ts';
import { AxisBottom, AxisLeft } from '../picture/axis.tsx';
import { Band, Curve } from '../picture/curve.tsx';
import { Handle } from '../picture/handle.tsx';
import { Plot, usualMargin } from '../picture/plot.tsx';
import { scaleLinear } from '../picture/scale.ts';
import { useStill } from '../picture/still.ts';
import { evenly, onStep } from '../picture/steps.ts';
import { headOf } from './head.ts';

const WIDTH = 360;
const HEIGHT = 290;
const TOP = usualMargin.top + 14;
const FLOOR = HEIGHT - usualMargin.bottom;

/** Squish velocity against crank angle before the top, read from the right to the left. */
export function Picture({ values, results, spreads, set, commit }: PictureProps) {
  const v = values as {
    stroke: number;
    rod: number;
    offset: number;
    bore: number;
    bowl: number;
    squish: number;
    clearance: number;
    rpm: number;
    at: number;
  };
  const engine = sliderCrank(v);
  const head = headOf(v);
  const speed = (angle: number): number => squishVelocityAt(engine, head, v.rpm, angle);
  const peak = results.peak as number;
  const peakAngle = results['peak-angle'] as number;
  const end = useStill(v.at > 58 || peakAngle > 50 ? 90 : 60);
  const angles = evenly(0, end, 60);
  const x = scaleLinear([end, 0], [usualMargin.left, WIDTH - usualMargin.right]);
  const y = scaleLinear([0, peak * 1.2], [FLOOR, TOP]);
  const share = (spreads().peak ?? 0) / peak;
  const px = x(v.at);
  const py = y(speed(v.at));
  const words = `${fixed(speed(v.at), 1)} metres a second ${fixed(v.at, 1)} degrees before the top`;
  return (
    <Plot width={WIDTH} height={HEIGHT} label="Squish velocity against crank angle before the top">
      <AxisBottom scale={x} at={FLOOR} gridTo={TOP} label="crank angle, degrees before top" />
      <AxisLeft
        scale={y}
        at={usualMargin.left}
        gridTo={WIDTH - usualMargin.right}
        label="squish velocity, m/s"
      />
      <Band
        edges={angles.map((angle) => [
          x(angle),
          y(speed(angle) * (1 - share)),
          y(speed(angle) * (1 + share)),
        ])}
      />
      <Curve points={angles.map((angle) => [x(angle), y(speed(angle))])} />
      <g aria-hidden="true">
        <path class="dimension" d={`M${x(peakAngle)} ${y(peak) - 4}v-9`} />
        <text class="dimension-text" x={x(peakAngle)} y={y(peak) - 17} text-anchor="middle">
          {fixed(peak, 1)} m/s
        </text>
        <path class="rule-line" fill="none" d={`M${usualMargin.left} ${py}H${px}V${FLOOR}`} />
      </g>
      <Handle
        x={px}
        y={py}
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
    </Plot>
  );
}
