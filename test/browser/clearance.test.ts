import { describe, expect, it } from 'vitest';
import { settled } from './support/calculator.ts';
import { painted } from './support/handles.ts';
import { phone, visit } from './support/page.ts';

const clearance = { path: 'calculators/piston-clearance/', viewport: phone } as const;

describe('a piston in its bore', () => {
  it('takes a usual metal from its button, and says what that does hot', async () => {
    await visit(clearance, async (page) => {
      await settled(page);
      const hot = async (): Promise<number> =>
        Number(await page.locator('output[name="hot"] data').getAttribute('value'));
      const iron = await hot();
      await page.getByRole('button', { name: 'Aluminium bore' }).click();
      await painted(page);
      // 52 mm × (21.5 − 11.4) × 90 K in millionths.
      expect((await hot()) - iron).toBeCloseTo(0.047268, 7);
      await expect
        .poll(() => new URL(page.url()).searchParams.get('bore-expansion'))
        .toBe('21.5ppm/K');
    });
  });

  it('judges only figures that the reader gave', async () => {
    const path = `${clearance.path}?bore=52mm&piston=51.98mm`;
    await visit({ ...clearance, path }, async (page) => {
      await settled(page);
      const remarks = await page.locator('.remarks').textContent();
      expect(remarks).toContain('Fail: tight against the 1.0 to 1.5‰ of common practice.');
      expect(remarks).toContain('Not judged yet: what is left hot.');
      expect(remarks).not.toContain('In this example');
    });
  });
});
