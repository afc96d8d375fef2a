import { describe, expect, it } from 'vitest';
import findTdc from '../../calculators/position/find-tdc/calculator.tsx';
import { evaluate, type Texts } from '../../calculators/frame/evaluate.ts';
import type { FigureField } from '../../calculators/frame/field/fields.ts';
import { readAs } from '../../site/fields/field-text.ts';
import { flatten } from '../../calculators/frame/spreads.ts';
import { remarksOf } from '../../calculators/frame/whose.ts';
import { said } from './said.ts';

const asked = (texts: Texts) => evaluate(findTdc, texts, { lengths: 'mm' });

describe('which way to turn the disc', () => {
  const said = (texts: Texts) => remarksOf(findTdc, asked(texts))[0]!;

  // By hand: half of 43 less 39 is 2, so that 0 stands 2° behind the pointer at the top.
  it.each([
    ['before', '39', '43', /by 2\.0°, against the way the engine turns: /],
    ['after', '43', '39', /by 2\.0°, the way the engine turns: /],
  ])('is said in words where the top lies %s its zero', (_, before, after, words) => {
    expect(said({ before, after })).toMatch(words);
  });

  it('is none within what the readings can tell', () => {
    expect(said({ before: '40', after: '40.2' })).toMatch(/leave it/);
  });
});

describe('readings that a disc of either kind may show', () => {
  // By hand: one way round the top lies at (30 + 50) / 2 = 40; both ways at (50 − 30) / 2 = 10 after zero.
  it('are not turned by before the kind is said, and both are told', () => {
    const evaluation = asked({ before: '30', after: '50' });
    const [turn] = remarksOf(findTdc, evaluation);
    expect(turn).toMatch(/^Do not turn the disc yet/);
    expect(turn).toContain('one way round, it is to be turned by 40.0°, against');
    expect(turn).toContain('both ways from its zero, by 10.0°, against');
    const { word } = findTdc.results['tdc-reading'];
    expect(word(40, evaluation.values)).toBe('counted one way');
  });

  it('are turned by at once where it was said', () => {
    const evaluation = asked({ before: '30', after: '50', scale: 'both-ways' });
    expect(remarksOf(findTdc, evaluation)[0]).toMatch(/^Turn the disc on the crank by 10\.0°/);
    expect(findTdc.results['tdc-reading'].word(10, evaluation.values)).toBe('on the disc');
  });
});

describe('three readings of one place', () => {
  it('count with their mean, and are held against the ± of a reading', () => {
    const { results, fields } = asked({ before: '44; 44.5; 43.5', after: '40' });
    expect(results['tdc-reading']).toBeCloseTo(-2, 9);
    const field = fields.find(({ key }) => key === 'before')!;
    expect(field).toMatchObject({ stated: 0.5, readings: [44, 44.5, 43.5] });
    expect(readAs(field as FigureField, 'mm')).toContain('the ± given for one, ± 0.5°');
  });
});

describe('the two methods', () => {
  it('share the arithmetic', () => {
    expect(flatten(asked({ method: 'equal' }).results)).toEqual(
      flatten(asked({ method: 'stop' }).results),
    );
  });

  it.each([
    ['stop', /positive stop.*backwards, all the way round/],
    ['equal', /equal height.*over the top.*lean of the indicator drops out/],
  ])('%s says how its second reading is taken', (method, words) => {
    const said = remarksOf(findTdc, asked({ method }));
    expect(said.filter((remark) => words.test(remark))).toHaveLength(1);
  });
});

describe('readings beside the height of the stop', () => {
  // By the law of cosines, throw 25.5 and rod 104: 8 mm below the top at 42.12°, 8.8 mm at 44.34°. A tenth
  // of the height is 2.2°, and two readings of ± 0.5° are 1° more.
  const stop = { stroke: '51', rod: '104', offset: '0', height: '8', 'reading-error': '0.5' };
  const of = (at: string, more: Texts = {}): string =>
    said('find-tdc', { ...stop, before: at, after: at, ...more });
  const wrong = /These readings stand/;

  it('that do not go with it are told so, each with its own angle', () => {
    expect(of('45.5')).toContain(
      'These readings stand 45.5° from the top on either side, but a piston stopped 8 mm below it on this crank and rod stands 42.1° from it.',
    );
    expect(of('38.5')).toMatch(wrong);
  });

  it('go with it within a tenth of the height and both readings, and always within 3°', () => {
    expect(of('45.2')).not.toMatch(wrong);
    expect(of('45', { 'reading-error': '0' })).not.toMatch(wrong);
    expect(of('45.2', { 'reading-error': '0' })).toMatch(wrong);
  });
});

describe('how the disc counts', () => {
  const bothWays =
    /so many degrees before it, so many after it\. Add the correction to a reading after the zero, and take it off a reading before the zero\./;
  const oneWay = /the first reading on to the second\. Add the correction to every reading\./;
  const of = (texts: Texts): string => said('find-tdc', texts);

  // The top at 2° before the zero: + 2° takes 22° before it to 20°, and 20° after it to 22°. One way round
  // it lies at 358°, and + 2° takes that to 360°.
  it('goes by the readings, which may be spoken against, or by what was chosen', () => {
    const auto = of({ before: '43', after: '39', scale: 'auto' });
    expect(auto).toMatch(bothWays);
    expect(auto).toContain('If yours counts otherwise, choose it above.');
    const chosen = of({ before: '317', after: '39', scale: 'one-way' });
    expect(chosen).toMatch(oneWay);
    expect(chosen).not.toMatch(bothWays);
    expect(chosen).not.toContain('choose it above');
    expect(asked({ before: '317', after: '39', scale: 'one-way' }).results).toMatchObject({
      'disc-correction': 2,
    });
  });
});

it('a height beyond the stroke is told beside the height', () => {
  const { fields } = asked({ height: '60', stroke: '51' });
  expect(fields.find(({ key }) => key === 'height')!.problem).toMatch(/60/);
});
