import { fixed, showFixed } from '../../frame/text/format.ts';
import type { LengthDisplay } from '../../frame/text/units.ts';
import type { FloatLever } from '../../maths/carburettor/float-level.ts';
import { arrowHead } from '../../picture/label.tsx';
import { ForceArrow } from '../../picture/force-arrow.tsx';
import { hundredth } from '../../maths/numeric/steps.ts';
import { BODY, NEEDLE, PIVOT, TANG } from './body.ts';
import { TANG_HEIGHT, TangDrawing } from './TangDrawing.tsx';

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
const FIELD = { left: 12, right: 240, tallest: 270 };
/** Room for the key below the drawing. */
const KEY = 66;
/** Shorter than this a dimension has its arrows outside, user units. */
const SHORT = 20;
/** Half a line of type, and a little. */
const HALF_LINE = 9;

const clamp = (value: number, low: number, high: number): number =>
  Math.min(high, Math.max(low, value));

/** The middle of a dimension, or the nearest place to it that keeps its letter off the lines across. */
function besides(from: number, to: number, ...across: readonly number[]): number {
  const middle = (from + to) / 2;
  const places = [middle, ...across.flatMap((line) => [line - HALF_LINE, line + HALF_LINE])];
  const free = places
    .filter((place) => across.every((line) => Math.abs(place - line) >= HALF_LINE))
    .sort((one, other) => Math.abs(one - middle) - Math.abs(other - middle));
  return hundredth(free[0] ?? middle);
}

/** The heads of an upright dimension, outside of it where it is short. */
function headsOf(x: number, a: number, b: number): string {
  const away = Math.abs(b - a) < SHORT ? Math.sign(b - a) * SHORT : 0;
  return away === 0
    ? arrowHead([x, a], [x, b]) + arrowHead([x, b], [x, a])
    : arrowHead([x, b + away], [x, b]) + arrowHead([x, a - away], [x, a]);
}

