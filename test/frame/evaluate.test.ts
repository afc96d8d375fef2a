import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import airAndJet from '../../calculators/carburettors/air-and-jet/calculator.tsx';
import calculator from '../../calculators/position/piston-position/calculator.tsx';
import { fromQuery, toQuery } from '../../calculators/frame/address.ts';
import { calculatorBySlug } from '../../site/all-calculators.ts';
import { evaluate, type Texts } from '../../calculators/frame/evaluate.ts';
import { markdownLink, plainSummary } from '../../calculators/frame/copies.ts';
import { flatten } from '../../calculators/frame/spreads.ts';
import { Absent } from '../../calculators/frame/types.ts';

const run = (texts: Texts, held = {}) => evaluate(calculator, texts, { lengths: 'mm', held });
const defaults = run({});
const sentences = (texts: Texts) => run(texts).problems.map(({ sentence }) => sentence);

describe('the bad input table', () => {
  it.each<[string, Texts, string | undefined, RegExp]>([
    ['empty', { stroke: '' }, 'stroke', /Stroke is empty. Type a length, from 10 mm to 200 mm/],
    ['letters', { stroke: 'abc' }, 'stroke', /“abc” cannot be read as a length/],
    ['huge', { stroke: '1e9' }, 'stroke', /Stroke must be from 10 mm to 200 mm/],
    ['negative', { stroke: '-51' }, 'stroke', /Stroke must be from 10 mm to 200 mm/],
    ['zero', { stroke: '0' }, 'stroke', /Stroke must be from 10 mm to 200 mm/],
    ['rod too short', { rod: '25' }, 'rod', /rod/i],
    ['travel beyond the stroke', { travel: '60' }, 'travel', /stroke|bottom/i],
    ['offset beyond rod less crank', { rod: '40', offset: '20' }, 'offset', /offset/i],
    ['script', { travel: '<script>alert(1)</script>' }, 'travel', /cannot be read as a length/],
    ['no such choice', { from: 'dwell' }, 'from', /“dwell” is not a choice/],
    ['beyond the bottom', { from: 'angle', angle: '185' }, 'angle', /bottom dead centre/],
    ['unknown key', { colour: 'red' }, undefined, /“colour”, which this calculator does not know/],
    ['prototype as key', fromQuery('__proto__=1'), undefined, /“__proto__”/],
  ])('%s gives its sentence beside its field, and the text stays', (_, texts, key, sentence) => {
    const { problems, fields } = run(texts);
    const found = problems.find((problem) => sentence.test(problem.sentence));
    expect(found, JSON.stringify(problems)).toBeDefined();
    expect(found?.key).toBe(key);
    if (key !== undefined) {
      const field = fields.find((candidate) => candidate.key === key);
      expect(field?.problem).toMatch(sentence);
      if (texts[key] !== undefined) expect(field?.text).toBe(texts[key]);
    }
  });

  it('an unknown key changes nothing', () => {
    expect(run({ colour: 'red' }).results).toEqual(defaults.results);
  });

  it.each<[Texts, string]>([
    [{ stroke: 'abc' }, ''],
    [{ from: 'dwell' }, ''],
    [{ rod: '' }, ''],
    [{ rotor: 'abc' }, 'angle travel given-travel degrees-per-tenth dial-reading'],
    [{ 'rotor-error': 'abc' }, 'angle travel given-travel degrees-per-tenth dial-reading'],
    [{ tilt: 'abc' }, 'angle travel given-travel degrees-per-tenth arc'],
  ])(
    'a link with %j leaves no result that rests on it, and the others as they were',
    (texts, left) => {
      const { results, computed } = run(texts);
      expect(computed).toBe(false);
      for (const name of Object.keys(results)) {
        if (left.split(' ').includes(name)) expect(results[name]).toEqual(defaults.results[name]);
        else expect(results[name]).toBeInstanceOf(Absent);
      }
    },
  );

  it('holds the last good value while a text cannot be read, and whose it was', () => {
    const held = { travel: { value: 3, origin: 'sheet' } } as const;
    const state = run({ travel: 'x' }, held);
    expect(state.results).toEqual(run({ travel: '3' }).results);
    expect(state.fields.find(({ key }) => key === 'travel')).toMatchObject({
      heldOver: true,
      origin: 'sheet',
    });
    expect(toQuery(state)).toContain('travel=3mm&');
  });

  it.each(['1'.repeat(1001), `2.2${' '.repeat(30_000)}`, '😀'.repeat(600), `a${'😀'.repeat(600)}`])(
    'a text too long for a figure is no figure, and is cut between letters',
    (text) => {
      const texts = fromQuery(`travel=${encodeURIComponent(text)}`);
      expect(texts.travel!.length).toBeLessThan(1003);
      expect(texts.travel).not.toMatch(/\p{Surrogate}/u);
      expect(run(texts).problems[0]!.sentence).toMatch(/holds more than 1000 letters/);
      expect(() => toQuery(run(texts))).not.toThrow();
    },
  );

  it('leaves no result for an impossible engine, and says why', () => {
    const { results } = run({ rod: '25' });
    for (const value of Object.values(results)) expect(value).toBeInstanceOf(Absent);
  });

  it('has no slope to show at the top itself', () => {
    const { results } = run({ travel: '0' });
    expect(results['degrees-per-tenth']).toBeInstanceOf(Absent);
    expect(results.angle).toBe(0);
  });
});

