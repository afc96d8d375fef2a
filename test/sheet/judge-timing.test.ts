import { expect, it } from 'vitest';
import type { FigureKey } from '../../calculators/sheet/figures.ts';
import { judge } from '../../calculators/sheet/judge.ts';
import { newEngine, type Engine } from '../../calculators/sheet/model.ts';
import { setEntry } from '../../calculators/sheet/set-entry.ts';

/** A single of stroke 51 and rod 104, of which 2.2 mm are 21.52°. */
const single = (reading: number, more: Partial<Record<FigureKey, number>> = {}): Engine =>
  setEntry(
    {
      ...newEngine('e-1', 'Single'),
      figures: {
        ...{ cylinders: 1, stroke: 51, rod: 104, target: 2.2, 'timing-tolerance': 0.75 },
        ...more,
      },
    },
    'timing',
    'found',
    0,
    reading,
  );
const judged = (...of: Parameters<typeof single>) => judge(single(...of), 'timing', 'mm');
const words = (...of: Parameters<typeof single>): string => judged(...of).rows[0]!.words;

// By hand from x = r (1 − cos θ) + l − √(l² − r² sin² θ), r 25.5 and l 104.
it('no figure beyond 50° is judged by: 49° are 10.57 mm and 51° 11.36 mm', () => {
  expect(judged(10.56, { target: 10.56 }).rows[0]!.result).toBe('pass');
  const beyond = judged(11.36, { target: 11.36 });
  expect(beyond.rows[0]!.result).toBe('unjudged');
  expect(beyond.whole[0]).toMatch(/where no such engine fires/);
});

it('a slot reaches 15° and no further: 14.8° on are 6.05 mm, 15.3° on 6.21 mm', () => {
  expect(words(6.05)).toMatch(/make it fire later/);
  expect(words(6.21)).toMatch(/further from the figure than any slot reaches/);
  // Of a reading that no slot puts right nothing is turned.
  expect(judged(6.21).whole.join()).not.toMatch(/Turn the plate|move its set|changes its gap/);
  expect(judged(6.05).whole.join()).toMatch(/changes its gap/);
  // A piston further down than the stroke makes no angle at all.
  expect(judged(52).rows[0]!.result).toBe('fail');
  expect(judged(52).whole).toEqual([]);
});

it('a slip in one reading is no turning, and the others stand as they were read', () => {
  const two = (slip: number) => {
    const engine: Engine = {
      ...newEngine('e-2', 'Twin'),
      figures: { cylinders: 2, stroke: 51, rod: 104, target: 2.2, 'timing-tolerance': 0.75 },
    };
    const both = [0, 1].reduce((so, i) => setEntry(so, 'timing', 'found', i, 2.2), engine);
    return judge(setEntry(both, 'timing', 'left', 1, slip), 'timing', 'mm').rows;
  };
  // 22 mm for 2.2, and more than the stroke.
  for (const slip of [22, 60]) expect(two(slip)[0]!.result, String(slip)).toBe('pass');
  // 2.4 mm may well be what a turn of the plate came to: the other is to be read again.
  expect(two(2.4)[0]).toMatchObject({ result: 'unjudged' });
});

it('beyond 10° it is to be read once more: 9.5° on are 4.47 mm, 10.5° on 4.76 mm', () => {
  expect(words(4.47)).not.toMatch(/once more/);
  expect(words(4.76)).toMatch(/That is much for a slot: read it once more/);
});

it('the plate goes against the cam for earlier, also by a third of a degree', () => {
  // 1.6 mm are 18.3°, 3.2° less than 21.52°.
  expect(judged(1.6).whole[0]).toBe(
    'Turn the plate against the way the cam turns, which is earlier (advances), by 3.2° of crank.',
  );
  // At 21.5° a millimetre is 4.8°.
  expect(judged(2.26, { 'timing-tolerance': 0.2 }).whole[0]).toBe(
    'Turn the plate the way the cam turns, which is later (retards), by 0.3° of crank.',
  );
});

it('a piston just short of its top stands before it', () => {
  expect(words(0.1, { target: 0.1 })).toMatch(
    /^4\.\d° before the top, but doubted\. .* later than such engines are set/,
  );
});

it('a tolerance in degrees is not held against a figure in millimetres', () => {
  expect(judged(0.5, { target: 0.5 }).rows[0]!.result).toBe('pass');
});

it('what is just beyond the limit does not read as the limit itself', () => {
  // 2.41 mm are 22.54° on this engine, 1.02° more than 21.52°.
  expect(words(2.41, { 'timing-tolerance': 1 })).toMatch(/^1\.02°, or 0\.21 mm, early/);
  expect(words(2.44, { 'timing-tolerance': 1 })).toMatch(/^1\.2°, or 0\.24 mm, early/);
});
