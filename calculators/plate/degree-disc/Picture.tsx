import { fixed, showFixed } from '../../frame/text/format.ts';
import type { PictureProps } from '../../frame/types.ts';
import type { LengthDisplay } from '../../frame/text/units.ts';
import type { Drawing } from '../../drawing/shapes.ts';
import {
  BarLengths,
  DrawingShapes,
  millimetresOf,
  placeOf,
  sizeOf,
} from '../../drawing/on-screen.tsx';
import { Handle } from '../../picture/common/handle.tsx';
import { memo } from '../../picture/redraw/memo.ts';
import { textWidth } from '../../picture/common/text-width.ts';
import { hundredth, onStep } from '../../maths/numeric/steps.ts';
import { marksOf, type TapeValues } from './compute.ts';
import { discOf, tapeOf } from './files.ts';
import { clearOnDisc } from './lettering.ts';
import { inputs } from './inputs.ts';
import type { results } from './results.ts';

const WIDTH = 340;
/** Degrees from one figure to the next: the first of these that leaves them room. */
const EVERY = [30, 60, 90, 180] as const;
/** Where the figures of the disc stand, as a part of its rim, and what one needs of room along it. */
const FIGURES = 0.78;
const FIGURE_ROOM = 34;
/** Degrees to either side of a figure within which a mark would strike through it. */
const STRUCK = 5;
/** Where the line of a mark begins, as a part of the way from the hole to the rim. */
const MARK_FOOT = 0.25;
/** Height of a capital, and from the middle of a figure of the disc inwards to clear paper, in user units. */
const LETTER = 10;
const FIGURE_DEEP = 16;
/** Letters nearer than this would touch, in user units. */
const APART = 14;
/** Between two figures of the tape, user units. */
const CLEAR = 6;
const letterOf = (index: number): string => String.fromCharCode(65 + index);
const LEAST = inputs.outside.min;
const MOST = inputs.outside.max;

/** As wide as a sheet of A4 prints, mm, so that a disc is seen to grow and shrink on it. */
const SHEET = 186;
/** What the rim can be dragged to: the sheet, less the edge of the drawing. */
const ON_SHEET = SHEET - 2;

function viewOf(drawing: Drawing) {
  const width = Math.max(SHEET, drawing.width);
  const left = drawing.left - (width - drawing.width) / 2;
  return { drawing: { ...drawing, left, width }, scale: WIDTH / width };
}

/** `room` is in user units to the degree. */
const everySo = (room: number): number => EVERY.find((step) => room * step >= FIGURE_ROOM) ?? 360;

/** The attributes that give a picture its size in real millimetres on paper. */
const trueSize = (drawing: Drawing, { width, height }: { width: number; height: number }) => ({
  class: 'plot true-scale',
  viewBox: `0 0 ${String(width)} ${String(height)}`,
  width: `${drawing.width.toFixed(3)}mm`,
  height: `${drawing.height.toFixed(3)}mm`,
});

/**
 * The figures of the tape that have room on the screen: both ends of each strip, and every so many
 * degrees between them.
 */
function figuresOf(tape: ReturnType<typeof viewOf>, every: number) {
  const texts = tape.drawing.shapes.filter((shape) => shape.kind === 'text');
  const rows = new Set(texts.flatMap(({ anchor, y }) => (anchor === 'middle' ? [y] : [])));
  const figures = texts
    .filter(({ y, turn }) => rows.has(y) && turn === 0)
    .map(({ x, y, text: words, anchor }) => {
      const at = placeOf(tape)(x, y);
      const wide = textWidth(words);
      const left = at.x - (anchor === 'middle' ? wide / 2 : anchor === 'end' ? wide : 0);
      return { x: at.x, y: hundredth(at.y + 2), words, anchor, left, right: left + wide };
    });
  const ends = figures.filter(({ anchor }) => anchor !== 'middle');
  const between = figures.filter(
    ({ anchor, words, y, left, right }) =>
      anchor === 'middle' &&
      Number(words) % every === 0 &&
      ends.every((end) => end.y !== y || right + CLEAR < end.left || left - CLEAR > end.right),
  );
  return [...ends, ...between];
}

function TapeAsPrinted({
  values,
  lengths,
}: {
  readonly values: TapeValues;
  readonly lengths: LengthDisplay;
}) {
  const tape = viewOf(tapeOf(values, lengths));
  const every = everySo((values.rotor * Math.PI * tape.scale) / 360);
  return (
    <svg
      {...trueSize(tape.drawing, sizeOf(tape))}
      role="img"
      aria-label={`Tape for a rotor of ${showFixed(values.rotor, 'mm', 1, lengths)}, in strips`}
    >
      <DrawingShapes {...tape} />
      <BarLengths {...tape} />
      <g class="on-screen" aria-hidden="true">
        {lettersOf(tape).map(({ letter, x, y }) => (
          <text key={letter} x={x} y={hundredth(y)} text-anchor="middle">
            {letter}
          </text>
        ))}
        {figuresOf(tape, every).map(({ x, y, words, anchor }) => (
          <text key={`${String(x)} ${String(y)}`} x={x} y={y} text-anchor={anchor}>
            {words}
          </text>
        ))}
      </g>
    </svg>
  );
}

