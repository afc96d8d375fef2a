import type { Area, ShapeMark, Sheet, TextMark } from './marks.ts';
import type { Point } from './paths.ts';

/** User units by which a thing may stand out, or two things come together: a hair. */
const HAIR = 1;

/** Looks without a stroke: patches that words may lie on. */
const PATCH =
  /^(?:zone|zone-other|shut-part|band|band-error|band-stop|tolerance|bore-wall|piston-over|fuel|force-head|drop-end|handle-arrows|bar-after|tank-part)$/;
/** Lines behind a plot, as of ruled paper; a figure lies on them. */
const RULED = /^grid$/;
const DRAWN = /^(?:drawn|picked)$/;
/** What hides what was drawn before it. */
const OPAQUE = /^(?:part|casting|hollow|glass|disc)$/;

const inside = ([x, y]: Point, { left, top, right, bottom }: Area): boolean =>
  x >= left - HAIR && x <= right + HAIR && y >= top - HAIR && y <= bottom + HAIR;

const cut = (a: Area, b: Area): Area => ({
  left: Math.max(a.left, b.left),
  top: Math.max(a.top, b.top),
  right: Math.min(a.right, b.right),
  bottom: Math.min(a.bottom, b.bottom),
});

const shrunk = ({ left, top, right, bottom }: Area): Area => ({
  left: left + HAIR,
  top: top + HAIR,
  right: right - HAIR,
  bottom: bottom - HAIR,
});

const corners = ({ left, top, right, bottom }: Area): Point[] => [
  [left, top],
  [right, top],
  [right, bottom],
  [left, bottom],
];

/** Whether all of a line lies to one side of a rectangle, and so is nowhere in it: most do. */
const aside = ({ left, top, right, bottom }: Area, area: Area): boolean =>
  right < area.left || left > area.right || bottom < area.top || top > area.bottom;

/** Whether a segment comes into a rectangle: Liang and Barsky's clipping, a part of it left over. */
function enters([x1, y1]: Point, [x2, y2]: Point, area: Area): boolean {
  const { left, right, top, bottom } = area;
  if ((x1 < left && x2 < left) || (x1 > right && x2 > right)) return false;
  if ((y1 < top && y2 < top) || (y1 > bottom && y2 > bottom)) return false;
  const [dx, dy] = [x2 - x1, y2 - y1];
  let [from, to] = [0, 1];
  for (const [p, q] of [
    [-dx, x1 - left],
    [dx, right - x1],
    [-dy, y1 - top],
    [dy, bottom - y1],
  ] as const) {
    if (p === 0) {
      if (q < 0) return false;
    } else if (p < 0) from = Math.max(from, q / p);
    else to = Math.min(to, q / p);
  }
  return from < to;
}

const boxes = new WeakMap<readonly Point[], Area>();
/** The rectangle about a line. */
function boxAbout(line: readonly Point[]): Area {
  const known = boxes.get(line);
  if (known) return known;
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of line) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  }
  const box = { left, top, right, bottom };
  boxes.set(line, box);
  return box;
}

const crosses = ({ lines, clip }: ShapeMark, area: Area): boolean => {
  const seen = clip ? cut(area, clip) : area;
  return (
    seen.left < seen.right &&
    seen.top < seen.bottom &&
    lines.some(
      (line) =>
        !aside(boxAbout(line), seen) &&
        line.some((point, i) => i > 0 && enters(line[i - 1]!, point, seen)),
    )
  );
};

/** Whether a point lies within an outline, by the crossings of a ray to the right. */
function holds(line: readonly Point[], [x, y]: Point): boolean {
  let within = false;
  line.forEach(([x1, y1], i) => {
    const [x2, y2] = line[(i + 1) % line.length]!;
    if (y1 > y !== y2 > y && x < x1 + ((y - y1) / (y2 - y1)) * (x2 - x1)) within = !within;
  });
  return within;
}

/** Whether something drawn between a line and a text hides the line there. */
const hidden = (sheet: Sheet, text: TextMark, by: ShapeMark): boolean =>
  sheet.shapes.some(
    ({ classes, order, lines }) =>
      order > by.order &&
      order < text.order &&
      classes.some((name) => OPAQUE.test(name)) &&
      !classes.includes('part-hollow') &&
      lines.some((line) => corners(shrunk(text.area)).every((corner) => holds(line, corner))),
  );

const has = ({ classes }: { classes: readonly string[] }, form: RegExp): boolean =>
  classes.some((name) => form.test(name));

/** Whether a stroke may lie on a text: it is no stroke, or the text is cut out of it. */
const harmless = (shape: ShapeMark, text: TextMark): boolean =>
  has(shape, PATCH) ||
  has(shape, RULED) ||
  (text.haloed && has(shape, DRAWN)) ||
  (text.classes.includes('tick-text') && has(shape, /^handle-/));

