import { sliderCrank } from '../../position/engine-inputs.ts';
import { fixed } from '../../frame/format.ts';
import type { PictureProps } from '../../frame/types.ts';
import { squishVelocityAt } from '../../maths/cylinder/squish-velocity.ts';
import { AxisBottom, AxisLeft, roomLeft } from '../../picture/axis.tsx';
import { Band, Curve } from '../../picture/curve.tsx';
import { fieldOf, InField } from '../../picture/field.tsx';
import { Handle } from '../../picture/handle.tsx';
import { Plot } from '../../picture/plot.tsx';
import { scaleLinear } from '../../picture/scale.ts';
import { useFrozen } from '../../picture/frozen.ts';
import { evenly, onStep } from '../../maths/numeric/steps.ts';
import { textWidth } from '../../picture/text-width.ts';
import type { inputs, results } from './calculator.tsx';
import { headOf } from './head.ts';

const WIDTH = 360;
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
  const speeds = [0, peak * 1.25] as const;
  const field = fieldOf(WIDTH, HEIGHT, { left: roomLeft(speeds) });
  const { left, right, top, bottom } = field;
  const x = scaleLinear([0, end], [left, right]);
  const y = scaleLinear(speeds, [bottom, top]);
  const peakWords = `${fixed(peak, 1)} m/s`;
  const peakRoom = textWidth(peakWords, { bold: true }) / 2 + 3;
  const share = (spreads().peak ?? 0) / peak;
  const px = x(v.at);
  const py = y(speed(v.at));
  const words = `${fixed(speed(v.at), 1)} metres a second ${fixed(v.at, 1)} degrees before the top`;
  return (
    <Plot width={WIDTH} height={HEIGHT} label="Squish velocity against crank angle before the top">
      <AxisBottom scale={x} field={field} label="crank angle, degrees before top" />
      <AxisLeft scale={y} field={field} label="squish velocity, m/s" />
      <InField field={field} id={`${idPrefix}squish-field`}>
        <Band
          edges={angles.map((angle) => [
            x(angle),
            y(speed(angle) * (1 - share)),
            y(speed(angle) * (1 + share)),
          ])}
        />
        <Curve points={angles.map((angle) => [x(angle), y(speed(angle))])} />
        <path class="rule-line" fill="none" d={`M${left} ${py}H${px}V${bottom}`} />
      </InField>
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
