import { expect, it } from 'vitest';
import { field, settled } from './support/calculator.ts';
import { phone, visit } from './support/page.ts';

const PATH = 'calculators/plate-setting/';
const given = '?cylinders=2&stroke=54mm&rod=110mm&target=1.7mm&fired-1=19.5mm&fired-2=1.7mm';

it('readings that cannot be stand under the answer, above the picture, until they are put right', async () => {
  await visit({ path: PATH + given, viewport: phone }, async (page) => {
    await settled(page);
    const said = page.locator('.look-here');
    await expect
      .poll(() => said.first().innerText())
      .toBe('Look here. Cylinder 1 fires more than 50° before the top, where no such engine does.');
    const below = (await page.locator('[data-part="picture"]').boundingBox())!;
    const line = (await said.last().boundingBox())!;
    expect(line.y + line.height).toBeLessThanOrEqual(below.y);
    await said.first().getByRole('link').click();
    await expect
      .poll(() => page.locator('#remarks').evaluate((list) => list.getBoundingClientRect().top))
      .toBeLessThan(phone.height);
    expect(await page.locator('#remarks').innerText()).toContain(
      'Check those readings, their unit',
    );
    await field(page, 'fired-1').fill('1.95');
    await expect.poll(() => said.count()).toBe(0);
  });
});

it('is not printed twice: the remarks are', async () => {
  await visit({ path: PATH + given }, async (page) => {
    await settled(page);
    await page.locator('.look-here').first().waitFor();
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.look-here:visible').count()).toBe(0);
    expect(await page.locator('.remarks li:visible').count()).toBeGreaterThan(1);
  });
});
