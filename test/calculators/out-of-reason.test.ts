import { describe, expect, it } from 'vitest';
import { evaluate, type Texts } from '../../calculators/frame/evaluate.ts';
import { remarksOf } from '../../calculators/frame/whose.ts';
import { readNumber } from '../../calculators/sheet/read-number.ts';
import type { FigureKey } from '../../calculators/sheet/figures.ts';
import { newEngine } from '../../calculators/sheet/model.ts';
import { calculatorBySlug } from '../../site/all-calculators.ts';

const run = (slug: string, texts: Texts) =>
  evaluate(calculatorBySlug(slug), texts, { lengths: 'mm' });
const said = (slug: string, texts: Texts): string =>
  remarksOf(calculatorBySlug(slug), run(slug, texts)).join('\n');

describe('a ratio with hardly any oil', () => {
  it('is cautioned, of what is mixed and of what is in the tank', () => {
    const caution = /320 to 1 is less oil than engines are run on.*\(common practice\).*seizes/;
    expect(said('fuel-and-oil', { fuel: '3.5', ratio: '320' })).toMatch(caution);
    expect(said('fuel-and-oil', { fuel: '3.5', by: 'percent', percent: '0.3' })).toMatch(
      /333 to 1 is less oil/,
    );
    const tank = { fuel: '3', ratio: '32', already: '2', 'already-ratio': '500' };
    expect(said('fuel-and-oil', { fuel: '500', ratio: '25' })).toMatch(/500 litres of petrol/);
    expect(said('fuel-and-oil', { fuel: '20', ratio: '25' })).not.toMatch(/litres of petrol/);
    expect(said('fuel-and-oil', tank)).toMatch(/in the tank, 500 to 1, has less oil/);
  });

  it('is not cautioned up to a hundred to one', () => {
    for (const ratio of ['16', '50', '100']) {
      expect(said('fuel-and-oil', { fuel: '3.5', ratio })).not.toMatch(/less oil than engines/);
    }
  });
});

describe('a port wider than its bore', () => {
  const problemOf = (texts: Texts) =>
    run('time-area', texts)
      .problems.map((p) => p.sentence)
      .join();

  it('is refused beside its width', () => {
    const state = run('time-area', { bore: '52', 'exhaust-width': '70' });
    expect(state.computed).toBe(false);
    expect(state.problems.map(({ key }) => key)).toContain('exhaust-width');
    expect(problemOf({ bore: '52', 'exhaust-width': '70' })).toMatch(
      /A port of 70 mm is wider than its bore of 52 mm/,
    );
    expect(problemOf({ bore: '52', 'exhaust-width': '52' })).toBe('');
  });

  it('and ports that do not go round it together are, each within its chord', () => {
    // Two share the bore: half the circle each, whose chord is the bore. Three: 52 sin 60° = 45.03 mm.
    expect(problemOf({ bore: '52', 'transfer-width': '45.1', 'transfer-count': '3' })).toMatch(
      /3 ports of 45\.1 mm do not find room round a bore of 52 mm.*at most 45\.03/,
    );
    expect(problemOf({ bore: '52', 'transfer-width': '45', 'transfer-count': '3' })).toBe('');
  });

  it('of the example gives way to a bore of the reader’s own', () => {
    expect(run('time-area', { bore: '20' }).computed).toBe(true);
  });
});

describe('readings of a stop against where it must be', () => {
  // Law of cosines on 29, 112 and 141 less 7.62 mm, worked apart: 38.1° (2.283 in, 4.409 in, 0.3 in).
  const crank = { height: '0.3 in', stroke: '2.283 in', rod: '4.409 in', offset: '0' };
  const of = (before: string, after: string, more: Texts = {}) =>
    said('find-tdc', { ...crank, before, after, 'reading-error': '0.5', ...more });
  const DOUBT = /These readings stand .* from the top on either side, but .* stands 38\.1° from it/;

  it.each([
    ['170', '175'],
    ['4.4', '40'],
    ['38.5', '-43'],
  ])('are doubted: %s and %s', (before, after) => expect(of(before, after)).toMatch(DOUBT));

  it.each([
    ['38.5', '38'],
    ['44', '33'],
    ['321', '37'],
  ])('are let be: %s and %s', (before, after) => expect(of(before, after)).not.toMatch(DOUBT));

  it('are not held against the example’s stop', () => {
    expect(said('find-tdc', { before: '100', after: '105' })).not.toMatch(/These readings stand/);
    expect(said('find-tdc', {})).not.toMatch(/These readings stand/);
  });
});

describe('a crank of the sheet that cannot turn', () => {
  const read = (figures: Partial<Record<FigureKey, number>>, key: FigureKey, text: string) =>
    readNumber({ ...newEngine('e-1', 'T'), figures }, { kind: 'figure', key }, text, {
      lengths: 'mm',
    });

  it('is refused with the calculators’ own sentence, whichever is typed last', () => {
    const rod = read({ stroke: 50 }, 'rod', '20');
    expect(rod.problem).toMatch(/A rod of 20 mm cannot pass a crank throw of 25 mm/);
    expect(rod.value).toBeUndefined();
    expect(read({ rod: 20 }, 'stroke', '50').problem).toMatch(/cannot pass a crank throw/);
    expect(read({ stroke: 50, rod: 50 }, 'offset', '30').problem).toMatch(/A pin offset of 30 mm/);
    expect(read({ stroke: 50 }, 'rod', '100').problem).toBeUndefined();
    expect(read({}, 'rod', '20').problem).toBeUndefined();
    // A file of old that holds such a crank is shown as it is.
    expect(read({ stroke: 50, rod: 20 }, 'rod', '20').problem).toBeUndefined();
  });
});
