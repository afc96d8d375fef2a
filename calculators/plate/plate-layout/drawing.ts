import { barRoom, provingBars } from '../../drawing/proving-bar.ts';
import { circle, line, spoke, text, type Drawing, type Shape } from '../../drawing/shapes.ts';
import { plateBlank } from '../../maths/plate/plate-blank.ts';
import { holePlaces } from '../../maths/plate/plate-layout.ts';
import type { Plate } from '../../maths/plate/plate-walls.ts';
import { showInput } from '../../frame/text/format.ts';
import { memoize } from '../../frame/memoize.ts';
import type { LengthDisplay } from '../../frame/text/units.ts';
import { namesOnPaper } from './names-on-paper.ts';

/** What is drawn: the plate, in the square of stock it is to be cut from. */
export interface PlateSheet {
  readonly plate: Plate;
  /** Metal left for turning, on the diameter, mm. */
  readonly allowance: number;
  /** In what its name is lettered; millimetres unless told. */
  readonly lengths?: LengthDisplay;
}

/** Room round the stock for the bars and the lettering, mm. */
const GAP = 12;
/** How far the bar up stands in from the left of the stock's room, mm. */
const BAR_IN = 2;
/** How far the centre lines of a circle run beyond it, mm. */
const BEYOND = 1.5;

function cross(x: number, y: number, arm: number): readonly Shape[] {
  return [line('centre', x - arm, y, x + arm, y), line('centre', x, y - arm, x, y + arm)];
}

/** The edges of the square, and the cuts that take its corners off. */
function stock(square: number, corner: number): readonly Shape[] {
  const half = square / 2;
  const inner = half - corner;
  const edges = [
    line('scrap', -half, -half, half, -half, 'stock-bottom'),
    line('scrap', half, -half, half, half, 'stock-right'),
    line('scrap', half, half, -half, half, 'stock-top'),
    line('scrap', -half, half, -half, -half, 'stock-left'),
  ];
  const cuts = [
    [1, 1],
    [-1, 1],
    [-1, -1],
    [1, -1],
  ].map(([sx, sy]) => line('scrap', sx! * half, sy! * inner, sx! * inner, sy! * half));
  return [...edges, ...cuts];
}

function setShapes(plate: Plate): readonly Shape[] {
  const rim = plate.outsideDiameter / 2;
  const places = holePlaces(plate.angles, plate.holes);
  return plate.angles.flatMap((angle, s) => [
    spoke('centre', angle, 0, rim + 2, `set-${s + 1}`),
    ...places[s]!.flatMap(({ x, y }, h): readonly Shape[] => {
      const radius = plate.holes[h]!.drill / 2;
      return [
        circle('cut', x, y, radius, `hole-${s + 1}-${h + 1}`),
        ...cross(x, y, radius + BEYOND),
      ];
    }),
  ]);
}

/** What a slot measures besides the circle that it lies on: its width, and from the middle of one end to that of the other; nothing without one. */
export function slotSize(
  { slots }: Pick<Plate, 'slots'>,
  lengths: LengthDisplay,
): string | undefined {
  const [slot] = slots;
  if (!slot) return undefined;
  return `Slots ${showInput(slot.slotWidth, 'mm', lengths, 0.1)} wide, ${showInput(2 * slot.slotSweep, 'deg', lengths, 0.5)} between centres`;
}

/** A drawing without its lettering of holes and sets. */
export interface PlateLines extends Drawing {
  /** Those of its shapes that no hole moves: the same ones as long as nothing else changes either. */
  readonly still: readonly Shape[];
}

interface Still {
  readonly sheet: Omit<Drawing, 'shapes'>;
  /** What is drawn before the sets and their holes, and after them. */
  readonly before: readonly Shape[];
  readonly after: readonly Shape[];
  readonly all: readonly Shape[];
}

/** All that no hole moves; a hole that is dragged has it asked for frame by frame. */
const stillOf = memoize(
  (
    plate: Pick<Plate, 'outsideDiameter' | 'boreDiameter' | 'slots'>,
    sets: number,
    allowance: number,
    lengths: LengthDisplay,
  ): Still => {
    const { outsideDiameter: outside, boreDiameter: bore } = plate;
    const room = barRoom(lengths);
    const { square, corner } = plateBlank(outside, allowance);
    const half = square / 2;
    const left = -half - GAP;
    const bar = -half - GAP;
    const bottom = bar - room.foot;
    // On a small plate the bar across and the bar up reach further than the stock.
    const top = Math.max(half + GAP, bar + room.up) + 1;
    const right = Math.max(half + GAP, left + BAR_IN + room.across) + 1;
    const title = `Plate of ${showInput(outside, 'mm', lengths, 0.1)}, ${sets} ${sets === 1 ? 'set' : 'sets'}`;
    const slotted = slotSize(plate, lengths);
    const before: readonly Shape[] = [
      ...stock(square, corner),
      circle('cut', 0, 0, outside / 2, 'outside'),
      ...(bore > 0 ? [circle('cut', 0, 0, bore / 2, 'bore')] : []),
      ...cross(0, 0, Math.max(4, bore / 2 + BEYOND)),
    ];
    const after: readonly Shape[] = [
      ...plate.slots.map((slot, i): Shape => ({
        kind: 'slot',
        layer: 'cut',
        name: `slot-${i + 1}`,
        x: 0,
        y: 0,
        radius: slot.slotRadius,
        width: slot.slotWidth,
        from: slot.slotAngle - slot.slotSweep,
        to: slot.slotAngle + slot.slotSweep,
      })),
      ...provingBars(left + BAR_IN, bar, lengths),
      text(left, half + (slotted === undefined ? 6 : 9.5), 3, title),
      ...(slotted === undefined
        ? []
        : [
            text(
              left,
              half + 5.5,
              2.5,
              `${slotted}, on R ${showInput(plate.slots[0]!.slotRadius, 'mm', lengths, 0.1)}`,
            ),
          ]),
    ];
    const sheet: Omit<Drawing, 'shapes'> = {
      title,
      left: left - 1 - room.side,
      bottom,
      width: right - left + 1 + room.side,
      height: top - bottom,
    };
    return { sheet, before, after, all: [...before, ...after] };
  },
  1,
);

/**
 * The plate at true scale on its centre, in its stock, with the bars that prove the scale.
 *
 * Errors as `plateBlank` and `holePlaces`.
 */
export function plateLines({ plate, allowance, lengths = 'mm' }: PlateSheet): PlateLines {
  const { outsideDiameter, boreDiameter, slots } = plate;
  const { sheet, before, after, all } = stillOf(
    { outsideDiameter, boreDiameter, slots },
    plate.angles.length,
    allowance,
    lengths,
  );
  const radii = [
    ...new Set([
      ...plate.holes.map((hole) => hole.pitchRadius),
      ...slots.map((slot) => slot.slotRadius),
    ]),
  ];
  const shapes = [
    ...before,
    ...radii.map((radius) => circle('centre', 0, 0, radius)),
    ...setShapes(plate),
    ...after,
  ];
  return { ...sheet, shapes, still: all };
}

/** The same with its lettering. */
export function plateDrawing(asked: PlateSheet): Drawing {
  const { still: _, ...lines } = plateLines(asked);
  return lettered(lines, namesOnPaper(asked.plate, lines.shapes, lines));
}

export const lettered = (lines: Drawing, names: readonly Shape[]): Drawing => ({
  ...lines,
  shapes: [...lines.shapes, ...names],
});