/** The chamber in section, to scale along the arm and in height, the valve just shut. */
export function SectionDrawing(props: Props) {
  const { lever, lowerFace, level, height, far, tilt, push, buoyancy, lengths } = props;
  const { pivotToNeedle: needleX, pivotToFloat: floatX, floatDepth, floatMass } = lever;
  const upperFace = lowerFace - floatDepth;
  const half = Math.min(
    Math.sqrt(lever.floatArea) / 2,
    Math.max(2, Math.abs(floatX - needleX) - 3),
  );
  const seat = PIVOT - NEEDLE;
  /** Where the arm comes to the float. */
  const joint = clamp(PIVOT, upperFace + floatDepth * 0.1, lowerFace - floatDepth * 0.1);
  const armEnd = needleX + 2 < floatX - half ? floatX - half : floatX;
  const armTurn = Math.min(needleX + 2.5, armEnd);
  const top = Math.min(-BODY, upperFace - 4, seat - 6, level - 2);
  const bottom = Math.max(lowerFace, level, 0) + 5;
  const left = -6;
  const right = Math.max(floatX + half, needleX + 4) + 5;
  const scale = Math.min(
    (FIELD.right - FIELD.left) / (right - left),
    FIELD.tallest / (bottom - top),
  );
  const greatest = Math.max(buoyancy, floatMass, push, 1e-9);
  const arrow = (grams: number): number => (grams > 0 ? 10 + (30 * grams) / greatest : 0);
  /** Upper edge of the metal, below the arrow that stands on it and its letter. */
  const upper = hundredth(Math.max(20, arrow(push) + 10));
  const keyTop = hundredth(upper + (bottom - top) * scale);
  const sheet = hundredth(keyTop + KEY + TANG_HEIGHT);
  const x = (mm: number): number => hundredth(FIELD.left + (mm - left) * scale);
  const z = (mm: number): number => hundredth(upper + (mm - top) * scale);
  const box = (from: number, up: number, to: number, down: number): string =>
    `M${x(from)} ${z(up)}H${x(to)}V${z(down)}H${x(from)}Z`;
  const slope = Math.tan((tilt * Math.PI) / 180);
  const surface = (at: number): number => clamp(level + (floatX - at) * slope, top, bottom);
  const say = (mm: number): string => showFixed(mm, 'mm', 1, lengths);
  const edge = far ? lowerFace : upperFace;
  const rules = x(right) + 16;
  const outer = rules + 30;
  const tang = PIVOT - TANG;
  /** Where the forces on the float stand either side of its middle. */
  const aside = Math.min(14, half * scale * 0.3);
  /** A narrow float has no room for letters; the key tells which points which way. */
  const lettered = half * scale > 40;

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
      <path class="casting" d={box(needleX - 3.2, seat - 4, needleX + 3.2, 0)} />
      <path class="hollow" d={box(needleX - 1.7, seat, needleX + 1.7, PIVOT - 2)} />
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
      <path class="face-line" d={`M${x(left) - 4} ${z(0)}H${outer + 22}`} />
      <path class="part part-moving" d={box(floatX - half, upperFace, floatX + half, lowerFace)} />
      <path
        class="part-rod arm"
        d={`M${x(0)} ${z(PIVOT)}H${x(needleX + 2.5)}M${x(armTurn)} ${z(PIVOT)}L${x(armEnd)} ${z(joint)}`}
      />
      <path
        class="part part-moving needle"
        d={`M${x(needleX)} ${z(seat - 0.4)}L${x(needleX + 1.2)} ${z(seat + 2)}V${z(tang)}H${x(needleX - 1.2)}V${z(seat + 2)}Z`}
      />
      <path
        class="tang"
        d={`M${x(Math.max(needleX - 3.5, needleX / 3))} ${z(PIVOT)}L${x(Math.max(needleX - 2, needleX / 2))} ${z(tang)}H${x(needleX + 1.8)}`}
      />
      <circle class="part pivot" cx={x(0)} cy={z(PIVOT)} r={Math.max(4, hundredth(1.4 * scale))} />

      <ForceArrow
        x={x(needleX)}
        from={hundredth(upper - 3 - arrow(push))}
        length={arrow(push)}
        label="P"
        side="right"
      />
      <ForceArrow
        x={x(floatX) - aside}
        from={z((upperFace + lowerFace) / 2) - arrow(floatMass) / 2}
        length={arrow(floatMass)}
        label={lettered ? 'W' : ''}
        side="left"
      />
      <ForceArrow
        x={x(floatX) + aside}
        from={z(lowerFace)}
        length={-arrow(buoyancy)}
        label={lettered ? 'B' : ''}
        side="right"
      />

      <path
        class="dimension"
        d={`M${x(right) + 2} ${z(level)}H${rules + 4}M${rules} ${z(0)}V${z(level)}`}
      />
      <path
        class="motion-head"
        d={`${headsOf(rules, z(0), z(level))}${headsOf(outer, z(0), z(edge))}`}
      />
      <text
        class="dimension-text"
        x={rules + 5}
        y={besides(z(0), z(level), z(edge), z(0))}
        dy="0.32em"
      >
        F
      </text>
      <path
        class="dimension"
        d={`M${x(floatX + (far ? 0 : half))} ${z(edge)}H${outer + 4}M${outer} ${z(0)}V${z(edge)}`}
      />
      <text class="dimension-text" x={outer + 5} y={besides(z(0), z(edge), z(0))} dy="0.32em">
        G
      </text>
      <text x={outer + 26} y={z(0)} dy="0.32em">
        face
      </text>

      <text x={12} y={keyTop + 22}>
        {`G gauge ${say(height)}`}
      </text>
      <text x={176} y={keyTop + 22}>
        {`F fuel ${say(Math.abs(level))} ${level < 0 ? 'above' : 'below'}`}
      </text>
      <text x={12} y={keyTop + 40}>
        {`P push ${fixed(push, 2)} gf`}
      </text>
      <text x={176} y={keyTop + 40}>
        {`W weight ${fixed(floatMass, 1)} gf`}
      </text>
      <text x={12} y={keyTop + 58}>
        {`B buoyancy ${fixed(buoyancy, 1)} gf`}
      </text>
      <text x={176} y={keyTop + 58}>
        heights, arms to scale
      </text>
      <TangDrawing top={keyTop + KEY} />
    </svg>
  );
}