describe('the address', () => {
  it('comes back to the same state, whatever was typed', () => {
    const typed = fc.oneof(
      fc.double({ min: 0.1, max: 40, noNaN: true }).map((n) => n.toFixed(3)),
      fc.constantFrom('2,2', '87 thou', '3/32 in', 'abc', '', '<b>', '1e400', '5 kg', 'a&b=c#d'),
    );
    fc.assert(
      fc.property(fc.record({ travel: typed, stroke: typed, rod: typed }), (texts) => {
        const before = run(texts);
        const after = run(fromQuery(`?${toQuery(before)}`));
        expect(flatten(after.results)).toEqual(flatten(before.results));
        expect(after.problems.length).toBe(before.problems.length);
      }),
    );
  });

  it('writes a unit beside every figure, so that it means the same for ever', () => {
    expect(toQuery(run({ travel: '2,5' }))).toBe(
      'example=stroke,rod,rotor&from=travel&travel=2,5mm&given=same&stroke=51mm&rod=104mm&offset=0mm&rotor=95mm&tilt=0deg' +
        '&travel-error=0.02mm&stroke-error=0.05mm&rod-error=0.1mm&rotor-error=0.1mm',
    );
  });

  it('takes no exception at any query', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 300 }), (query) => {
        const { results } = run(fromQuery(query));
        for (const value of Object.values(results)) {
          if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
        }
      }),
    );
  });
});

describe('the ± of a result', () => {
  it('follows the slope of the working point', () => {
    // Reading error alone: ±0.02 mm at a slope of degrees-per-tenth for 0.1 mm, to first order.
    const exact = { 'stroke-error': '0', 'rod-error': '0', 'rotor-error': '0' };
    const { results, spreads } = run({ ...exact, travel: '2.2', 'travel-error': '0.02' });
    const slope = (results['degrees-per-tenth'] as number) / 0.1;
    expect(spreads.angle).toBeCloseTo(0.02 * slope, 4);
  });

  it('grows when a reading gets worse', () => {
    expect(run({ 'travel-error': '0.1' }).spreads.angle!).toBeGreaterThan(defaults.spreads.angle!);
  });

  it.each([1, 2.3, 5, 30, 48, 49, 120])(
    'never shrinks when a travel of 2.2 is out by %d',
    (error) => {
      const of = (e: number) => run({ travel: '2.2', 'travel-error': String(e) }).spreads.angle!;
      expect(of(error * 1.1)).toBeGreaterThanOrEqual(of(error));
      expect(of(error)).toBeGreaterThan(0);
    },
  );

  it('never shrinks when the humidity of the air is known less and less', () => {
    const of = (error: number) =>
      evaluate(
        airAndJet,
        { pressure: '100', humidity: '50', 'humidity-error': String(error) },
        { lengths: 'mm' },
      ).spreads.jet!;
    const spreads = [10, 30, 49, 50, 51, 70, 99].map(of);
    expect(spreads).toEqual([...spreads].sort((a, b) => a - b));
    expect(of(51)).toBeGreaterThan(of(30));
  });

  it('is reported when it cannot be read', () => {
    expect(sentences({ 'travel-error': 'lots' })[0]).toMatch(/cannot be read/);
  });
});

describe('the summary', () => {
  const link = 'https://forum.example/calculators/piston-position/?travel=2.2mm';
  it('says inputs, results and link in plain text', () => {
    const text = plainSummary(calculator, defaults, 'mm', link);
    expect(text).toContain('Piston travel: 2.2 mm');
    expect(text).toMatch(/Crank angle: 21\.5\d? ± 0\.\d+° BTDC/);
    expect(text.endsWith(link)).toBe(true);
  });
  it('makes one Markdown link that nothing typed can break', () => {
    const text = markdownLink(calculator, defaults, 'mm', `${link}(x)`);
    expect(text).toMatch(/^\[Piston position and crank angle: .*\]\(https:[^()\s]*\)$/);
  });
});

it('a box that was left with what cannot be read holds nothing over: no result rests on it', () => {
  const of = (held: object) => {
    const state = run({ stroke: 'wide' }, { stroke: { value: 50, origin: 'yours', ...held } });
    return { ...state.fields.find(({ key }) => key === 'stroke')!, computed: state.computed };
  };
  expect(of({})).toMatchObject({ value: 50, heldOver: true, unread: false, computed: true });
  expect(of({ left: true })).toMatchObject({ heldOver: false, unread: true, computed: false });
});

it('a text that cannot be read is told once, and blames no figure of the example', () => {
  const state = evaluate(
    calculatorBySlug('hole-pattern'),
    { 'distance-2': 'xyz' },
    { lengths: 'mm' },
  );
  const [first] = state.problems;
  expect(first!.sentence).toMatch(/^“xyz” cannot be read/);
  for (const value of Object.values(state.results)) {
    if (value instanceof Absent && value.why.includes('xyz'))
      expect(value.why).toBe(first!.sentence);
  }
  expect(state.results['rms']).toBeInstanceOf(Absent);
});
