import { Linter } from 'eslint';
import { describe, expect, it } from 'vitest';
import { tooEarly } from '../.config/too-early.mjs';

const linter = new Linter();

/** How many reads the rule finds too early in the body of a test. */
const found = (body: string): number =>
  linter.verify(`it('', async () => { ${body} });`, {
    plugins: { project: { rules: { 'too-early': tooEarly as never } } },
    rules: { 'project/too-early': 'error' },
  }).length;

describe('a read that may come before the page’s answer is found', () => {
  it.each([
    'await button.click(); expect(await box.inputValue()).toBe("1");',
    'await box.fill("1"); expect(await list.count()).toBe(2);',
    'await box.press("Enter"); expect(await line.isVisible()).toBe(true);',
    'await box.press("Tab"); expect(await page.evaluate(() => document.activeElement.id)).toBe("a");',
    'await box.tap(); const words = "a"; expect(await said(page)).toContain(words);',
    'await dragPart(page, handle, 9, 0); expect(Number(await handle.getAttribute("x"))).toBe(1);',
    'await page.goto("/sheet/#engine=1"); expect(await page.textContent("h1")).toBe("a");',
    'await box.fill("1"); await page.evaluate(() => 1); expect(await list.count()).toBe(2);',
    'await ready(page); expect(new URL(page.url()).hash).toBe("#a");',
    'await ready(page); expect(query(page).get("a")).toBe("1");',
  ])('%s', (body) => {
    expect(found(body)).toBe(1);
  });
});

describe('one that was waited for is not', () => {
  it.each([
    'await button.click(); await expect.poll(() => box.inputValue()).toBe("1"); expect(await list.count()).toBe(2);',
    'await button.click(); await line.waitFor(); expect(await line.innerText()).toBe("a");',
    'await settled(page); expect(await list.count()).toBe(2);',
    'await box.fill("1"); await expectResult(page, "angle", 24); expect(await result(page)).toBe(2);',
    'await page.goto("/sheet/"); expect(await page.title()).toBe("a");',
    'await expect.poll(() => page.url()).toContain("a");',
    'const press = async () => { await box.press("Enter"); }; expect(await list.count()).toBe(2);',
  ])('%s', (body) => {
    expect(found(body)).toBe(0);
  });
});
