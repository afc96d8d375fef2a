import { holdingWords, wordsWidth } from '../../drawing/holding-words.ts';
import { barRoom, provingBars } from '../../drawing/proving-bar.ts';
import { line, text, type Drawing, type Shape } from '../../drawing/shapes.ts';
import { showInput } from '../../frame/text/format.ts';
import type { LengthDisplay } from '../../frame/text/units.ts';
import { arrow, bandLettering, LETTER } from './band-lettering.ts';
import { pointsAlong } from './band-mark.ts';
import type { Values } from './compute.ts';
import { BEYOND, linesOf, partOf } from './drawing.ts';
import { holeNames, type Name } from './hole-names.ts';

/** Diameters are lettered in millimetres as they were given, and in inches to a thou. */
const FINE = 0.1;
/** Room round the part for the bars and the lettering, mm. */
const GAP = 8;

const titleOf = (holes: number): string =>
  `Pattern of ${holes} holes, seen from the side that was measured`;

/** A leader with its arrow, and the line under the words. */
const leaderShapes = ({ leader, left, wide }: Name, i: number): readonly Shape[] =>
  leader === undefined
    ? []
    : [
        ...arrow([leader.x1, leader.y1], [leader.x2, leader.y2], `leader-${i + 1}`),
        line('dimension', left, leader.y1, left + wide, leader.y1),
      ];

/** The width of the band keeps so far off leaders, mm. */
const CLEAR_OF_LEADERS = 0.4;
/** Room for a line of notes, mm. */
const NOTE = 5;

/**
 * The part at true scale, each hole with its number and diameter and a band with its width, and
 * nothing round it. Where the part has no room for that width it stands in a note below.
 */
export function barePattern(v: Values, lengths: LengthDisplay = 'mm'): Drawing {
  const part = partOf(v);
  const { reach, places, edges, openings } = part;
  const { names, reach: sheet } = holeNames(
    places.map(({ x, y }, i) => ({
      x,
      y,
      radius: v.hole[i]! / 2,
      words: `${i + 1}: ${showInput(v.hole[i]!, 'mm', lengths, FINE)}`,
    })),
    {
      reach: {
        left: reach.left - GAP,
        bottom: reach.bottom - GAP,
        right: reach.right + GAP,
        top: reach.top + GAP,
      },
      ...linesOf(v, part),
    },
  );
  const words = names.map((name) => text(name.left, name.foot, LETTER, name.words));
  const shapes = [...part.shapes, ...names.flatMap(leaderShapes), ...words];
  const { left, right, bottom, top } = sheet;
  const bare = { title: titleOf(places.length), left, height: top - bottom };
  const [band] = v.band === undefined || openings.length === 0 ? [] : [v.band];
  if (band === undefined) {
    return { ...bare, bottom, width: right - left, shapes };
  }
  const width = showInput(band, 'mm', lengths, FINE);
  const lettered = bandLettering(band, `band ${width}`, {
    edges,
    openings,
    sheet,
    rims: [
      ...places.map(({ x, y }, i) => ({ x, y, radius: v.hole[i]! / 2 + BEYOND })),
      ...names.flatMap(({ leader }) =>
        leader === undefined
          ? []
          : pointsAlong(leader).map(([x, y]) => ({ x, y, radius: CLEAR_OF_LEADERS })),
      ),
    ],
    words,
  });
  if (lettered) {
    return { ...bare, bottom, width: right - left, shapes: [...shapes, ...lettered] };
  }
  const note = `Band: ${width} from its outer edge to its inner one.`;
  return {
    ...bare,
    bottom: bottom - NOTE,
    width: Math.max(right - left, wordsWidth(note, LETTER) + 2),
    height: bare.height + NOTE,
    shapes: [...shapes, text(left + 1, bottom - NOTE + 1.5, LETTER, note)],
  };
}

/** The same with its title, and the bars that prove the scale. */
export function patternDrawing(v: Values, lengths: LengthDisplay = 'mm'): Drawing {
  const bare = barePattern(v, lengths);
  const room = barRoom(lengths);
  const { title, left } = bare;
  const bar = bare.bottom - 1;
  const right = Math.max(left + bare.width, left + room.across + 1);
  const top = Math.max(bare.bottom + bare.height, bar + room.up) + 6;
  return holdingWords({
    title,
    left: left - 4 - room.side,
    bottom: bar - room.foot,
    width: right - left + 4 + room.side,
    height: top - bar + room.foot,
    shapes: [...bare.shapes, ...provingBars(left - 2, bar, lengths), text(left, top - 4, 3, title)],
  });
}
