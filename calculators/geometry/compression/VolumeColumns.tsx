import { showFixed } from '../../frame/text/format.ts';
import type { LengthDisplay } from '../../frame/text/units.ts';
import { Key, type KeyEntry } from '../../picture/common/key.tsx';
import { Plot } from '../../picture/common/plot.tsx';
import { hundredth } from '../../maths/numeric/steps.ts';

interface Props {
  /** cc. */
  readonly swept: number;
  readonly trapped: number;
  readonly clearance: number;
  readonly lengths: LengthDisplay;
}

const WIDTH = 360;
const HEIGHT = 272;
const FLOOR = HEIGHT - 38;
const TOP = 48;
const COLUMN = 66;
const PITCH = 116;

const key: readonly KeyEntry[] = [
  { as: 'area', look: 'part', words: 'swept' },
  { as: 'area', look: 'part part-moving', words: 'clearance' },
];

/** The space above the piston at the bottom, where the exhaust shuts, and at the top, to scale. */
export function VolumeColumns({ swept, trapped, clearance, lengths }: Props) {
  const say = (cc: number): string => showFixed(cc, 'cc', 1, lengths);
  const scale = (FLOOR - TOP) / (swept + clearance);
  const columns = [
    { name: ['at the bottom'], above: swept },
    { name: ['where the', 'exhaust shuts'], above: trapped },
    { name: ['at the top'], above: 0 },
  ];
  return (
    <Plot
      width={WIDTH}
      height={HEIGHT}
      label={`Volume above the piston: ${say(swept + clearance)} at the bottom, ${say(trapped + clearance)} where the exhaust shuts, ${say(clearance)} at the top`}
    >
      <Key entries={key} width={WIDTH} />
      <g aria-hidden="true">
        {columns.map(({ name, above }, index) => {
          const x = 30 + PITCH * index;
          const whole = (above + clearance) * scale;
          return (
            <g key={name.join()}>
              <rect
                class="part part-moving"
                x={x}
                width={COLUMN}
                y={hundredth(FLOOR - clearance * scale)}
                height={hundredth(clearance * scale)}
              />
              {above > 0 ? (
                <rect
                  class="part"
                  x={x}
                  width={COLUMN}
                  y={hundredth(FLOOR - whole)}
                  height={hundredth(above * scale)}
                />
              ) : null}
              <text
                class="dimension-text"
                x={x + COLUMN / 2}
                y={hundredth(FLOOR - whole - 6)}
                text-anchor="middle"
              >
                {say(above + clearance)}
              </text>
              {name.map((line, row) => (
                <text key={line} x={x + COLUMN / 2} y={FLOOR + 15 + 15 * row} text-anchor="middle">
                  {line}
                </text>
              ))}
            </g>
          );
        })}
        <path class="axis-line" d={`M14 ${FLOOR}H${WIDTH - 14}`} />
      </g>
    </Plot>
  );
}
