import { describe, expect, it } from 'vitest';
import breakerCam from '../../calculators/points/breaker-cam/calculator.tsx';
import coilCharge from '../../calculators/points/coil-charge/calculator.tsx';
import plateSetting from '../../calculators/points/plate-setting/calculator.tsx';
import wiring from '../../calculators/points/wiring/calculator.tsx';
import { evaluate, type Texts } from '../../calculators/frame/evaluate.ts';
import { flatten } from '../../calculators/frame/spreads.ts';
import { resultLines } from '../../calculators/frame/summary.ts';
import { remarksOf } from '../../calculators/frame/whose.ts';
import { Absent, type AnyCalculator } from '../../calculators/frame/types.ts';
import { allGiven } from './states.ts';

const asked = (calculator: AnyCalculator, texts: Texts) =>
  evaluate(calculator, texts, { lengths: 'mm' });
const given = (calculator: AnyCalculator, texts: Texts) =>
  allGiven(calculator, asked(calculator, texts));
const figure = (calculator: AnyCalculator, texts: Texts, name: string): number | undefined =>
  flatten(asked(calculator, texts).results).get(name);
const why = (calculator: AnyCalculator, texts: Texts, name: string): string => {
  const result = asked(calculator, texts).results[name];
  return result instanceof Absent ? result.why : '';
};

/** What the page says beside a field. */
const sentence = (calculator: AnyCalculator, texts: Texts, key: string): string =>
  asked(calculator, texts).fields.find((field) => field.key === key)?.problem ?? '';

const cam = { lift: '0.8mm', rise: '40deg', top: '20deg', profile: 'uniform' };

