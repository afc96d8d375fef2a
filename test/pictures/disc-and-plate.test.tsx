import { describe, expect, it } from 'vitest';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import degreeDisc from '../../calculators/plate/degree-disc/calculator.tsx';
import { diameterLabels } from '../../calculators/plate/plate-layout/diameters.ts';
import { pointsOf, struckOf } from '../../calculators/plate/plate-layout/set-labels.ts';
import plateLayout from '../../calculators/plate/plate-layout/calculator.tsx';
import { PIN, READINGS } from '../../calculators/position/find-tdc/places.ts';
import { circle } from '../../calculators/drawing/shapes.ts';
import { drawn } from './support/draw.tsx';
import { sheetsOf } from './support/marks.ts';

function wordsOf(calculator: AnyCalculator, texts: Record<string, string> = {}): string[][] {
  const evaluation = evaluate(calculator, texts, { lengths: 'mm' });
  return sheetsOf(drawn(calculator, { texts, lengths: 'mm', evaluation })).map((sheet) =>
    sheet.texts.map(({ words }) => words),
  );
}

const BARS = '100\u00A0mm across, 50 up';

describe('what is drawn to scale says how large it is', () => {
  it('a plate: outside, the pitch circles of holes and slots, bore, and the bars', () => {
    const [words] = wordsOf(plateLayout);
    expect(words!.filter((each) => each.startsWith('⌀')).sort()).toEqual([
      '⌀ 28.0 mm',
      '⌀ 50.0 mm',
      '⌀ 63.0 mm',
      '⌀ 80.0 mm',
      '⌀ 92.0 mm',
    ]);
    expect(words).toContain(BARS);
  });

  it('a disc and its tape: the bars of both, the letter of each mark, and the ends of each strip', () => {
    const [disc, tape] = wordsOf(degreeDisc);
    for (const words of [disc!, tape!]) {
      expect(words).toContain(BARS);
      expect(words).toEqual(expect.arrayContaining(['A', 'B']));
    }
    // Two strips of 180°: each shows where it begins and ends.
    expect(tape!.filter((each) => each === '0')).toHaveLength(2);
    expect(tape!.filter((each) => each === '180')).toHaveLength(2);
  });
});

describe('the handles of a disc and its crank', () => {
  it('stand a thumb apart, however the crank is turned', () => {
    expect(READINGS - PIN).toBeGreaterThanOrEqual(44);
  });
});

describe('a diameter', () => {
  const place = (x: number, y: number) => ({ x: 200 + 3 * x, y: 200 - 3 * y });
  const edges = { left: 0, top: 0, right: 400, bottom: 400 };
  const shapes = [circle('cut', 0, 0, 45)];
  const label = (taken: readonly (typeof edges)[]) =>
    diameterLabels([{ radius: 20, words: '⌀ 40.0 mm' }], {
      shapes,
      struck: struckOf(shapes.flatMap(pointsOf).map(({ x, y }) => place(x, y))),
      place,
      rim: 45,
      edges,
      taken,
    })[0];

  it('has its leader on its circle, in line with the middle', () => {
    const { tail, tip } = label([])!;
    expect(Math.hypot(tip.x - 200, tip.y - 200)).toBeCloseTo(60, 9);
    expect((tail.x - 200) * (tip.y - 200)).toBeCloseTo((tail.y - 200) * (tip.x - 200), 6);
  });

  it('keeps off what is named, and is left out where all is taken', () => {
    const first = label([])!;
    const second = label([first.box])!;
    expect(second.box).not.toEqual(first.box);
    expect(label([edges])).toBeUndefined();
  });
});
