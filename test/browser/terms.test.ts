import { expect, it } from 'vitest';
import { visit, phone } from './support/page.ts';

const PATH = 'articles/where-the-piston-is/';

it('a term is told where it stands, and the page is not left', () =>
  visit({ path: PATH, viewport: phone, hasTouch: true }, async (page) => {
    const link = page.locator('main a.term').first();
    await link.tap();
    const note = page.locator('.term-note');
    await expect.poll(() => note.isVisible()).toBe(true);
    await expect.poll(() => note.textContent()).toContain('Ignition timing');
    await expect.poll(() => page.url()).toContain(PATH);
    const box = (await note.boundingBox())!;
    expect(box.width).toBeLessThanOrEqual(phone.width);
    await note.getByRole('button', { name: 'Close' }).tap();
    await expect.poll(() => note.isVisible()).toBe(false);
  }));

it('by keyboard: Enter opens it, Escape shuts it, and the focus is on the term again', () =>
  visit({ path: PATH }, async (page) => {
    const link = page.locator('main a.term').first();
    await link.focus();
    await page.keyboard.press('Enter');
    const note = page.locator('.term-note');
    await expect.poll(() => note.isVisible()).toBe(true);
    expect(await note.evaluate((element) => element === document.activeElement)).toBe(true);
    await page.keyboard.press('Escape');
    await expect.poll(() => note.isVisible()).toBe(false);
    expect(await link.evaluate((element) => element === document.activeElement)).toBe(true);
  }));

it('where its meaning cannot be had, the link leads to the glossary as it does without script', () =>
  visit({ path: PATH, expected: [/503/], tolerated: [/503/] }, async (page) => {
    await page.route('**/terms.json', (route) => route.fulfill({ status: 503, body: '' }));
    await page.locator('main a.term').first().click();
    await page.waitForURL(/glossary\/#ignition-timing$/);
  }));
