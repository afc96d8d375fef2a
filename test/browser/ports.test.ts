import { describe, expect, it } from 'vitest';
import {
  clearanceVolume,
  geometricRatio,
  sweptVolume,
  trappedRatio,
} from '../../calculators/maths/cylinder/compression.ts';
import { crownPort, discPort, skirtPort } from '../../calculators/maths/cylinder/port-timing.ts';
import { peakSquish } from '../../calculators/maths/cylinder/squish-velocity.ts';
import {
  alertText,
  expectResult,
  field,
  result,
  openCalculator as open,
  query,
} from './support/calculator.ts';
import { drag, handle } from './support/handles.ts';
import { phone } from './support/page.ts';

const INCH = 25.4;
const barrel = { stroke: 54, rodLength: 110, pinOffset: 1, deckClearance: 0.5 };
const given = 'port-timing/?stroke=54mm&rod=110mm&offset=1mm&deck=0.5mm';

describe('port timing', () => {
  it('opens a link as it was sent, in inches too', async () => {
    await open(`${given}&port-1=1.3in&port-2=42mm`, async (page) => {
      const exhaust = crownPort(barrel, 1.3 * INCH);
      const transfer = crownPort(barrel, 42);
      await expectResult(page, 'opens-1', exhaust.opens);
      await expectResult(page, 'closes-1', exhaust.closes);
      await expectResult(page, 'duration-2', transfer.duration);
      await expectResult(page, 'blowdown', transfer.opens - exhaust.opens);
    });
  });

  it('raises the exhaust by its handle, and the blowdown grows', async () => {
    await open(`${given}&port-1=34mm&port-2=42mm`, async (page) => {
      const before = (await result(page, 'blowdown'))!;
      await drag(page, 'Exhaust, top edge', 0, -16);
      await expect.poll(() => result(page, 'blowdown')).toBeGreaterThan(before);
      const edge = Number(await field(page, 'port-1').inputValue());
      expect(edge).toBeLessThan(34);
      await expectResult(page, 'opens-1', crownPort(barrel, edge).opens);
      await expect.poll(() => query(page).get('port-1')).toBe(`${String(edge)}mm`);
    });
  });

  it('turns the crank in the ring and moves the piston on the wall as one', async () => {
    await open(`${given}&port-1=34mm&port-2=42mm&crank=90deg`, async (page) => {
      const ring = page.getByRole('group', { name: /Timing ring/ });
      expect(await ring.getAttribute('aria-label')).toContain('open: nothing');
      await drag(page, 'Piston, crown below the deck', 0, 40);
      await expect.poll(() => result(page, 'crown-depth')).toBeGreaterThan(35);
      expect(await ring.getAttribute('aria-label')).toContain('exhaust');
      await handle(page, 'Crank, degrees after top dead centre').focus();
      await page.keyboard.press('Home');
      await expectResult(page, 'crown-depth', 0.5);
      expect(await ring.getAttribute('aria-label')).toContain('open: inlet');
    });
  });

  it('knows inlets by skirt, by disc, and reeds that have no timing', async () => {
    await open(`${given}&inlet=piston&skirt=60mm&inlet-edge=84mm`, async (page) => {
      await expectResult(page, 'inlet-duration', skirtPort(barrel, 84, 60).duration);
    });
    await open(`${given}&inlet=disc&disc-opens=140deg&disc-closes=60deg`, async (page) => {
      await expectResult(page, 'inlet-duration', discPort(140, 60).duration);
    });
    await open(given, async (page) => {
      await page.getByText('Reed valve').click();
      await expect.poll(() => result(page, 'inlet-duration')).toBeUndefined();
      // Nothing is wrong: it is told, and nobody is alarmed.
      await page.locator('.why-none', { hasText: 'A reed opens by the pressure' }).waitFor();
      expect(await alertText(page)).toBe('');
      expect(await result(page, 'blowdown')).toBeGreaterThan(0);
    });
  });

  it('says beside the field which port cannot be, and keeps what was typed', async () => {
    await open(given, async (page) => {
      await field(page, 'port-2').fill('60');
      await expect.poll(() => alertText(page)).toContain('would never open');
      expect(await field(page, 'port-2').getAttribute('aria-invalid')).toBe('true');
      await expect.poll(() => field(page, 'port-2').inputValue()).toBe('60');
      await field(page, 'port-2').fill('42');
      await expect.poll(() => alertText(page)).toBe('');
    });
  });

  it('warns where the piston leaves a port open that must be shut', async () => {
    await open(
      `${given}&port-1=34mm&height-1=18mm&port-2=42mm&height-2=11mm&skirt=45mm&inlet=reed`,
      async (page) => {
        await expect.poll(() => result(page, 'skirt-cover')).toBeLessThan(0);
        await expect
          .poll(() => page.locator('.remarks').textContent())
          .toContain('opens into the crankcase');
      },
    );
  });

  it('is used with a finger on a phone', async () => {
    const options = { viewport: phone, hasTouch: true, isMobile: true };
    await open(
      given,
      async (page) => {
        for (const name of [
          'Crank, degrees after top dead centre',
          'Exhaust, top edge',
          'Inlet, bottom edge',
        ]) {
          const grip = (await handle(page, name).boundingBox())!;
          expect(Math.min(grip.width, grip.height), name).toBeGreaterThanOrEqual(40);
        }
        const before = (await result(page, 'crown-depth'))!;
        await drag(page, 'Crank, degrees after top dead centre', 0, 30);
        await expect.poll(() => result(page, 'crown-depth')).not.toBeCloseTo(before, 3);
      },
      options,
    );
  });
});

