import type { Page } from 'playwright-core';
import { describe, expect, inject, it } from 'vitest';
import { fromQuery, originsIn } from '../../calculators/frame/address.ts';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import { angleBefore } from '../../calculators/maths/crank/slider-crank.ts';
import { calculators } from '../../site/all-calculators.ts';
import { documentOf, pageFiles, pathOf } from './support/built.ts';
import { result, settled } from './support/calculator.ts';
import { visit } from './support/page.ts';
import { typeSizes } from './support/type-sizes.ts';

const PHONE = { width: 390, height: 844 } as const;
const DESK = { width: 1280, height: 800 } as const;
const PATH = 'articles/where-the-piston-is/';
const demo = { stroke: 51, rodLength: 104, pinOffset: 0 };

const files = pageFiles.filter((file) => /^articles\/[^/]+\/index\.html$/.test(file));

/** The state that a link to a calculator's page holds. */
function stateOf(href: string) {
  const [, slug, query] = /calculators\/([^/]+)\/\?(.*)$/.exec(href)!;
  const calculator = calculators.find((each) => each.slug === slug)!;
  const search = query!.replaceAll('&amp;', '&');
  const evaluation = evaluate(calculator, fromQuery(search), {
    lengths: 'mm',
    origins: originsIn(search),
  });
  return { slug, evaluation };
}

describe.each(files)('%s', (file) => {
  const document = documentOf(file);
  const figures = [...document.querySelectorAll('figure[data-calculator]')];

  it('shows its figures picture first, then the answer, then one to three inputs', () => {
    expect(figures.length).toBeGreaterThan(0);
    for (const figure of figures) {
      const parts = [...figure.querySelectorAll('[data-part]')];
      expect(parts.map((part) => part.getAttribute('data-part'))).toEqual([
        'picture',
        'answer',
        'form',
      ]);
      expect(figure.firstElementChild).toBe(parts[0]);
      expect(parts[0]!.querySelector('svg')).not.toBeNull();
      const names = [...parts[2]!.querySelectorAll('input[type="text"]')].map((input) =>
        input.getAttribute('name'),
      );
      const inputs = new Set(names.map((name) => name!.replace(/-\d+$/, '')));
      expect(inputs.size, figure.id).toBeGreaterThan(0);
      expect(inputs.size, figure.id).toBeLessThanOrEqual(3);
    }
  });

  it('leads from each figure to the whole calculation in its state, which is the example’s', () => {
    for (const figure of figures) {
      const { slug, evaluation } = stateOf(
        figure.querySelector('figcaption a')!.getAttribute('href')!,
      );
      expect(slug).toBe(figure.getAttribute('data-calculator'));
      expect(evaluation.problems).toEqual([]);
      expect(evaluation.fields.filter(({ origin }) => origin !== 'example')).toEqual([]);
      const shown = [...figure.querySelectorAll('output data')];
      for (const data of shown) {
        const name = data.closest('output')!.getAttribute('name')!;
        expect(Number(data.getAttribute('value')), `${figure.id} ${name}`).toBeCloseTo(
          evaluation.results[name] as number,
          9,
        );
      }
    }
  });

  it('shows each figure whole in its box, on a phone and beside the picture', async () => {
    for (const viewport of [PHONE, DESK]) {
      await visit({ path: pathOf(file), viewport }, async (page) => {
        const cut = await page.evaluate(() =>
          [...document.querySelectorAll<HTMLInputElement>('.calc-figure .field-box input')]
            .filter(({ scrollWidth, clientWidth }) => scrollWidth > clientWidth)
            .map(({ name, value }) => `${name}: ${value}`),
        );
        expect(cut).toEqual([]);
      });
    }
  });

  it('sets by its text only figures that stand there, each to a state that exists', () => {
    for (const link of document.querySelectorAll('a.set-figure')) {
      const figure = document.getElementById(link.getAttribute('data-figure')!);
      const { slug, evaluation } = stateOf(link.getAttribute('href')!);
      expect(slug).toBe(figure?.getAttribute('data-calculator'));
      expect(evaluation.problems).toEqual([]);
      expect(link.textContent).toMatch(/\S/);
    }
  });
});

