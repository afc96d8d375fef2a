import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { evaluate, knownKeys } from '../../calculators/frame/evaluate.ts';
import { fromQuery, originsIn } from '../../calculators/frame/address.ts';
import type { FigureField } from '../../calculators/frame/field/fields.ts';
import { Absent } from '../../calculators/frame/types.ts';
import { remarksOf } from '../../calculators/frame/whose.ts';
import { fillableKeys, fillFrom, leftOut, queryFor } from '../../calculators/sheet/fill.ts';
import { newEngine } from '../../calculators/sheet/model.ts';
import { calculators } from '../../site/all-calculators.ts';
import { Tables } from '../../site/calculator/Tables.tsx';
import { readAs } from '../../site/fields/field-text.ts';
import { Groups } from '../../site/fields/Groups.tsx';

const named = (slug: string) => calculators.find((one) => one.slug === slug)!;
const given = (slug: string, query: string) =>
  evaluate(named(slug), fromQuery(query), { lengths: 'mm', origins: originsIn(query) });

describe('a magneto', () => {
  const engine = (figures: object) => ({ ...newEngine('own', 'Own'), figures });
  const magneto = engine({ volts: 6, resistance: 1.2, 'fed-coils': 0, lobes: 1 });

  it.each(['coil-charge', 'wiring'])('gets no advice from %s, which says why', (slug) => {
    const calculator = named(slug);
    expect(calculator.purpose).toMatch(
      /^For (?:a coil|coils) fed from a battery, not by a magneto/,
    );
    expect(calculator.alsoCalled).toContain('magneto');
    const keys = fillableKeys(slug, knownKeys(calculator));
    const { forBattery } = calculator;
    expect(queryFor(magneto, slug, { keys, forBattery })).toBe('');
    expect(queryFor(magneto, slug, { keys })).not.toBe('');
    expect(leftOut(magneto, calculator)).toMatch(/no coil is fed from a battery/);
    const state = evaluate(calculator, {}, { lengths: 'mm', ownEngine: true });
    for (const line of remarksOf(calculator, state)) expect(line).toMatch(/^Not judged yet/);
    const battery = engine({ ...magneto.figures, 'fed-coils': 1 });
    expect(leftOut(battery, calculator)).toBeUndefined();
    expect(fillFrom(battery, slug, knownKeys(calculator))).toMatchObject({ volts: '6V' });
  });

  it('is filled in everywhere else', () => {
    expect(leftOut(magneto, named('breaker-cam'))).toBeUndefined();
    expect(fillFrom(magneto, 'breaker-cam', knownKeys(named('breaker-cam')))).toHaveProperty(
      'lobes',
    );
  });
});

it('an upright row is judged without a lean for each of its cylinders', () => {
  const pins = 'cylinders=4&pin-1=0&pin-2=180&pin-3=180&pin-4=0';
  const said = remarksOf(named('firing-order'), given('firing-order', pins)).join('\n');
  expect(said).not.toMatch(/[Ll]ean of cylinder/);
  expect(said).toMatch(/^It fires evenly, every 180°/);
});

it('cylinders on one pin are asked how they lean, where nobody has said', () => {
  const said = (query: string): string =>
    remarksOf(named('firing-order'), given('firing-order', query)).join('\n');
  const row = /Cylinders on one pin fire together only if they stand in a row/;
  expect(said('cylinders=2&pin-1=0&pin-2=0')).toMatch(row);
  expect(said('cylinders=4&pin-1=0&pin-2=180&pin-3=180&pin-4=0')).toMatch(row);
  expect(said('cylinders=2&pin-1=0&pin-2=180')).not.toMatch(row);
  expect(said('cylinders=2&pin-1=0&pin-2=0&lean-1=0&lean-2=0')).not.toMatch(row);
  expect(said('cylinders=3&firing-order=132')).not.toMatch(row);
});

it('of one needle of the reader’s own nothing is said about the example’s second', () => {
  const { results } = given('needle-and-clip', 'jet-bore=2.4mm&needle-diameter=2.3mm');
  const said = Object.values(results).flatMap((one) => (one instanceof Absent ? [one.why] : []));
  expect(said.join(' ')).not.toMatch(/second needle/);
});

