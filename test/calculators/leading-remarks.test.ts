import { describe, expect, it } from 'vitest';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import { leadingRemarks } from '../../calculators/frame/whose.ts';
import { calculators } from '../../site/all-calculators.ts';
import { allGiven, reading } from './states.ts';
import { lookHere, said } from './said.ts';

const ENGINE = { stroke: '54', rod: '110' };

describe('what stands under an answer that is not to be gone by', () => {
  it.each(calculators.map((calculator) => [calculator.slug, calculator] as const))(
    '%s: nothing beside its example, or the same figures given',
    (_, calculator) => {
      const state = evaluate(calculator, {}, reading);
      expect(leadingRemarks(calculator, state, 'mm')).toEqual([]);
      expect(leadingRemarks(calculator, allGiven(calculator, state), 'mm')).toEqual([]);
    },
  );

  // By hand from x = r (1 − cos θ) + l − √(l² − r² sin² θ): 19.5 mm are 67.3° on 54 and 110, 1.7 mm 18.5°.
  it('plate-setting: a reading ten times out, and one with its sign wrong', () => {
    const of = (first: string, second: string) =>
      lookHere('plate-setting', {
        ...ENGINE,
        ...{ cylinders: '2', target: '1.7', 'fired-1': first, 'fired-2': second },
      });
    expect(of('1.95', '1.7')).toEqual([]);
    expect(of('19.5', '1.7')[0]).toBe(
      'Cylinder 1 fires more than 50° before the top, where no such engine does.',
    );
    expect(of('19.5', '1.7')[1]).toMatch(/^\d\d° between cylinders is more than slots allow\.$/);
    expect(of('1.7', '-1.95')[0]).toBe('Cylinder 2 fires after the top, as the minus says.');
    expect(of('-1.7', '-1.95')[0]).toBe('Cylinders 1 and 2 fire after the top, as the minus says.');
  });

  it('piston-position: between the earliest spark and the first port', () => {
    const of = (travel: string) => lookHere('piston-position', { ...ENGINE, travel });
    // 11.4 mm are 49.5°, 11.8 mm 50.4°; 23 mm 74.6°, 23.5 mm 75.6°.
    expect(of('11.4')).toEqual([]);
    expect(of('11.8')[0]).toMatch(
      /^50\.\d° before the top is earlier than any such engine fires: if/,
    );
    expect(of('23')).toHaveLength(1);
    expect(of('23.5')).toEqual([]);
  });

  it('find-tdc: readings that do not go with the stop, and of either kind of disc', () => {
    const of = (before: string, after: string, scale: string) =>
      lookHere('find-tdc', { ...ENGINE, before, after, scale, height: '7.5' });
    // 7.5 mm are 39.5°.
    expect(of('39.5', '39.5', 'both-ways')).toEqual([]);
    const [apart, open] = of('44.5', '138', 'auto');
    expect(apart).toMatch(/^These readings stand 46\.8° from the top .* stands 39\.5° from it\.$/);
    expect(open).toBe('Do not turn the disc yet: these readings may come from either kind.');
    expect(of('44.5', '138', 'one-way')).toHaveLength(1);
  });

  it('jet-set: no set alike within what is allowed', () => {
    const bag = { by: 'pin', jets: '4', wanted: '4', tolerance: '4' };
    const of = (odd: string) => ({
      ...bag,
      ...{ 'bore-1': '1.05', 'bore-2': '1.05', 'bore-3': odd, 'bore-4': '1.05' },
    });
    expect(lookHere('jet-set', of('1.06'))).toEqual([]);
    expect(said('jet-set', of('1.06'))).toMatch(/^Fit jets 1, 2, 3 and 4:/m);
    expect(lookHere('jet-set', of('0.41'))[0]).toMatch(
      /^No 4 of these jets are alike within 4\.0 per cent of area.*: the best set differs by \d+\.\d per cent\.$/,
    );
    expect(said('jet-set', of('0.41'))).not.toMatch(/^Fit/m);
  });

  it('compression: a ratio that no such engine has, from a volume ten times out', () => {
    // 54 and 54 sweep 123.7 cc: over 105 cc and little more the ratio is near 2, over 3 cc beyond 18.
    const of = (volume: string) =>
      lookHere('compression', { ...ENGINE, bore: '54', 'head-volume': volume, dome: '0' });
    expect(of('14')).toEqual([]);
    expect(of('105')[0]).toMatch(
      /^A geometric ratio of 2\.\d is less than such engines have, 4 to 18/,
    );
    expect(of('3')[0]).toMatch(/is more than such engines have, 4 to 18/);
  });

  it('compression: a squish in which crown and head may meet at speed', () => {
    // 54 mm of bore: 0.3 is 0.56 per cent, 0.9 is 1.67.
    const of = (deck: string) =>
      lookHere('compression', {
        ...{ ...ENGINE, bore: '54', 'head-volume': '14', dome: '0' },
        ...{ deck, gasket: '0', 'band-depth': '0' },
      });
    expect(of('0.3')[0]).toMatch(/^The squish is 0\.6% of the bore/);
    expect(of('0.9')).toEqual([]);
  });

  it('compression, fuel-and-oil: a crown that meets the head, a tank with too little oil', () => {
    expect(lookHere('compression', { deck: '-2', gasket: '1' })[0]).toMatch(
      /^With these heights the crown meets the head before the top\.$/,
    );
    expect(lookHere('fuel-and-oil', { already: '2', 'already-ratio': '250' })[0]).toMatch(
      /^The mix in the tank, 250 to 1, has less oil than engines are run on\.$/,
    );
  });

  it('port-timing: a skirt that opens the exhaust into the crankcase', () => {
    expect(lookHere('port-timing', { skirt: '30' }).join('\n')).toMatch(
      /^At the top the skirt ends .* above the exhaust’s bottom edge/m,
    );
  });

  it('hole-pattern, port-timing, fuel-and-oil: contradictions, an exhaust that opens late, no oil', () => {
    expect(lookHere('fuel-and-oil', { ratio: '250' })[0]).toMatch(
      /^250 to 1 is less oil than engines are run on\.$/,
    );
    expect(lookHere('fuel-and-oil', { ratio: '25' })).toEqual([]);
    expect(lookHere('port-timing', { 'port-1': '40', 'port-2': '35' })[0]).toMatch(
      /^The transfer opens before the exhaust, or with it:/,
    );
    expect(lookHere('hole-pattern', { 'distance-1': '60' })[0]).toMatch(
      /^(?:Look again at distance|The distances contradict each other)/,
    );
  });
});

it('piston-clearance: a pass where the bore is least is none where it is worn wide', () => {
  const of = (along: string) =>
    said('piston-clearance', {
      ...{ bore: '54', piston: '53.93', 'along-1': along },
      ...{ 'along-2': '54', 'along-3': '54', 'across-1': '54', 'across-2': '54', 'across-3': '54' },
    });
  expect(of('54')).not.toMatch(/At the widest/);
  // 54.09 less 53.93 is 0.16 mm, 3.0 per mille of 54.
  expect(of('54.09')).toMatch(
    /^Pass: within .*\nAt the widest of its readings the clearance is 0\.160 mm, 3\.0‰: wide against/m,
  );
});
