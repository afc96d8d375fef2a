import { describe, expect, it } from 'vitest';
import { evening } from '../../content/evening.ts';
import { stages } from '../../calculators/frame/stages.ts';
import { documentOf, pageFiles } from './support/built.ts';
import { phone, visit } from './support/page.ts';

const articles = pageFiles.filter((file) => /^articles\/[^/]+\/index\.html$/.test(file));
const words = (element: Element): string => element.textContent.replace(/\s+/g, ' ').trim();

it('the theory in an evening leads through its chapters in order, each with a time', () => {
  const page = documentOf('theory/index.html');
  const links = [...page.querySelectorAll('.chapter')].map((link) => link.getAttribute('href'));
  expect(links).toEqual(evening.map(({ article }) => `../articles/${article}/`));
  for (const time of page.querySelectorAll('.chapter-time')) {
    expect(words(time)).toMatch(/^(?:[4-9]|1\d) minutes$/);
  }
});

it('each chapter of the evening leads on to the next, and the last to none', () => {
  const onwards = evening.map(({ article }) => {
    const links = documentOf(`articles/${article}/index.html`).querySelectorAll('article > p');
    const next = [...links].find((line) => words(line).startsWith('Next in the evening'));
    return next?.querySelector('a')?.getAttribute('href') ?? 'none';
  });
  const wanted = evening.slice(1).map(({ article }) => `../../articles/${article}/`);
  expect(onwards).toEqual([...wanted, 'none']);
});

describe.each(articles)('%s', (file) => {
  const page = documentOf(file);

  it('ends with three questions, each answered in steps', () => {
    const questions = [...page.querySelectorAll('details.question')];
    expect(questions).toHaveLength(3);
    for (const question of questions) {
      expect(question.hasAttribute('open')).toBe(false);
      expect(words(question.querySelector('summary')!)).toMatch(/\?$/);
      expect(question.querySelectorAll('li').length).toBeGreaterThan(2);
      expect(words(question)).not.toMatch(/NaN|undefined|Infinity/);
    }
  });

  it('leads to a sheet that holds each of its checks', () => {
    const sheet = Object.keys(stages)
      .map((stage) => documentOf(`bench/${stage}/index.html`))
      .filter((each) =>
        [...each.querySelectorAll('.bench-sheet h2')].some(
          (heading) => words(heading) === words(page.querySelector('h1')!),
        ),
      );
    expect(sheet).toHaveLength(1);
    const printed = words(sheet[0]!.querySelector('main')!);
    const checks = [...page.querySelectorAll('.bench li, .bench > p')];
    expect(checks.length).toBeGreaterThan(0);
    for (const check of checks) expect(printed).toContain(words(check));
  });
});

it('an answer opens without JavaScript', async () => {
  const path = `articles/${evening[0]!.article}/`;
  await visit({ path, viewport: phone, javaScriptEnabled: false }, async (page) => {
    const [question] = await page.locator('details.question').all();
    await question!.locator('summary').click();
    await question!.locator('li').first().waitFor({ state: 'visible' });
  });
});

it('a sheet prints on one sheet of paper, both sides at the most, with room for what was found', async () => {
  for (const stage of Object.keys(stages)) {
    await visit({ path: `bench/${stage}/` }, async (page) => {
      const paper = await page.pdf({ format: 'A4' });
      const sheets = paper.toString('latin1').match(/\/Type\s*\/Page[^s]/g) ?? [];
      expect(sheets.length, stage).toBeLessThanOrEqual(2);
      await page.emulateMedia({ media: 'print' });
      await page.locator('.bench-found').first().waitFor({ state: 'visible' });
      await page.locator('.site-head nav').waitFor({ state: 'hidden' });
    });
  }
});
