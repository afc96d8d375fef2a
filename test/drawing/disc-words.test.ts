import { describe, expect, it } from 'vitest';
import type { Drawing, Shape } from '../../calculators/drawing/shapes.ts';
import { CAPITAL } from '../../calculators/drawing/svg-element.ts';
import { textWidth } from '../../calculators/picture/common/text-width.ts';
import { evaluate, type Texts } from '../../calculators/frame/evaluate.ts';
import degreeDisc from '../../calculators/plate/degree-disc/calculator.tsx';
import { discOf, tapeOf } from '../../calculators/plate/degree-disc/files.ts';
import { pointsOf } from '../../calculators/plate/plate-layout/set-labels.ts';

type Place = Readonly<{ x: number; y: number }>;

/** From the drawing's places to those of a text: along its line of reading, and up from its foot. */
const own = (shape: Extract<Shape, { kind: 'text' }>, wide: number) => {
  const turn = (shape.turn * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const back = { start: 0, middle: wide / 2, end: wide }[shape.anchor];
  return ({ x, y }: Place): Place => ({
    x: (x - shape.x) * cos + (y - shape.y) * sin + back,
    y: (y - shape.y) * cos - (x - shape.x) * sin,
  });
};

/** What has a line through it, or words on it. */
function struck({ shapes }: Drawing): string[] {
  const texts = shapes.flatMap((shape) => {
    if (shape.kind !== 'text') return [];
    const wide = textWidth(shape.text, { size: shape.height / CAPITAL });
    const into = own(shape, wide);
    const on = (place: Place): boolean => {
      const { x, y } = into(place);
      return x > 0 && x < wide && y > 0 && y < shape.height;
    };
    const turn = (shape.turn * Math.PI) / 180;
    const back = { start: 0, middle: wide / 2, end: wide }[shape.anchor];
    const inside = Array.from({ length: 40 }, (_, i): Place => {
      const [along, up] = [(wide * i) / 39 - back, shape.height / 2];
      return {
        x: shape.x + along * Math.cos(turn) - up * Math.sin(turn),
        y: shape.y + along * Math.sin(turn) + up * Math.cos(turn),
      };
    });
    return [{ words: shape.text, on, inside }];
  });
  const fine = (shape: Shape): readonly Place[] => {
    const points = pointsOf(shape);
    return points.flatMap((point, i) => {
      const next = points[i + 1] ?? point;
      return [0, 0.25, 0.5, 0.75].map((share) => ({
        x: point.x + (next.x - point.x) * share,
        y: point.y + (next.y - point.y) * share,
      }));
    });
  };
  const lines = shapes.flatMap((shape) =>
    shape.kind === 'text' ? [] : [{ shape, points: fine(shape) }],
  );
  return texts.flatMap(({ words, on, inside }, i) => [
    ...lines
      .filter(({ points }) => points.some(on))
      .map(({ shape }) => `“${words}” struck by ${shape.name ?? shape.layer}`),
    ...texts
      .slice(0, i)
      .filter((other) => inside.some(other.on) || other.inside.some(on))
      .map((other) => `“${words}” on “${other.words}”`),
  ]);
}

const cases: readonly (readonly [string, Texts])[] = [
  ['as it opens', {}],
  ['a small one', { outside: '100', rotor: '60' }],
  ['a disc of six inches', { outside: '6in', rotor: '4in' }],
  ['numbered both ways', { numbering: 'both-ways' }],
  ['with three marks near each other', { marks: '1.5; 2.0; 2.5' }],
  ['after the top as well', { 'marks-after': '1; 20' }],
];

describe.each(cases)('what is lettered on a degree disc and its tape, %s', (_, texts) => {
  it.each(['mm', 'in'] as const)('stands on no line and on no other words, in %s', (lengths) => {
    const { values, problems } = evaluate(degreeDisc, texts, { lengths });
    expect(problems).toEqual([]);
    expect(struck(discOf(values as never, lengths))).toEqual([]);
    expect(struck(tapeOf(values as never, lengths))).toEqual([]);
  });
});
