import { text as textOf } from 'node:stream/consumers';
import type { Page } from 'playwright-core';
import { describe, expect, inject, it } from 'vitest';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { keep } from '../../calculators/sheet/kept-results.ts';
import { documentOf, type Engine as Sheet } from '../../calculators/sheet/model.ts';
import { readStore } from '../../calculators/sheet/store.ts';
import { alertText, field, settled } from './support/calculator.ts';
import { CLIPBOARD, copied } from './support/clipboard.ts';
import { painted } from './support/handles.ts';
import { visit } from './support/page.ts';
import { box, button, expectKept, figure, KEY, keepEngines, kept, ready } from './support/sheet.ts';
import { parseDocument } from '../sheet/parse-document.ts';

const demo: Sheet = { ...demoSheet(), id: 'e-1' };
const path = 'sheet/';
const name = (page: Page) => page.getByLabel('Name', { exact: true });
const notes = (page: Page) => page.getByRole('textbox', { name: 'Notes' });
const address = (where: string): string => new URL(where, inject('siteUrl')).href;

const sheet = (body: (page: Page) => Promise<void>, ...engines: Sheet[]): Promise<void> =>
  visit({ path, permissions: CLIPBOARD }, async (page) => {
    await ready(page);
    await keepEngines(page, ...(engines.length > 0 ? engines : [demo]));
    await body(page);
  });

const keptEngines = async (page: Page): Promise<readonly Sheet[]> =>
  readStore(await kept(page)).engines;

/** Puts a text into the store and comes anew, as after a fault. */
async function comeTo(page: Page, text: string, where = path): Promise<void> {
  await page.evaluate(([key, value]) => localStorage.setItem(key!, value!), [KEY, text]);
  await page.goto(address(where));
  if (where === path) await ready(page);
  else await settled(page);
}

const openStep = async (page: Page, step: string): Promise<void> => {
  const card = page.locator(`#step-${step}`);
  if ((await card.getAttribute('open')) === null) await card.locator('> summary').click();
};

/** Whether the focus is on something, and not on the page. */
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => document.activeElement?.tagName ?? 'none');

describe('a reading that is refused', () => {
  it.each(['16', '0.31+0.04x'])(
    '%s, typed letter by letter, stands nowhere but in its box',
    async (text) => {
      await sheet(async (page) => {
        await openStep(page, 'gap');
        const target = box(page, 'found', 'gap', 1);
        await target.fill('');
        await target.pressSequentially(text);
        await page.locator('#box-found-gap-1-problem').waitFor();
        const [engine] = await keptEngines(page);
        expect(engine!.readings.gap!.found[0] ?? null).toBeNull();
        await button(page, 'Copy as text').click();
        await page.locator('.sheet-share').getByText('Text copied.').waitFor();
        const taken = await copied(page);
        expect(taken).toMatch(/^Set the points gap .*: 1\) –, /m);
        const pen = page.locator('.paper tr', { hasText: 'Set the points gap' }).locator('.pen');
        await expect.poll(() => pen.first().textContent()).toBe('');
        await page.reload();
        await ready(page);
        await expect.poll(() => target.inputValue()).toBe(text);
      });
    },
  );

  it('notes and names too long are said to be so, kept as typed, and cut nowhere', async () => {
    const long = `Points: ${'as found '.repeat(260)}`;
    await sheet(async (page) => {
      await notes(page).fill(long);
      await page.getByText('the sheet has room for 2000').waitFor();
      await name(page).fill('x'.repeat(81));
      await page.getByText('there is room for 80').waitFor();
      expect(await keptEngines(page)).toMatchObject([{ notes: '', name: 'Unnamed engine' }]);
      await page.reload();
      await ready(page);
      await expect.poll(() => notes(page).inputValue()).toBe(long);
      await expect.poll(() => name(page).inputValue()).toBe('x'.repeat(81));
      await notes(page).fill(long.slice(0, 2000));
      await expectKept(page, long.slice(0, 2000));
    });
  });
});