describe('own float heights and nothing else', () => {
  const query = 'height=24mm&found-1=23mm&found-2=24mm&found-3=25.5mm';
  const state = given('float-level', query);

  it('are held against each other, and how far to bend is not said', () => {
    const said = remarksOf(named('float-level'), state);
    expect(said.join('\n')).toMatch(/bend the tang of carburettors 1 and 3\./);
    expect(said.join('\n')).not.toMatch(/[Tt]able says/);
    expect(said.join('\n')).toMatch(/Not judged yet: how far to bend each tang\. Pivot to needle/);
  });

  it('stand in a table whose columns say that they hang on the example, and by what it judges', () => {
    const html = renderToString(
      <Tables calculator={named('float-level')} evaluation={state} lengths="mm" />,
    );
    expect(html).toMatch(
      /Assumed here: near enough 0\.3 mm<span class="whose-beside">With figures of the example\./,
    );
  });
});

describe('what holds for columns or rows alike is said once, above them', () => {
  const tableOf = (slug: string, query: string): string =>
    renderToString(
      <Tables calculator={named(slug)} evaluation={given(slug, query)} lengths="mm" />,
    );
  const notesIn = (html: string): string[] =>
    [...html.matchAll(/whose-beside">(.*?)</gu)].map(([, words]) => words!);

  it('whose figures a column rests on, and all of them where it is all', () => {
    const html = tableOf('plate-layout', 'sets=2&bore=40mm&outside=90mm');
    for (const table of html.split('<table').slice(1)) {
      const notes = notesIn(table);
      expect(new Set(notes).size).toBe(notes.length);
      expect(table.split('</caption>')[1]).not.toMatch(/the example/);
    }
    expect(html).toContain('>With figures of the example.<');
    expect(notesIn(html).some((note) => /^With the example’s .*: .*, .*\.$/u.test(note))).toBe(
      true,
    );
  });

  it('why no row is judged yet', () => {
    const html = tableOf('plate-setting', 'fired-1=2.3mm');
    expect(html.match(/not judged yet/g)).toHaveLength(1);
    expect(notesIn(html).at(-1)).toMatch(
      /^Within tolerance: not judged yet, since .* still the example’s\.$/,
    );
    expect(html).not.toContain('row-words');
  });
});

it('slides that stand already are told in the number that they have', () => {
  const said = (openings: readonly number[]): string =>
    remarksOf(
      named('slide-balance'),
      given(
        'slide-balance',
        `slides=${String(openings.length)}&thread=1mm&method=drill&${openings.map((mm, i) => `opening-${String(i + 1)}=${String(mm)}mm`).join('&')}`,
      ),
    ).join('\n');
  expect(said([2.6, 2.9, 2.9])).toContain('which slides 2 and 3 have already: leave those alone.');
  expect(said([2.6, 2.5, 2.9])).toMatch(/which slide \d has already: leave that one alone\./);
});

it('a ratio with the oil first is read, and said to be', () => {
  const field = given('fuel-and-oil', 'fuel=5l&ratio=1:25').fields.find(
    ({ key }) => key === 'ratio',
  ) as FigureField;
  expect([field.value, field.problem]).toEqual([25, undefined]);
  expect(readAs(field, 'mm')).toBe('= 25 : 1: read the other way round.');
  const plain = given('fuel-and-oil', 'ratio=25').fields.find(({ key }) => key === 'ratio');
  expect(readAs(plain as FigureField, 'mm')).toBeUndefined();
  const usual = given('fuel-and-oil', 'ratio=25:1').fields.find(({ key }) => key === 'ratio');
  expect(readAs(usual as FigureField, 'mm')).toBeUndefined();
  const odd = given('fuel-and-oil', 'ratio=2:50').fields.find(({ key }) => key === 'ratio');
  expect(odd?.problem).toBeDefined();
});

it('a folded group names a refused field as refused, and no figure of the example for it', () => {
  const { fields } = given('piston-position', 'travel=1.95mm&stroke=42mm&rod=92xx&offset=abc');
  const nothing = () => undefined;
  const html = renderToString(
    <Groups
      fields={fields}
      side={undefined}
      lengths="mm"
      marked
      idPrefix="x-"
      onText={nothing}
      onCommit={nothing}
    />,
  );
  const lines = [...html.matchAll(/class="fold-holds">([^<]*)</g)]
    .map(([, line]) => line)
    .join('|');
  expect(lines).toMatch(/rod length: refused · .*pin offset: refused/);
  expect(lines).not.toMatch(/104 mm/);
});
