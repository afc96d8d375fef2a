import type { Page } from 'playwright-core';
import { text as textOf } from 'node:stream/consumers';
import { describe, expect, inject, it } from 'vitest';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { documentOf, LIMITS, newEngine } from '../../calculators/sheet/model.ts';
import { writeDocument } from '../../calculators/sheet/validate.ts';
import { fillStorage } from './support/full-storage.ts';
import { alertText } from './support/calculator.ts';
import { CLIPBOARD, copied } from './support/clipboard.ts';
import { visit } from './support/page.ts';
import { box, button, expectKept, figure, KEY, keepEngines, kept, ready } from './support/sheet.ts';
import { parseDocument } from '../sheet/parse-document.ts';

const demo = { ...demoSheet(), id: 'e-1' };
const path = 'sheet/';
const name = (page: Page) => page.getByLabel('Name', { exact: true });
const ASIDE = 'gudgeon.sheet.aside';

const downloaded = async (page: Page, label: string | RegExp): Promise<string> => {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    button(page, label).click(),
  ]);
  return textOf(await download.createReadStream());
};

const importText = (page: Page, text: string, file = 'given.json'): Promise<void> =>
  page
    .locator('input[type="file"]')
    .setInputFiles({ name: file, mimeType: 'application/json', buffer: Buffer.from(text) });

const said = (page: Page): Promise<string> => page.locator('.engine-bar .share-state').innerText();

