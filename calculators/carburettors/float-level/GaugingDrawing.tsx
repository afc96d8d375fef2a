import { fixed } from '../../frame/text/format.ts';
import { displayUnit, toDisplay, units, type LengthDisplay } from '../../frame/text/units.ts';
import type { FloatLever } from '../../maths/carburettor/float-level.ts';
import { hundredth } from '../../maths/numeric/steps.ts';
import { arrowHead } from '../../picture/label.tsx';
import { BODY, NEEDLE, PIVOT, TANG } from './body.ts';

interface Props {
  readonly lever: FloatLever;
  /** What the gauge reads, and whether to the edge away from the gasket face. */
  readonly height: number;
  readonly far: boolean;
  /** Body tipped until the float hangs, and not upside down. */
  readonly tipped: boolean;
  readonly lengths: LengthDisplay;
}

const WIDTH = 350;
const FIELD = { left: 12, top: 30, wide: 290, tall: 200 };
/** Thickness of the notched card that is the gauge, and its distance from the float, mm. */
const CARD = 4;

/**
 * The body without its chamber, to scale, held as it is gauged, with a notched card on the gasket
 * face. Upside down the face looks up and the float lies on the needle; tipped, the face stands
 * upright and the float hangs from its pivot.
 */
export function GaugingDrawing({ lever, height, far, tipped, lengths }: Props) {
  const { pivotToNeedle: needle, pivotToFloat: middle, floatDepth } = lever;
  const outer = far ? height : height + floatDepth;
  const inner = outer - floatDepth;
  const edge = far ? outer : inner;
  const half = Math.min(Math.sqrt(lever.floatArea) / 2, Math.max(2, Math.abs(middle - needle) - 3));
  const seat = PIVOT - NEEDLE;
  const end = Math.max(middle + half, needle + 4);
  const foot = end + 3;
  const rule = foot + CARD + 4;
  const [from, to] = [-6, rule + 2];
  const low = Math.min(-BODY, inner - 4, seat - 6);
  const high = Math.max(outer, edge + CARD, PIVOT + 4) + 3;
  const [across, up] = tipped ? [high - low, to - from] : [to - from, high - low];
  const scale = Math.min(FIELD.wide / across, FIELD.tall / up);
  const sheet = hundredth(FIELD.top + up * scale + 24);
  /** From mm along the arm and mm out of the gasket face to the sheet. */
  const at = (along: number, out: number): readonly [x: number, y: number] =>
    tipped
      ? [hundredth(FIELD.left + (out - low) * scale), hundredth(FIELD.top + (along - from) * scale)]
      : [
          hundredth(FIELD.left + (along - from) * scale),
          hundredth(FIELD.top + (high - out) * scale),
        ];
  const path = (...points: readonly (readonly [along: number, out: number])[]): string =>
    points.map(([along, out], i) => `${i === 0 ? 'M' : 'L'}${at(along, out).join(' ')}`).join('');
  const box = (a: number, b: number, c: number, d: number): string =>
    `${path([a, b], [c, b], [c, d], [a, d])}Z`;
  const joint = Math.min(Math.max(PIVOT, inner + floatDepth * 0.1), outer - floatDepth * 0.1);
  const armEnd = needle + 2 < middle - half ? middle - half : middle;
  const tang = PIVOT - TANG;
  const unit = displayUnit('mm', lengths);
  const say = `${fixed(toDisplay(height, 'mm', lengths), lengths === 'in' ? 3 : 1)} ${units[unit].label}`;
  const held = tipped ? 'tipped, float hanging' : 'upside down';
  const [labelX, labelY] = at(rule, (edge + 0) / 2);
  const pivot = at(0, PIVOT);

  return (
    <svg
      class="plot gauging"
      viewBox={`0 0 ${WIDTH} ${sheet}`}
      role="img"
      aria-label={`The body ${held}, as it is gauged, to scale: ${say} from the gasket face to the ${far ? 'far' : 'near'} edge of the float`}
    >
      <text x={12} y={16}>
        {`Gauged ${held}: G ${say}`}
      </text>
      <path class="casting body" d={box(from, low, end, 0)} />
      {inner < 0 ? (
        <path class="hollow" d={box(middle - half - 2, inner - 2, middle + half + 2, 0)} />
      ) : null}
      <path class="hollow" d={box(needle - 1.7, seat, needle + 1.7, 0)} />
      <path class="hollow" d={box(needle - 0.9, low, needle + 0.9, seat)} />
      <path class="face-line" d={path([from, 0], [rule + 1, 0])} />
      <path class="part part-moving float" d={box(middle - half, inner, middle + half, outer)} />
      <path
        class="part-rod arm"
        d={`${path([0, PIVOT], [needle + 2.5, PIVOT])}${path([Math.min(needle + 2.5, armEnd), PIVOT], [armEnd, joint])}`}
      />
      <path
        class="part part-moving needle"
        d={`${path([needle, seat + 0.4], [needle + 1.2, seat + 2], [needle + 1.2, tang], [needle - 1.2, tang], [needle - 1.2, seat + 2])}Z`}
      />
      <path
        class="tang"
        d={path(
          [Math.max(needle - 3.5, needle / 3), PIVOT],
          [Math.max(needle - 2, needle / 2), tang],
          [needle + 1.8, tang],
        )}
      />
      <circle
        class="part pivot"
        cx={pivot[0]}
        cy={pivot[1]}
        r={Math.max(4, hundredth(1.4 * scale))}
      />
      {edge > 0 ? (
        <path
          class="part gauge"
          d={
            far
              ? `${path([foot, 0], [foot, edge], [middle, edge], [middle, edge + CARD], [foot + CARD, edge + CARD], [foot + CARD, 0])}Z`
              : box(middle, 0, foot + CARD, edge)
          }
        />
      ) : null}
      <path
        class="dimension"
        d={`${path([rule, 0], [rule, edge])}${path([far ? middle : foot, edge], [rule + 1, edge])}`}
      />
      {Math.abs(edge) * scale < 20 ? null : (
        <path
          class="motion-head"
          d={`${arrowHead(at(rule, 0), at(rule, edge))}${arrowHead(at(rule, edge), at(rule, 0))}`}
        />
      )}
      <text
        class="dimension-text"
        x={tipped ? labelX : labelX + 8}
        y={tipped ? labelY + 18 : labelY}
        dy={tipped ? undefined : '0.32em'}
        text-anchor={tipped ? 'middle' : undefined}
      >
        G
      </text>
    </svg>
  );
}
