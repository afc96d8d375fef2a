import { fixed } from '../../frame/format.ts';
import type { PictureProps } from '../../frame/types.ts';
import {
  chargeTime,
  currentAfter,
  finalCurrent,
  timeConstant,
} from '../../maths/ignition/coil-charge.ts';
import { AxisBottom, AxisLeft, roomLeft } from '../../picture/axis.tsx';
import { Curve, type Point } from '../../picture/curve.tsx';
import { fieldOf, InField } from '../../picture/field.tsx';
import { Handle } from '../../picture/handle.tsx';
import { fieldTop, Key, type KeyEntry } from '../../picture/key.tsx';
import { inRow, spreadOut } from '../../picture/labels.ts';
import { Plot } from '../../picture/plot.tsx';
import { scaleLinear } from '../../picture/scale.ts';
import { useFrozen } from '../../picture/frozen.ts';
import { evenly, onStep } from '../../maths/numeric/steps.ts';
import { textWidth } from '../../picture/text-width.ts';
import type { results } from './results.ts';
import { primaryOf, type Inputs } from './values.ts';

const WIDTH = 360;
const HEIGHT = 340;
const SAMPLES = 60;
const LEAST_RPM = 50;
const MOST_RPM = 30_000;
/** Room above the field for the speeds. */
const SPEEDS = 20;

/** Current against time since the points shut, and where each speed breaks it off. */
export function Picture(props: PictureProps<Inputs, typeof results>) {
  const { values: v, idPrefix, set, commit } = props;
  const primary = primaryOf(v);
  const dwell = v['dwell-angle'];
  const ratio = v['speed-ratio'];
  const timeAt = (rpm: number): number => chargeTime(dwell, ratio, rpm);
  const full = finalCurrent(primary);
  const now = timeAt(v.rpm);
  const longest = useFrozen(Math.max(now * 1.15, 6 * timeConstant(primary)));
  const currents = [0, full * 1.12] as const;
  const speeds = [...new Set(v.speeds)].sort((a, b) => a - b);
  const beyond = speeds.filter((rpm) => timeAt(rpm) > longest).length;

  const key: readonly KeyEntry[] = [
    { as: 'line', look: 'curve', words: 'current' },
    {
      as: 'line',
      look: 'drop',
      words: `broken off at, rpm${beyond > 0 ? '; slower ones further right' : ''}`,
    },
    { as: 'line', look: 'rule-line', words: `shut for good, and ${fixed(v.share, 0)}% of it` },
  ];
  const ends = [`${fixed(full, 2)} A`, `${fixed(v.share, 0)}%`];
  const field = fieldOf(WIDTH, HEIGHT, {
    top: fieldTop(key, WIDTH) + SPEEDS,
    right: Math.max(...ends.map((words) => textWidth(words))) + 8,
    left: roomLeft(currents),
  });
  const { left, right, top, bottom } = field;
  const x = scaleLinear([0, longest], [left, right]);
  const y = scaleLinear(currents, [bottom, top]);
  const curve = evenly(0, longest, SAMPLES).map((time): Point => [
    x(time),
    y(currentAfter(primary, time)),
  ]);
  const current = currentAfter(primary, now);
  const lines = [y(full), y((full * v.share) / 100)];
  const lineLabels = spreadOut(lines, top, bottom);
  const drops = speeds
    .filter((rpm) => timeAt(rpm) <= longest)
    .map((rpm) => ({ rpm, at: x(timeAt(rpm)), tip: y(currentAfter(primary, timeAt(rpm))) }));

  const turnTo = (rpm: number): void => {
    set('rpm', Math.min(MOST_RPM, Math.max(LEAST_RPM, onStep(rpm, rpm < 2000 ? 1 : 10))));
  };

  return (
    <Plot
      width={WIDTH}
      height={HEIGHT}
      label={`Current in the primary against time since the points shut. At ${fixed(v.rpm, 0)} rpm they open after ${fixed(now, 2)} milliseconds with ${fixed(current, 2)} amperes.`}
    >
      <Key entries={key} width={WIDTH} />
      <AxisBottom scale={x} field={field} label="time since the points shut, ms" />
      <AxisLeft scale={y} field={field} label="current, A" labelUp={SPEEDS} />
      <InField field={field} id={`${idPrefix}current-field`}>
        <path class="rule-line" d={lines.map((line) => `M${left} ${line}H${right}`).join('')} />
        <path class="drop" d={drops.map(({ at }) => `M${at} ${top}V${bottom}`).join('')} />
        <Curve points={curve} />
        <path class="dimension" d={`M${x(now)} ${y(current)}V${bottom}`} />
      </InField>
      <g aria-hidden="true">
        {drops.map(({ rpm, at, tip }) => (
          <circle key={rpm} class="drop-end" cx={at} cy={tip} r={3.5} />
        ))}
        {inRow(
          drops.map(({ rpm, at }) => ({ at, words: String(rpm) })),
          left,
          WIDTH - 4,
        ).map(({ at, words }) => (
          <text key={words} x={at} y={top - 5} text-anchor="middle">
            {words}
          </text>
        ))}
        {ends.map((words, index) => (
          <text key={index} x={right + 4} y={lineLabels[index]} dy="0.32em">
            {words}
          </text>
        ))}
      </g>
      <Handle
        x={x(now)}
        y={y(current)}
        label="Time the points are shut, by the speed"
        value={Number(now.toFixed(3))}
        min={timeAt(MOST_RPM)}
        max={timeAt(LEAST_RPM)}
        step={now / 40}
        valueText={`${fixed(v.rpm, 0)} rpm, ${fixed(current, 2)} amperes after ${fixed(now, 2)} milliseconds`}
        onDrag={(px) => turnTo(timeAt(1) / Math.max(x.invert(px), timeAt(MOST_RPM)))}
        onStep={(time) => turnTo(timeAt(1) / time)}
        onEnd={commit}
      />
    </Plot>
  );
}