describe('points gap, dwell and timing', () => {
  // By hand: 0.8 mm in 40° is 0.02 mm a degree, so 0.3 mm of gap lies 15° down the flank.
  it('answers a link with the figures reckoned by hand', () => {
    const texts = { ...cam, lobes: '2', 'speed-ratio': '0.5', gap: '0.3mm' };
    expect(figure(breakerCam, texts, 'opens')).toBeCloseTo(25, 9);
    expect(figure(breakerCam, texts, 'dwell-angle')).toBeCloseTo(130, 9);
    expect(figure(breakerCam, texts, 'open-angle')).toBeCloseTo(50, 9);
    expect(figure(breakerCam, texts, 'dwell-percent')).toBeCloseTo(72.222222, 5);
    expect(figure(breakerCam, texts, 'crank-degrees-per-gap')).toBeCloseTo(5, 9);
    expect(figure(breakerCam, texts, 'crank-degrees-per-thou')).toBeCloseTo(2.54, 9);
  });

  it('tells how long until the gap is to be set again in what the wear is counted by', () => {
    for (const [per, unit] of [
      ['km', 'km'],
      ['hours', 'h'],
    ] as const) {
      const lines = resultLines(breakerCam, asked(breakerCam, { 'wear-per': per }), 'mm');
      expect(lines.find(({ name }) => name === 'run-to-limit')!.text).toMatch(
        new RegExp(` ${unit}$`),
      );
    }
  });

  it('takes the lever out of the lift at the heel', () => {
    expect(figure(breakerCam, { ...cam, lobes: '2', lever: '1.6' }, 'heel-lift')).toBeCloseTo(
      0.5,
      9,
    );
  });

  it('finds the gap for a dwell', () => {
    const texts = { ...cam, lobes: '2', from: 'dwell', dwell: '130deg' };
    expect(figure(breakerCam, texts, 'gap-set')).toBeCloseTo(0.3, 9);
    expect(figure(breakerCam, texts, 'opens')).toBeCloseTo(25, 9);
  });

  it('takes a gap in thousandths', () => {
    expect(figure(breakerCam, { gap: '14thou' }, 'gap-set')).toBeCloseTo(0.3556, 9);
  });

  it('reckons wear by the hour or the kilometre', () => {
    const worn = { ...cam, lobes: '2', gap: '0.3', lever: '1.25', 'wear-rate': '0.04' };
    const byHour = { ...worn, 'wear-per': 'hours', running: '200' };
    expect(figure(breakerCam, byHour, 'worn-gap')).toBeCloseTo(0.2, 9);
    expect(figure(breakerCam, byHour, 'worn-retard')).toBeCloseTo(5, 9);
    expect(figure(breakerCam, { ...byHour, 'retard-limit': '5' }, 'run-to-limit')).toBeCloseTo(
      200,
      6,
    );
    const byDistance = { ...worn, 'wear-per': 'km', running: '2000' };
    expect(figure(breakerCam, byDistance, 'worn-gap')).toBeCloseTo(0.2, 9);
    expect(why(breakerCam, { ...byHour, running: '600' }, 'worn-gap')).toMatch(/no longer open/);
    expect(why(breakerCam, { 'wear-rate': '0' }, 'run-to-limit')).toMatch(/Without wear/);
  });

  it('lays a line through the trials', () => {
    const trials = {
      trials: '3',
      'trial-gap-1': '0.3',
      'trial-gap-2': '0.35',
      'trial-gap-3': '0.4',
      'trial-angle-1': '18',
      'trial-angle-2': '20.5',
      'trial-angle-3': '23',
      gap: '0.32',
    };
    expect(figure(breakerCam, trials, 'trial-slope')).toBeCloseTo(2.5, 9);
    expect(figure(breakerCam, trials, 'trial-lift')).toBeCloseTo(0.02, 9);
    expect(figure(breakerCam, trials, 'trial-angle-at-gap')).toBeCloseTo(19, 9);
    expect(figure(breakerCam, trials, 'trial-range')).toBeCloseTo(0, 6);
    const pair = { ...trials, trials: '2' };
    expect(figure(breakerCam, pair, 'trial-slope')).toBeCloseTo(2.5, 9);
    expect(why(breakerCam, pair, 'trial-range')).toMatch(/always lie on a line/);
    // √2 × √(0.5² + (50 °/mm × 0.01 mm)²) over 0.05 mm, for 0.05 mm of gap.
    expect(asked(breakerCam, pair).spreads['trial-slope']).toBeCloseTo(1, 1);
    const swapped = { ...trials, 'trial-angle-3': '10' };
    expect(why(breakerCam, swapped, 'trial-slope')).toMatch(/no cam does/);
    expect(figure(breakerCam, swapped, 'opens')).toBeDefined();
    expect(remarksOf(breakerCam, given(breakerCam, { ...trials, gap: '0.6' })).join()).toMatch(
      /outside them/,
    );
  });

  it.each([
    ['gap beyond the lift', { gap: '1.2' }, 'gap', /never shut.*below 1 mm/],
    ['no gap', { gap: '0' }, 'gap', /never open/],
    [
      'a lobe that runs into the next',
      { lobes: '4', rise: '50' },
      'rise',
      /at most 45 cam degrees/,
    ],
    [
      'a top that runs into the next',
      { lobes: '2', rise: '50', top: '120' },
      'top',
      /run into the next.*at most 80°/,
    ],
    [
      'dwell beyond the pitch',
      { from: 'dwell', dwell: '90', ...cam, rise: '30', lobes: '4' },
      'dwell',
      /90°/,
    ],
    ['dwell out of reach', { from: 'dwell', dwell: '100' }, 'dwell', /between 140°/],
    ['half a lobe', { lobes: '1.5' }, 'lobes', /whole number/],
  ])('says beside the field what is wrong with %s', (_, texts, key, said) => {
    expect(sentence(breakerCam, texts, key)).toMatch(said);
    expect(figure(breakerCam, texts, 'opens')).toBeUndefined();
  });
});