describe('a store that fails', () => {
  const whole: Sheet = { ...demo, invented: false, name: 'Whole' };
  const damaged = JSON.stringify({
    revision: 1,
    active: 'e-1',
    sheet: documentOf([whole, { ...demo, id: 'e-2', name: 'Broken', figures: { stroke: 1e9 } }]),
  });

  it('damaged in one engine: a calculator only reads it, and the sheet keeps the whole one for good', async () => {
    await visit({ path: 'calculators/piston-position/' }, async (page) => {
      await comeTo(page, damaged, 'calculators/piston-position/');
      await page.getByText('figures are from your sheet: Whole.').waitFor();
      await expect.poll(() => page.locator('#stroke-mark').innerText()).toBe('sheet');
      expect(await kept(page)).toBe(damaged);
      for (let load = 0; load < 3; load += 1) {
        await page.goto(address(path));
        await ready(page);
        await expect.poll(() => name(page).inputValue()).toBe('Whole');
      }
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        button(page, 'Download what was put aside').click(),
      ]);
      const aside = await textOf(await download.createReadStream());
      expect(aside).toBe(damaged);
      await page.locator('input[type="file"]').setInputFiles({
        name: download.suggestedFilename(),
        mimeType: 'application/json',
        buffer: Buffer.from(aside),
      });
      const said = page.locator('.engine-bar .share-state');
      await expect.poll(() => said.innerText()).toContain('Taken from');
      await expect.poll(() => said.innerText()).toMatch(/Whole \(2\)|Whole\. Left out: “Broken”/);
    });
  });

  it('of a newer version is taken back when this version can read it', async () => {
    await visit({ path }, async (page) => {
      await page.evaluate(
        ([text]) => localStorage.setItem('gudgeon.sheet.aside', JSON.stringify([text])),
        [JSON.stringify({ revision: 4, active: 'e-1', sheet: documentOf([whole]) })],
      );
      await page.reload();
      await ready(page);
      await page.getByText('“Whole” had been put aside').waitFor();
      await expectKept(page, '"Whole"');
      await button(page, 'I have seen this').click();
      await expect.poll(() => alertText(page)).not.toContain('Whole');
    });
  });

  it.each([
    ['full', 'QuotaExceededError', 'is full'],
    ['forbidden', 'SecurityError', 'does not let the page keep anything'],
  ])(
    '%s from some moment on: it is said, and the file holds the change',
    async (_, kind, words) => {
      await sheet(async (page) => {
        await page.evaluate((error) => {
          Storage.prototype.setItem = () => {
            throw new DOMException('No.', error);
          };
        }, kind);
        const before = await kept(page);
        await figure(page, 'stroke').fill('52');
        await expect.poll(() => alertText(page)).toContain(words);
        expect(await kept(page)).toBe(before);
        const [download] = await Promise.all([
          page.waitForEvent('download'),
          button(page, 'Save to a file').click(),
        ]);
        const file = await textOf(await download.createReadStream());
        expect(parseDocument(file).engines[0]?.figures.stroke).toBe(52);
      });
    },
  );

  it('cleared between two edits: the next one keeps the whole sheet again', async () => {
    await sheet(async (page) => {
      await page.evaluate(() => localStorage.clear());
      await figure(page, 'stroke').fill('52');
      await expectKept(page, '"stroke":52');
      expect((await keptEngines(page))[0]!.figures.rod).toBe(104);
    });
  });
});