/** Letters of the marks on the tape: over the strip, or under it where a neighbour's stands there. */
function lettersOf(tape: ReturnType<typeof viewOf>) {
  const place = placeOf(tape);
  const marks = tape.drawing.shapes
    .flatMap((shape) => {
      const number = /^tape-\d+-piston-(\d+)$/.exec(
        shape.kind === 'line' ? (shape.name ?? '') : '',
      );
      if (shape.kind !== 'line' || !number) return [];
      const lower = tape.drawing.shapes.find(({ name }) => name === `${shape.name!}-foot`);
      const foot = place(shape.x1, lower?.kind === 'line' ? lower.y1 : shape.y1);
      const head = place(shape.x2, shape.y2);
      return [{ letter: letterOf(Number(number[1]) - 1), x: foot.x, foot: foot.y, head: head.y }];
    })
    .sort((a, b) => a.letter.localeCompare(b.letter));
  const letters: { letter: string; x: number; y: number }[] = [];
  for (const { letter, x, foot, head } of marks) {
    const y = [head - 4, foot + 13].find((row) =>
      letters.every((other) => other.y !== row || Math.abs(other.x - x) > APART),
    );
    if (y !== undefined) letters.push({ letter, x, y });
  }
  return letters;
}

/** Drawn anew only when one of its own figures has changed, not while the disc is dragged. */
const Tape = memo(TapeAsPrinted, 3);

/** The disc and the tape as they will be printed; the rim of the disc is dragged to its size. */
export function Picture(props: PictureProps<typeof inputs, typeof results>) {
  const { values: v, lengths, set, commit } = props;
  const { outside: _, inside: __, ...ofTape } = v;
  const disc = viewOf(discOf(v, lengths));
  const place = placeOf(disc);
  const rim = v.outside / 2;
  const sense = (v.turning === 'clockwise') === (v['fixed-to'] === 'crank') ? 1 : -1;
  const along = (angle: number, radius: number) => {
    const direction = ((90 + sense * angle) * Math.PI) / 180;
    return place(radius * Math.cos(direction), radius * Math.sin(direction));
  };
  const shown = showFixed(v.outside, 'mm', 1, lengths);
  const marks = marksOf(v);
  const grip = place(rim * Math.SQRT1_2, rim * Math.SQRT1_2);
  const between = rim * FIGURES * disc.scale * (Math.PI / 180);
  const every = everySo(between);
  const figures = Array.from({ length: 360 / every }, (_, i) => i * every).filter((angle) =>
    marks.every((mark) => {
      const away = Math.abs(angle - (mark.before ? 360 - mark.angle : mark.angle));
      return Math.min(away, 360 - away) > STRUCK;
    }),
  );

  // Each mark has its letter beside the outer end of its line.
  const height = LETTER / disc.scale;
  const directionOf = ({ angle, before }: (typeof marks)[number]): number =>
    90 + sense * (before ? -angle : angle);
  const beside = clearOnDisc(
    marks.map((mark, i) => ({ direction: directionOf(mark), words: letterOf(i) })),
    {
      from: (v.inside + (v.outside - v.inside) * MARK_FOOT) / 2,
      to: rim * FIGURES - FIGURE_DEEP / disc.scale,
      hole: v.inside / 2,
    },
    height,
  );
  const named: { readonly letter: string; readonly x: number; readonly y: number }[] = [];
  marks.forEach((mark, i) => {
    const turn = (directionOf(mark) * Math.PI) / 180;
    const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
    const { outer, side } = beside[i]!;
    const [radius, aside] = [outer - height / 2, height * side * (cos < 0 ? -1 : 1)];
    const at = place(radius * cos - aside * sin, radius * sin + aside * cos);
    if (named.every((other) => Math.hypot(other.x - at.x, other.y - at.y) > APART)) {
      named.push({ letter: letterOf(i), ...at });
    }
  });

  return (
    <div class="picture-block">
      <svg
        {...trueSize(disc.drawing, sizeOf(disc))}
        role="group"
        aria-label={`Degree disc of ${shown}, with ${String(marks.length)} piston positions marked`}
      >
        <DrawingShapes {...disc} />
        <BarLengths {...disc} />
        <g class="on-screen" aria-hidden="true">
          {figures.map((angle) => {
            const at = along(angle, rim * FIGURES);
            const figure = v.numbering === 'both-ways' && angle > 180 ? 360 - angle : angle;
            return (
              <text key={angle} x={at.x} y={at.y + 4} text-anchor="middle">
                {String(figure)}
              </text>
            );
          })}
        </g>
        <g class="on-screen" aria-hidden="true">
          {named.map(({ letter, x, y }) => (
            <text key={letter} x={x} y={y + 4} text-anchor="middle">
              {letter}
            </text>
          ))}
          <text x={WIDTH - 3} y={13} text-anchor="end">
            {`⌀ ${shown}`}
          </text>
        </g>
        <Handle
          x={grip.x}
          y={grip.y}
          label="Outside diameter of the disc"
          value={v.outside}
          min={LEAST}
          max={MOST}
          step={1}
          valueText={shown}
          onDrag={(x, y) => {
            const to = millimetresOf(disc)(x, y);
            const wanted = onStep(2 * Math.hypot(to.x, to.y), 1);
            set('outside', Math.min(ON_SHEET, Math.max(2 * v.inside, LEAST, wanted)));
          }}
          onStep={(value) => set('outside', onStep(value, 1))}
          onEnd={commit}
        />
      </svg>
      <Tape values={ofTape} lengths={lengths} />
      {marks.length === 0 ? null : (
        <p class="picture-words">
          {marks
            .map(
              (mark, i) =>
                `${letterOf(i)}: ${showFixed(mark.travel, 'mm', 2, lengths)} ${mark.before ? 'before' : 'after'}, ${fixed(mark.angle, 1)}°`,
            )
            .join('; ')}
          .
        </p>
      )}
    </div>
  );
}