describe('kept in this browser', () => {
  it('what cannot be read stays as typed through a reload, and no figure stands for it', async () => {
    await visit({ path }, async (page) => {
      await ready(page);
      await keepEngines(page, demo);
      await figure(page, 'stroke').fill('5l');
      await expect
        .poll(() => page.locator('#figure-stroke-problem').innerText())
        .toContain('“l” is not a unit');
      await page.reload();
      await ready(page);
      await expect.poll(() => figure(page, 'stroke').inputValue()).toBe('5l');
      const { engines } = JSON.parse(await kept(page)).sheet as { engines: { figures: object }[] };
      expect(engines[0]!.figures).toMatchObject({ rod: 104 });
      expect(engines[0]!.figures).not.toHaveProperty('stroke');
      await figure(page, 'stroke').fill('2 in');
      await expectKept(page, '"stroke":50.8');
      await expect.poll(() => figure(page, 'stroke').inputValue()).toBe('2 in');
    });
  });

  it('a figure typed in thou stays in thou, in the box, after a reload and with lengths in inches', async () => {
    await visit({ path }, async (page) => {
      await ready(page);
      await keepEngines(page, demo);
      await page.locator('.sheet-group summary').filter({ hasText: 'Points' }).click();
      await figure(page, 'gap').fill('18 thou');
      await expectKept(page, '"gap":0.4572');
      await page.reload();
      await ready(page);
      await expect.poll(() => figure(page, 'gap').inputValue()).toBe('18 thou');
      await page.getByLabel('inch', { exact: true }).check();
      await expect.poll(() => figure(page, 'gap').inputValue()).toBe('18');
      await expect.poll(() => figure(page, 'stroke').inputValue()).toBe('2.0079');
      await page.getByLabel('mm', { exact: true }).check();
      await expect.poll(() => figure(page, 'gap').inputValue()).toBe('18 thou');
      await expect.poll(() => figure(page, 'stroke').inputValue()).toBe('51');
    });
  });

  it('a sum is worked out, alone and one at a time; only what it comes to is kept', async () => {
    await visit({ path }, async (page) => {
      await ready(page);
      await keepEngines(page, demo);
      const { promise: held, resolve } = Promise.withResolvers<undefined>();
      await page.route(/sum-reader/, async (route) => {
        await held;
        await route.continue();
      });
      await page.locator('#step-gap > summary').click();
      const last = box(page, 'left', 'gap', 3);
      await last.fill('0.25+0.08');
      await expect
        .poll(() => page.locator('#box-left-gap-3-problem').innerText())
        .toContain('is being worked out');
      await expectKept(page, '"left:gap:3":"0.25+0.08"');
      await box(page, 'left', 'gap', 2).focus();
      resolve(undefined);
      await expect.poll(() => last.inputValue()).toBe('0.33');
      await last.fill('0.25+0.07');
      await expectKept(page, '"value":0.32,');
      await expect.poll(() => last.inputValue()).toBe('0.25+0.07');
      await box(page, 'left', 'gap', 2).focus();
      await expect.poll(() => last.inputValue()).toBe('0.32');
      await figure(page, 'stroke').fill('51+1');
      await expectKept(page, '"stroke":52');
      await figure(page, 'rod').focus();
      await expect.poll(() => figure(page, 'stroke').inputValue()).toBe('52');
      const { engines } = JSON.parse(await kept(page)).sheet as { engines: (typeof demo)[] };
      const written = engines[0]!.log.slice(demo.log.length);
      expect(written.map(({ kind }) => kind)).toEqual(['change', 'change', 'figure']);
      await page.evaluate(() => (location.hash = 'read-gap-1'));
      await page.locator('#one-box, button:has-text("Read it again")').first().waitFor();
      await button(page, 'Read it again').click();
      await page.locator('#one-box').fill('(0.3+0.4)/2');
      await expectKept(page, '"value":0.35,');
      await expect.poll(() => page.locator('.one-field .field-note').innerText()).toBe('= 0.35 mm');
      await page.reload();
      await ready(page);
      await page.locator('a', { hasText: 'List of steps' }).click();
      await expect.poll(() => box(page, 'left', 'gap', 1).inputValue()).toBe('0.35');
    });
  });

  it('storage forbidden: it says so, and the sheet works for this tab', async () => {
    await visit({ path: 'first-start/' }, async (page) => {
      await page.addInitScript(() => {
        Object.defineProperty(window, 'localStorage', {
          get: () => {
            throw new DOMException('The operation is insecure.', 'SecurityError');
          },
        });
      });
      await page.goto(new URL(path, inject('siteUrl')).href);
      await ready(page);
      await expect.poll(() => alertText(page)).toContain('does not let the page keep anything');
      await button(page, 'Try the demo').click();
      await expect.poll(() => name(page).inputValue()).toBe('Demo: club triple');
      const file = await downloaded(page, 'Save to a file');
      expect(parseDocument(file).engines[0]?.figures).toEqual(demo.figures);
    });
  });

  it('storage full: what was kept stays whole, it says so, and the file holds the change', async () => {
    await visit({ path }, async (page) => {
      await ready(page);
      await keepEngines(page, demo);
      await page.evaluate(fillStorage);
      const before = await kept(page);
      await page
        .getByRole('textbox', { name: 'Notes' })
        .fill('A note that has no room. '.repeat(20));
      await expect.poll(() => alertText(page)).toContain('is full');
      expect(JSON.parse(await kept(page))).toHaveProperty('sheet.engines');
      expect((await kept(page)).length).toBeLessThanOrEqual(before.length + 100);
      const file = await downloaded(page, 'Save to a file');
      expect(file).toContain('A note that has no room.');
    });
  });

  it.each([
    ['cut short', '{"revision":3,"active":"e-1","sheet":{"format":"engine-sh', 'damaged'],
    ['not a sheet', '"hello"', 'damaged'],
    [
      'of a newer version',
      '{"revision":1,"active":null,"sheet":{"format":"engine-sheet","version":99,"engines":[]}}',
      'newer version',
    ],
  ])('a store that is %s is put aside, told of, and can be downloaded', async (_, text, words) => {
    await visit({ path }, async (page) => {
      await page.evaluate(([key, value]) => localStorage.setItem(key!, value!), [KEY, text]);
      await page.reload();
      await ready(page);
      const aside = page.locator('section.aside', { hasText: 'put aside' });
      await expect.poll(() => aside.innerText()).toContain(words);
      await button(page, 'Try the demo').click();
      await expectKept(page, 'club triple');
      await page.reload();
      await ready(page);
      expect(await downloaded(page, 'Download what was put aside')).toBe(text);
      await button(page, 'Remove it').click();
      await expect.poll(() => page.evaluate((key) => localStorage.getItem(key), ASIDE)).toBeNull();
      await expectKept(page, 'club triple');
    });
  });

  it('of a store with one damaged engine the whole ones are taken', async () => {
    await visit({ path }, async (page) => {
      const sheet = documentOf([demo, { ...demo, id: 'e-2', clock: -1 }]);
      const text = JSON.stringify({ revision: 1, active: 'e-1', sheet });
      await page.evaluate(([key, value]) => localStorage.setItem(key!, value!), [KEY, text]);
      await page.reload();
      await ready(page);
      await expect.poll(() => name(page).inputValue()).toBe('Demo: club triple');
      expect(await downloaded(page, 'Download what was put aside')).toBe(text);
    });
  });
});

