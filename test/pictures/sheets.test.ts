import { describe, expect, it } from 'vitest';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import { calculators } from '../../site/all-calculators.ts';
import { unsound } from '../hostile/unsound.ts';
import { drawn } from './support/draw.tsx';
import { alongside, outside, overlaps, pierced, strikes } from './support/faults.ts';
import { sheetsOf } from './support/marks.ts';
import { statesOf } from './support/states.ts';

/** Legal states of each calculator beside its defaults. The dice are the same in every run. */
const STATES = 150;

describe.each(calculators.map((calculator) => [calculator.slug, calculator] as const))(
  '%s',
  (_, calculator) => {
    it('draws any legal state within its frame, no word on another or under a line', () => {
      const states = statesOf(calculator, STATES);
      expect(states.length).toBeGreaterThan(STATES / 2);
      const seen = states.flatMap((state) => {
        const html = drawn(calculator, state);
        const faults = [
          ...unsound(html),
          ...sheetsOf(html).flatMap((sheet) => [
            ...outside(sheet).map((fault) => `outside: ${fault}`),
            ...overlaps(sheet),
            ...strikes(sheet),
          ]),
        ];
        return faults.map((fault) => `${fault} (${JSON.stringify(state.texts)} ${state.lengths})`);
      });
      expect(seen).toEqual([]);
    });

    it('opens with no handle on a word, and no leader beside a line', () => {
      const evaluation = evaluate(calculator, {}, { lengths: 'mm' });
      const sheets = sheetsOf(drawn(calculator, { texts: {}, lengths: 'mm', evaluation }));
      expect(sheets.flatMap(pierced)).toEqual([]);
      expect(sheets.flatMap(alongside)).toEqual([]);
    });
  },
);
