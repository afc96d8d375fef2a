import DxfParser, { type IArcEntity, type ICircleEntity, type ILineEntity } from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import { holdingWords } from '../../calculators/drawing/holding-words.ts';
import type { Drawing } from '../../calculators/drawing/shapes.ts';
import { toDxf } from '../../calculators/drawing/to-dxf.ts';
import { withoutBars } from '../../calculators/drawing/without-bars.ts';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import degreeDisc from '../../calculators/plate/degree-disc/calculator.tsx';
import { discOf, tapeOf } from '../../calculators/plate/degree-disc/files.ts';
import holePattern from '../../calculators/plate/hole-pattern/calculator.tsx';
import { patternDrawing } from '../../calculators/plate/hole-pattern/template.ts';
import { sampleDrawing } from './sample-plate.ts';

const valuesOf = (calculator: AnyCalculator, texts = {}): never =>
  evaluate(calculator, texts, { lengths: 'mm' }).values as never;
const pattern = (texts: Record<string, string>): Drawing =>
  patternDrawing(valuesOf(holePattern, texts));

const drawings: readonly (readonly [string, Drawing])[] = [
  ['plate', sampleDrawing],
  ['disc', discOf(valuesOf(degreeDisc, { outside: '300' }))],
  ['tape', tapeOf(valuesOf(degreeDisc))],
  ['gasket', pattern({})],
  ['gasket with a straight outline', pattern({ outline: 'straight' })],
  ['round cover', pattern({ outline: 'round', outside: '380' })],
];

/** What another program reads of a drawing: points of every line and curve, a degree apart. */
async function pointsOf(drawing: Drawing): Promise<(readonly [x: number, y: number])[]> {
  const { entities } = new DxfParser().parseSync(await toDxf(drawing))!;
  return entities.flatMap((entity) => {
    if (entity.type === 'LINE') {
      return (entity as ILineEntity).vertices.map(({ x, y }) => [x, y] as const);
    }
    if (entity.type !== 'ARC' && entity.type !== 'CIRCLE') return [];
    const { center, radius } = entity as ICircleEntity;
    const whole = entity.type === 'CIRCLE';
    const from = whole ? 0 : (entity as IArcEntity).startAngle;
    const end = whole ? 2 * Math.PI : (entity as IArcEntity).endAngle;
    const to = end < from ? end + 2 * Math.PI : end;
    return Array.from({ length: 361 }, (_, i) => {
      const angle = from + ((to - from) * i) / 360;
      return [center.x + radius * Math.cos(angle), center.y + radius * Math.sin(angle)] as const;
    });
  });
}

describe.each(drawings)('%s without its bars', (_, alone) => {
  const drawing = holdingWords(alone);
  const bare = withoutBars(drawing);
  const [right, top] = [bare.left + bare.width, bare.bottom + bare.height];

  it('holds every line of it', async () => {
    const points = await pointsOf(bare);
    expect(points.length).toBeGreaterThan(20);
    for (const [x, y] of points) {
      expect(x).toBeGreaterThan(bare.left);
      expect(x).toBeLessThan(right);
      expect(y).toBeGreaterThan(bare.bottom);
      expect(y).toBeLessThan(top);
    }
  });

  it('holds every line of words', () => {
    expect(holdingWords(bare).width).toBeCloseTo(bare.width, 6);
  });

  it('takes no more room than with them, and loses nothing else', () => {
    expect(bare.left).toBeGreaterThanOrEqual(drawing.left - 1);
    expect(right).toBeLessThanOrEqual(drawing.left + drawing.width + 1);
    expect(bare.height).toBeLessThan(drawing.height);
    const bars = drawing.shapes.filter(({ layer }) => layer === 'proving');
    expect(bars.length).toBeGreaterThan(10);
    expect(bare.shapes).toHaveLength(drawing.shapes.length - bars.length);
  });
});

it('is no larger than a round part and the edge about it', () => {
  const bare = withoutBars({
    title: '',
    left: -999,
    bottom: -999,
    width: 1998,
    height: 1998,
    shapes: [
      { kind: 'circle', layer: 'cut', x: 10, y: 20, radius: 100 },
      // A flat arc of a large round: only what is drawn of it counts.
      { kind: 'arc', layer: 'cut', x: 0, y: -5000, radius: 5100, from: 89, to: 91 },
      { kind: 'slot', layer: 'cut', x: 0, y: 0, radius: 40, width: 8, from: 350, to: 10 },
    ],
  });
  expect(bare).toMatchObject({ left: -91, bottom: -81, width: 202 });
  expect(bare.height).toBeCloseTo(202, 9);
});
