import fc from 'fast-check';
import { expect, it } from 'vitest';
import { PRIME, reduced } from '../../calculators/maths/numeric/prime-field.ts';

it('divides by a prime whose squares are whole numbers exactly', () => {
  for (let by = 2; by * by <= PRIME; by += 1) expect(PRIME % by).not.toBe(0);
  expect((PRIME - 1) ** 2).toBeLessThan(Number.MAX_SAFE_INTEGER);
});

/** Rows that are sums of so many others, which are independent as no two begin in one column. */
const made = fc
  .record({
    independent: fc.integer({ min: 1, max: 6 }),
    more: fc.integer({ min: 0, max: 6 }),
    entries: fc.array(fc.integer({ min: -900, max: 900 }), { minLength: 144, maxLength: 144 }),
  })
  .map(({ independent, more, entries }) => {
    let at = 0;
    const next = (): number => entries[(at += 1) % entries.length]!;
    const base = Array.from({ length: independent }, (_, i) =>
      Array.from({ length: 9 }, (__, j) => (j < i ? 0 : j === i ? 7 : next())),
    );
    const sums = Array.from({ length: more }, () => {
      const times = base.map(next);
      return base[0]!.map((_, j) => base.reduce((sum, row, i) => sum + times[i]! * row[j]!, 0));
    });
    return { independent, rows: [...sums, ...base] };
  });

it('finds as many independent rows as there are, whatever sums of them stand beside them', () => {
  fc.assert(
    fc.property(made, ({ independent, rows }) => {
      const { leading } = reduced(rows);
      expect(leading).toEqual(Array.from({ length: independent }, (_, i) => i));
    }),
    { numRuns: 200, seed: 26 },
  );
});

it('each row begins with a 1 that stands alone in its column, and together they make every row', () => {
  fc.assert(
    fc.property(made, ({ rows }) => {
      const simple = reduced(rows);
      for (const row of rows) {
        row.forEach((entry, j) => {
          const sum = simple.rows.reduce((total, other, k) => {
            const times = (row[simple.leading[k]!]! % PRIME) + PRIME;
            return (total + (times % PRIME) * other[j]!) % PRIME;
          }, 0);
          expect(sum).toBe(((entry % PRIME) + PRIME) % PRIME);
        });
      }
    }),
    { numRuns: 100, seed: 26 },
  );
});

it('has nothing to say of no rows', () => {
  expect(reduced([])).toEqual({ rows: [], leading: [] });
});
