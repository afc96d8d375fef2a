import { describe, expect, it } from 'vitest';
import { expectResult, field, result, openCalculator as open } from './support/calculator.ts';
import { drag, handle } from './support/handles.ts';
import { phone } from './support/page.ts';

describe('float height and fuel level', () => {
  it('lowers the fuel by as much as the gauge reading grows, and by the handle too', async () => {
    await open('float-level/?height=24mm', async (page) => {
      const before = (await result(page, 'level'))!;
      await field(page, 'height').fill('25');
      await expectResult(page, 'level', before + 1);
      await drag(page, 'Gauge reading', -30, 0);
      await expect.poll(() => result(page, 'level')).toBeLessThan(before + 1);
    });
  });
});

describe('air and jet', () => {
  it('asks for the same jet in the same air, and a smaller one in thinner air', async () => {
    await open('air-and-jet/?jet=1mm', async (page) => {
      const jet = (await result(page, 'jet'))!;
      await handle(page, 'Temperature').focus();
      await page.keyboard.press('PageUp');
      await expect.poll(() => result(page, 'jet')).toBeLessThan(jet);
      await expect.poll(() => result(page, 'relative-density')).toBeGreaterThan(0);
    });
  });
});

describe('needle and clip', () => {
  it('opens the ring as the throttle opens, by keyboard', async () => {
    await open('needle-and-clip/?throttle=25%25', async (page) => {
      const before = (await result(page, 'annulus'))!;
      await handle(page, 'Throttle').focus();
      await page.keyboard.press('PageUp');
      await expect.poll(() => result(page, 'annulus')).toBeGreaterThan(before);
    });
  });
});

describe('slide balance', () => {
  it('has nothing to turn when every slide is open alike', async () => {
    await open(
      'slide-balance/?slides=3&opening-1=3mm&opening-2=3mm&opening-3=3mm&thread=1mm',
      async (page) => {
        await expectResult(page, 'spread', 0);
        await field(page, 'opening-2').fill('3.5');
        // Half a millimetre on a thread of 1 mm pitch: half a turn between them.
        await expect.poll(() => result(page, 'spread')).toBeGreaterThan(0.3);
      },
    );
  });
});

describe('fuel and oil', () => {
  it('mixes by exact shares, on a phone', async () => {
    await open(
      'fuel-and-oil/?fuel=5litre&ratio=25&already=0litre',
      async (page) => {
        // A litre of oil to 25 of petrol: 5 litres of petrol take 200 ml.
        const oil = (await result(page, 'oil'))!;
        expect(oil).toBeCloseTo(200, 9);
        await field(page, 'fuel').fill('10');
        await expect.poll(() => result(page, 'oil')).toBeCloseTo(2 * oil, 9);
      },
      { viewport: phone },
    );
  });
});
