import { describe, expect, it } from 'vitest';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { keep } from '../../calculators/sheet/kept-results.ts';
import { setEntry } from '../../calculators/sheet/set-entry.ts';
import { figureKeys, sheetFigures } from '../../calculators/sheet/figures.ts';
import { LIMITS, newEngine, type Engine } from '../../calculators/sheet/model.ts';
import { jobOf } from '../../calculators/sheet/progress.ts';
import { order, steps } from '../../calculators/sheet/steps.ts';
import { visit } from './support/page.ts';
import { readPdf } from './support/pdf.ts';
import { keepEngines, ready } from './support/sheet.ts';

const sizes = { A4: [210, 297], Letter: [215.9, 279.4] } as const;

/** Everything a sheet can hold: eight cylinders, long texts, every figure and every box. */
function fullest(): Engine {
  const figures = Object.fromEntries(
    figureKeys.map((key) => [
      key,
      sheetFigures[key].whole ? Math.min(8, sheetFigures[key].max) : sheetFigures[key].max,
    ]),
  );
  let engine: Engine = {
    ...newEngine('e-1', 'W'.repeat(LIMITS.name)),
    notes: 'Wide notes. '.repeat(160),
    firingOrder: [1, 8, 2, 7, 3, 6, 4, 5],
    figures: { ...figures, cylinders: 8, lobes: 8, clip: 8 },
  };
  for (const id of order) {
    const { reading } = steps[id];
    if (!reading) continue;
    for (let i = 0; i < 8; i += 1) {
      engine = setEntry(engine, id, 'found', i, reading.max);
      engine = setEntry(engine, id, 'left', i, reading.whole ? reading.min : reading.max / 3);
    }
  }
  const result = { label: 'Wide result', text: '0.123 mm', calculator: 'c', query: '' };
  for (let i = 0; i < 20; i += 1) engine = keep(engine, result);
  return engine;
}

/** The demo's engine with a cylinder more, which reads as its last one or its first. */
function four(): Engine {
  const demo = demoSheet();
  let engine: Engine = { ...demo, id: 'e-1', figures: { ...demo.figures, cylinders: 4 } };
  for (const id of order) {
    const found = demo.readings[id]?.found ?? [];
    for (let i = 0; i < 4; i += 1) {
      const value = found[i] ?? found[0];
      if (typeof value !== 'number' || !steps[id].reading) continue;
      for (const moment of ['found', 'left'] as const) {
        engine = setEntry(engine, id, moment, i, value);
      }
    }
  }
  return engine;
}

describe.each(['A4', 'Letter'] as const)('printed on %s', (format) => {
  it('the demo is one sheet, both sides, that another program reads', async () => {
    await visit({ path: 'sheet/' }, async (page) => {
      await ready(page);
      await keepEngines(page, { ...demoSheet(), id: 'e-1' });
      const paper = await readPdf(await page.pdf({ format }));
      expect(paper.pages).toBe(2);
      expect(paper.size[0]).toBeCloseTo(sizes[format][0], 0);
      expect(paper.size[1]).toBeCloseTo(sizes[format][1], 0);
      for (const id of jobOf(demoSheet()))
        expect(paper.text.replaceAll(' ', '')).toContain(steps[id].title.replaceAll(' ', ''));
      for (const text of [
        'Demo: club triple',
        '(invented)',
        '1-2-3',
        'coil 2 to plug 2',
        '104 mm',
        `${demoSheet().figures.gap} mm ± 0.03 mm`,
      ]) {
        expect(paper.text).toContain(text);
      }
      expect(paper.text).not.toContain('New engine');
      expect(paper.text).not.toMatch(/undefined|NaN/);
    });
  });

  it.each([
    ['the fullest sheet', fullest()],
    ['that of four cylinders with the demo’s readings', four()],
  ])('%s is still one', async (_, engine) => {
    await visit({ path: 'sheet/' }, async (page) => {
      await ready(page);
      await keepEngines(page, engine);
      const paper = await readPdf(await page.pdf({ format }));
      expect(paper.pages).toBe(2);
      if (engine.kept.length > 4) expect(paper.text).toContain('and 16 more in the sheet');
      expect(paper.text).toContain('Before the first start');
    });
  });

  it('an empty one, for a pen, also without JavaScript', async () => {
    await visit({ path: 'sheet/', javaScriptEnabled: false }, async (page) => {
      const paper = await readPdf(await page.pdf({ format }));
      expect(paper.pages).toBe(2);
      expect(paper.text).toContain('Engine sheet');
      expect(paper.text).toContain('found last found last found last');
      // Nobody has said whether it has reeds.
      for (const { title } of Object.values(steps)) expect(paper.text).toContain(title);
      expect(paper.text).toContain('Most gap under a reed');
    });
  });
});

it('offers nothing on the screen, without JavaScript, that needs it', async () => {
  await visit({ path: 'sheet/', javaScriptEnabled: false }, async (page) => {
    const main = page.locator('main');
    await expect.poll(() => main.innerText()).toContain('print this page as it is');
    expect(await main.innerText()).not.toMatch(/Start a new engine|stays in this browser/);
    expect(await main.locator('button:visible').count()).toBe(0);
  });
});

it('is black on white whatever the screen', async () => {
  await visit({ path: 'sheet/', colorScheme: 'dark' }, async (page) => {
    await ready(page);
    await keepEngines(page, { ...demoSheet(), id: 'e-1' });
    await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
    const colours = await page.evaluate(() =>
      [...document.querySelectorAll('.paper, .paper *')].map(
        (element) => getComputedStyle(element).color,
      ),
    );
    expect([...new Set(colours)]).toEqual(['rgb(0, 0, 0)']);
    expect(await page.evaluate(() => getComputedStyle(document.body).backgroundColor)).toBe(
      'rgb(255, 255, 255)',
    );
    // No page's end tears a row.
    const torn = await page.evaluate(() =>
      [...document.querySelectorAll('.paper-steps tr')].filter(
        (row) => getComputedStyle(row).breakInside !== 'avoid',
      ),
    );
    expect(torn).toHaveLength(0);
  });
});
