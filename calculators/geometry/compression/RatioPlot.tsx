import { fixed, showFixed } from '../../frame/text/format.ts';
import { displayUnit, toDisplay, units, type LengthDisplay } from '../../frame/text/units.ts';
import { geometricRatio } from '../../maths/cylinder/compression.ts';
import { Chart, Guides } from '../../picture/chart/chart.tsx';
import { Curve } from '../../picture/chart/curve.tsx';
import { Handle } from '../../picture/common/handle.tsx';
import type { KeyEntry } from '../../picture/common/key.tsx';
import { useFrozen } from '../../picture/redraw/frozen.ts';
import { evenly } from '../../maths/numeric/steps.ts';

interface Props {
  /** cc. */
  readonly swept: number;
  readonly trapped: number;
  readonly clearance: number;
  readonly lengths: LengthDisplay;
  readonly idPrefix: string;
  /** A clearance volume dragged to, cc. */
  readonly onClearance: (volume: number) => void;
  readonly onEnd: () => void;
}

const HEIGHT = 280;
/** The geometric ratios between which engines lie; the field is wider for one that does not. */
const LOW = 5;
const HIGH = 20;

/** Both ratios against the clearance volume, with the engine's own place on them. */
export function RatioPlot(props: Props) {
  const { swept, trapped, clearance, lengths, idPrefix, onClearance, onEnd } = props;
  const unit = units[displayUnit('cc', lengths)].label;
  const shown = (cc: number): number => toDisplay(cc, 'cc', lengths);
  const least = useFrozen(Math.min(swept / (HIGH - 1), clearance * 0.6));
  const most = useFrozen(Math.max(swept / (LOW - 1), clearance * 1.5));
  const volumes = evenly(least, most, 80);
  const highest = geometricRatio(swept, least);
  const whole = geometricRatio(swept, clearance);
  const part = geometricRatio(trapped, clearance);
  const key: readonly KeyEntry[] = [
    { as: 'line', look: 'curve', words: `geometric, ${fixed(whole, 1)}` },
    { as: 'line', look: 'curve curve-other', words: `trapped, ${fixed(part, 1)}` },
  ];
  const words = `${showFixed(clearance, 'cc', 1, lengths)} clearance: geometric ${fixed(whole, 1)}, trapped ${fixed(part, 1)} to 1`;
  const cc = (volume: number): number => (clearance * volume) / shown(clearance);

  return (
    <Chart
      id={`${idPrefix}ratio-field`}
      height={HEIGHT}
      label={`Ratios against clearance volume. ${words}`}
      meaning={key}
      x={{ domain: [shown(least), shown(most)], label: `clearance volume, ${unit}` }}
      y={{ domain: [1, highest], label: 'ratio, to 1' }}
      marks={(frame) => {
        const { x, y } = frame;
        const curve = (volume: number) =>
          volumes.map((v) => [x(shown(v)), y(geometricRatio(volume, v))] as const);
        return (
          <>
            <Curve points={curve(swept)} />
            <Curve kind="other" points={curve(trapped)} />
            <Guides frame={frame} to="bottom" at={[x(shown(clearance)), y(whole)]} />
          </>
        );
      }}
    >
      {({ field, x, y }) => (
        <>
          <circle
            class="handle-dot"
            cx={x(shown(clearance))}
            cy={y(part)}
            r={4.5}
            aria-hidden="true"
          />
          <Handle
            x={x(shown(clearance))}
            y={y(whole)}
            label={`Clearance volume, ${unit}`}
            value={Number(shown(clearance).toFixed(3))}
            min={Number(shown(least).toFixed(3))}
            max={Number(shown(most).toFixed(3))}
            step={shown(0.1)}
            valueText={words}
            onDrag={(place) => onClearance(cc(x.invert(Math.max(field.left, place))))}
            onStep={(value) => onClearance(cc(value))}
            onEnd={onEnd}
          />
        </>
      )}
    </Chart>
  );
}
