import { fixed } from '../frame/format.ts';
import { displayUnit, toDisplay, units, type LengthDisplay } from '../frame/units.ts';
import type { FloatLever } from '../maths/float-level.ts';
import { ForceArrow } from '../picture/force-arrow.tsx';
import { hundredth } from '../picture/steps.ts';

interface Props {
  readonly lever: FloatLever;
  /** Lower face of the float when the valve shuts, mm below the gasket face. */
  readonly lowerFace: number;
  /** mm below the gasket face at the middle of the float. */
  readonly level: number;
  /** What the gauge reads, and whether to the face away from the gasket. */
  readonly height: number;
  readonly far: boolean;
  readonly tilt: number;
  /** gf */
  readonly push: number;
  readonly buoyancy: number;
  readonly lengths: LengthDisplay;
}

const WIDTH = 350;
const FIELD = { left: 12, right: 268, top: 10, tallest: 270 };
/** Room for the key below the drawing. */
const KEY = 74;
/** Length of the needle, mm; the drawing's own, as no figure depends on it. */
const NEEDLE = 9;
const BODY = 12;

const clamp = (value: number, low: number, high: number): number =>
  Math.min(high, Math.max(low, value));

/** The chamber in section, to scale along the arm and in height, the valve just shut. */
export function SectionDrawing(props: Props) {
  const { lever, lowerFace, level, height, far, tilt, push, buoyancy, lengths } = props;
  const { pivotToNeedle: needleX, pivotToFloat: floatX, floatDepth, floatMass } = lever;
  const upperFace = lowerFace - floatDepth;
  const half = Math.min(Math.sqrt(lever.floatArea) / 2, Math.max(2, floatX - needleX - 3));
  const arm = clamp(3, upperFace + floatDepth * 0.1, lowerFace - floatDepth * 0.1);
  const seat = arm - NEEDLE;
  const top = Math.min(-BODY, upperFace - 4, seat - 6);
  const bottom = Math.max(lowerFace, level) + 5;
  const left = -6;
  const right = floatX + half + 5;
  const scale = Math.min(
    (FIELD.right - FIELD.left) / (right - left),
    FIELD.tallest / (bottom - top),
  );
  const sheet = hundredth(FIELD.top + (bottom - top) * scale + KEY);
  const x = (mm: number): number => hundredth(FIELD.left + (mm - left) * scale);
  const z = (mm: number): number => hundredth(FIELD.top + (mm - top) * scale);
  const box = (from: number, up: number, to: number, down: number): string =>
    `M${x(from)} ${z(up)}H${x(to)}V${z(down)}H${x(from)}Z`;
  const slope = Math.tan((tilt * Math.PI) / 180);
  const surface = (at: number): number => clamp(level + (floatX - at) * slope, top, bottom);
  const unit = displayUnit('mm', lengths);
  const say = (mm: number): string =>
    `${fixed(toDisplay(mm, 'mm', lengths), lengths === 'in' ? 3 : 1)} ${units[unit].label}`;
  const greatest = Math.max(buoyancy, floatMass, push, 1e-9);
  const arrow = (grams: number): number => (grams > 0 ? 10 + (30 * grams) / greatest : 0);
  const edge = far ? lowerFace : upperFace;
  const rules = x(right) + 14;

  return (
    <svg
      class="plot section"
      viewBox={`0 0 ${WIDTH} ${sheet}`}
      role="img"
      aria-label={`Float chamber in section, to scale, valve just shut: gauge ${say(height)}, fuel ${say(Math.abs(level))} ${level < 0 ? 'above' : 'below'} the gasket face`}
    >
      <path class="casting" d={box(left, top, right, 0)} />
      {upperFace < 0 ? (
        <path class="hollow" d={box(floatX - half - 2, upperFace - 2, floatX + half + 2, 0)} />
      ) : null}
      <path
        class="casting"
        d={box(needleX - 3.2, seat - 4, needleX + 3.2, Math.max(0, seat + 3))}
      />
      <path
        class="hollow"
        d={box(needleX - 1.7, seat, needleX + 1.7, Math.max(arm - 2, seat + 3))}
      />
      <path class="hollow" d={box(needleX - 0.9, top, needleX + 0.9, seat)} />
      <path
        class="fuel"
        d={`M${x(left)} ${z(surface(left))}L${x(right)} ${z(surface(right))}V${z(bottom)}H${x(left)}Z`}
      />
      <path
        class="fuel-line"
        d={`M${x(left)} ${z(surface(left))}L${x(right)} ${z(surface(right))}`}
      />
      <path class="bowl-wall" d={`M${x(left)} ${z(0)}V${z(bottom)}H${x(right)}V${z(0)}`} />
      <path class="face-line" d={`M${x(left) - 4} ${z(0)}H${rules + 50}`} />
      <path class="part part-moving" d={box(floatX - half, upperFace, floatX + half, lowerFace)} />
      <path class="part-rod arm" d={`M${x(0)} ${z(arm)}H${x(floatX - half)}`} />
      <path
        class="part part-moving"
        d={`M${x(needleX)} ${z(seat - 0.4)}L${x(needleX + 1.2)} ${z(seat + 2)}V${z(arm)}H${x(needleX - 1.2)}V${z(seat + 2)}Z`}
      />
      <circle class="part" cx={x(0)} cy={z(arm)} r={Math.max(4, hundredth(1.4 * scale))} />

      <ForceArrow
        x={x(needleX)}
        from={z(seat) - arrow(push) - 2}
        length={arrow(push)}
        label="P"
        side="right"
      />
      <ForceArrow
        x={x(floatX) - 14}
        from={z((upperFace + lowerFace) / 2) - arrow(floatMass) / 2}
        length={arrow(floatMass)}
        label="W"
        side="left"
      />
      <ForceArrow
        x={x(floatX) + 14}
        from={z(lowerFace)}
        length={-arrow(buoyancy)}
        label="B"
        side="right"
      />

      <path
        class="dimension"
        d={`M${x(floatX + (far ? 0 : half))} ${z(edge)}H${rules + 4}M${rules} ${z(0)}V${z(edge)}`}
      />
      <text class="dimension-text" x={rules + 5} y={(z(0) + z(edge)) / 2} dy="0.32em">
        G
      </text>
      <path
        class="dimension"
        d={`M${x(right)} ${z(surface(right))}M${rules + 34} ${z(0)}V${z(level)}M${x(right) + 2} ${z(level)}H${rules + 38}`}
      />
      <text class="dimension-text" x={rules + 39} y={(z(0) + z(level)) / 2} dy="0.32em">
        F
      </text>
      <text x={rules + 2} y={z(0) - 5}>
        face
      </text>

      <text x={12} y={sheet - 44}>
        {`G gauge reading ${say(height)}`}
      </text>
      <text x={182} y={sheet - 44}>
        {`F fuel ${say(Math.abs(level))} ${level < 0 ? 'above' : 'below'}`}
      </text>
      <text x={12} y={sheet - 26}>
        {`P push ${fixed(push, 2)} gf`}
      </text>
      <text x={182} y={sheet - 26}>
        {`W weight ${fixed(floatMass, 1)} gf`}
      </text>
      <text x={12} y={sheet - 8}>
        {`B buoyancy ${fixed(buoyancy, 1)} gf`}
      </text>
      <text x={182} y={sheet - 8}>
        heights and arms to scale
      </text>
    </svg>
  );
}