describe.each(files.map(pathOf))('/%s', (path) => {
  it('each figure goes on one screen of a phone', () =>
    visit({ path, viewport: PHONE }, async (page) => {
      await settled(page);
      const heights = await page
        .locator('.figure-place')
        .evaluateAll((places) => places.map((place) => place.getBoundingClientRect().height));
      for (const height of heights) expect(height).toBeLessThanOrEqual(PHONE.height);
    }));

  it('a box that is taken in hand stays as tall as it was', () =>
    visit({ path, viewport: PHONE }, async (page) => {
      await settled(page);
      const tall = () =>
        page
          .locator('.calc-figure .field')
          .evaluateAll((fields) => fields.map((field) => field.getBoundingClientRect().height));
      const before = await tall();
      await page.locator('.calc-figure .field:has(.step) input').first().focus();
      await expect.poll(tall).toEqual(before);
    }));

  it('figures side by side in an answer stand on one line, on the narrowest phone too', () =>
    visit({ path, viewport: { width: 360, height: 740 } }, async (page) => {
      const apart = await page.locator('.calc-figure .leads').evaluateAll((strips) =>
        strips.flatMap((strip) => {
          const feet = [...strip.querySelectorAll('.lead:not(:first-child) dd')].map(
            (figure) => figure.getBoundingClientRect().bottom,
          );
          return feet.slice(0, 2).map((foot) => Math.round(foot - feet[0]!));
        }),
      );
      expect(apart.filter((by) => by !== 0)).toEqual([]);
    }));

  it('pictures have type of 13 to 14 px, on the narrowest phone and on a desk', () =>
    visit({ path, viewport: PHONE }, async (page) => {
      await settled(page);
      for (const width of [360, 390, 768, 1280]) {
        await page.setViewportSize({ width, height: 844 });
        const sizes = await typeSizes(page, 'article');
        expect(Math.min(13, ...sizes), `${String(width)} px`).toBeGreaterThan(12.9);
        expect(Math.max(13, ...sizes), `${String(width)} px`).toBeLessThan(14.1);
      }
    }));

  it('no table is cut off on a phone, nor lies on the line of its example', () =>
    visit({ path, viewport: PHONE }, async (page) => {
      for (const width of [360, 375, PHONE.width]) {
        await page.setViewportSize({ width, height: PHONE.height });
        const cut = await page
          .locator('article .table-wrap')
          .evaluateAll((frames) =>
            frames
              .filter((frame) => frame.scrollWidth > frame.clientWidth)
              .map((frame) => frame.querySelector('caption')?.textContent ?? ''),
          );
        expect(cut, `${String(width)} px`).toEqual([]);
      }
      const clear = await page.locator('article .worked .table-wrap').evaluateAll((frames) =>
        frames.map((frame) => {
          const example = frame.closest('.worked')!;
          const line = parseFloat(getComputedStyle(example, '::after').insetInlineStart);
          return frame.getBoundingClientRect().left - example.getBoundingClientRect().left - line;
        }),
      );
      expect(Math.min(4, ...clear)).toBeGreaterThanOrEqual(4);
    }));

  it('what sets a figure stands within a screen of it', () =>
    visit({ path, viewport: PHONE }, async (page) => {
      const far = await page.locator('a.set-figure').evaluateAll((links) =>
        links.flatMap((link) => {
          const figure = document.getElementById((link as HTMLElement).dataset['figure']!)!;
          const [a, b] = [link.getBoundingClientRect(), figure.getBoundingClientRect()];
          const apart = Math.max(a.top - b.bottom, b.top - a.bottom);
          return apart > innerHeight ? [`${link.textContent}: ${String(apart)}`] : [];
        }),
      );
      expect(far).toEqual([]);
    }));

  it('on a desk the contents and the drawings stand beside lines of 60 to 75 letters', () =>
    visit({ path, viewport: DESK }, async (page) => {
      const seen = await page.evaluate(() => {
        const box = (element: Element) => element.getBoundingClientRect();
        const column = box(document.querySelector('article')!);
        const lengths = [...document.querySelectorAll('article > p')].flatMap((text) => {
          const lines = new Map<number, number>();
          const walker = document.createTreeWalker(text, NodeFilter.SHOW_TEXT);
          for (let node = walker.nextNode(); node; node = walker.nextNode()) {
            if (node.parentElement!.closest('math')) return [];
            for (let at = 0; at < node.textContent!.length; at += 1) {
              const range = document.createRange();
              range.setStart(node, at);
              range.setEnd(node, at + 1);
              const line = Math.round(range.getBoundingClientRect().bottom / 12);
              lines.set(line, (lines.get(line) ?? 0) + 1);
            }
          }
          // The last line of a paragraph is as long as it comes.
          return [...lines.values()].slice(0, -1);
        });
        const drawings = [...document.querySelectorAll('article > figure:not(.in-text)')].map(box);
        const contents = document.querySelector('.contents');
        const inColumn = [...document.querySelector('article')!.children].filter(
          (part) => getComputedStyle(part).float === 'none' && box(part).height > 0,
        );
        const blanks = inColumn.slice(1).map((part, i) => box(part).top - box(inColumn[i]!).bottom);
        return {
          lengths: lengths.sort((a, b) => a - b),
          beside: drawings.every(({ left }) => left > column.right),
          before: contents === null || box(contents).right < column.left,
          blank: Math.max(...blanks),
        };
      });
      const middle = seen.lengths[Math.floor(seen.lengths.length / 2)]!;
      expect(middle).toBeGreaterThanOrEqual(60);
      expect(middle).toBeLessThanOrEqual(75);
      expect(seen.beside).toBe(true);
      expect(seen.before).toBe(true);
      expect(seen.blank).toBeLessThan(DESK.height / 2);
    }));
});

