import { describe, expect, it } from 'vitest';
import floatLevel from '../../calculators/carburettors/float-level/calculator.tsx';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import { drawn } from './support/draw.tsx';
import { outside, overlaps, strikes } from './support/faults.ts';
import { sheetsOf, type ShapeMark } from './support/marks.ts';

const calculator: AnyCalculator = floatLevel;

function gauging(texts: Record<string, string>) {
  const evaluation = evaluate(calculator, texts, { lengths: 'mm' });
  expect(evaluation.problems).toEqual([]);
  const sheet = sheetsOf(drawn(calculator, { texts, lengths: 'mm', evaluation })).at(-1)!;
  const area = (look: string) => {
    const shape = sheet.shapes.find(({ classes }: ShapeMark) => classes.includes(look))!;
    const points = shape.lines.flat();
    const [x, y] = [points.map(([px]) => px), points.map(([, py]) => py)];
    return {
      left: Math.min(...x),
      right: Math.max(...x),
      top: Math.min(...y),
      bottom: Math.max(...y),
    };
  };
  return { sheet, body: area('body'), float: area('float'), gauge: area('gauge') };
}

describe('the body as it is gauged', () => {
  it('upside down has its float above the gasket face, the card on the face and on the edge', () => {
    const { body, float, gauge } = gauging({ height: '24', edge: 'far' });
    // The face is the upper side of the body now.
    expect(float.bottom).toBeLessThan(body.top);
    expect(gauge.bottom).toBeCloseTo(body.top, 1);
    // The card's notch lies on the edge away from the face: the card itself reaches beyond it.
    expect(gauge.top).toBeLessThan(float.top);
    expect(gauge.left).toBeLessThan(float.right);
    const near = gauging({ height: '6', edge: 'near' });
    expect(near.gauge.top).toBeCloseTo(near.float.bottom, 1);
    expect(near.gauge.bottom).toBeCloseTo(near.body.top, 1);
  });

  it('tipped has its float hanging below the pivot, beside the face', () => {
    const { body, float, gauge, sheet } = gauging({ height: '24', gauged: 'tipped' });
    expect(float.left).toBeGreaterThan(body.right);
    expect(gauge.left).toBeCloseTo(body.right, 1);
    const pivot = sheet.shapes.find(({ classes }) => classes.includes('pivot'))!;
    expect(float.top).toBeGreaterThan(Math.max(...pivot.lines.flat().map(([, y]) => y)));
  });

  it.each(['-4', '0', '3', '60'])('with its edge at %s mm stands whole on its sheet', (height) => {
    for (const gauged of ['upside-down', 'tipped']) {
      for (const edge of ['far', 'near']) {
        const evaluation = evaluate(calculator, { height, edge, gauged }, { lengths: 'mm' });
        const state = { texts: {}, lengths: 'mm', evaluation } as const;
        const sheet = sheetsOf(drawn(calculator, state)).at(-1)!;
        expect([...outside(sheet), ...overlaps(sheet), ...strikes(sheet)]).toEqual([]);
      }
    }
  });
});
