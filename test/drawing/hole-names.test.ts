import { Arc, Circle, point, Polygon, segment } from '@flatten-js/core';
import { describe, expect, it } from 'vitest';
import { wordsWidth } from '../../calculators/drawing/holding-words.ts';
import type { Shape, Text } from '../../calculators/drawing/shapes.ts';
import { toSvg } from '../../calculators/drawing/to-svg.ts';
import type { Edge } from '../../calculators/maths/plate/land-outline.ts';
import { LETTER } from '../../calculators/plate/hole-pattern/band-lettering.ts';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import holePattern from '../../calculators/plate/hole-pattern/calculator.tsx';
import type { Values } from '../../calculators/plate/hole-pattern/compute.ts';
import { barePattern, patternDrawing } from '../../calculators/plate/hole-pattern/template.ts';
import { COVER } from './cover.ts';
import { randomParts } from './random-parts.ts';

const RADIANS = Math.PI / 180;

const edgeOf = (edge: Edge) =>
  edge.kind === 'line'
    ? segment(edge.x1, edge.y1, edge.x2, edge.y2)
    : new Arc(point(edge.x, edge.y), edge.radius, edge.from * RADIANS, edge.to * RADIANS, true);

/** What is cut, as @flatten-js/core 1.6.15 has it. */
const cut = (shapes: readonly Shape[]) =>
  shapes.flatMap((shape): (Circle | ReturnType<typeof edgeOf>)[] => {
    if (shape.layer !== 'cut' && shape.layer !== 'position') return [];
    if (shape.kind === 'circle') return [new Circle(point(shape.x, shape.y), shape.radius)];
    if (shape.kind === 'path') return shape.edges.map(edgeOf);
    if (shape.kind === 'line' || shape.kind === 'arc') {
      return [edgeOf(shape.kind === 'line' ? shape : { ...shape, hollow: false })];
    }
    return [];
  });

const boxOf = ({ x, y, text }: Text) => ({
  left: x,
  right: x + wordsWidth(text, LETTER),
  bottom: y,
  top: y + LETTER,
});
type Box = ReturnType<typeof boxOf>;

const polygonOf = ({ left, right, bottom, top }: Box) =>
  new Polygon([point(left, bottom), point(right, bottom), point(right, top), point(left, top)]);

const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.bottom < b.top && b.bottom < a.top;

const NAME = /^(\d+): /;

it('each hole has its name, on the sheet, on no edge and no other words: random parts', () => {
  let [led, count] = [0, 0];
  for (const { values, lengths, texts } of randomParts(2024, 90)) {
    const drawing = barePattern(values, lengths);
    const { left, bottom, width, height } = drawing;
    const words = drawing.shapes.filter((shape): shape is Text => shape.kind === 'text');
    const names = words.filter(({ text }) => NAME.test(text));
    const told = JSON.stringify(texts);
    expect(
      names.map(({ text }) => Number(NAME.exec(text)![1])).sort((a, b) => a - b),
      told,
    ).toEqual(values.hole.map((_, i) => i + 1));
    const lines = cut(drawing.shapes);
    words.forEach((name, i) => {
      const box = boxOf(name);
      expect(box.left, told).toBeGreaterThanOrEqual(left);
      expect(box.bottom, told).toBeGreaterThanOrEqual(bottom);
      expect(box.right, told).toBeLessThanOrEqual(left + width);
      expect(box.top, told).toBeLessThanOrEqual(bottom + height);
      const polygon = polygonOf(box);
      expect(
        lines.filter((shape) => polygon.intersect(shape as never).length > 0),
        `${name.text} lies on an edge: ${told}`,
      ).toEqual([]);
      for (const other of words.slice(0, i)) {
        expect(overlap(box, boxOf(other)), `${name.text} on ${other.text}: ${told}`).toBe(false);
      }
    });
    led += drawing.shapes.filter(({ name }) => name?.startsWith('leader-')).length;
    count += names.length;
  }
  expect(count).toBeGreaterThan(400);
  // Parts so small and crowded leave few names room beside their own hole alone.
  expect(led).toBeGreaterThan(20);
  expect(led).toBeLessThan(0.8 * count);
});

/** What is wrong with where the names stand, as who reads the paper would take them. */
function misread(shapes: readonly Shape[]): string[] {
  const rims = shapes.flatMap((shape) =>
    shape.kind === 'circle' && shape.name?.startsWith('hole-')
      ? [{ number: Number(shape.name.slice(5)), ...shape }]
      : [],
  );
  const led = new Set(shapes.map(({ name }) => name));
  const centres = shapes.flatMap((shape): (Circle | ReturnType<typeof edgeOf>)[] =>
    shape.layer !== 'centre'
      ? []
      : shape.kind === 'line'
        ? [segment(shape.x1, shape.y1, shape.x2, shape.y2)]
        : shape.kind === 'circle'
          ? [new Circle(point(shape.x, shape.y), shape.radius)]
          : [],
  );
  return shapes.flatMap((shape) => {
    if (shape.kind !== 'text' || !NAME.test(shape.text)) return [];
    const number = Number(NAME.exec(shape.text)![1]);
    const box = boxOf(shape);
    const polygon = polygonOf(box);
    const faults = centres.some((line) => polygon.intersect(line as never).length > 0)
      ? [`${shape.text} lies on a centre line`]
      : [];
    if (led.has(`leader-${number}`)) return faults;
    const own = rims.find((rim) => rim.number === number)!;
    for (const other of rims) {
      if (other === own) continue;
      const ends: [number, number][] = [
        [box.left, box.bottom],
        [box.left, box.top],
        [box.right, (box.bottom + box.top) / 2],
      ];
      const nearer = ends.some(
        ([x, y]) =>
          Math.hypot(x - other.x, y - other.y) - other.radius <
          Math.hypot(x - own.x, y - own.y) - own.radius - LETTER,
      );
      const [away, off] = [other, own].map(
        ({ x, y, radius }) => polygon.distanceTo(new Circle(point(x, y), radius))[0],
      );
      if (nearer || away! < off!) faults.push(`${shape.text} stands at hole ${other.number}`);
    }
    return faults;
  });
}

