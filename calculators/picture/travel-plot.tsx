import { displayUnit, toDisplay, units, type LengthDisplay } from '../frame/units.ts';
import { fixed } from '../frame/format.ts';
import { travelBefore, velocityAt, type SliderCrank } from '../maths/slider-crank.ts';
import { AxisBottom, AxisLeft } from './axis.tsx';
import { Band, Curve } from './curve.tsx';
import { Handle } from './handle.tsx';
import { Plot, usualMargin } from './plot.tsx';
import { scaleLinear } from './scale.ts';
import { useStill } from './still.ts';
import { evenly } from './steps.ts';

interface Props {
  readonly geometry: SliderCrank;
  /** Working point, degrees before true TDC. */
  readonly angle: number;
  /** ± of the working point's angle and travel, for the band. */
  readonly angleSpread: number;
  readonly travelSpread: number;
  readonly lengths: LengthDisplay;
  readonly onAngle: (angle: number) => void;
  readonly onEnd: () => void;
}

const WIDTH = 360;
const HEIGHT = 300;
const SAMPLES = 60;

/** The piston's travel with a rod of infinite length: plain harmonic motion. */
const longRodTravel = ({ stroke }: SliderCrank, angle: number): number =>
  (stroke / 2) * (1 - Math.cos((angle * Math.PI) / 180));

/** A field that opens as the working point moves out: to 45°, 90° or the whole half turn. */
const fieldEnd = (angle: number): number => (angle <= 40 ? 45 : angle <= 85 ? 90 : 190);

/**
 * Piston travel against crank angle before the top, with the working point, the curve that a rod
 * of infinite length would give, and a band for the measuring error.
 */
export function TravelPlot(props: Props) {
  const { geometry, angle, angleSpread, travelSpread, lengths, onAngle, onEnd } = props;
  const end = useStill(fieldEnd(angle));
  const unit = units[displayUnit('mm', lengths)].label;
  const shown = (travel: number): number => toDisplay(travel, 'mm', lengths);
  const angles = evenly(0, end, SAMPLES);
  const most = Math.max(...angles.map((a) => travelBefore(geometry, a)));
  const x = scaleLinear([0, end], [usualMargin.left, WIDTH - usualMargin.right]);
  const y = scaleLinear(
    [0, shown(most) * 1.04],
    [HEIGHT - usualMargin.bottom, usualMargin.top + 14],
  );
  const travel = travelBefore(geometry, angle);
  const px = x(angle);
  const py = y(shown(travel));
  const slope = Math.abs(velocityAt(geometry, -angle));
  const half = Math.max(travelSpread, angleSpread * slope);
  const band = angles.map((a): readonly [number, number, number] => {
    const middle = travelBefore(geometry, a);
    return [x(a), y(shown(Math.max(0, middle - half))), y(shown(middle + half))];
  });
  const words = `${fixed(shown(travel), lengths === 'in' ? 4 : 2)} ${unit} before the top, ${fixed(angle, 1)} degrees`;

  return (
    <Plot width={WIDTH} height={HEIGHT} label="Piston travel against crank angle before the top">
      <AxisBottom
        scale={x}
        at={HEIGHT - usualMargin.bottom}
        gridTo={usualMargin.top + 14}
        label="crank angle, degrees before top"
      />
      <AxisLeft
        scale={y}
        at={usualMargin.left}
        gridTo={WIDTH - usualMargin.right}
        label={`piston travel, ${unit} below top`}
      />
      <Band edges={band} />
      <Curve
        kind="other"
        points={angles.map((a) => [x(a), y(shown(longRodTravel(geometry, a)))])}
      />
      <Curve points={angles.map((a) => [x(a), y(shown(travelBefore(geometry, a)))])} />
      <path class="rule-line" fill="none" d={`M${usualMargin.left} ${py}H${px}V${y(0)}`} />
      <g class="key" transform={`translate(${usualMargin.left + 10} ${usualMargin.top + 28})`}>
        <path class="curve" d="M0 0h22" />
        <text x={28} dy="0.32em">
          this rod
        </text>
        <path class="curve curve-other" d="M0 17h22" />
        <text x={28} y={17} dy="0.32em">
          rod of infinite length
        </text>
        <path class="band-error" d="M0 30h22v9h-22z" />
        <text x={28} y={34} dy="0.32em">
          ± of the readings
        </text>
      </g>
      <Handle
        x={px}
        y={py}
        label="Working point: crank angle before the top"
        value={Math.round(angle * 10) / 10}
        min={0}
        max={180}
        step={0.5}
        valueText={words}
        onDrag={(at) => onAngle(x.invert(at))}
        onStep={onAngle}
        onEnd={onEnd}
      />
    </Plot>
  );
}
