import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { settled } from './support/calculator.ts';
import { middleOf, painted, take } from './support/handles.ts';
import { phone, visit } from './support/page.ts';

const firing = { path: 'calculators/firing-order/', viewport: phone } as const;

describe('the crank of a one-off engine', () => {
  it('is filled in by a usual crank, and its directions go on to the plate', async () => {
    await visit(firing, async (page) => {
      await settled(page);
      const onwards = page.getByRole('link', { name: 'Lay out a plate with these directions' });
      // Of the example's crank they are nobody's.
      expect(await onwards.getAttribute('href')).toMatch(/\?example=all&/);
      await page.getByRole('button', { name: 'Vee four, 90°' }).click();
      await painted(page);
      // Nobody has said yet which way the cam turns.
      await expect.poll(() => onwards.getAttribute('href')).toMatch(/\?example=turning&/);
      const value = (name: string) =>
        page.locator(`output[name="${name}"] data`).getAttribute('value');
      expect(await value('sequence')).toBe('1234');
      await expect.poll(() => new URL(page.url()).searchParams.get('lean-4')).toBe('45deg');
      await onwards.click();
      await page.waitForURL(/plate-layout/);
      await settled(page);
      const texts = new URL(page.url()).searchParams;
      expect([texts.get('sets'), texts.get('spacing-2'), texts.get('spacing-4')]).toEqual([
        '4',
        '90deg',
        '90deg',
      ]);
      expect(await page.locator('[data-name="direction-2"]').getAttribute('value')).toBe('180');
    });
  });

  it.each(['1-3-2-4', '1,3,2,4', '1324', '1 3 2 4'])(
    'takes the firing order as “%s”, and so does the plate',
    async (order) => {
      const direction = (page: Page, set: number, name: string) =>
        page.locator(`[data-name="${name}-${String(set)}"]`).getAttribute('value');
      await visit({ ...firing, path: `${firing.path}?cylinders=4` }, async (page) => {
        await settled(page);
        await page.locator('input[name="firing-order"]').fill(order);
        await expect.poll(() => direction(page, 3, 'set')).toBe('90');
        await expect
          .poll(() => page.locator('output[name="sequence"]').innerText())
          .toContain('1-3-2-4');
        await page.getByRole('link', { name: 'Lay out a plate with these directions' }).click();
        await page.waitForURL(/plate-layout/);
        await settled(page);
        await expect.poll(() => new URL(page.url()).searchParams.get('spacing-2')).toBe('180deg');
      });
      await visit({ path: 'calculators/plate-layout/?sets=4&start=0deg' }, async (page) => {
        await settled(page);
        await page.locator('input[name="firing-order"]').fill(order);
        await expect.poll(() => direction(page, 3, 'direction')).toBe('90');
        expect(await direction(page, 2, 'direction')).toBe('180');
        expect(await page.locator('input[name="spacing-2"]').count()).toBe(0);
        await expect.poll(() => new URL(page.url()).searchParams.get('firing-order')).toBe(order);
      });
    },
  );

  it('tells the plate which way its cam turns', async () => {
    const path = `${firing.path}?cylinders=2&pin-1=0deg&pin-2=0deg&lean-1=-45deg&lean-2=45deg&turning=clockwise`;
    await visit({ ...firing, path }, async (page) => {
      await settled(page);
      const link = page.getByRole('link', { name: 'Lay out a plate with these directions' });
      expect(await link.getAttribute('href')).toMatch(
        /\?sets=2&turning=clockwise&spacing-2=90deg$/,
      );
    });
  });

  it('is turned by its handle, which stays at the angle of the finger', async () => {
    await visit({ ...firing, viewport: { width: 800, height: 1600 } }, async (page) => {
      await settled(page);
      const grip = page.getByRole('slider', { name: /^Crank, degrees after/ });
      const start = await take(page, grip);
      // The hub of the end view, by its place on the sheet.
      const sheet = (await page.locator('.calc-picture .plot').first().boundingBox())!;
      const centre = {
        x: sheet.x + sheet.width / 2,
        y: sheet.y + (sheet.height * 182) / 362,
      };
      const radius = Math.hypot(start.x - centre.x, start.y - centre.y);
      const bearing = ({ x, y }: { x: number; y: number }): number =>
        (Math.atan2(x - centre.x, centre.y - y) * 180) / Math.PI;
      const from = bearing(start);
      for (const by of [20, 60, 140, 90]) {
        const angle = ((from + by) * Math.PI) / 180;
        await page.mouse.move(
          centre.x + radius * Math.sin(angle),
          centre.y - radius * Math.cos(angle),
        );
        await painted(page);
        const off = bearing(await middleOf(grip)) - (from + by);
        expect(Math.abs(((off + 540) % 360) - 180), `${by} degrees on`).toBeLessThan(2);
      }
      await page.mouse.up();
      await expect
        .poll(async () => Number(await grip.getAttribute('aria-valuenow')))
        .toBeCloseTo(120, -1);
    });
  });

  it('is turned by the keyboard, all drawings together', async () => {
    await visit(firing, async (page) => {
      await settled(page);
      const grip = page.getByRole('slider', { name: /^Crank, degrees after/ });
      const labels = () =>
        page
          .locator('.calc-picture .plot')
          .evaluateAll((all) => all.map((svg) => svg.getAttribute('aria-label')!));
      await grip.focus();
      await page.keyboard.press('ArrowRight');
      await painted(page);
      expect(await grip.getAttribute('aria-valuenow')).toBe('35');
      const turned = (await labels()).filter((label) => label.includes('35 degrees after the top'));
      expect(turned).toHaveLength(3);
      await expect.poll(() => new URL(page.url()).searchParams.get('turned')).toBe('35deg');
    });
  });
});