/** What is drawn outside the frame. */
export function outside(sheet: Sheet): string[] {
  const { frame } = sheet;
  const shapes = sheet.shapes
    .filter(({ clip, lines }) =>
      (clip ? [corners(clip)] : lines).some((line) => line.some((point) => !inside(point, frame))),
    )
    .map(({ classes, lines }) => {
      const far = lines.flat().find((point) => !inside(point, frame));
      return `${classes.join('.')} at ${String(far)}`;
    });
  const texts = sheet.texts
    .filter(({ area }) => !corners(area).every((corner) => inside(corner, frame)))
    .map(({ words, area }) => `“${words}” at ${area.left.toFixed(0)}, ${area.top.toFixed(0)}`);
  return [...shapes, ...texts];
}

/** Texts that lie on each other. */
export function overlaps({ texts }: Sheet): string[] {
  return texts.flatMap((one, i) =>
    texts.slice(i + 1).flatMap((other) => {
      const common = cut(shrunk(one.area), shrunk(other.area));
      const apart = common.left >= common.right || common.top >= common.bottom;
      return apart ? [] : [`“${one.words}” on “${other.words}”`];
    }),
  );
}

/** Texts with a line through them. */
export function strikes(sheet: Sheet): string[] {
  return sheet.texts.flatMap((text) =>
    sheet.shapes
      .filter((shape) => crosses(shape, shrunk(text.area)) && !harmless(shape, text))
      .filter((shape) => !hidden(sheet, text, shape))
      .map(({ classes }) => `“${text.words}” crossed by ${classes.join('.')}`),
  );
}

/** Texts with a handle on them, or its arrows: where a picture opens, each word of it is to be read. */
export function pierced(sheet: Sheet): string[] {
  return sheet.texts.flatMap((text) => {
    const { left, right, top, bottom } = text.area;
    const middle: Point = [(left + right) / 2, (top + bottom) / 2];
    return sheet.shapes
      .filter((shape) => has(shape, /^handle-/))
      .filter(
        (shape) =>
          crosses(shape, shrunk(text.area)) || shape.lines.some((line) => holds(line, middle)),
      )
      .map(({ classes }) => `“${text.words}” under ${classes.join('.')}`);
  });
}

/** So near, user units, and so long beside it, a leader is taken for the line. */
const NEAR = 5;
const LONG = 16;
/** By so many degrees they must part. */
const PARTED = 12;

type Segment = readonly [Point, Point];
const segmentsOf = ({ lines }: ShapeMark): Segment[] =>
  lines.flatMap((line) =>
    line.slice(1).map((point, i) => [line[i]!, point] as const satisfies Segment),
  );
const lengthOf = ([[x1, y1], [x2, y2]]: Segment): number => Math.hypot(x2 - x1, y2 - y1);

/** How far one segment runs close beside another that goes nearly the same way. */
function beside(one: Segment, other: Segment): number {
  const length = lengthOf(other);
  const [[x, y], [endX, endY]] = other;
  const [ux, uy] = [(endX - x) / length, (endY - y) / length];
  const [from, to] = one.map(([px, py]) => ({
    along: (px - x) * ux + (py - y) * uy,
    aside: (py - y) * ux - (px - x) * uy,
  })) as [{ along: number; aside: number }, { along: number; aside: number }];
  const turn = (to.aside - from.aside) / lengthOf(one);
  if (Math.abs(turn) > Math.sin((PARTED * Math.PI) / 180)) return 0;
  if (Math.max(Math.abs(from.aside), Math.abs(to.aside)) > NEAR) return 0;
  const [low, high] = [Math.min(from.along, to.along), Math.max(from.along, to.along)];
  return Math.min(high, length) - Math.max(low, 0);
}

/** Leaders that run so close beside a line that they are taken for it. */
export function alongside({ shapes }: Sheet): string[] {
  const leaders = shapes.filter((shape) => has(shape, /^leader$/)).flatMap(segmentsOf);
  const lines = shapes
    .filter((shape) => !has(shape, /^leader/) && !has(shape, PATCH))
    .flatMap((shape) => segmentsOf(shape).map((segment) => ({ segment, shape })))
    .filter(({ segment }) => lengthOf(segment) >= LONG);
  return leaders.flatMap((leader) =>
    lines
      .filter(({ segment }) => beside(leader, segment) >= LONG)
      .map(({ shape }) => `a leader from ${String(leader[0])} beside ${shape.classes.join('.')}`),
  );
}

/** Texts on the hatching of a cut part. */
export function hatched({ shapes, texts }: Sheet): string[] {
  const cuts = shapes.filter(({ classes }) => classes.includes('cut'));
  return texts
    .filter(({ area }) =>
      cuts.some(({ lines }) =>
        lines.some((line) => corners(shrunk(area)).some((corner) => holds(line, corner))),
      ),
    )
    .map(({ words }) => `“${words}” on hatching`);
}
