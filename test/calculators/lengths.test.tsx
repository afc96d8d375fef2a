import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { addressText } from '../../calculators/frame/address.ts';
import { evaluate, type Evaluation, type Texts } from '../../calculators/frame/evaluate.ts';
import { exampleWords } from '../../calculators/frame/field/examples.ts';
import { fieldUnit } from '../../calculators/frame/field/field-unit.ts';
import {
  readFigure,
  type FieldSpec,
  type FigureField,
} from '../../calculators/frame/field/fields.ts';
import { edgeIn } from '../../calculators/frame/text/format.ts';
import { showsLengths } from '../../calculators/frame/lengths.ts';
import { inputLines, resultLines } from '../../calculators/frame/summary.ts';
import { Absent, type ResultSpec, type TableSpec } from '../../calculators/frame/types.ts';
import { toShown, units, type LengthDisplay } from '../../calculators/frame/text/units.ts';
import { figureKeys, figureSpec } from '../../calculators/sheet/figures.ts';
import { steps } from '../../calculators/sheet/steps.ts';
import { calculators } from '../../site/all-calculators.ts';
import { remarksOf } from '../../calculators/frame/whose.ts';
import { Answer } from '../../site/calculator/Answer.tsx';
import { Form } from '../../site/calculator/Form.tsx';
import { More } from '../../site/calculator/More.tsx';
import { readAs, textInField, textToKeep } from '../../site/fields/field-text.ts';

/** Most significant digits of a figure in a field, and of any text that is shown. */
/** What a reader in inches is told of pressures, masses and temperatures, in brackets behind each. */
const TWINS = / \([^()]* (?:psi|lb|°F)\)/gu;

const IN_A_FIELD = 5;
const IN_A_TEXT = 7;

const digitsOf = (figure: string): number =>
  figure
    .replace(/^[-−+]/, '')
    .replace('.', '')
    .replace(/^0+/, '')
    .replace(/0+$/, '').length;

/** The place of the last digit of a figure, a whole one or finer: 0.01 for 2.25. */
const placeOf = (figure: number): number => 10 ** -(String(figure).split('.')[1]?.length ?? 0);

const read = (spec: FieldSpec, text: string, lengths: LengthDisplay): FigureField =>
  readFigure('x', spec, text, undefined, undefined, { lengths });

const everySpec: (readonly [string, FieldSpec])[] = [
  ...calculators.flatMap((calculator) => {
    const { fields, errorFields } = evaluate(calculator, {}, { lengths: 'mm' });
    return [...fields, ...errorFields].flatMap((field) =>
      field.kind === 'choice' ? [] : [[`${calculator.slug} ${field.key}`, field.spec] as const],
    );
  }),
  ...figureKeys.map((key) => [`the sheet’s ${key}`, figureSpec(key)] as const),
  ...Object.entries(steps).flatMap(([id, { reading }]) =>
    reading ? [[`the readings of ${id}`, { ...reading, help: '' } as FieldSpec] as const] : [],
  ),
];

/** Figures all over a range: its ends, round ones, and some that are round in no unit. */
function figuresOf({ min, max, step, whole }: FieldSpec): number[] {
  const parts = [0, 0.001, 0.0137, 0.1, 0.25, 1 / 3, 0.5, 0.77, 1];
  const inside = parts.map((part) => Number((min + part * (max - min)).toPrecision(6)));
  const near = [min + step, min + 3 * step, 0, step, 7 * step].map((n) => Number(n.toFixed(6)));
  return [...inside, ...near]
    .map((figure) => (whole ? Math.round(figure) : figure))
    .filter((figure) => figure >= min && figure <= max);
}

describe('a figure in millimetres, shown in inches and typed back', () => {
  it.each(everySpec)('%s is the same within the digits shown', (_, spec) => {
    const shown = fieldUnit(spec, 'in');
    for (const figure of figuresOf(spec)) {
      const field = read(spec, String(figure), 'in');
      const text = textInField(field, 'in');
      expect(digitsOf(text)).toBeLessThanOrEqual(shown === spec.unit ? 12 : IN_A_FIELD);
      const back = read(spec, textToKeep(text, field, 'in'), 'in').value!;
      const dust = Math.abs(figure) * 10 ** (1 - IN_A_FIELD);
      const finest =
        shown === spec.unit
          ? 0
          : Math.min(
              placeOf(Number(figure.toPrecision(IN_A_FIELD))),
              placeOf(spec.reads ?? spec.step),
            );
      expect(Math.abs(back - figure), text).toBeLessThanOrEqual(Math.max(dust, finest) / 2 + 1e-9);
      // No finer than the figure was, and than its tool reads or its field steps, beyond what the change of unit asks.
      const own = toShown(finest, shown);
      const least = shown === 'thou' ? 0.1 : 0;
      if (own > 0 && Number(text) >= least) {
        expect(placeOf(Number(text)), text).toBeGreaterThan(own / 10.01);
      }
      expect(digitsOf(readAs(field, 'in')?.replace(/^= |[^\d.−]+$/gu, '') ?? '')).toBeLessThan(6);
    }
  });

  it.each(everySpec)('%s takes what its range and its examples say', (_, spec) => {
    for (const lengths of ['mm', 'in'] as const) {
      const shown = fieldUnit(spec, lengths);
      const keep = (text: string) => read(spec, textToKeep(text, { spec }, lengths), lengths);
      for (const [edge, inward] of [
        [spec.min, 1],
        [spec.max, -1],
      ] as const) {
        const end = String(edgeIn(edge, shown, inward));
        expect(keep(end).problem, end).toBeUndefined();
        expect(digitsOf(end)).toBeLessThanOrEqual(shown === spec.unit ? 12 : IN_A_FIELD);
      }
      const examples = exampleWords(spec, lengths, spec.usual).split(/, | or /);
      for (const example of examples) expect(keep(example).problem, example).toBeUndefined();
      const own = units[spec.unit];
      expect(read(spec, 'abc', lengths).problem).toContain(own.label === '' ? '' : examples[1]);
    }
  });
});