describe('coil current and spark energy', () => {
  const texts = {
    volts: '12V',
    resistance: '3ohm',
    ballast: '1ohm',
    inductance: '8mH',
    'dwell-angle': '180deg',
    lobes: '1',
    'speed-ratio': '1',
    rpm: '15000rpm',
  };

  // By hand: half a turn at 15 000 rpm is 2 ms, one time constant of 8 mH in 4 ohm.
  it('answers a link with the figures reckoned by hand', () => {
    const part = 1 - 1 / Math.E;
    expect(figure(coilCharge, texts, 'charge-time')).toBeCloseTo(2, 9);
    expect(figure(coilCharge, texts, 'current')).toBeCloseTo(3 * part, 9);
    expect(figure(coilCharge, texts, 'energy')).toBeCloseTo(36 * part * part, 9);
    expect(figure(coilCharge, texts, 'current-percent')).toBeCloseTo(100 * part, 9);
    expect(figure(coilCharge, texts, 'time-constant')).toBeCloseTo(2, 9);
    expect(
      figure(coilCharge, { ...texts, share: String(100 * part) }, 'speed-at-share'),
    ).toBeCloseTo(15000, 3);
    expect(figure(coilCharge, { ...texts, 'current-limit': '2' }, 'ballast-for')).toBeCloseTo(3, 9);
  });

  // By hand: 3 ohm × (3 A)² is 27 W; shut for half of every 4 ms, and in those 2 ms, one time
  // constant, the square of the current comes to 1 + 2(1/e − 1) − (1/e² − 1)/2 = 0.168 of it.
  it('reckons heat and sparks', () => {
    expect(figure(coilCharge, texts, 'stopped-heat')).toBeCloseTo(27, 9);
    expect(figure(coilCharge, texts, 'heat')).toBeCloseTo(27 * 0.5 * 0.16809, 3);
    expect(figure(coilCharge, { ...texts, lobes: '2', 'dwell-angle': '90' }, 'sparks')).toBe(30000);
    expect(figure(coilCharge, texts, 'final-current')).toBeCloseTo(3, 9);
  });

  it('compares speeds in a table', () => {
    const several = { ...texts, speeds: '7500 15000' };
    expect(figure(coilCharge, several, 'time-at-1')).toBeCloseTo(4, 9);
    expect(figure(coilCharge, several, 'time-at-2')).toBeCloseTo(2, 9);
    expect(figure(coilCharge, several, 'current-at-2')).toBeCloseTo(
      figure(coilCharge, texts, 'current')!,
      9,
    );
    expect(figure(coilCharge, several, 'energy-at-2')).toBeCloseTo(
      figure(coilCharge, texts, 'energy')!,
      9,
    );
  });

  it('warns of more standing current than allowed', () => {
    const remarks = (limit: string) =>
      remarksOf(coilCharge, given(coilCharge, { ...texts, 'current-limit': limit })).join();
    expect(remarks('2')).toMatch(/more than the 2\.0 A you allow.*3\.0 Ω/);
    expect(remarks('4')).not.toMatch(/more than/);
  });

  it.each([
    ['dwell beyond the pitch', { lobes: '4' }, 'dwell-angle', /below 90 cam degrees/],
    ['no resistance', { resistance: '0' }, 'resistance', /from 0\.05 Ω/],
    ['no speed', { rpm: '0' }, 'rpm', /from 50 rpm/],
    ['all of the current', { share: '100' }, 'share', /never quite reaches/],
  ])('says beside the field what is wrong with %s', (_, wrong, key, said) => {
    expect(sentence(coilCharge, { ...texts, ...wrong }, key)).toMatch(said);
    expect(figure(coilCharge, { ...texts, ...wrong }, 'current')).toBeUndefined();
  });
});

