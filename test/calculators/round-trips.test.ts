import { describe, expect, it, vi } from 'vitest';
import { fromQuery, toQuery } from '../../calculators/frame/address.ts';
import {
  allFrom,
  evaluate,
  knownKeys,
  type Evaluation,
  type Texts,
} from '../../calculators/frame/evaluate.ts';
import { Absent, type Input } from '../../calculators/frame/types.ts';
import { units } from '../../calculators/frame/text/units.ts';
import { calculators } from '../../site/all-calculators.ts';
import { expectSame } from '../same.ts';
import { pick, reading, someOrder, spreader, type Next } from './states.ts';

vi.setConfig({ testTimeout: 300_000 });

/** Over all calculators together. The seed is fixed, so that every run tries the same ones. */
const TRIPS = 10_000;
const each = Math.ceil(TRIPS / calculators.length);

const other = { mm: ['in', 'thou', 'cm'], deg: ['°'], litre: ['ml', 'l'] } as Record<
  string,
  string[]
>;

/** A text for a key of any kind: a figure in range, in this unit or that, or now and then a slip. */
function textFor(input: Input, isError: boolean, next: Next): string {
  if (next() < 0.02) return pick(next, ['', 'x', '1e9', '-', '9 m m']);
  if (input.kind === 'choice') return pick(next, Object.keys(input.options));
  const figure = (): string => {
    const { min, max, step, unit, whole } = input;
    if (isError) return (step * next() * 2).toPrecision(2);
    const usual = input.kind === 'number' ? input.default : (min + max) / 2;
    const near = next() < 0.8 ? usual * (0.8 + next() * 0.4) : min + next() * (max - min);
    const value = whole ? String(Math.round(near)) : near.toPrecision(6);
    const typed = units[unit].token;
    if (next() < 0.2 && other[unit] && !whole) {
      const name = pick(next, other[unit]);
      const scale = { in: 25.4, thou: 0.0254, cm: 10, ml: 0.001 }[name] ?? 1;
      return `${(near / scale).toPrecision(6)} ${name}`;
    }
    return next() < 0.3 ? `${value}${typed}` : next() < 0.1 ? value.replace('.', ',') : value;
  };
  if (input.kind === 'list' && input.order) return someOrder(1 + Math.floor(next() * 5), next);
  return input.kind === 'list'
    ? Array.from({ length: Math.floor(next() * 5) }, figure).join(' ')
    : figure();
}

/** Where most figures drawn at random make no engine at all: distances that hold no pattern. */
const seldom: Readonly<Record<string, number>> = { 'hole-pattern': 30 };

/** The results, and which of them there are none of, in whatever words. */
const there = ({ results }: Evaluation): Record<string, unknown> =>
  Object.fromEntries(
    Object.entries(results).map(([name, value]) => [
      name,
      value instanceof Absent ? 'none' : value,
    ]),
  );

describe.each(calculators.map((calculator) => [calculator.slug, calculator] as const))(
  '%s',
  (slug, calculator) => {
    it('gives the same values, results and ± after a link, whatever is typed and hidden', () => {
      const next = spreader(51_104);
      const keys = [...knownKeys(calculator)];
      const inputs: Readonly<Record<string, Input>> = calculator.inputs;
      let computed = 0;
      for (let trip = 0; trip < each; trip += 1) {
        const share = next();
        const texts = Object.fromEntries(
          keys.flatMap((key) => {
            if (next() > share * 0.6) return [];
            const isError = inputs[key] === undefined && key.endsWith('-error');
            const base = isError ? key.replace(/-error$/, '') : key.replace(/-\d+$/, '');
            const input = inputs[key] ?? inputs[base]!;
            return [[key, textFor(input, isError, next)]];
          }),
        );
        // A link is asked nothing: what may be thousands was asked about before it was made.
        const byLink = (given: Texts) =>
          evaluate(calculator, given, { ...reading, origins: allFrom(given, 'link') });
        const before = byLink(texts);
        const query = toQuery(before);
        const after = byLink(fromQuery(query));
        expectSame(after.values, before.values, query);
        expectSame(there(after), there(before), query);
        expectSame(after.spreads, before.spreads, query);
        expect(toQuery(after).replace(/^example=[^&]*&/, '')).toBe(
          query.replace(/^example=[^&]*&/, ''),
        );
        if (before.computed) computed += 1;
      }
      expect(computed).toBeGreaterThan(each / (seldom[slug] ?? 10));
    });
  },
);
