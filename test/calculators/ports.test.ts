import { describe, expect, it } from 'vitest';
import compression from '../../calculators/geometry/compression/calculator.tsx';
import { evaluate, type Evaluation, type Texts } from '../../calculators/frame/evaluate.ts';
import { flatten } from '../../calculators/frame/spreads.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import { remarksOf } from '../../calculators/frame/whose.ts';
import portTiming from '../../calculators/geometry/port-timing/calculator.tsx';
import timeArea from '../../calculators/geometry/time-area/calculator.tsx';
import { allGiven } from './states.ts';

const run = (calculator: unknown, texts: Texts): Evaluation =>
  evaluate(calculator as AnyCalculator, texts, { lengths: 'mm' });
const figures = (evaluation: Evaluation) => flatten(evaluation.results);
const sentences = ({ problems }: Evaluation): string =>
  problems.map(({ sentence }) => sentence).join(' ');
const absentWords = ({ results }: Evaluation, name: string): string =>
  (results[name] as { why?: string }).why ?? '';

describe('port timing', () => {
  it('keeps the ports when the inlet cannot be', () => {
    const odd = run(portTiming, { stroke: '80', rod: '160', 'port-1': '50', 'port-2': '62' });
    expect(figures(odd).get('blowdown')).toBeGreaterThan(0);
    const never = run(portTiming, { 'inlet-edge': '40' });
    expect(figures(never).get('opens-1')).toBeGreaterThan(90);
    expect(absentWords(never, 'inlet-duration')).toMatch(
      /from more than 58\.4 to less than 109\.4/,
    );
  });

  it('says what a skirt leaves covered of the inlet, within what its height was measured to', () => {
    const long = run(portTiming, { skirt: '63', 'inlet-height-error': '0.2' });
    expect(figures(long).get('inlet-clears')).toBeCloseTo(80.2 - 18 - (0.4 + 63), 9);
    expect(long.spreads['inlet-clears']).toBeGreaterThan(0.2);
    const given = allGiven(portTiming, run(portTiming, { skirt: '63' }));
    expect(remarksOf(portTiming, given).join(' ')).toContain(
      'the skirt leaves 1.2 mm of the inlet covered',
    );
    expect(absentWords(run(portTiming, { inlet: 'reed' }), 'inlet-clears')).toMatch(/^Only an/);
  });

  it('gives the height for a duration and the metal that means', () => {
    const now = figures(run(portTiming, {}));
    const same = figures(
      run(portTiming, {
        'wanted-port': 'exhaust',
        'wanted-duration': String(now.get('duration-1')),
      }),
    );
    expect(same.get('edge-for')).toBeCloseTo(32.5, 6);
    expect(same.get('raise-for')).toBeCloseTo(0, 6);
    const inlet = figures(
      run(portTiming, {
        'wanted-port': 'inlet',
        'wanted-duration': String(now.get('inlet-duration')! + 10),
      }),
    );
    expect(inlet.get('raise-for')).toBeGreaterThan(0);
  });

  it('raises the barrel: exhaust and transfer longer, inlet shorter', () => {
    const now = figures(run(portTiming, { change: 'barrel', by: '0.5' }));
    expect(now.get('duration-change-1')).toBeGreaterThan(0);
    expect(now.get('duration-change-2')).toBeGreaterThan(0);
    expect(now.get('after-inlet')).toBeLessThan(now.get('inlet-duration')!);
  });

  it('sets cylinders side by side, the first as it is above', () => {
    const now = figures(
      run(portTiming, {
        cylinders: '2',
        'other-deck-2': '0.4',
        'other-exhaust-2': '32.5',
        'other-transfer-2': '41',
        'other-inlet-2': '80.2',
      }),
    );
    expect(now.get('cylinder-exhaust-2')).toBe(now.get('cylinder-exhaust-1'));
    expect(now.get('cylinder-inlet-2')).toBe(now.get('inlet-duration'));
    expect(now.get('exhaust-spread')).toBe(0);
    expect(figures(run(portTiming, { cylinders: '2' })).get('exhaust-spread')).toBeGreaterThan(0);
  });

  it('warns of a transfer that opens first', () => {
    const wrong = run(portTiming, { 'port-1': '42', 'port-2': '33' });
    const words = remarksOf(portTiming, allGiven(portTiming, wrong)).join(' ');
    expect(words).toContain('The transfer opens before the exhaust');
  });
});

