import { fixed } from '../../frame/text/format.ts';
import { displayUnit, toDisplay, units, type LengthDisplay } from '../../frame/text/units.ts';
import { pistonClearance } from '../../maths/cylinder/piston-clearance.ts';
import { evenly, intoRange, onStep } from '../../maths/numeric/steps.ts';
import { Chart, Guides } from '../../picture/chart/chart.tsx';
import { Band, Curve } from '../../picture/chart/curve.tsx';
import { useFrozen } from '../../picture/redraw/frozen.ts';
import { Handle } from '../../picture/common/handle.tsx';
import type { KeyEntry } from '../../picture/common/key.tsx';
import { partsOf, type Values } from './compute.ts';
import { inputs } from './inputs.ts';

interface Props {
  readonly values: Values;
  /** ± of the hot clearance, mm. */
  readonly spread: number;
  readonly lengths: LengthDisplay;
  readonly idPrefix: string;
  readonly onTemperature: (temperature: number) => void;
  readonly onEnd: () => void;
}

const HEIGHT = 320;
const range = inputs['piston-temperature'];

const meaning: readonly KeyEntry[] = [
  { as: 'line', look: 'curve', words: 'bore at its own heat' },
  { as: 'line', look: 'curve curve-other', words: 'bore as hot as the piston' },
  { as: 'area', look: 'band-error', words: '± of the readings' },
  { as: 'area', look: 'bore-wall wall-edged', words: 'jammed' },
];

/** Clearance against the temperature of the piston. */
export function HeatPlot({ values: v, spread, lengths, idPrefix, onTemperature, onEnd }: Props) {
  const now = v['piston-temperature'];
  const from = useFrozen(Math.min(v['measured-at'], now - 20));
  const to = useFrozen(Math.max(220, now + 40));
  const shown = (mm: number): number => toDisplay(mm, 'mm', lengths);
  const unit = units[displayUnit('mm', lengths)].label;
  const clearanceAt = (at: number): number => pistonClearance(partsOf(v, at)).hot;
  const togetherAt = (at: number): number => {
    const parts = partsOf(v, at);
    return pistonClearance({ ...parts, bore: { ...parts.bore, temperature: at } }).hot;
  };
  const ends = [from, to].flatMap((at) => [clearanceAt(at), togetherAt(at)]);
  const low = useFrozen(Math.min(-0.01, ...ends));
  const high = useFrozen(Math.max(0.02, ...ends));
  const room = (high - low) * 0.08;
  const temperatures = evenly(from, to, 40);
  const hot = clearanceAt(now);
  const decimals = lengths === 'in' ? 4 : 3;
  const turnTo = (at: number): void => onTemperature(intoRange(range, onStep(at, 1)));

  return (
    <Chart
      id={`${idPrefix}heat-field`}
      height={HEIGHT}
      label="Clearance on the diameter against the temperature of the piston"
      meaning={meaning}
      x={{ domain: [from, to], label: 'piston, °C' }}
      y={{ domain: [shown(low - room), shown(high + room)], label: `clearance, ${unit}` }}
      behind={({ field, y }) => (
        <rect
          class="bore-wall wall-edged"
          x={field.left}
          y={y(0)}
          width={field.right - field.left}
          height={Math.max(0, field.bottom - y(0))}
        />
      )}
      marks={(frame) => {
        const { x, y } = frame;
        return (
          <>
            <Band
              edges={temperatures.map((at) => [
                x(at),
                y(shown(clearanceAt(at) - spread)),
                y(shown(clearanceAt(at) + spread)),
              ])}
            />
            <Curve
              kind="other"
              points={temperatures.map((at) => [x(at), y(shown(togetherAt(at)))])}
            />
            <Curve points={temperatures.map((at) => [x(at), y(shown(clearanceAt(at)))])} />
            <Guides frame={frame} at={[x(now), y(shown(hot))]} />
          </>
        );
      }}
    >
      {({ x, y }) => (
        <Handle
          x={x(now)}
          y={y(shown(hot))}
          label="Temperature of the piston"
          value={now}
          min={range.min}
          max={range.max}
          step={5}
          valueText={`${fixed(now, 0)} degrees, ${fixed(shown(hot), decimals)} ${unit} left`}
          onDrag={(at) => turnTo(x.invert(at))}
          onStep={turnTo}
          onEnd={onEnd}
        />
      )}
    </Chart>
  );
}