/** Where the first value of the text that sets a figure is; by itself it is fetched by nobody. */
const shorter = (page: Page) => page.locator('a.set-figure[data-figure="rods"]').first();
const angle = (page: Page): Promise<number | undefined> =>
  page
    .locator('#rods output[name="angle"] data')
    .getAttribute('value')
    .then((value) => Number(value));
const ofShortRod = angleBefore({ ...demo, rodLength: 90 }, 2.2);

describe('a value of the text', () => {
  it('sets its figure, which is fetched for it, and says so', () =>
    visit({ path: PATH, viewport: PHONE, hasTouch: true }, async (page) => {
      await shorter(page).tap();
      await expect.poll(() => angle(page)).toBeCloseTo(ofShortRod, 6);
      await expect
        .poll(() => page.locator('#rods figcaption [role="status"]').textContent())
        .toMatch(/^Set to 90\smm\.$/);
      expect(await page.inputValue('#rods input[name="rod"]')).toBe('90');
      await expect.poll(() => page.url()).toContain(PATH);
      // It says so no longer once the reader goes on from there.
      await page.fill('#rods input[name="rod"]', '95');
      await expect
        .poll(() => page.locator('#rods figcaption [role="status"]').textContent())
        .toBe('');
    }));

  it('is a button for the keyboard, by Enter and by the space bar, and brings the figure in sight', () =>
    visit({ path: PATH, viewport: PHONE }, async (page) => {
      expect(await shorter(page).getAttribute('role')).toBe('button');
      const longer = page.locator('a.set-figure[data-figure="rods"]').nth(1);
      await shorter(page).focus();
      await page.keyboard.press('Enter');
      await expect.poll(() => angle(page)).toBeCloseTo(ofShortRod, 6);
      await longer.focus();
      await page.keyboard.press(' ');
      await expect
        .poll(() => angle(page))
        .toBeCloseTo(angleBefore({ ...demo, rodLength: 120 }, 2.2), 6);
      const seen = await page.locator('#rods [data-part="picture"]').boundingBox();
      expect(seen!.y).toBeGreaterThanOrEqual(0);
      expect(seen!.y).toBeLessThan(PHONE.height / 2);
    }));

  it('says on the whole calculator’s page what the figure said, reader’s figures and all', () =>
    visit({ path: PATH, viewport: PHONE }, async (page) => {
      await settled(page);
      await page.fill('#rods input[name="rod"]', '97');
      await expect
        .poll(() => angle(page))
        .toBeCloseTo(angleBefore({ ...demo, rodLength: 97 }, 2.2), 6);
      await page.locator('#rods figcaption a').click();
      await page.waitForURL(/calculators\/piston-position\/\?.*rod=97mm/);
      await settled(page);
      await expect
        .poll(() => result(page, 'angle'))
        .toBeCloseTo(angleBefore({ ...demo, rodLength: 97 }, 2.2), 6);
      expect(await page.locator('#rod-mark').innerText()).not.toBe('example');
      await expect.poll(() => page.locator('#stroke-mark').innerText()).toBe('example');
    }));

  it('is a link to that state without a script', () =>
    visit({ path: PATH, javaScriptEnabled: false }, async (page) => {
      expect(await shorter(page).getAttribute('role')).toBeNull();
      const href = await shorter(page).getAttribute('href');
      expect(href).toMatch(/calculators\/piston-position\/\?.*rod=90mm/);
    }));

  it('leads to that state where the figure cannot be fetched', () =>
    visit(
      { path: PATH, expected: [/ERR_FAILED/], tolerated: [/Failed to fetch/], viewport: PHONE },
      async (page) => {
        await page.route(/\/_astro\/wake-figure\./, (route) => route.abort());
        await page.locator('#rods .calc-answer').click();
        await page.getByText('could not be fetched').first().waitFor();
        await shorter(page).click();
        await page.waitForURL(new RegExp(`^${inject('siteUrl')}calculators/piston-position/`));
      },
    ));
});