describe('two tabs', () => {
  const both = (body: (one: Page, two: Page) => Promise<void>): Promise<void> =>
    sheet(
      async (one) => {
        const two = await one.context().newPage();
        await two.goto(one.url());
        await ready(two);
        await body(one, two);
      },
      { ...demo, notes: 'Both know this.' },
    );

  it('one key in a tab that shows older notes deletes nothing of the other’s; names likewise', async () => {
    await both(async (one, two) => {
      await notes(two).fill('Both know this. Coil 2 is weak.');
      await expect.poll(() => notes(one).inputValue()).toContain('Coil 2 is weak.');
      await notes(one).press('End');
      await notes(one).pressSequentially('!');
      await expectKept(one, 'Coil 2 is weak.!');
      await expect.poll(() => notes(two).inputValue()).toContain('weak.!');
      await name(two).fill('Bench triple');
      await expect.poll(() => name(one).inputValue()).toBe('Bench triple');
      await name(one).press('End');
      await name(one).pressSequentially(' 2');
      await expectKept(two, 'Bench triple 2');
    });
  });

  it('one that slept while the other wrote joins what it can, keeps both where they differ, and says so until it is seen', async () => {
    await both(async (one, two) => {
      await one.addInitScript(() => {
        const deafTo = ['storage', 'focus', 'pageshow', 'visibilitychange'];
        const add = EventTarget.prototype.addEventListener;
        EventTarget.prototype.addEventListener = function listen(...[type, ...rest]) {
          if (!deafTo.includes(type)) add.call(this, type, ...rest);
        };
      });
      await one.reload();
      await ready(one);
      await notes(two).fill('Written in the other tab.');
      await expectKept(one, 'Written in the other tab.');
      await notes(one).pressSequentially('?');
      await expectKept(one, 'Both know this.?\\nWritten in the other tab.');
      expect(await keptEngines(one)).toHaveLength(1);
      await figure(two, 'stroke').fill('53');
      await expectKept(one, '"stroke":53');
      await figure(one, 'stroke').fill('52');
      await expect.poll(() => alertText(one)).toContain('at once, and they differ: stroke.');
      const before = await kept(one);
      await notes(one).pressSequentially('?');
      await expect.poll(() => kept(one)).not.toBe(before);
      expect(await alertText(one)).toContain('in another tab at once');
      const strokes = (await keptEngines(one)).map((engine) => engine.figures.stroke);
      expect(strokes).toEqual([52, 53]);
      await button(one, 'I have seen this').click();
      await expect.poll(() => alertText(one)).not.toContain('at once');
    });
  });
});

describe('a hand quicker than the machine', () => {
  it('what is typed while a slow file opens stays, and so does the engine under the hand', async () => {
    await sheet(async (page) => {
      await page.evaluate(() => {
        const read = File.prototype.text;
        File.prototype.text = async function slow() {
          await new Promise((come) => Object.assign(window, { come }));
          return read.call(this);
        };
      });
      await page.locator('input[type="file"]').setInputFiles({
        name: 'slow.json',
        mimeType: 'application/json',
        buffer: Buffer.from(JSON.stringify(documentOf([{ ...demo, name: 'Slow' }]))),
      });
      await figure(page, 'stroke').fill('57.5');
      await expectKept(page, '"stroke":57.5');
      await page.evaluate(() => (Reflect.get(window, 'come') as () => void)());
      await expectKept(page, '"Slow"');
      await page.getByText('Taken from “slow.json”: Slow.').waitFor();
      await expect.poll(() => figure(page, 'stroke').inputValue()).toBe('57.5');
      const engines = await keptEngines(page);
      expect(engines.map(({ figures }) => figures.stroke)).toEqual([57.5, 51]);
    });
  });

  it('a figure typed and the page loaded again at once is still there, in the sheet and in a calculator', async () => {
    await sheet(async (page) => {
      await figure(page, 'stroke').fill('57.5');
      await page.reload();
      await ready(page);
      await expect.poll(() => figure(page, 'stroke').inputValue()).toBe('57.5');
      await page.goto(address('calculators/piston-position/?stroke=51mm'));
      await settled(page);
      await field(page, 'stroke').fill('');
      await field(page, 'stroke').pressSequentially('58.5', { delay: 60 });
      // Drawn, as it is before the quickest hand comes to the keys that load the page again.
      await painted(page);
      await page.reload();
      await settled(page);
      await expect.poll(() => field(page, 'stroke').inputValue()).toBe('58.5');
    });
  });

  it('a tab that is killed in mid-typing loses no letter', async () => {
    await sheet(async (page) => {
      await notes(page).pressSequentially('Gap 0.36 as found, ro');
      const context = page.context();
      const crashed = page.waitForEvent('crash');
      void page.goto('chrome://crash').catch(() => undefined);
      await crashed;
      const next = await context.newPage();
      await next.goto(address(path));
      await ready(next);
      await expect.poll(() => notes(next).inputValue()).toContain('Gap 0.36 as found, ro');
    });
  });
});