describe('squish and compression', () => {
  const engine = { stroke: 54, rodLength: 110, pinOffset: 0 };
  const head =
    'compression/?stroke=54mm&rod=110mm&offset=0mm&bore=56mm&deck=0.3mm&gasket=1mm&gasket-bore=58mm&exhaust-opens=100deg';
  const above = (headVolume: number): number =>
    clearanceVolume({
      bore: 56,
      headVolume,
      gasketThickness: 1,
      gasketBore: 58,
      deckClearance: 0.3,
      domeVolume: 0,
    });

  it('opens a link as it was sent, in cubic inches too', async () => {
    await open(`${head}&head-volume=0.7cuin`, async (page) => {
      const clearance = above((0.7 * INCH ** 3) / 1000);
      await expectResult(page, 'ratio', geometricRatio(sweptVolume(engine, 56), clearance));
      await expectResult(page, 'trapped-ratio', trappedRatio(engine, 56, clearance, 100));
      await expectResult(page, 'squish', 1.3);
    });
  });

  it('changes the head by dragging the working point, both ratios with it', async () => {
    await open(`${head}&head-volume=12cc`, async (page) => {
      const before = (await result(page, 'trapped-ratio'))!;
      await drag(page, 'Clearance volume', -40, 0);
      await expect.poll(() => result(page, 'trapped-ratio')).toBeGreaterThan(before);
      const volume = Number(await field(page, 'head-volume').inputValue());
      await expectResult(page, 'ratio', geometricRatio(sweptVolume(engine, 56), above(volume)));
    });
  });

  it('takes the plug hole off the liquid', async () => {
    await open(`${head}&head-volume=12cc&plug-allowance=measured&plug-hole=1.7cc`, async (page) => {
      await expectResult(page, 'clearance', above(10.3));
      await page.getByText('Nothing: plug fitted').click();
      await expectResult(page, 'clearance', above(12));
    });
  });

  it('warns when crown and head meet, and names a gasket inside the bore', async () => {
    await open(`${head}&band-depth=-1.5mm`, async (page) => {
      await expect
        .poll(() => page.locator('.remarks').textContent())
        .toContain('the crown meets the head');
      await field(page, 'gasket-bore').fill('55');
      await expect.poll(() => alertText(page)).toContain('inside the cylinder');
      expect(await result(page, 'ratio')).toBeUndefined();
    });
  });
});

describe('comparisons between like engines', () => {
  it('halves the time-area when the speed doubles', async () => {
    await open('time-area/?rpm=4000rpm', async (page) => {
      const slow = (await result(page, 'exhaust-time-area'))!;
      await field(page, 'rpm').fill('8000');
      await expectResult(page, 'exhaust-time-area', slow / 2, 9);
      await expect.poll(() => page.locator('.remarks').textContent()).toContain('not a prediction');
      await drag(page, 'Engine speed', 30, 0);
      await expect.poll(() => result(page, 'exhaust-time-area')).toBeLessThan(slow / 2);
    });
  });

  it('finds the largest squish velocity, and reads another by the handle', async () => {
    const link =
      'squish-velocity/?stroke=54mm&rod=110mm&bore=56mm&bowl=40mm&squish=1.2mm&clearance=14cc&rpm=7000rpm&at=10deg';
    await open(link, async (page) => {
      const peak = peakSquish(
        { stroke: 54, rodLength: 110, pinOffset: 0 },
        { bore: 56, bowlDiameter: 40, squish: 1.2, clearanceVolume: 14 },
        7000,
      );
      await expectResult(page, 'peak', peak.velocity);
      await expectResult(page, 'peak-angle', peak.angle, 4);
      await drag(page, 'Crank angle before the top', 60, 0);
      await expect.poll(() => result(page, 'velocity')).toBeLessThan(peak.velocity / 1.1);
      await expect.poll(() => page.locator('.remarks').textContent()).toContain('not a prediction');
    });
  });
});
