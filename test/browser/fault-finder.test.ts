import { describe, expect, it } from 'vitest';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { setEntry } from '../../calculators/sheet/set-entry.ts';
import type { Engine } from '../../calculators/sheet/model.ts';
import { figured } from '../sheet/job.ts';
import { formerIds, symptoms } from '../../content/faults/symptoms.ts';
import { actionsOf } from '../../content/faults/types.ts';
import { documentOf } from './support/built.ts';
import { phone, visit } from './support/page.ts';
import { readPdf } from './support/pdf.ts';
import { keepEngines, ready } from './support/sheet.ts';

const path = 'faults/';
const actions = symptoms.flatMap((symptom) =>
  actionsOf(symptom).map(({ id, cause }) => ({ id: `${symptom.id}-${id}`, cause })),
);
const bare = (text: string): string => text.replaceAll(/\s+/g, '');

describe('the fault finder', () => {
  it('holds each symptom and each action once, as it is served', () => {
    const ids = [...documentOf('faults/index.html').querySelectorAll('main [id]')].map(
      ({ id }) => id,
    );
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
    for (const { id } of [...symptoms, ...actions]) expect(ids).toContain(id);
  });

  it('has its answers in one order everywhere: yes, then no', () => {
    const all = documentOf('faults/index.html').querySelectorAll('.question');
    expect(all.length).toBeGreaterThan(symptoms.length);
    for (const question of all) {
      const answers = [...question.children].filter(({ localName }) => localName === 'details');
      const words = answers.map((one) => one.querySelector('summary')!.textContent.trim());
      expect(words[0]).toMatch(/^Yes/);
      expect(words[1]).toMatch(/^No/);
      // The question stands beside them again, with no sign cut off from the word before it.
      expect(words.join(' ')).not.toMatch(/\s[:;,.?]/);
    }
  });

  it('names each fault once, and the first stands high on a phone, below short cautions', async () => {
    const main = documentOf('faults/index.html').querySelector('main')!;
    for (const { title } of symptoms) {
      const named = [...main.querySelectorAll('a, summary')].filter(
        ({ textContent }) => textContent.trim() === title,
      );
      expect(named, title).toHaveLength(1);
    }
    await visit({ path, viewport: phone }, async (page) => {
      const { y } = (await page.locator('.fault').first().boundingBox())!;
      expect(y).toBeLessThan(phone.height);
      // The other answer says its question only once the first has grown between the two.
      await page.locator('#kicks-back > summary').click();
      const asked = page.locator(
        '#kicks-back > .question > .fault-answer > summary > .fault-asked',
      );
      const wide = async (): Promise<number> => (await asked.first().boundingBox())?.width ?? 0;
      if ((await asked.count()) > 0) {
        await expect.poll(wide).toBeLessThan(2);
        await page.locator('#kicks-back > .question > .fault-answer > summary').first().click();
        await expect.poll(wide).toBeGreaterThan(40);
      }
    });
  });

  it('shows what a link names, with all that leads to it', async () => {
    await visit({ path: `${path}#no-spark-contacts`, viewport: phone }, async (page) => {
      await page.locator('#no-spark-contacts').waitFor({ state: 'visible' });
      const hidden = await page.evaluate(
        async (ids) => {
          const gone: string[] = [];
          for (const id of ids) {
            const changed = new Promise((done) =>
              addEventListener('hashchange', done, { once: true }),
            );
            // By way of what is not there, so that the address always changes.
            location.hash = `${id}-`;
            await changed;
            const told = new Promise((done) =>
              addEventListener('hashchange', done, { once: true }),
            );
            location.hash = id;
            await told;
            await new Promise((done) => setTimeout(done));
            if (!document.getElementById(id)!.checkVisibility()) gone.push(id);
            for (const part of document.querySelectorAll('main details'))
              part.removeAttribute('open');
          }
          return gone;
        },
        actions.map(({ id }) => id),
      );
      expect(hidden).toEqual([]);
    });
  });

  it('sets what follows an answer off the bar that opened it', async () => {
    await visit({ path: `${path}#no-spark-contacts`, viewport: phone }, async (page) => {
      await page.locator('#no-spark-contacts').waitFor();
      const apart = await page.locator('.fault-answer[open]').evaluateAll((answers) =>
        answers.map((answer) => {
          const next = answer.querySelector('summary + .question > .ask, summary + .fault-action')!;
          const bar = answer.querySelector('summary')!.getBoundingClientRect();
          return next.getBoundingClientRect().top - bar.bottom;
        }),
      );
      expect(apart.length).toBeGreaterThan(1);
      expect(Math.min(...apart)).toBeGreaterThan(6);
    });
  });

  it('is gone through by keyboard and without JavaScript, one answer open at a time', async () => {
    await visit({ path, viewport: phone, javaScriptEnabled: false }, async (page) => {
      const symptom = page.locator('#kicks-back');
      await symptom.locator('> summary').focus();
      await page.keyboard.press('Enter');
      const answers = symptom.locator('> .question > .fault-answer');
      const [yes, no] = [answers.nth(0), answers.nth(1)];
      await expect.poll(() => yes.locator('> summary').innerText()).toMatch(/^Yes/);
      await no.locator('> summary').focus();
      await page.keyboard.press('Space');
      await page.locator('#kicks-back-gap').waitFor({ state: 'visible' });
      await yes.locator('> summary').click();
      await page.locator('#kicks-back-gap').waitFor({ state: 'hidden' });
      expect(await page.locator('.fault-own:visible').count()).toBe(0);
    });
  });

  it('holds an answer against the reader’s own sheet, and says nothing where there is none', async () => {
    await visit({ path: `${path}#no-spark-contacts` }, async (page) => {
      await page.locator('#no-spark-contacts').waitFor({ state: 'visible' });
      expect(await page.locator('.fault-own:visible').count()).toBe(0);
      await page.goto(new URL('../sheet/', page.url()).href);
      await ready(page);
      await keepEngines(page, { ...demoSheet(), id: 'e-1', invented: false, name: 'Bench triple' });
      await page.goto(new URL('../faults/#no-spark-contacts', page.url()).href);
      const own = page.locator('#no-spark-contacts .fault-own');
      await own.waitFor({ state: 'visible' });
      await expect.poll(() => own.textContent()).toContain('By the sheet of Bench triple: ');
      await expect.poll(() => own.textContent()).toContain('0.35 mm ± 0.03 mm');
      // In the lengths that are chosen elsewhere meanwhile: 0.35 mm is 13.8 thou.
      await page.evaluate(() => {
        localStorage.setItem('gudgeon.lengths', 'in');
        dispatchEvent(new PageTransitionEvent('pageshow', { persisted: true }));
      });
      await expect.poll(() => own.textContent()).toMatch(/13\.8 thou/);
    });
  });

  it('says of the figures of an invented engine that they are', async () => {
    await visit({ path: 'sheet/' }, async (page) => {
      await ready(page);
      await keepEngines(page, { ...demoSheet(), id: 'e-1', name: 'Bench triple' });
      await page.goto(new URL('../faults/#no-spark-contacts', page.url()).href);
      const own = page.locator('#no-spark-contacts .fault-own');
      await expect
        .poll(() => own.textContent())
        .toContain('By the sheet of Bench triple (invented): ');
    });
  });

  it('says so where the readings of the sheet do not bear an answer out', async () => {
    const late = [2.2, 2.0].reduce<Engine>(
      (so, entry, i) => setEntry(so, 'timing', 'found', i, entry),
      { ...figured({ cylinders: 2, target: 2.2 }), name: 'Bench twin' },
    );
    await visit({ path: 'sheet/' }, async (page) => {
      await ready(page);
      await keepEngines(page, late);
      await page.goto(new URL('../faults/#kicks-back-early', page.url()).href);
      const own = page.locator('#kicks-back-early .fault-own strong');
      await own.waitFor();
      await expect.poll(() => own.textContent()).toMatch(/none is early\. .* read it again/);
      expect(await page.locator('#kicks-back-slow-kick .fault-own strong').count()).toBe(0);
    });
  });

  it('goes on paper whole, and stands as before after it', async () => {
    await visit({ path }, async (page) => {
      const text = bare((await readPdf(await page.pdf({ format: 'A4' }))).text);
      for (const { id, cause } of actions) expect(text, id).toContain(bare(cause).slice(0, 25));
      expect(await page.locator('main details[open]').count()).toBe(0);
      expect(await page.locator('.fault-answer[name]').count()).toBeGreaterThan(100);
    });
  });
});

it('the first start page still answers to the ids of its symptoms', () => {
  const page = documentOf('first-start/index.html');
  for (const [old, now] of Object.entries(formerIds)) {
    expect(page.getElementById(old)?.querySelector('a')?.getAttribute('href'), old).toContain(
      `faults/#${now}`,
    );
  }
});

it.each(['index.html', 'sheet/index.html', 'first-start/index.html'])('%s leads to it', (file) => {
  const main = documentOf(file).querySelector('main')!;
  expect(main.querySelector('a[href*="faults/"]')).not.toBeNull();
  expect(documentOf(file).querySelector('header a[href*="faults/"]')).not.toBeNull();
});
