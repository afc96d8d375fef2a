import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { settled } from './support/calculator.ts';
import { painted } from './support/handles.ts';
import { phone, visit } from './support/page.ts';

/** What the page did with keys pressed one right after another, before the next paint. */
interface Done {
  /** Parts of the page that were written to, `same` where what was written stood there already. */
  readonly written: readonly string[];
  /** Whether the picture was drawn with them. */
  readonly picture: boolean;
  /** What was written after the box in use. */
  readonly afterBox: readonly string[];
}

/** Steps the field in use up and down, so often, with no paint between. */
const press = (page: Page, times: number): Promise<Done> =>
  page.evaluate(async (count) => {
    const nameOf = (node: Node): string => {
      const element = node instanceof Element ? node : node.parentElement!;
      return `${element.tagName.toLowerCase()}.${element.getAttribute('class') ?? ''}`;
    };
    const written: string[] = [];
    let picture = false;
    const note = (found: readonly MutationRecord[]): void => {
      for (const { type, target, oldValue } of found) {
        const element = target instanceof Element ? target : target.parentElement;
        if (element?.closest('.calc-picture')) picture = true;
        const same = type === 'characterData' && oldValue === target.textContent;
        written.push(`${type} ${nameOf(target)}${same ? ' same' : ''}`);
      }
    };
    const observer = new MutationObserver(note);
    observer.observe(document.body, {
      subtree: true,
      childList: true,
      attributes: true,
      characterData: true,
      characterDataOldValue: true,
    });
    const value = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')!;
    let box = 0;
    Object.defineProperty(HTMLInputElement.prototype, 'value', {
      ...value,
      set(text: string) {
        note(observer.takeRecords());
        if (this === document.activeElement) box = written.length;
        else written.push('value of another box');
        value.set!.call(this, text);
      },
    });
    for (let i = 0; i < count; i += 1) {
      const key = i % 2 === 0 ? 'ArrowUp' : 'ArrowDown';
      const event = new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true });
      document.activeElement!.dispatchEvent(event);
      // The page draws in the microtasks that the key leaves behind.
      for (let task = 0; task < 10; task += 1) await Promise.resolve();
    }
    note(observer.takeRecords());
    observer.disconnect();
    Object.defineProperty(HTMLInputElement.prototype, 'value', value);
    return { written, picture, afterBox: written.slice(box) };
  }, times);

const onPage = (slug: string, body: (page: Page) => Promise<void>): Promise<void> =>
  visit({ path: `calculators/${slug}/`, viewport: phone }, async (page) => {
    await settled(page);
    await page.locator('.field:has(.field-unit) input[type="text"]').first().focus();
    // The first makes the example's figure the reader's, which is told in several places.
    for (const key of ['ArrowUp', 'ArrowDown', 'ArrowUp']) await page.keyboard.press(key);
    await expect.poll(() => new URL(page.url()).search).not.toBe('');
    await painted(page);
    await body(page);
  });

it.each(['port-timing', 'wiring', 'float-level'])(
  'a key writes the figures that it changes, and nothing that stands there already: %s',
  async (slug) => {
    await onPage(slug, async (page) => {
      const { written } = await press(page, 1);
      expect(written.filter((each) => each.startsWith('characterData data.'))).not.toEqual([]);
      expect(written.filter((each) => each.endsWith('same'))).toEqual([]);
    });
  },
);

it('the box in use is written last, so that the page is laid out once', async () => {
  await onPage('port-timing', async (page) => {
    const { written, afterBox } = await press(page, 1);
    expect(written).not.toEqual([]);
    expect(afterBox).toEqual([]);
  });
});

it('the picture is drawn after the paint, also where the next key comes before it', async () => {
  await onPage('port-timing', async (page) => {
    const drawn = () => page.locator('.calc-picture').innerHTML();
    const before = await drawn();
    const { written, picture } = await press(page, 5);
    expect(written).not.toEqual([]);
    expect(picture).toBe(false);
    await expect.poll(drawn).not.toBe(before);
  });
});

it('the ± follows its figure after the paint', async () => {
  await onPage('piston-position', async (page) => {
    const spread = page.locator('.calc-answer .spread').first();
    const before = await spread.textContent();
    const atOnce = await page.evaluate(async () => {
      const lead = document.querySelector('.calc-answer .lead')!;
      const figure = () => lead.querySelector('data')!.textContent;
      const shown = figure();
      const box = document.activeElement as HTMLInputElement;
      box.value = '0.3';
      box.dispatchEvent(new InputEvent('input', { bubbles: true }));
      for (let task = 0; task < 10; task += 1) await Promise.resolve();
      return { changed: figure() !== shown, spread: lead.querySelector('.spread')!.textContent };
    });
    expect(atOnce).toEqual({ changed: true, spread: before });
    await expect.poll(() => spread.textContent()).not.toBe(before);
  });
});
