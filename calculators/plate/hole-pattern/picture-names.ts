import type { Drawing } from '../../drawing/shapes.ts';
import { hundredth } from '../../maths/numeric/steps.ts';
import type { Edge, StraightEdge } from '../../maths/plate/land-outline.ts';
import { textBox, round } from '../../picture/boxes.ts';
import type { Box } from '../../picture/common/overlap.ts';
import { millimetresOf, placeOf } from '../../drawing/on-screen.tsx';
import { TO_THE_MM } from './band-lettering.ts';
import { pointsAlong } from './band-mark.ts';
import { namesThatFit, type Named } from './hole-names.ts';

interface View {
  readonly drawing: Drawing;
  readonly scale: number;
}

interface Asked {
  /** Where names may stand, user units. */
  readonly sheet: Box;
  readonly picked: number;
  /** In mm, as the edges. */
  readonly holes: readonly Named[];
  readonly cut: readonly Edge[];
  readonly centre: readonly Edge[];
  /** Lines of the dimensions, user units. */
  readonly struck: readonly StraightEdge[];
}

/** A name in the picture, user units. */
export interface PictureName {
  /** Of the hole. */
  readonly name: string;
  readonly words: string;
  readonly x: number;
  readonly y: number;
  readonly box: Box;
  /** The path of its leader; nothing where it stands beside its hole. */
  readonly leader: string;
  /** Boxes along it. */
  readonly along: readonly Box[];
}

/**
 * Where the names of the holes stand in the picture, that of the picked hole first: as in the files,
 * clear of edges and of each other, with a leader where they stand further off.
 */
export function namesInPicture(view: View, asked: Asked): readonly PictureName[] {
  const { sheet, picked, holes, cut, centre, struck } = asked;
  const [at, back] = [placeOf(view), millimetresOf(view)];
  const [low, high] = [back(sheet.left, sheet.bottom), back(sheet.right, sheet.top)];
  const strokes = struck.map((line): Edge => {
    const [from, to] = [back(line.x1, line.y1), back(line.x2, line.y2)];
    return { kind: 'line', x1: from.x, y1: from.y, x2: to.x, y2: to.y };
  });
  const names = namesThatFit(
    holes,
    {
      reach: { left: low.x, right: high.x, bottom: low.y, top: high.y },
      cut: [...cut, ...strokes],
      centre,
    },
    picked,
    TO_THE_MM / view.scale,
  );
  return [...names].map(([index, { left, foot, words, leader }]): PictureName => {
    const { x, y } = at(left, foot);
    const ends = leader && [at(leader.x1, leader.y1), at(leader.x2, leader.y2)];
    return {
      name: String(index + 1),
      words,
      x,
      y,
      box: textBox(words, x, y),
      leader:
        ends
          ?.map((end, i) => `${i === 0 ? 'M' : 'L'}${hundredth(end.x)} ${hundredth(end.y)}`)
          .join('') ?? '',
      along: leader
        ? pointsAlong(leader).map(([u, w]) => {
            const on = at(u, w);
            return round(on.x, on.y, 2);
          })
        : [],
    };
  });
}