describe('a copy that the browser refuses', () => {
  it('says so, and shows the text, where the button was pressed', async () => {
    await sheet(async (page) => {
      await page.evaluate(() => {
        navigator.clipboard.writeText = () => Promise.reject(new DOMException('No.'));
      });
      await button(page, 'Copy the link').click();
      const share = page.locator('.sheet-share');
      await share.getByText('This browser did not let the page copy').waitFor();
      await expect
        .poll(() => share.getByRole('textbox', { name: 'Link to copy' }).inputValue())
        .toContain('#engine=5.');
      await openStep(page, 'gap');
      const step = page.locator('#step-gap');
      await step.getByRole('button', { name: 'Copy with its link' }).click();
      await step.getByText('This browser did not let the page copy').waitFor();
      await expect
        .poll(() => step.getByRole('textbox', { name: 'Figure to copy' }).inputValue())
        .toContain('Set the points gap');
    });
  });
});

describe('the focus never falls to the page', () => {
  it('when an engine is taken out and put back, when a result is removed, when the tabs’ notice is seen', async () => {
    const result = { label: 'Crank angle', text: '21°', calculator: 'piston-position', query: '' };
    await sheet(
      async (page) => {
        const press = async (label: string | RegExp): Promise<void> => {
          const target = button(page, label).first();
          await target.focus();
          await page.keyboard.press('Enter');
          await expect.poll(() => focused(page), { message: String(label) }).not.toBe('BODY');
        };
        await press(/^Remove Crank angle/);
        await press(/^Remove Crank angle/);
        await expect.poll(() => page.getByText('Crank angle: 21°').count()).toBe(0);
        await press('Take out of the list');
        await press(/^Put .* back$/);
        await openStep(page, 'timing');
        await press('Checked again, still right');
      },
      keep(keep(demo, result), result),
    );
  });

  it('when a link is taken, and when figures are sent from a calculator', async () => {
    await sheet(async (page) => {
      await button(page, 'Copy the link').click();
      await page.locator('.sheet-share').getByText('Link copied.').waitFor();
      const link = await copied(page);
      await page.goto(address('first-start/'));
      await page.goto(link);
      await ready(page);
      await button(page, 'Keep it in this browser').focus();
      await page.keyboard.press('Enter');
      await page.getByText('is in your list now').waitFor();
      expect(await focused(page)).not.toBe('BODY');

      await page.goto(address('calculators/piston-position/?travel=3mm'));
      await settled(page);
      await button(page, 'Send figures to the sheet').focus();
      await page.keyboard.press('Enter');
      await page.locator('form.send').waitFor();
      await expect.poll(() => focused(page)).toBe('INPUT');
      await page.keyboard.press('Space');
      await button(page, /^Send to /).focus();
      await page.keyboard.press('Enter');
      await page.getByText('Sent to').waitFor();
      await expect.poll(() => focused(page)).toBe('BUTTON');
    });
  });
});

/** A link to an engine nested so deep that no recursion comes through it. */
const nested = ((): string => {
  const deep = `${'['.repeat(10_000)}${']'.repeat(10_000)}`;
  const text = JSON.stringify(documentOf([demo])).replace('"invented":true', `"invented":${deep}`);
  return `engine=0.${Buffer.from(text).toString('base64url')}`;
})();

it('a link nested past any depth, or of the older kind, is told of in a sentence', async () => {
  await visit({ path: `sheet/#${nested}` }, async (page) => {
    await ready(page);
    await page.getByText('must be true or false').waitFor();
  });
  const old = Buffer.from(JSON.stringify(documentOf([demo]))).toString('base64url');
  await visit({ path: `sheet/#engine=0.${old}` }, async (page) => {
    await ready(page);
    await page.getByText('could not be checked').waitFor();
  });
});