describe('compression', () => {
  it('agrees whichever way the volume was measured', () => {
    const bench = figures(run(compression, {}));
    const whole = figures(
      run(compression, { measured: 'whole', 'whole-volume': String(bench.get('clearance')) }),
    );
    expect(whole.get('ratio')).toBeCloseTo(bench.get('ratio')!, 10);
    expect(whole.get('head-alone')).toBeCloseTo(9.3, 10);
  });

  it('gives a head that makes the ratio wanted, on either scheme', () => {
    for (const [scheme, result] of [
      ['geometric', 'ratio'],
      ['trapped', 'trapped-ratio'],
    ] as const) {
      const wanted = figures(
        run(compression, { 'wanted-scheme': scheme, 'wanted-ratio': '8.2' }),
      ).get('head-volume-for');
      const made = figures(run(compression, { 'head-volume': String(wanted) }));
      expect(made.get(result)).toBeCloseTo(8.2, 8);
    }
  });

  it('skims to the ratio it was asked for', () => {
    const wanted = figures(run(compression, { 'wanted-ratio': '10.5' }));
    const after = figures(run(compression, { skim: String(wanted.get('skim-for')) }));
    expect(after.get('ratio-after')).toBeCloseTo(10.5, 8);
    expect(after.get('squish-after')).toBeCloseTo(wanted.get('squish-for')!, 10);
    const flat = figures(run(compression, { 'skim-face': 'flat', skim: '0.2' }));
    expect(flat.get('squish-after')).toBeCloseTo(flat.get('squish')!, 12);
    expect(flat.get('ratio-after')).toBeLessThan(
      figures(run(compression, { skim: '0.2' })).get('ratio-after')!,
    );
  });

  // Bore 50 mm, crank throw 30 and rod 50 mm: at 90° the piston is 40 mm down, and 1 mm of base
  // gasket leaves 39 mm of the bore above the exhaust and adds 1 mm to 10 mm of clearance.
  it('lifts the exhaust with the barrel when the base gasket is thicker', () => {
    const clearance = String((10 * Math.PI * 25 ** 2) / 1000);
    const after = figures(
      run(compression, {
        ...{ stroke: '60', rod: '50', bore: '50', 'exhaust-opens': '90' },
        ...{ measured: 'whole', 'whole-volume': clearance, 'gasket-bore': '50' },
        ...{ skim: '0', 'base-gasket-change': '1' },
      }),
    );
    expect(after.get('trapped-ratio')).toBeCloseTo(50 / 10, 10);
    expect(after.get('ratio-after')).toBeCloseTo(71 / 11, 10);
    expect(after.get('trapped-after')).toBeCloseTo(50 / 11, 10);
    expect(after.get('squish-after')).toBeCloseTo(after.get('squish')! + 1, 12);
  });

  it('says that a gasket cannot lift the exhaust out of the stroke', () => {
    const out = run(compression, { 'exhaust-opens': '30', 'base-gasket-change': '10' });
    expect(absentWords(out, 'trapped-after')).toMatch(/Take a thinner one/);
  });

  it('brings every head to the lowest ratio', () => {
    const found = figures(run(compression, { 'other-deck-2': '0.4', 'other-deck-3': '0.4' }));
    const mended = figures(
      run(compression, {
        'head-volume': String(9.3 + found.get('cylinder-match-1')!),
        'other-volume-2': String(9.6 + found.get('cylinder-match-2')!),
        'other-volume-3': String(9.1 + found.get('cylinder-match-3')!),
        'other-deck-2': '0.4',
        'other-deck-3': '0.4',
      }),
    );
    expect(found.get('ratio-spread')).toBeGreaterThan(0.1);
    expect(mended.get('ratio-spread')).toBeCloseTo(0, 8);
  });

  it('lays errors to their fields', () => {
    const gasket = run(compression, { 'gasket-bore': '50' });
    expect(gasket.problems[0]!.key).toBe('gasket-bore');
    expect(sentences(gasket)).toMatch(/must be 52 mm or more/);
    const plug = run(compression, {
      'plug-allowance': 'measured',
      'plug-hole': '10',
    });
    expect(plug.problems[0]!.key).toBe('plug-hole');
  });
});

describe('time-area', () => {
  it('lays a corner too round to the port it belongs to', () => {
    const round = run(timeArea, { 'transfer-corner': '6' });
    expect(round.problems[0]!.key).toBe('transfer-corner');
    expect(sentences(round)).toContain('from 0 to 5 mm');
  });

  // 450 mm² open for 185°, of which 40° pass at half: 450 × 145 mm²·° at 6000 rpm, 36 000 °/s.
  it('knows the inlet of a disc valve by its window and its degrees', () => {
    const disc = figures(
      run(timeArea, {
        ...{ inlet: 'disc', 'disc-opens': '130', 'disc-closes': '55' },
        ...{ 'disc-area': '450', 'disc-edge': '40', rpm: '6000', bore: '52', stroke: '51' },
      }),
    );
    const swept = (Math.PI / 4) * 5.2 ** 2 * 5.1;
    expect(disc.get('inlet-time-area')).toBeCloseTo((450 * 145) / 36_000 / swept, 12);
    expect(disc.get('inlet-mean')).toBeCloseTo((450 * 145) / 185, 9);
  });

  it('says why a disc whose edge never clears its window has no figure', () => {
    const slow = run(timeArea, { inlet: 'disc', 'disc-edge': '100' });
    expect(absentWords(slow, 'inlet-time-area')).toMatch(/half the duration/);
    expect(figures(slow).get('exhaust-time-area')).toBeGreaterThan(0);
  });

  it('leaves the rest when there is no inlet by the skirt', () => {
    const none = run(timeArea, { inlet: 'none' });
    expect(figures(none).get('exhaust-time-area')).toBeGreaterThan(0);
    expect(absentWords(none, 'inlet-time-area')).toContain('reed');
  });

  it('lays a port that the crown never uncovers, or that is wider than the bore, to its own', () => {
    for (const port of ['exhaust', 'transfer']) {
      const low = run(timeArea, { [`${port}-edge`]: '90', stroke: '51', deck: '0.4' });
      expect(low.problems[0]!.key).toBe(`${port}-edge`);
      const wide = run(timeArea, { [`${port}-width`]: '60', bore: '52' });
      const wrong = wide.fields.filter(({ problem }) => problem !== undefined);
      expect(wrong.map(({ key }) => key)).toContain(`${port}-width`);
      expect(wrong.map(({ key }) => key)).toContain('bore');
    }
  });

  it('has no blowdown where both ports open at once', () => {
    const level = run(timeArea, { 'exhaust-edge': '34', 'transfer-edge': '34' });
    for (const name of ['blowdown-time-area', 'blowdown-open']) {
      expect(absentWords(level, name)).toContain('the exhaust’s must be the higher one');
    }
  });
});