describe('a figure typed in thou', () => {
  const gap = figureSpec('gap');
  const bore = figureSpec('bore');
  it.each([
    ['16 thou', gap, 'in', '16'],
    ['16thou', gap, 'in', '16'],
    ['16 thou', gap, 'mm', '16 thou'],
    ['16thou', gap, 'mm', '16 thou'],
    ['2008thou', bore, 'in', '2008 thou'],
    ['0.4', gap, 'in', '15.7'],
    ['0.4mm', gap, 'in', '15.7'],
    ['0.4mm', gap, 'mm', '0.4'],
    ['2in', bore, 'in', '2'],
    ['2in', bore, 'mm', '2 in'],
    ['15/32in', bore, 'mm', '15/32 in'],
    ['5l', bore, 'mm', '5l'],
    ['5furlongs', bore, 'in', '5furlongs'],
    ['900mm', bore, 'in', '900 mm'],
  ] as const)('%s stays as it is, with lengths in %3$s', (text, spec, lengths, wanted) => {
    expect(textInField(read(spec, text, lengths), lengths)).toBe(wanted);
  });

  it('says what it comes to in the other unit', () => {
    expect(readAs(read(gap, '18 thou', 'mm'), 'mm')).toBe('= 0.4572 mm');
    expect(readAs(read(gap, '0', 'in'), 'in')).toBeUndefined();
    expect(readAs(read(gap, '18thou', 'in'), 'in')).toBe('= 0.4572 mm');
    expect(readAs(read(bore, '2008 thou', 'in'), 'in')).toBe('= 2.008 in');
    expect(readAs(read(bore, '51', 'in'), 'in')).toBe('= 51 mm');
  });
});

/** Some states with more to say than the defaults. */
const states: Readonly<Record<string, readonly Texts[]>> = {
  compression: [{ 'squish-from': 'solder' }, { deck: '-5' }],
  'float-level': [{ 'found-1': '22', wanted: '12' }],
  'port-timing': [{ skirt: '45', by: '1' }],
  'slide-balance': [{ 'free-play-1': '0.1' }, { 'least-play': '5' }],
  'breaker-cam': [{ gap: '0.6', 'trial-gap-1': '0.3' }],
  'plate-layout': [{ 'least-wall': '20' }],
  'air-and-jet': [{ temperature: '-10' }, { jet: '2' }],
};

function textsOf(calculator: (typeof calculators)[number], evaluation: Evaluation): string[] {
  const { values, results, spreads } = evaluation;
  const known = { lengths: 'in', spreads, isAssumed: () => true } as const;
  const said = Object.entries<TableSpec>(calculator.tables ?? {}).flatMap(([id, table]) => {
    const column = Object.entries<ResultSpec>(calculator.results).find(([, r]) => r.table === id);
    const rows = column ? results[column[0]] : undefined;
    if (!Array.isArray(rows)) return [];
    return rows.flatMap((_, i) => [
      table.row(values, i + 1, 1, known),
      table.verdict?.say(values, results, i + 1, 1, known) ?? '',
    ]);
  });
  return [
    ...inputLines([...evaluation.fields, ...evaluation.errorFields], 'in').map(({ text }) => text),
    ...resultLines(calculator, evaluation, 'in').flatMap(({ label, text }) => [label, text]),
    ...remarksOf(calculator, evaluation, 'in'),
    ...said,
  ];
}

