import { describe, expect, it } from 'vitest';
import breakerCam from '../../calculators/points/breaker-cam/calculator.tsx';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import { drawn } from './support/draw.tsx';
import { overlaps } from './support/faults.ts';
import { sheetsOf } from './support/marks.ts';

const calculator: AnyCalculator = breakerCam;

describe('the lift of the cam', () => {
  it.each(['0.1', '0.35', '0.8', '0.88', '0.95'])(
    'at a gap of %s mm no figure lies on another',
    (gap) => {
      const texts = { gap };
      const evaluation = evaluate(calculator, texts, { lengths: 'mm' });
      expect(evaluation.computed).toBe(true);
      for (const sheet of sheetsOf(drawn(calculator, { texts, lengths: 'mm', evaluation })))
        expect(overlaps(sheet)).toEqual([]);
    },
  );
});