it.each(['in', 'mm'] as const)(
  'no name stands at another hole or on a centre line, and no leaders cross, %s',
  (way) => {
    const pairs = COVER.flatMap((_, b) => Array.from({ length: b }, (__, a) => [a, b] as const));
    const { values, problems } = evaluate(
      holePattern,
      {
        holes: '5',
        distances: String(pairs.length),
        span: 'centres',
        ...Object.fromEntries([
          ...COVER.map(([, , hole], i) => [`hole-${i + 1}`, `${hole} in`]),
          ...COVER.map((_, i) => [`bulge-${i + 1}`, '0']),
          ...pairs.flatMap(([a, b], k) => {
            const apart = Math.hypot(COVER[a]![0] - COVER[b]![0], COVER[a]![1] - COVER[b]![1]);
            return [
              [`a-${k + 1}`, String(a + 1)],
              [`b-${k + 1}`, String(b + 1)],
              [`distance-${k + 1}`, `${apart.toFixed(4)} in`],
            ];
          }),
        ]),
      },
      { lengths: 'mm' },
    );
    expect(problems).toEqual([]);
    const { shapes } = barePattern(values as Values, way);
    expect(misread(shapes)).toEqual([]);
    const leaders = shapes.flatMap((shape) =>
      shape.kind === 'line' && shape.name?.startsWith('leader-')
        ? [segment(shape.x1, shape.y1, shape.x2, shape.y2)]
        : [],
    );
    leaders.forEach((one, i) =>
      leaders.slice(0, i).forEach((other) => expect(one.intersect(other)).toEqual([])),
    );
  },
);

it('no name of a random part is taken for that of another hole', () => {
  for (const { values, lengths, texts } of randomParts(12, 60)) {
    expect(misread(barePattern(values, lengths).shapes), JSON.stringify(texts)).toEqual([]);
  }
});

it('a leader points at the rim of its hole, and runs through no words', () => {
  let leaders = 0;
  for (const { values, lengths } of randomParts(7, 40)) {
    const { shapes } = barePattern(values, lengths);
    const words = shapes.filter((shape): shape is Text => shape.kind === 'text');
    for (const shape of shapes) {
      if (shape.kind !== 'line' || !shape.name?.startsWith('leader-')) continue;
      leaders += 1;
      const rim = shapes.find(({ name }) => name === shape.name!.replace('leader', 'hole'))!;
      if (rim.kind !== 'circle') throw new Error(`hole of ${shape.name}`);
      expect(Math.hypot(shape.x2 - rim.x, shape.y2 - rim.y)).toBeCloseTo(rim.radius, 9);
      // It would run on through the middle of the hole.
      expect(
        (shape.x1 - rim.x) * (shape.y2 - rim.y) - (shape.y1 - rim.y) * (shape.x2 - rim.x),
      ).toBeCloseTo(0, 6);
      const own = words.find(({ text }) => text.startsWith(`${shape.name!.slice(7)}: `))!;
      expect(Math.hypot(own.x - shape.x1, own.y - shape.y1)).toBeLessThan(
        wordsWidth(own.text, LETTER) + 1,
      );
      const line = segment(shape.x1, shape.y1, shape.x2, shape.y2);
      for (const each of words) {
        expect(polygonOf(boxOf(each)).intersect(line)).toEqual([]);
      }
    }
  }
  expect(leaders).toBeGreaterThan(10);
});

describe('the drawing with its title and bars', () => {
  it('holds every word on its sheet, and the file has them all', () => {
    for (const { values, lengths } of randomParts(99, 25)) {
      const drawing = patternDrawing(values, lengths);
      const words = drawing.shapes.filter((shape): shape is Text => shape.kind === 'text');
      for (const { x, y, height, text } of words) {
        expect(x).toBeGreaterThanOrEqual(drawing.left);
        expect(x + wordsWidth(text, height)).toBeLessThanOrEqual(drawing.left + drawing.width);
        expect(y).toBeGreaterThanOrEqual(drawing.bottom);
        expect(y + height).toBeLessThanOrEqual(drawing.bottom + drawing.height);
      }
      const names = words.filter(({ text }) => NAME.test(text));
      const svg = toSvg(drawing);
      for (const { text } of names) expect(svg).toContain(`>${text}<`);
      const ids = [...svg.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id!);
      expect(new Set(ids).size).toBe(ids.length);
    }
  });
});