describe.each(calculators.map((calculator) => [calculator.slug, calculator] as const))(
  '%s with lengths in inches',
  (slug, calculator) => {
    const all = [{}, ...(states[slug] ?? [])];

    it('says no millimetre, and no figure with more digits than anybody can measure', () => {
      for (const texts of all) {
        const evaluation = evaluate(calculator, texts, { lengths: 'in' });
        expect(evaluation.computed, JSON.stringify(texts)).toBe(true);
        for (const text of textsOf(calculator, evaluation)) {
          // Wire is sold by mm² everywhere.
          const length = calculator.slug === 'wiring' ? text.replaceAll(/mm²/gu, '') : text;
          expect(length).not.toMatch(/\d\s?mm\b/u);
          for (const [figure] of text.matchAll(/\d+(?:\.\d+)?/gu)) {
            expect(digitsOf(figure), text).toBeLessThanOrEqual(IN_A_TEXT);
          }
        }
      }
    });

    it('has a small length in thou, all of one column in one unit', () => {
      const evaluation = evaluate(calculator, {}, { lengths: 'in' });
      for (const [name, spec] of Object.entries<ResultSpec>(calculator.results)) {
        const value = evaluation.results[name];
        if (spec.unit !== 'mm' || value === undefined || value instanceof Absent) continue;
        const label = new RegExp(` (in|thou)\\b`, 'u');
        const lines = resultLines({ ...calculator, results: { [name]: spec } }, evaluation, 'in');
        const shown = lines.map(({ text }) => label.exec(text)?.[1]);
        expect(new Set(shown).size, lines.map(({ text }) => text).join()).toBeLessThanOrEqual(1);
        const figures = [value].flat(2) as number[];
        const spread = evaluation.spreads[name] ?? 0;
        const most = Math.max(spread, ...figures.map(Math.abs));
        if (most > 0 && figures.length === 1) {
          expect(shown[0], lines[0]?.text).toBe(most < 2.54 ? 'thou' : 'in');
        }
      }
    });

    it('offers the choice where it changes anything, and there alone', () => {
      const html = (lengths: LengthDisplay): string => {
        const evaluation = evaluate(calculator, {}, { lengths });
        const nothing = () => undefined;
        const shared = { calculator, evaluation, lengths, idPrefix: '' };
        const now = () => ({ evaluation, lengths });
        const figures = (
          <>
            <Answer {...shared} />
            <Form {...shared} onText={nothing} onCommit={nothing} />
          </>
        );
        const more = <More {...shared} now={now} />;
        const { picture: Picture } = calculator;
        const { values, results, spreads } = evaluation;
        const drawn = (
          <Picture
            {...{ values, results, lengths, idPrefix: '', set: nothing, commit: nothing }}
            spreads={() => spreads}
          />
        );
        return render(
          <>
            {figures}
            {more}
            {drawn}
          </>,
        )
          .replaceAll(/ checked/gu, '')
          .replaceAll(TWINS, '');
      };
      expect(html('mm') !== html('in')).toBe(showsLengths(calculator));
      expect(html('mm').includes('Lengths in')).toBe(showsLengths(calculator));
    });
  },
);

describe('a bare 0.014 in a field of thou', () => {
  const gap = figureSpec('gap');
  const read = (typed: string) =>
    readFigure('gap', gap, textToKeep(typed, { spec: gap }, 'in'), undefined, undefined, {
      lengths: 'in',
    });

  it('is asked about, since it looks like inches', () => {
    for (const typed of ['0.014', '.014', '0,014']) {
      expect(read(typed).problem, typed).toBe(
        `“${typed}” looks like inches, and a bare figure here is in thou. With its unit, type “${typed} in”.`,
      );
      expect(read(typed).value).toBeUndefined();
    }
  });

  it('is asked about within a sum too, and not where each term has its unit', () => {
    for (const typed of ['0.014 + 0.01', '0.014 + 0.2 mm']) {
      expect(read(typed).problem, typed).toContain('looks like inches');
    }
    for (const typed of ['0.05 mm + 0.15 mm', '0.05mm+0.15mm', '2 * 0.05 mm']) {
      expect(textToKeep(typed, { spec: gap }, 'in'), typed).not.toContain('in or thou');
    }
  });

  it('is read with its unit, and whole thou without one', () => {
    expect(read('0.014 in').value).toBeCloseTo(0.3556, 9);
    expect(read('14').value).toBeCloseTo(0.3556, 9);
  });
});

describe('what is refused with lengths in inches is quoted as it was typed', () => {
  const asTyped = (spec: FieldSpec, typed: string) =>
    readFigure('x', spec, textToKeep(typed, { spec }, 'in'), undefined, undefined, {
      lengths: 'in',
    });
  it.each([
    ['900', figureSpec('bore')],
    ['900in', figureSpec('bore')],
    ['900 in', figureSpec('bore')],
    ['5000', figureSpec('gap')],
    ['5000thou', figureSpec('gap')],
    ['16 furlongs', figureSpec('gap')],
  ] as const)('%s', (typed, spec) => {
    const { problem, text } = asTyped(spec, typed);
    expect(problem).toContain(typed.endsWith('furlongs') ? '“furlongs”' : `“${typed}”`);
    expect(addressText(asTyped(spec, typed))).not.toContain('\u2060');
    expect(textInField(asTyped(spec, typed), 'in')).not.toContain('\u2060');
    expect(text.replace('\u2060', '')).toMatch(/^\d+ ?\p{L}+$/u);
  });

  it('and is not a figure with another meaning once it is in an address', () => {
    const kept = asTyped(figureSpec('bore'), '2');
    expect(kept.value).toBeCloseTo(50.8, 9);
    expect(addressText(kept)).toBe('2in');
    expect(textInField(kept, 'in')).toBe('2');
    expect(textInField(kept, 'mm')).toBe('2 in');
  });
});