describe('several cylinders from one plate', () => {
  const degrees = {
    as: 'angle',
    cylinders: '3',
    'target-angle': '22deg',
    'fired-angle-1': '26deg',
    'fired-angle-2': '23deg',
    'fired-angle-3': '22deg',
    'slot-radius': '57.29577951mm',
    'plate-radius': '57.29577951mm',
  };

  // By hand: errors +4, +1, 0; their middle is 2; 1 mm is 1° at that radius.
  it('answers a link with the figures reckoned by hand', () => {
    expect(figure(plateSetting, degrees, 'plate-move')).toBeCloseTo(-2, 9);
    expect(figure(plateSetting, degrees, 'worst')).toBeCloseTo(2, 9);
    expect(figure(plateSetting, degrees, 'spread')).toBeCloseTo(4, 9);
    expect(figure(plateSetting, degrees, 'plate-edge')).toBeCloseTo(-2, 7);
    [2, -1, -2].forEach((error, index) => {
      const row = String(index + 1);
      expect(figure(plateSetting, degrees, `error-${row}`)).toBeCloseTo(error, 9);
      expect(figure(plateSetting, degrees, `set-move-${row}`)).toBeCloseTo(-error, 7);
    });
  });

  it('turns the plate half as far on a half-speed shaft, and moves no less timing', () => {
    const half = { ...degrees, 'speed-ratio': '0.5' };
    expect(figure(plateSetting, half, 'plate-move')).toBeCloseTo(-2, 9);
    expect(figure(plateSetting, half, 'plate-turn')).toBeCloseTo(-1, 9);
    expect(figure(plateSetting, half, 'set-move-1')).toBeCloseTo(-1, 7);
  });

  it('takes piston travel, one cylinder at a time, and gives it back', () => {
    const travel = { cylinders: '1', target: '2.2mm', 'fired-1': '2mm' };
    expect(figure(plateSetting, travel, 'plate-move')).toBeGreaterThan(0);
    expect(figure(plateSetting, travel, 'error-1')).toBeCloseTo(0, 9);
    expect(figure(plateSetting, travel, 'position-1')).toBeCloseTo(2.2, 9);
  });

  it('says pass or fail against the tolerance', () => {
    const said = (tolerance: string) =>
      remarksOf(plateSetting, given(plateSetting, { ...degrees, tolerance }))[0];
    expect(said('5')).toMatch(/^Pass as found/);
    expect(said('2')).toMatch(/^Pass with the plate alone/);
    expect(said('1.5')).toMatch(/^Fail.*cylinders 1 and 3/);
  });

  it('doubts a difference no slot can take', () => {
    const far = { ...degrees, 'fired-angle-1': '60' };
    expect(remarksOf(plateSetting, given(plateSetting, far)).join()).toMatch(
      /sets are not swapped/,
    );
  });

  it('says beside the very cylinder that a travel is more than the stroke', () => {
    expect(sentence(plateSetting, { 'fired-2': '60mm' }, 'fired-2')).toMatch(
      /more than the piston/,
    );
    expect(sentence(plateSetting, { target: '60mm' }, 'target')).toMatch(/more than the piston/);
    expect(sentence(plateSetting, { cylinders: '9' }, 'cylinders')).toMatch(/from 1 to 8/);
    expect(sentence(plateSetting, { 'fired-3': '-40mm' }, 'fired-3')).toMatch(/Cylinder 3/);
  });
});

describe('wiring', () => {
  // Three coils of 4 Ω on 12 V are 9 A, and 18 A with coils of the same spark on 6 V; lamps of 24 W are 2 A
  // and 4 A.
  it('counts what else hangs on the wire: on either battery, running and left on', () => {
    const near = { contacts: '0', length: '0.05', area: '100', coils: '3', resistance: '4' };
    const texts = { ...near, volts: '12', capacity: '9', share: '100', peukert: '1' };
    const lit = { ...texts, others: '2' };
    expect(figure(wiring, lit, 'side-current-1')).toBeCloseTo(22, 1);
    expect(figure(wiring, lit, 'side-current-2')).toBeCloseTo(11, 1);
    expect(figure(wiring, lit, 'left-on')).toBeCloseTo((9 * 60) / 11, 6);
    for (const name of ['hours', 'hours-by-rule']) {
      const drawn = (of: Texts): number => 9 / figure(wiring, of, name)!;
      expect(drawn(lit) - drawn({ ...texts, others: '0' })).toBeCloseTo(2, 6);
    }
    // At 70 per cent 9 A ask for 12.9 A, and 11 A for 15.7 A.
    expect(figure(wiring, { ...texts, 'fuse-load': '70' }, 'fuse')).toBe(15);
    expect(figure(wiring, { ...lit, 'fuse-load': '70' }, 'fuse')).toBe(20);
  });

  it('takes no wire that its fuse does not guard, though it bears the current and loses little', () => {
    // 6 A of 70 per cent ask for 10 A; 0.75 mm² bears 6 A, and half a metre of it loses 0.08 V.
    const short = { length: '0.5', contacts: '0', current: '6', volts: '12', loss: '5' };
    const texts = { ...short, 'fuse-load': '70', temperature: '20' };
    expect(figure(wiring, texts, 'fuse')).toBe(10);
    expect(figure(wiring, texts, 'wire')).toBe(1);
    expect(figure(wiring, { ...texts, 'fuse-load': '100' }, 'fuse')).toBe(7.5);
    expect(figure(wiring, { ...texts, 'fuse-load': '100' }, 'wire')).toBe(1);
    expect(figure(wiring, { ...texts, current: '5', 'fuse-load': '100' }, 'wire')).toBe(0.75);
  });
});
