import { describe, expect, it, vi } from 'vitest';
import { evaluate, type Evaluation } from '../../calculators/frame/evaluate.ts';
import { plainSummary } from '../../calculators/frame/copies.ts';
import type { Field } from '../../calculators/frame/field/fields.ts';
import type { Input, Origin } from '../../calculators/frame/types.ts';
import { assumedLimits, remarksOf, verdictOf } from '../../calculators/frame/whose.ts';
import { originsIn, toQuery } from '../../calculators/frame/address.ts';
import { calculatorBySlug, calculators } from '../../site/all-calculators.ts';
import { reading, someState, someText, spreader, whole } from './states.ts';

vi.setConfig({ testTimeout: 120_000 });

type Calculator = (typeof calculators)[number];

/** Words that make a figure the reader's. */
const READERS = /\byou (?:allow|gave|give)\b|\byour (?:limit|tolerance)/;
/** Words that say that nobody gave it. */
const NOBODYS = /assumed|common practice/;

const isFigure = ({ kind }: Input): boolean => kind !== 'choice';

const figuresOf = (calculator: Calculator, which: (input: Input) => boolean): string[] =>
  Object.entries<Input>(calculator.inputs).flatMap(([key, input]) =>
    isFigure(input) && which(input) ? [key] : [],
  );

/**
 * Assumed figures by which nothing is judged: how many there are, none of something, or what is asked
 * about. A new one is either of these or marked with `judgesBy`.
 */
const ASKED: Readonly<Record<string, readonly string[]>> = {
  'jet-set': ['jets', 'wanted'],
  'slide-balance': ['slides'],
  'coil-charge': ['ballast', 'rpm', 'speeds'],
  'hole-pattern': [
    'holes',
    'distances',
    'a',
    'b',
    'circle-holes',
    'centre-hole',
    'sets',
    'band',
    'bulge',
    'bore',
    'in-opening',
  ],
  'degree-disc': ['offset', 'outside', 'inside', 'tape-width'],
  'find-tdc': ['reading-error', 'height-error', 'offset'],
  'firing-order': ['cylinders', 'lean', 'turned', 'rpm'],
  'float-level': ['carburettors', 'tilt'],
  'fuel-and-oil': ['already'],
  'plate-layout': ['start', 'allowance', 'holes'],
  'needle-and-clip': ['throttle'],
  'piston-clearance': ['measured-at', 'levels', 'height', 'oversize-step', 'clean-up'],
  'piston-position': ['given-offset', 'offset', 'tilt'],
  'breaker-cam': ['base', 'at', 'trials'],
  'port-timing': ['offset', 'ports', 'crank'],
  'plate-setting': ['cylinders', 'offset'],
  compression: ['offset', 'gasket-change', 'base-gasket-change'],
  'squish-velocity': ['rpm', 'offset', 'at'],
  'time-area': ['rpm', 'offset'],
  wiring: ['others', 'ballast', 'rpm', 'idle', 'share', 'rated-hours', 'peukert'],
};

/** The same figures, those of some inputs given or not. */
function withOrigins(
  calculator: Calculator,
  state: Evaluation,
  isGiven: (key: string) => boolean,
): Evaluation {
  const origins = Object.fromEntries(
    state.fields.map(({ key }): [string, Origin] => [key, isGiven(key) ? 'yours' : 'example']),
  );
  return evaluate(calculator, whole(state), { ...reading, origins });
}

const verdicts = (calculator: Calculator, state: Evaluation): string[] =>
  Object.entries(calculator.tables ?? {}).flatMap(([id, { verdict }]) =>
    verdict
      ? [1, 2, 3].flatMap((row) => {
          try {
            return [`${id} ${String(row)}: ${verdictOf(calculator, state, id, 'mm', row)}`];
          } catch {
            return [];
          }
        })
      : [],
  );

describe.each(calculators.map((calculator) => [calculator.slug, calculator] as const))(
  '%s, where limits are assumed',
  (slug, calculator) => {
    const limits = figuresOf(calculator, ({ judgesBy }) => judgesBy === true);
    const isLimit = (key: string): boolean => limits.includes(key);

    it('has each assumed figure decided on: one to judge by, or not', () => {
      const assumed = figuresOf(calculator, ({ assumed: one }) => one === true);
      expect(limits.filter((key) => !assumed.includes(key))).toEqual([]);
      expect(assumed.filter((key) => !isLimit(key))).toEqual(ASKED[slug] ?? []);
    });

    it('never calls one the reader’s, and says of each verdict that stands on one', () => {
      const next = spreader(41);
      for (let i = 0; i < 30; i += 1) {
        const given = someState(calculator, next)!;
        const state = withOrigins(calculator, given, (key) => !isLimit(key));
        const said = [...remarksOf(calculator, state), ...verdicts(calculator, state)];
        for (const line of said) expect(line).not.toMatch(READERS);
        for (const limit of limits) {
          const field = state.fields.find(({ key }) => key === limit);
          if (!field) continue;
          for (let turn = 0; turn < 4; turn += 1) judgedBy(calculator, state, field, next);
        }
      }
    });

    it('calls it so no longer once it is given', () => {
      const next = spreader(43);
      for (let i = 0; i < 10; i += 1) {
        const state = withOrigins(calculator, someState(calculator, next)!, () => true);
        const said = [...remarksOf(calculator, state), ...verdicts(calculator, state)].join('\n');
        expect(said).not.toMatch(/assumed/);
        for (const id of Object.keys(calculator.tables ?? {})) {
          expect(assumedLimits(calculator, state, id, 'mm')).toEqual([]);
        }
        expect(plainSummary(calculator, state, 'mm', 'x:')).not.toContain('(assumed)');
      }
    });
  },
);

/** Every line that another limit would change says that the limit is nobody's. */
function judgedBy(
  calculator: Calculator,
  state: Evaluation,
  field: Field,
  next: () => number,
): void {
  const texts = { ...whole(state), [field.key]: someText(field, next) };
  const origins = Object.fromEntries(
    state.fields.map(({ key, origin }): [string, Origin] => [key, origin]),
  );
  const other = evaluate(calculator, texts, { ...reading, origins });
  if (!other.computed) return;
  const after = remarksOf(calculator, other);
  const changed = remarksOf(calculator, state).filter((line) => !after.includes(line));
  for (const line of changed) expect(line, `${field.key}`).toMatch(NOBODYS);
  const rows = verdicts(calculator, other);
  for (const line of verdicts(calculator, state)) {
    if (rows.includes(line)) continue;
    const [table = ''] = line.split(' ');
    const named = assumedLimits(calculator, state, table, 'mm').map(({ key }) => key);
    expect(named, line).toContain(field.key);
  }
}

it('a link makes nobody answer for the limits that were assumed', () => {
  const wiring = calculatorBySlug('wiring');
  const state = (texts: Record<string, string>) =>
    evaluate(wiring, texts, { lengths: 'mm', origins: { length: 'yours', loss: 'yours' } });
  const assumed = originsIn(toQuery(state({ length: '4m' })));
  expect(assumed).toMatchObject({ length: 'link', loss: 'example', 'fuse-load': 'example' });
  const given = originsIn(toQuery(state({ length: '4m', loss: '4%' })));
  expect(given).toMatchObject({ loss: 'link', 'fuse-load': 'example' });
});