describe('two tabs', () => {
  const both = (body: (one: Page, two: Page) => Promise<void>): Promise<void> =>
    visit({ path }, async (one) => {
      await ready(one);
      await keepEngines(one, demo);
      const two = await one.context().newPage();
      await two.goto(one.url());
      await ready(two);
      await body(one, two);
    });

  /** Makes a tab deaf, as one that was asleep while another wrote. */
  const deafen = (page: Page): Promise<void> =>
    page.evaluate(() => {
      window.addEventListener('storage', (event) => event.stopImmediatePropagation(), true);
    });
  const write = (page: Page, engine: typeof demo): Promise<void> =>
    page.evaluate(
      ([key, text]) => localStorage.setItem(key!, text!),
      [KEY, JSON.stringify({ revision: 9, active: 'e-1', sheet: documentOf([engine]) })],
    );
  const came = (page: Page): Promise<string> => page.locator('.from-elsewhere').innerText();
  const notes = (page: Page) => page.getByRole('textbox', { name: 'Notes' });

  it('show the same within a moment, without a reload', async () => {
    await both(async (one, two) => {
      await figure(one, 'stroke').fill('52');
      await expect.poll(() => figure(two, 'stroke').inputValue()).toBe('52');
      await figure(two, 'rod').fill('105');
      await expect.poll(() => figure(one, 'rod').inputValue()).toBe('105');
      await expectKept(one, '"stroke":52,"rod":105');
    });
  });

  it('one that only looks on writes nothing while the other is typed into, nor once it was', async () => {
    await both(async (one, two) => {
      await one.evaluate((key) => {
        const own = Storage.prototype.setItem;
        Storage.prototype.setItem = function (name: string, value: string) {
          if (name === key) document.documentElement.dataset.wrote = value;
          own.call(this, name, value);
        };
      }, KEY);
      await figure(two, 'rod').fill('');
      // On the way to a figure stand texts that are refused.
      for (const key of '139.125') await two.keyboard.press(key, { delay: 60 });
      await expectKept(two, '"rod":139.125');
      await expect.poll(() => figure(one, 'rod').inputValue()).toBe('139.125');
      await figure(two, 'rod').fill('1');
      await expect.poll(() => figure(one, 'rod').inputValue()).toBe('1');
      expect(await one.evaluate(() => document.documentElement.dataset.wrote)).toBeUndefined();
    });
  });

  it('a newer write elsewhere is not lost by one that did not see it', async () => {
    await both(async (one, two) => {
      await deafen(one);
      await write(one, { ...demo, notes: 'from elsewhere' });
      await figure(one, 'stroke').fill('52');
      await expectKept(one, 'from elsewhere');
      await expectKept(one, '"stroke":52');
      await expect.poll(() => notes(one).inputValue()).toBe('from elsewhere');
      await expect.poll(() => came(one)).toBe(`Another tab wrote into “${demo.name}”: its notes.`);
      await expect.poll(() => figure(two, 'stroke').inputValue()).toBe('52');
      expect(await two.locator('select option').count()).toBe(0);
      await button(one, 'I have seen this').click();
      await expect.poll(() => came(one)).toBe('');
    });
  });

  it('a reading that came from the other is in the box and the log, and is told', async () => {
    await both(async (one, two) => {
      await two.locator('#step-gap > summary').click();
      await one.locator('#step-gap > summary').click();
      await box(two, 'left', 'gap', 3).fill('0.33');
      await expect.poll(() => box(one, 'left', 'gap', 3).inputValue()).toBe('0.33');
      await expect
        .poll(() => came(one))
        .toBe(`Another tab wrote into “${demo.name}”: Set the points gap, set 3: 0.33 mm.`);
      await box(one, 'left', 'gap', 2).fill('0.37');
      await expect.poll(() => box(two, 'left', 'gap', 2).inputValue()).toBe('0.37');
      const { engines } = JSON.parse(await kept(one)).sheet as { engines: (typeof demo)[] };
      expect(engines).toHaveLength(1);
      expect(
        engines[0]!.log.slice(demo.log.length).map((entry) => 'value' in entry && entry.value),
      ).toEqual([0.33, 0.37]);
    });
  });

  it('one figure written differently in both at once: both are kept, and the figure is named', async () => {
    await both(async (one) => {
      await deafen(one);
      await write(one, { ...demo, figures: { ...demo.figures, stroke: 53 } });
      await figure(one, 'stroke').fill('52');
      await expect
        .poll(() => alertText(one))
        .toContain('in another tab at once, and they differ: stroke. Both are kept');
      await expectKept(one, '"stroke":53');
      await expectKept(one, '"stroke":52');
      await expect.poll(() => one.locator('select option').count()).toBe(2);
    });
  });

  it('cleared from outside: the sheet on the screen stays, and is kept again with a change', async () => {
    await both(async (one, two) => {
      await two.evaluate(() => localStorage.clear());
      await expect.poll(() => alertText(one)).toContain('was removed');
      await expect.poll(() => figure(one, 'stroke').inputValue()).toBe('51');
      await figure(one, 'stroke').fill('53');
      await expectKept(one, '"stroke":53');
    });
  });
});

