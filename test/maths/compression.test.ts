import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  clearanceForRatio,
  clearanceVolume,
  geometricRatio,
  headVolumeFor,
  skimFor,
  squishClearance,
  sweptVolume,
  trappedRatio,
  trappedVolume,
  type ClearanceParts,
} from '../../calculators/maths/cylinder/compression.ts';
import { cylinderVolume } from '../../calculators/maths/cylinder/cylinder-volume.ts';
import { buretteVolume, plugHoleVolume } from '../../calculators/maths/cylinder/head-volume.ts';
import { bdcAfter, totalTravel } from '../../calculators/maths/crank/slider-crank.ts';
import { barrels } from './barrels.ts';
import { codeOf } from './code-of.ts';

const parts: ClearanceParts = {
  bore: 60,
  headVolume: 20,
  gasketThickness: 1,
  gasketBore: 62,
  deckClearance: 0.5,
  domeVolume: 3,
};

const bore = fc.double({ min: 30, max: 100, noNaN: true });
const clearance = fc.double({ min: 2, max: 60, noNaN: true });

describe('the ratios', () => {
  it('trapped never exceeds geometric', () => {
    fc.assert(
      fc.property(
        barrels,
        bore,
        clearance,
        fc.double({ min: 0.001, max: 1, noNaN: true }),
        (g, across, above, at) => {
          const trapped = trappedRatio(g, across, above, at * bdcAfter(g));
          const geometric = geometricRatio(sweptVolume(g, across), above);
          expect(trapped).toBeLessThanOrEqual(geometric);
          expect(trapped).toBeGreaterThan(1);
        },
      ),
    );
  });

  it('meet where the exhaust never opens before the bottom', () => {
    fc.assert(
      fc.property(barrels, bore, clearance, (g, across, above) => {
        expect(trappedRatio(g, across, above, bdcAfter(g))).toBeCloseTo(
          geometricRatio(sweptVolume(g, across), above),
          9,
        );
      }),
    );
  });

  it('have a head volume, and back', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 500, noNaN: true }),
        fc.double({ min: 2, max: 20, noNaN: true }),
        (swept, ratio) => {
          const whole = clearanceForRatio(swept, ratio);
          expect(geometricRatio(swept, whole)).toBeCloseTo(ratio, 9);
          fc.pre(whole > 5);
          const headVolume = headVolumeFor(whole, parts);
          expect(clearanceVolume({ ...parts, headVolume })).toBeCloseTo(whole, 9);
        },
      ),
    );
  });

  it('use the piston’s whole travel where the pin is offset', () => {
    const g = { stroke: 60, rodLength: 100, pinOffset: 8 };
    expect(totalTravel(g)).toBeGreaterThan(60);
    expect(sweptVolume(g, 50)).toBeCloseTo(cylinderVolume(50, totalTravel(g)), 12);
  });

  it('say what is wrong', () => {
    const g = { stroke: 51, rodLength: 104, pinOffset: 0 };
    expect(codeOf(() => trappedVolume(g, 50, 0))).toBe('exhaust-opens');
    expect(codeOf(() => trappedVolume(g, 50, 181))).toBe('exhaust-opens');
    expect(codeOf(() => sweptVolume(g, 0))).toBe('diameter');
    expect(codeOf(() => geometricRatio(100, 0))).toBe('volume-not-positive');
    expect(codeOf(() => clearanceForRatio(100, 1))).toBe('ratio');
    expect(codeOf(() => headVolumeFor(0.5, parts))).toBe('ratio-out-of-reach');
  });
});

describe('the space above the piston', () => {
  it('adds gasket, deck and dish, and takes the dome away', () => {
    const whole = clearanceVolume(parts);
    expect(whole).toBeCloseTo(20 + 0.961 * Math.PI + 0.45 * Math.PI - 3, 12);
    expect(clearanceVolume({ ...parts, domeVolume: -3 })).toBeCloseTo(whole + 6, 12);
    expect(clearanceVolume({ ...parts, deckClearance: -0.5 })).toBeCloseTo(
      whole - 0.9 * Math.PI,
      12,
    );
  });

  it('needs no gasket bore without a gasket', () => {
    expect(clearanceVolume({ ...parts, gasketThickness: 0, gasketBore: 0 })).toBeCloseTo(
      20 + 0.45 * Math.PI - 3,
      12,
    );
  });

  it('says what is wrong', () => {
    expect(codeOf(() => clearanceVolume({ ...parts, headVolume: 0 }))).toBe('head-volume');
    expect(codeOf(() => clearanceVolume({ ...parts, gasketBore: 59 }))).toBe('gasket-bore');
    expect(codeOf(() => clearanceVolume({ ...parts, gasketThickness: -1 }))).toBe(
      'gasket-thickness',
    );
    expect(codeOf(() => clearanceVolume({ ...parts, domeVolume: 40 }))).toBe('no-clearance');
    expect(codeOf(() => clearanceVolume({ ...parts, deckClearance: NaN }))).toBe('not-a-number');
    expect(squishClearance(0.5, 1, -0.25)).toBe(1.25);
    expect(codeOf(() => squishClearance(NaN, 0, 0))).toBe('not-a-number');
  });

  it('loses as much to a skim as the face is wide', () => {
    expect(skimFor(cylinderVolume(60, 0.4), 60)).toBeCloseTo(0.4, 12);
    expect(codeOf(() => skimFor(1, 0))).toBe('diameter');
  });
});

describe('the burette', () => {
  it('takes off what stands in the plug hole', () => {
    expect(buretteVolume(22.4, 1.7)).toBeCloseTo(20.7, 12);
    expect(codeOf(() => buretteVolume(0, 0))).toBe('liquid');
    expect(codeOf(() => buretteVolume(2, 2))).toBe('plug-hole');
    expect(codeOf(() => buretteVolume(2, -1))).toBe('plug-hole');
  });

  it('knows a plug hole by its thread', () => {
    expect(codeOf(() => plugHoleVolume(0, 1.25, 10))).toBe('diameter');
    expect(codeOf(() => plugHoleVolume(14, 14, 10))).toBe('thread-pitch');
    expect(codeOf(() => plugHoleVolume(14, 1.25, -1))).toBe('plug-depth');
    expect(plugHoleVolume(14, 1.25, 0)).toBe(0);
  });
});
