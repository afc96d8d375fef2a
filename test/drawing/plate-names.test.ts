import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../calculators/drawing/shapes.ts';
import { CAPITAL } from '../../calculators/drawing/svg-element.ts';
import { textWidth } from '../../calculators/picture/common/text-width.ts';
import { equalSpacing, setAngles } from '../../calculators/maths/plate/plate-layout.ts';
import { plateDrawing } from '../../calculators/plate/plate-layout/drawing.ts';
import { pointsOf } from '../../calculators/plate/plate-layout/set-labels.ts';
import { samplePlate } from './sample-plate.ts';

/** Words of sets and holes, and what of the drawing runs through each, mm. */
function struckNames({ shapes }: Drawing): { words: string; by: string[] }[] {
  return shapes.flatMap((shape) => {
    if (shape.kind !== 'text' || !/^(?:set \d+|\d+-\d+)$/.test(shape.text)) return [];
    const wide = textWidth(shape.text, { size: shape.height / CAPITAL });
    const by = shapes.filter((other) =>
      pointsOf(other).some(
        ({ x, y }) =>
          x > shape.x && x < shape.x + wide && y > shape.y && y < shape.y + shape.height,
      ),
    );
    return [{ words: shape.text, by: by.map(({ layer }) => layer) }];
  });
}

const sets = (count: number, start: number) =>
  setAngles(start, Array<number>(count - 1).fill(equalSpacing(count)));

describe('the names on a plate on paper', () => {
  it.each([
    ['three uneven sets', samplePlate],
    ...[0, 30, 45, 90].map((start) => [
      `three even sets from ${String(start)}°`,
      { ...samplePlate, angles: sets(3, start) },
    ]),
    ['one set', { ...samplePlate, angles: [90] }],
    ['six sets', { ...samplePlate, outsideDiameter: 140, angles: sets(6, 90) }],
  ] as [string, typeof samplePlate][])(
    '%s: each set and hole has its own, on no line',
    (_, plate) => {
      const names = struckNames(plateDrawing({ plate, allowance: 3 }));
      const wanted = plate.angles.flatMap((_angle, s) => [
        `set ${s + 1}`,
        ...plate.holes.map((_hole, h) => `${s + 1}-${h + 1}`),
      ]);
      expect(names.map(({ words }) => words).sort()).toEqual(wanted.sort());
      expect(names.filter(({ by }) => by.some((layer) => layer !== 'centre'))).toEqual([]);
      // Beside a hole on three centre lines at once there may be no place that is on none.
      expect(names.filter(({ by }) => by.length > 0).length).toBeLessThan(names.length / 4);
    },
  );

  it('with slots to turn in: their width and reach, on a circle of their own', () => {
    const { shapes } = plateDrawing({ plate: samplePlate, allowance: 3 });
    const said = shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));
    expect(said).toContain('Slots 4.5 mm wide, 18° between centres, on R 39 mm');
    const circles = shapes.filter(
      (shape) => shape.kind === 'circle' && shape.layer === 'centre' && shape.radius === 39,
    );
    expect(circles).toHaveLength(1);
    const plain = plateDrawing({ plate: { ...samplePlate, slots: [] }, allowance: 3 });
    expect(JSON.stringify(plain.shapes)).not.toContain('Slots');
  });

  it('are as large as ISO 3098-1 has letters, 2.5 mm', () => {
    const heights = plateDrawing({ plate: samplePlate, allowance: 3 }).shapes.flatMap((shape) =>
      shape.kind === 'text' && /\d-\d/.test(shape.text) ? [shape.height] : [],
    );
    expect(heights).toEqual(heights.map(() => 2.5));
  });
});
