import { displayUnit, toDisplay, units, type LengthDisplay } from '../frame/text/units.ts';
import { fixed, showFixed } from '../frame/text/format.ts';
import { travelBefore, velocityAt, type SliderCrank } from '../maths/crank/slider-crank.ts';
import { Chart, Guides } from './chart/chart.tsx';
import { Band, Curve } from './chart/curve.tsx';
import { Handle } from './common/handle.tsx';
import type { KeyEntry } from './common/key.tsx';
import { useFrozen } from './redraw/frozen.ts';
import { evenly } from '../maths/numeric/steps.ts';

interface Props {
  readonly geometry: SliderCrank;
  /** The engine for which the figure was given, where that is another. */
  readonly given: SliderCrank | undefined;
  /** Working point, degrees before true TDC. */
  readonly angle: number;
  /** ± of the working point's angle and travel, for the band. */
  readonly angleSpread: number;
  readonly travelSpread: number;
  readonly lengths: LengthDisplay;
  readonly idPrefix: string;
  readonly onAngle: (angle: number) => void;
  readonly onEnd: () => void;
}

const HEIGHT = 320;
const SAMPLES = 60;

const spread: KeyEntry = { as: 'area', look: 'band-error', words: '± of the readings' };
const oneEngine: readonly KeyEntry[] = [
  { as: 'line', look: 'curve', words: 'this rod' },
  { as: 'line', look: 'curve curve-other', words: 'rod of infinite length' },
  spread,
];
const twoEngines: readonly KeyEntry[] = [
  { as: 'line', look: 'curve', words: 'this engine' },
  { as: 'line', look: 'curve curve-other', words: 'the other' },
  { as: 'mark', look: 'found-mark', words: 'as given' },
  spread,
];

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
  const { geometry, given, angle, angleSpread, travelSpread, lengths, idPrefix, onAngle, onEnd } =
    props;
  const end = useFrozen(fieldEnd(angle));
  const unit = units[displayUnit('mm', lengths)].label;
  const shown = (travel: number): number => toDisplay(travel, 'mm', lengths);
  const angles = evenly(0, end, SAMPLES);
  const beside = (a: number): number =>
    given ? travelBefore(given, a) : longRodTravel(geometry, a);
  const most = Math.max(
    ...angles.map((a) => Math.max(travelBefore(geometry, a), given ? beside(a) : 0)),
  );
  const travel = travelBefore(geometry, angle);
  const slope = Math.abs(velocityAt(geometry, -angle));
  const half = Math.max(travelSpread, angleSpread * slope);
  const words = `${showFixed(travel, 'mm', 2, lengths)} before the top, ${fixed(angle, 1)} degrees`;

  return (
    <Chart
      id={`${idPrefix}travel-field`}
      height={HEIGHT}
      label="Piston travel against crank angle before the top"
      meaning={given ? twoEngines : oneEngine}
      x={{ domain: [0, end], label: 'crank angle, degrees before top' }}
      y={{ domain: [0, shown(most) * 1.04], label: `piston travel, ${unit} below top` }}
      marks={(frame) => {
        const { x, y } = frame;
        const band = angles.map((a): readonly [number, number, number] => {
          const middle = travelBefore(geometry, a);
          return [x(a), y(shown(Math.max(0, middle - half))), y(shown(middle + half))];
        });
        return (
          <>
            <Band edges={band} />
            <Curve kind="other" points={angles.map((a) => [x(a), y(shown(beside(a)))])} />
            <Curve points={angles.map((a) => [x(a), y(shown(travelBefore(geometry, a)))])} />
            <Guides frame={frame} at={[x(angle), y(shown(travel))]} />
            {given ? (
              <path
                class="rule-line"
                fill="none"
                d={`M${frame.field.left} ${y(shown(beside(angle)))}H${x(angle)}V${y(shown(travel))}`}
              />
            ) : null}
          </>
        );
      }}
    >
      {({ x, y }) => (
        <>
          {given ? (
            <circle
              class="found-mark"
              cx={x(angle)}
              cy={y(shown(beside(angle)))}
              r={5}
              aria-hidden="true"
            />
          ) : null}
          <Handle
            x={x(angle)}
            y={y(shown(travel))}
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
        </>
      )}
    </Chart>
  );
}
