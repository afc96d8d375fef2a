import { CAPITAL } from '../../drawing/svg-element.ts';
import { text, type Drawing, type Shape, type Text } from '../../drawing/shapes.ts';
import { holePlaces } from '../../maths/plate/plate-layout.ts';
import type { Plate } from '../../maths/plate/plate-walls.ts';
import { beside, round, textBox } from '../../picture/boxes.ts';
import type { Box } from '../../picture/common/overlap.ts';
import { feltOf, roomOf, setLabels, strikesOf } from './set-labels.ts';

/** Height of capitals, mm: the least that ISO 3098-1 has for drawings. */
const LETTER = 2.5;
/** What `textBox` measures in, to the mm: its type is set at 13 units. */
const TO_THE_MM = (13 * CAPITAL) / LETTER;
/** Smaller, where a name finds no room at all and stands on lines, mm. */
const CRAMPED = 1.8;

const place = (x: number, y: number): { x: number; y: number } => ({
  x: x * TO_THE_MM,
  y: -y * TO_THE_MM,
});

/**
 * The names of sets and holes on paper, on the fewest lines, and on no edge where there is any such
 * place.
 *
 * @param drawn All else that is drawn.
 */
export function namesOnPaper(
  plate: Plate,
  drawn: readonly Shape[],
  { left, bottom, width, height }: Omit<Drawing, 'shapes'>,
): readonly Text[] {
  const [low, high] = [place(left, bottom), place(left + width, bottom + height)];
  const sheet: Box = { left: low.x, right: high.x, top: high.y, bottom: low.y };
  const strikes = strikesOf(feltOf(drawn, place));
  const holes = holePlaces(plate.angles, plate.holes).flatMap((set, s) =>
    set.map(({ x, y }, h) => ({
      ...place(x, y),
      radius: (plate.holes[h]!.drill / 2) * TO_THE_MM,
      name: `${s + 1}-${h + 1}`,
    })),
  );
  const words = drawn.flatMap((shape) => {
    if (shape.kind !== 'text') return [];
    const foot = place(shape.x, shape.y);
    return [textBox(shape.text, foot.x, foot.y)];
  });
  const taken: Box[] = [...words, ...holes.map(({ x, y, radius }) => round(x, y, radius))];
  const sets = setLabels(strikes, place, plate.angles, plate.outsideDiameter / 2, sheet, holes);
  taken.push(...sets.map(roomOf));
  const write = (name: string, x: number, y: number, letter = LETTER): Text =>
    text(x / TO_THE_MM, -y / TO_THE_MM, letter, name);
  return [
    ...sets.map(({ words: name, x, y }) => write(name, x, y)),
    ...holes.map((hole) => {
      const at = beside(hole, hole.name, sheet, taken, strikes);
      if (!at) return write(hole.name, hole.x + hole.radius + 2, hole.y - 2, CRAMPED);
      taken.push(at.box);
      return write(hole.name, at.x, at.y);
    }),
  ];
}