/** A figure whose scripts are on their way until `body` lets them come. */
const early = (body: (page: Page, letThemCome: () => void) => Promise<void>): Promise<void> =>
  visit({ path: PATH, viewport: PHONE }, async (page) => {
    const { promise: held, resolve } = Promise.withResolvers<undefined>();
    await page.route('**/*.js', async (route) => {
      await held;
      await route.continue();
    });
    await body(page, () => resolve(undefined));
  });
const point = (page: Page) => page.locator('#rods [role="slider"]').first();
const pointed = (page: Page): Promise<number> =>
  point(page).getAttribute('aria-valuenow').then(Number);

describe('a figure whose script has not come', () => {
  it('says that it is on its way, and then does what the keys asked of its handle', async () => {
    let twice = Number.NaN;
    await visit({ path: PATH, viewport: PHONE }, async (page) => {
      await settled(page);
      for (let i = 0; i < 2; i += 1) await point(page).press('ArrowRight');
      twice = await pointed(page);
    });
    await early(async (page, letThemCome) => {
      const before = await pointed(page);
      expect(twice).not.toBe(before);
      await point(page).focus();
      const top = await page.evaluate(() => scrollY);
      for (let i = 0; i < 2; i += 1) await page.keyboard.press('ArrowRight');
      await page.keyboard.press('ArrowDown');
      await page.keyboard.press('ArrowUp');
      await expect.poll(() => page.locator('#rods').getAttribute('aria-busy')).toBe('true');
      expect(await page.evaluate(() => scrollY)).toBe(top);
      expect(await pointed(page)).toBe(before);
      letThemCome();
      await expect.poll(() => pointed(page)).toBe(twice);
      expect(await page.locator('#rods').getAttribute('aria-busy')).toBeNull();
    });
  });

  it('does what its buttons were pressed for, each once', () =>
    early(async (page, letThemCome) => {
      const box = page.locator('#rods input[name="rod"]');
      const before = Number(await box.inputValue());
      const more = page.locator('#rods .field:has(input[name="rod"]) .step').last();
      for (let i = 0; i < 3; i += 1) await more.click();
      letThemCome();
      await expect.poll(() => box.inputValue().then(Number)).toBeGreaterThan(before);
      const after = Number(await box.inputValue());
      await more.click();
      await expect.poll(() => box.inputValue().then(Number)).toBeGreaterThan(after);
      const step = Number(await box.inputValue()) - after;
      expect(after - before).toBeCloseTo(3 * step, 6);
    }));

  it('takes up a handle that is still held when it comes', () =>
    early(async (page, letThemCome) => {
      const before = await pointed(page);
      await point(page).scrollIntoViewIfNeeded();
      const { x, y, width, height } = (await point(page).boundingBox())!;
      await page.mouse.move(x + width / 2, y + height / 2);
      await page.mouse.down();
      await page.mouse.move(x + width / 2 - 10, y + height / 2);
      letThemCome();
      await page.locator('#rods[data-awake]').waitFor();
      await page.mouse.move(x + width / 2 - 30, y + height / 2, { steps: 4 });
      await page.mouse.up();
      await expect.poll(() => pointed(page)).not.toBe(before);
    }));

  it('keeps what is typed, and Enter does not send it away', () =>
    early(async (page, letThemCome) => {
      await page.fill('#rods input[name="rod"]', '90');
      await page.locator('#rods input[name="rod"]').press('Enter');
      letThemCome();
      await expect.poll(() => angle(page)).toBeCloseTo(ofShortRod, 6);
      await expect.poll(() => page.url().endsWith(PATH)).toBe(true);
    }));

  it('comes by itself near a reader in inches, for whom the server rendered nothing', () =>
    visit({ path: PATH, viewport: PHONE }, async (page) => {
      await page.evaluate(() => localStorage.setItem('gudgeon.lengths', 'in'));
      await page.reload();
      await page.locator('#rods').scrollIntoViewIfNeeded();
      await expect
        .poll(() => page.locator('#rods .field-unit').allTextContents())
        .toEqual(expect.arrayContaining([expect.stringMatching(/^(?:in|thou)$/)]));
    }));
});

it('without a script says that it stands still, and leads to its calculation', async () => {
  await visit({ path: PATH, viewport: PHONE, javaScriptEnabled: false }, async (page) => {
    const place = page.locator('.figure-place').first();
    await expect.poll(() => place.innerText()).toContain('Nothing in it can be dragged');
    await place.locator('button').first().waitFor({ state: 'hidden' });
    expect(await place.locator('button:visible').count()).toBe(0);
    await place.locator('.figure-foot a').click();
    await expect.poll(() => page.url()).toContain('/calculators/piston-position/?');
  });
  await visit({ path: PATH, viewport: PHONE }, async (page) => {
    expect(await page.locator('main').innerText()).not.toContain('Nothing in it can be dragged');
  });
});
