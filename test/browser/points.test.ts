import { describe, expect, it } from 'vitest';
import {
  dwellAngle,
  opensBefore,
  type BreakerCam,
} from '../../calculators/maths/ignition/breaker-cam.ts';
import { chargeTime, currentAfter } from '../../calculators/maths/ignition/coil-charge.ts';
import { settlePlate } from '../../calculators/maths/plate/plate-setting.ts';
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

describe('points gap, dwell and timing', () => {
  const cam: BreakerCam = {
    lobes: 2,
    speedRatio: 0.5,
    lift: 0.8,
    rise: 40,
    top: 20,
    profile: 'cycloidal',
  };
  const given =
    'breaker-cam/?lobes=2&speed-ratio=0.5&lift=0.8mm&rise=40deg&top=20deg&profile=cycloidal';

  it('opens a link as it was sent', async () => {
    await open(`${given}&gap=12thou`, async (page) => {
      await expectResult(page, 'opens', opensBefore(cam, 12 * 0.0254));
      await expectResult(page, 'dwell-angle', dwellAngle(cam, 12 * 0.0254));
    });
  });

  it('widens the gap when it is dragged up, and the points open earlier', async () => {
    await open(`${given}&gap=0.3mm`, async (page) => {
      const before = (await result(page, 'opens'))!;
      await drag(page, 'Points gap', 0, -40);
      await expect.poll(() => result(page, 'gap-set')).toBeGreaterThan(0.3);
      const gap = (await result(page, 'gap-set'))!;
      await expect.poll(() => field(page, 'gap').inputValue()).toBe(String(gap));
      await expectResult(page, 'opens', opensBefore(cam, gap));
      expect((await result(page, 'opens'))!).toBeGreaterThan(before);
      await expect.poll(() => query(page).get('gap')).toBe(`${gap}mm`);
    });
  });

  it('changes the dwell by dragging where a dwell was given', async () => {
    await open(`${given}&from=dwell&dwell=130deg`, async (page) => {
      await expectResult(page, 'dwell-angle', 130);
      await drag(page, 'Points gap', 0, -40);
      await expect.poll(() => result(page, 'dwell-angle')).toBeLessThan(130);
      expect(await field(page, 'dwell').inputValue()).toBe(
        String(await result(page, 'dwell-angle')),
      );
    });
  });

  it('turns the cam by dragging and by the arrow keys, and shuts the points', async () => {
    await open(`${given}&gap=0.3mm&at=0deg`, async (page) => {
      await expectResult(page, 'opening', 0.3);
      const drawn = page.getByRole('img', { name: /Cam, heel and arm/ });
      expect(await drawn.getAttribute('aria-label')).toContain('open 0.30 mm');
      await drag(page, 'Cam turned to', -120, 0);
      await expectResult(page, 'opening', 0);
      expect(await drawn.getAttribute('aria-label')).toContain('shut');
      const at = Number(await field(page, 'at').inputValue());
      expect(at).toBeGreaterThan(25);
      await handle(page, 'Cam turned to').focus();
      await page.keyboard.press('ArrowLeft');
      await expect.poll(() => field(page, 'at').inputValue()).toBe(String(at + 1));
    });
  });

  it('turns by itself until stopped, and rests where it then stands', async () => {
    await open(`${given}&gap=0.3mm&at=70deg`, async (page) => {
      const drawn = page.getByRole('img', { name: /Cam, heel and arm/ });
      const standing = async (): Promise<number> =>
        Number(
          /(-?\d+) degrees/.exec((await drawn.getAttribute('aria-label'))!.replace('−', '-'))![1],
        );
      await page.getByRole('button', { name: 'Turn the cam' }).click();
      // Through shut and open again, without a hand on it.
      await expect.poll(() => drawn.getAttribute('aria-label')).toContain('shut');
      await expect
        .poll(() => drawn.getAttribute('aria-label'), { timeout: 8000 })
        .toContain('open');
      await page.getByRole('button', { name: 'Stop the cam' }).click();
      await expect.poll(() => field(page, 'at').inputValue()).not.toBe('70');
      const at = Number(await field(page, 'at').inputValue());
      expect(await standing()).toBe(at);
      await expect.poll(() => query(page).get('at')).toBe(`${String(at)}deg`);
      await page.goBack();
      await expect.poll(() => field(page, 'at').inputValue()).toBe('70');
    });
  });

  it('is turned on by a step where the reader wants no movement', async () => {
    await open(
      `${given}&gap=0.3mm&at=70deg`,
      async (page) => {
        await page.getByRole('button', { name: 'Turn the cam' }).click();
        await expect.poll(() => field(page, 'at').inputValue()).toBe('60');
        expect(await page.getByRole('button', { name: 'Stop the cam' }).count()).toBe(0);
      },
      { reducedMotion: 'reduce' },
    );
  });

  it('unfolds a side question that needs attention, and leaves it open', async () => {
    await open(given, async (page) => {
      const wear = page.locator('details', { hasText: 'Wear of the heel' }).first();
      // As the page is served: what the tests wait for unfolds everything.
      await wear.evaluate((fold) => fold.removeAttribute('open'));
      await wear.locator('summary').first().click();
      await field(page, 'wear-rate').fill('-1');
      await expect.poll(() => alertText(page)).toContain('from 0 mm to 2 mm');
      await field(page, 'wear-rate').fill('0.03');
      await expect.poll(() => alertText(page)).toBe('');
      expect(await field(page, 'wear-rate').isVisible()).toBe(true);
    });
    await open(`${given}&wear-rate=9`, async (page) => {
      await expect.poll(() => field(page, 'wear-rate').isVisible()).toBe(true);
    });
  });

  it('is used with a finger on a phone', async () => {
    const options = { viewport: phone, hasTouch: true, isMobile: true };
    await open(
      `${given}&gap=0.3mm`,
      async (page) => {
        const grip = (await handle(page, 'Points gap').boundingBox())!;
        expect(Math.min(grip.width, grip.height)).toBeGreaterThanOrEqual(40);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(phone.width);
        await drag(page, 'Points gap', 0, 30);
        await expect.poll(() => result(page, 'gap-set')).toBeLessThan(0.3);
      },
      options,
    );
  });
});