describe('files and links', () => {
  it('a file comes back as it went', async () => {
    await visit({ path }, async (page) => {
      await ready(page);
      await keepEngines(page, demo);
      const file = await downloaded(page, 'Save to a file');
      expect(parseDocument(file).engines).toEqual([demo]);
      await importText(page, file);
      await expect.poll(() => said(page)).toContain('Taken from “given.json”');
      await expect.poll(() => name(page).inputValue()).toBe('Demo: club triple (2)');
    });
  });

  it.each([
    ['damaged', '{"format":"engine-sheet"', 'not complete JSON'],
    ['of the future', '{"format":"engine-sheet","version":99,"engines":[]}', 'version 99'],
    [
      'hostile',
      '{"format":"engine-sheet","version":2,"engines":[{"__proto__":{"x":1}}]}',
      '__proto__',
    ],
    [
      'hostile in its name',
      writeDocument([newEngine('e-1', '<img src=x onerror=alert(1)>')]).replace('"notes"', '"n"'),
      'does not know',
    ],
    ['huge', `"${'x'.repeat(LIMITS.text)}"`, 'at most'],
  ])('a file that is %s is refused in words, and nothing is changed', async (_, text, words) => {
    await visit({ path }, async (page) => {
      await ready(page);
      await keepEngines(page, demo);
      const before = await kept(page);
      await importText(page, text);
      await expect.poll(() => said(page)).toContain(words);
      expect(await kept(page)).toBe(before);
    });
  });

  it('a name with markup stays a text', async () => {
    await visit({ path }, async (page) => {
      await ready(page);
      await importText(page, writeDocument([newEngine('e-1', '<img src=x onerror=alert(1)>')]));
      await expect.poll(() => name(page).inputValue()).toBe('<img src=x onerror=alert(1)>');
      expect(await page.locator('img').count()).toBe(0);
    });
  });

  it('a link holds the whole engine, says its size, and changes nothing until it is taken', async () => {
    let link = '';
    await visit({ path, permissions: CLIPBOARD }, async (page) => {
      await ready(page);
      await keepEngines(page, demo);
      await page.getByLabel('The whole log', { exact: false }).check();
      await button(page, 'Copy the link').click();
      await expect
        .poll(() => page.locator('.sheet-share .share-state').innerText())
        .toBe('Link copied.');
      link = await copied(page);
      const size = await page.locator('output[name="link-size"]').innerText();
      expect(Number(size.replace(',', ''))).toBe(new URL(link).hash.length - 1);
      await button(page, 'Copy as text').click();
      await expect
        .poll(() => copied(page))
        .toContain(`Set the points gap (${demo.figures.gap} mm ± 0.03 mm)`);
    });
    await visit({ path: `sheet/${new URL(link).hash}` }, async (page) => {
      await ready(page);
      const from = page.getByRole('region', { name: 'From the link' });
      await expect.poll(() => from.innerText()).toContain('Demo: club triple');
      expect(await kept(page)).not.toContain('club triple');
      await button(page, 'Keep it in this browser').click();
      await expectKept(page, 'club triple');
      await expect.poll(() => new URL(page.url()).hash).toBe('');
      const [engine] = JSON.parse(await kept(page)).sheet.engines as (typeof demo)[];
      expect(engine).toEqual(demo);
    });
    await visit({ path: `sheet/${new URL(link).hash.slice(0, 200)}` }, async (page) => {
      await ready(page);
      await page.getByText('The link is cut short or changed').waitFor();
    });
  });

  it('an engine taken out of the list can be put back', async () => {
    await visit({ path }, async (page) => {
      await ready(page);
      await keepEngines(page, demo);
      await button(page, 'Take out of the list').click();
      await expect.poll(() => kept(page)).not.toContain('club triple');
      await button(page, /^Put .* back$/).click();
      await expectKept(page, 'club triple');
      await page.locator('#step-gap > summary').click();
      await expect.poll(() => box(page, 'left', 'gap', 1).inputValue()).not.toBe('');
    });
  });
});
