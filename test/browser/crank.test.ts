import { describe, expect, it } from 'vitest';
import { settled } from './support/calculator.ts';
import { painted } from './support/handles.ts';
import { phone, visit } from './support/page.ts';

const firing = { path: 'calculators/firing-order/', viewport: phone } as const;

describe('the crank of a one-off engine', () => {
  it('is filled in by a usual crank, and its directions go on to the plate', async () => {
    await visit(firing, async (page) => {
      await settled(page);
      await page.getByRole('button', { name: 'Vee four, 90°' }).click();
      await painted(page);
      const value = (name: string) =>
        page.locator(`output[name="${name}"] data`).getAttribute('value');
      expect(await value('sequence')).toBe('1234');
      expect(new URL(page.url()).searchParams.get('lean-4')).toBe('45deg');
      await page.getByRole('link', { name: 'Lay out a plate with these directions' }).click();
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

  it('tells the plate which way its cam turns', async () => {
    const path = `${firing.path}?cylinders=2&pin-1=0deg&pin-2=0deg&lean-1=-45deg&lean-2=45deg&turning=clockwise`;
    await visit({ ...firing, path }, async (page) => {
      await settled(page);
      const link = page.getByRole('link', { name: 'Lay out a plate with these directions' });
      expect(await link.getAttribute('href')).toMatch(/\?sets=2&turning=clockwise&spacing-2=90deg$/);
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
      expect(new URL(page.url()).searchParams.get('turned')).toBe('35deg');
    });
  });
});