describe('coil current and spark energy', () => {
  const primary = { volts: 12, resistance: 3, ballast: 1, inductance: 8 };
  const given =
    'coil-charge/?volts=12V&resistance=3ohm&ballast=1ohm&inductance=8mH&dwell-angle=180deg&lobes=1&speed-ratio=1';
  const currentAt = (rpm: number): number => currentAfter(primary, chargeTime(180, 1, rpm));

  it('slows down when the point is dragged to the right, and the current grows', async () => {
    await open(`${given}&rpm=9000rpm`, async (page) => {
      await expectResult(page, 'current', currentAt(9000));
      await drag(page, 'Speed', 60, 0);
      await expect
        .poll(async () => Number(await field(page, 'rpm').inputValue()))
        .toBeLessThan(9000);
      const rpm = Number(await field(page, 'rpm').inputValue());
      await expectResult(page, 'current', currentAt(rpm));
      await expect.poll(() => query(page).get('rpm')).toBe(`${rpm}rpm`);
    });
  });

  it('fills a row of the table for each speed typed', async () => {
    await open(given, async (page) => {
      await field(page, 'speeds').fill('1500 4500 12000');
      await expectResult(page, 'current-at-3', currentAt(12000));
      expect(await page.locator('[data-name^="current-at-"]').count()).toBe(3);
    });
  });
});

describe('several cylinders from one plate', () => {
  const given =
    'plate-setting/?cylinders=3&as=angle&target-angle=22deg&fired-angle-1=26deg&fired-angle-2=23deg&fired-angle-3=22deg';

  it('takes a cylinder more or less', async () => {
    await open(given, async (page) => {
      await expectResult(page, 'plate-move', -2);
      await field(page, 'cylinders').fill('2');
      await expectResult(page, 'plate-move', -2.5);
      await expect.poll(() => result(page, 'error-3')).toBeUndefined();
      await field(page, 'cylinders').fill('5');
      await expect.poll(() => result(page, 'error-5')).toBeDefined();
      expect(await field(page, 'fired-angle-5').isVisible()).toBe(true);
    });
  });

  it('follows a cylinder dragged later', async () => {
    await open(given, async (page) => {
      await drag(page, 'Cylinder 1 as found', 0, 60);
      await expect
        .poll(async () => Number(await field(page, 'fired-angle-1').inputValue()))
        .toBeLessThan(26);
      const first = Number(await field(page, 'fired-angle-1').inputValue());
      const { move, errors } = settlePlate([first, 23, 22], 22);
      await expectResult(page, 'plate-move', move);
      await expectResult(page, 'error-1', errors[0]!);
      await expectResult(page, 'error-3', errors[2]!);
    });
  });

  it('steps a cylinder by the arrow keys, in piston travel too', async () => {
    await open('plate-setting/?cylinders=2&fired-1=2.3mm&fired-2=2.1mm', async (page) => {
      await handle(page, 'Cylinder 2 as found').focus();
      await page.keyboard.press('ArrowUp');
      await expect
        .poll(async () => Number(await field(page, 'fired-2').inputValue()))
        .toBeGreaterThan(2.1);
    });
  });

  it('says pass or fail in every row', async () => {
    await open(`${given}&tolerance=1.5deg`, async (page) => {
      const verdicts = await page.locator('.calc .row-words').allTextContents();
      expect(verdicts).toEqual(
        [
          'fail, move this set',
          'pass (too near to the limit to be sure: measure again)',
          'fail, move this set',
        ].map((words) => `Within tolerance: ${words}`),
      );
    });
  });
});
