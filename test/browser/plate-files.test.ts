import { point } from '@flatten-js/core';
import DxfParser, { type ICircleEntity } from 'dxf-parser';
import { parseHTML } from 'linkedom';
import type { Download, Page } from 'playwright-core';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { foreignName } from '../drawing/foreign-names.ts';
import { longestRun, renderPdf } from '../drawing/render-pdf.ts';
import { exactAngle } from '../outside/references/slider-crank-exact.ts';
import { budgetsCame } from './support/budgets.ts';
import { alertText, expectResult, field, result, settled } from './support/calculator.ts';
import { dragPart } from './support/handles.ts';
import { visit } from './support/page.ts';

const DPI = 200;
/** Two dots, and the thickness of the ticks at the bar's ends. */
const NEAR = (2 * 25.4) / DPI + 0.2;

const PLATE = 'calculators/plate-layout/';
const DISC = 'calculators/degree-disc/';
const given =
  '?sets=3&start=84deg&spacing-2=118deg&spacing-3=123.5deg&outside=92mm&bore=27mm&holes=2' +
  '&radius-1=31.5mm&angle-1=0deg&drill-1=3.3mm&radius-2=27mm&angle-2=21deg&drill-2=2.5mm&slots=0';
const directions = [84, 202, 325.5];
const holes = [
  { radius: 31.5, angle: 0, drill: 3.3 },
  { radius: 27, angle: 21, drill: 2.5 },
];

/** Where a hole must lie, from an independent geometry library. */
function place(set: number, hole: number) {
  const { radius, angle } = holes[hole]!;
  const turn = ((directions[set]! + angle) * Math.PI) / 180;
  return point(radius, 0).rotate(turn, point(0, 0));
}
const everyHole = directions.flatMap((_, s) => holes.map((__, h) => [s, h] as const));

const open = (path: string, body: (page: Page) => Promise<void>, options = {}): Promise<void> =>
  visit({ path, ...options }, async (page) => {
    await settled(page);
    await body(page);
  });

async function bytesOf(download: Download): Promise<Buffer> {
  const parts: Buffer[] = [];
  for await (const part of await download.createReadStream()) parts.push(part as Buffer);
  return Buffer.concat(parts);
}

async function saved(page: Page, label: string): Promise<{ name: string; bytes: Buffer }> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: label }).click(),
  ]);
  return { name: download.suggestedFilename(), bytes: await bytesOf(download) };
}

const svgOf = (bytes: Buffer): Document =>
  parseHTML(bytes.toString('utf8').replace(/^<\?xml.*\n/, '')).document;

const slider = (page: Page) => page.locator('[role="slider"]').first();

describe('a plate', () => {
  it('has each hole where an independent library puts it', async () => {
    await open(PLATE + given, async (page) => {
      for (const [s, h] of everyHole) {
        await expectResult(page, `x-${s + 1}-${h + 1}`, place(s, h).x, 9);
        await expectResult(page, `y-${s + 1}-${h + 1}`, place(s, h).y, 9);
      }
      for (const h of [0, 1]) {
        await expectResult(page, `chord-${h + 1}`, place(0, h).distanceTo(place(1, h))[0], 9);
      }
      await expectResult(page, 'square', 95);
    });
  });

  it('spaces the sets evenly unless told otherwise', async () => {
    await open(`${PLATE}?sets=4&start=0&slots=0`, async (page) => {
      await expectResult(page, 'direction-2', 90);
      await expectResult(page, 'direction-4', 270);
      await expect.poll(() => field(page, 'spacing-4').inputValue()).toBe('90');
    });
  });

  it.each([
    ['radius-1', '45', 'radius-1', /past the rim/],
    ['radius-2', '14', 'drill-2', /into the bore/],
    ['spacing-2', '3', 'spacing-2', /run into each other/],
    ['bore', '92', 'outside', /no plate is left/],
  ])('says what is wrong beside the field: %s = %s', async (key, text, beside, words) => {
    await open(PLATE + given, async (page) => {
      await field(page, key).fill(text);
      await expect.poll(() => alertText(page)).toMatch(words);
      await expect.poll(() => field(page, key).inputValue()).toBe(text);
      await expect.poll(() => page.locator(`#${beside}-problem`).textContent()).toMatch(words);
      expect(await result(page, 'x-1-1')).toBeUndefined();
      expect(await page.getByRole('button', { name: 'True scale, DXF' }).isDisabled()).toBe(true);
    });
  });

  it('takes a hole along when it is dragged, in every set', async () => {
    await open(PLATE + given, async (page) => {
      await dragPart(page, slider(page), 30, 10);
      await expect.poll(() => result(page, 'x-1-1')).not.toBeCloseTo(place(0, 0).x, 1);
      const radius = Number(await field(page, 'radius-1').inputValue());
      const angle = Number(await field(page, 'angle-1').inputValue());
      expect(angle).toBeLessThan(0);
      for (const [s, direction] of directions.entries()) {
        const turn = ((direction + angle) * Math.PI) / 180;
        const there = point(radius, 0).rotate(turn, point(0, 0));
        await expectResult(page, `x-${s + 1}-1`, there.x);
        await expectResult(page, `y-${s + 1}-1`, there.y);
      }
      await expect.poll(() => new URL(page.url()).searchParams.get('angle-1')).toBe(`${angle}deg`);
    });
  });

  it('is worked by keyboard: holes picked, the picked one turned', async () => {
    await open(PLATE + given, async (page) => {
      const list = page.getByRole('listbox', { name: 'Holes' });
      await list.focus();
      await page.keyboard.press('End');
      const words = page.locator('.picture-words');
      await expect.poll(() => words.textContent()).toContain('Hole 3-2 at X');
      const option = page.locator(`#${await list.getAttribute('aria-activedescendant')}`);
      expect(await option.getAttribute('aria-selected')).toBe('true');
      await slider(page).focus();
      await page.keyboard.press('ArrowLeft');
      await expect.poll(() => field(page, 'angle-2').inputValue()).toBe('20.5');
      await expect.poll(() => field(page, 'angle-1').inputValue()).toBe('0');
    });
  });

  it('saves an SVG and a DXF whose holes are where they were calculated', async () => {
    await open(PLATE + given, async (page) => {
      const svg = await saved(page, 'True scale, SVG');
      expect(svg.name).toMatch(/\.svg$/);
      const document = svgOf(svg.bytes);
      const dxf = await saved(page, 'True scale, DXF');
      expect(dxf.name).toMatch(/\.dxf$/);
      const circles = new DxfParser()
        .parseSync(dxf.bytes.toString('utf8'))!
        .entities.filter((entity): entity is ICircleEntity => entity.type === 'CIRCLE');
      for (const [s, h] of everyHole) {
        const wanted = place(s, h);
        const hole = document.getElementById(`hole-${s + 1}-${h + 1}`)!;
        expect(Number(hole.getAttribute('cx'))).toBeCloseTo(wanted.x, 5);
        expect(Number(hole.getAttribute('cy'))).toBeCloseTo(-wanted.y, 5);
        const drilled = circles.filter(
          ({ center, radius }) =>
            Math.hypot(center.x - wanted.x, center.y - wanted.y) < 1e-5 &&
            radius === holes[h]!.drill / 2,
        );
        expect(drilled).toHaveLength(1);
      }
    });
  });

  it('saves a PDF with a true proving bar, and fetches what makes it only then', async () => {
    await open(PLATE + given, async (page) => {
      await budgetsCame(page);
      await page.waitForLoadState('networkidle');
      const fetched: string[] = [];
      page.on('request', (request) => {
        // The browser asks anew for the page's own mark whenever the address changes.
        if (!request.url().endsWith('/icons/48.png')) fetched.push(request.url());
      });
      await field(page, 'bore').fill('26');
      await expectResult(page, 'square', 95);
      expect(fetched.filter((address) => address.startsWith('http'))).toEqual([]);
      const { name, bytes } = await saved(page, 'Template to print, PDF');
      expect(name).toMatch(/\.pdf$/);
      expect(fetched.some((address) => address.endsWith('.js'))).toBe(true);
      const [sheet] = await renderPdf(bytes, DPI);
      expect(Math.abs(longestRun(sheet!, 'across') - 100)).toBeLessThan(NEAR);
      expect(Math.abs(longestRun(sheet!, 'up') - 50)).toBeLessThan(NEAR);
    });
  });

  it('saves its picture, as SVG and PNG, with the site as maker and nobody else', async () => {
    await open(PLATE + given, async (page) => {
      const svg = await saved(page, 'Picture, SVG');
      expect(svgOf(svg.bytes).querySelector('metadata > creator')?.textContent).toBe('Gudgeon');
      const png = await saved(page, 'Picture, PNG');
      const { comments, width } = await sharp(png.bytes).metadata();
      expect(width).toBeGreaterThan(500);
      expect(comments?.map(({ text }) => text)).toEqual(['Gudgeon', 'Gudgeon']);
      expect(foreignName(svg.bytes.toString())).toBeUndefined();
    });
  });

  it('saves it light, lines as wide as they are seen, with its names and nothing to take hold of', async () => {
    for (const [path, names] of [
      [`${PLATE}${given}`, ['1-1', '3-2', 'set 2']],
      [
        'calculators/hole-pattern/?outline=lands&band=6mm&in-opening=5',
        ['1', '2', '3: ⌀6.50', '4', '5'],
      ],
    ] as const) {
      await open(
        path,
        async (page) => {
          const { bytes } = await saved(page, 'Picture, SVG');
          const { documentElement: sheet } = svgOf(bytes);
          expect(sheet.querySelector('rect')?.getAttribute('fill')).toBe('rgb(255, 255, 255)');
          const words = [...sheet.querySelectorAll('text')];
          expect(words.map((text) => text.textContent)).toEqual(expect.arrayContaining([...names]));
          for (const text of words) {
            // A halo under the letters and not over them.
            expect(text.getAttribute('paint-order')).toMatch(/^stroke|^normal/);
            expect(text.getAttribute('fill')).not.toMatch(/none|255, 255, 255/);
          }
          const scaleOf = (element: Element | null): number =>
            element === null
              ? 1
              : scaleOf(element.parentElement) *
                Number(/scale\(([\d.]+)/.exec(element.getAttribute('transform') ?? '')?.[1] ?? 1);
          const widths = [...sheet.querySelectorAll('path, circle, line')]
            .filter((shape) => shape.getAttribute('stroke') !== 'none')
            .map((shape) => Number(shape.getAttribute('stroke-width')) * scaleOf(shape));
          expect(widths.length).toBeGreaterThan(5);
          expect(Math.max(...widths)).toBeLessThan(2.5);
          // The handle and the picked hole alone are filled on the page.
          const filled = [...sheet.querySelectorAll('circle')].filter(
            (circle) => !/none|rgba\(0, 0, 0, 0\)/.test(circle.getAttribute('fill')!),
          );
          expect(filled).toEqual([]);
        },
        { colorScheme: 'dark' },
      );
    }
  });

  it('prints no handle, and the hole that is picked like the others', async () => {
    for (const path of [`${PLATE}${given}`, DISC]) {
      await open(path, async (page) => {
        await page.emulateMedia({ media: 'print' });
        expect(await page.locator('.calc-picture .handle:visible').count()).toBe(0);
        expect(await page.locator('.calc-picture .picked:visible').count()).toBe(0);
        expect(await page.locator('.calc-picture .drawing circle:visible').count()).toBeGreaterThan(
          1,
        );
      });
    }
  });

  it('says why a template was not made', async () => {
    const cut = { expected: [/ERR_FAILED/], tolerated: [/Failed to fetch/] };
    await open(
      PLATE + given,
      async (page) => {
        await page.route(/to-pdf/, (route) => route.abort());
        await page.getByRole('button', { name: 'Template to print, PDF' }).click();
        await expect
          .poll(() => page.locator('.act .share-state').last().textContent())
          .toMatch(/^The file was not made\. \S/);
      },
      cut,
    );
  });

  it('lays a plate that is larger than the paper on several sheets', async () => {
    await open(`${PLATE}${given}&outside=300mm`, async (page) => {
      const { bytes } = await saved(page, 'Template to print, PDF');
      const pages = await renderPdf(bytes, 72);
      expect(pages).toHaveLength(4);
      expect(pages[3]!.words).toContain('Sheet 4 of 4');
    });
  });

  it('prints from the page itself at true scale', async () => {
    await open(PLATE + given, async (page) => {
      // Rules that run across the paper are longer than the bar.
      await page.evaluate(() => {
        for (const part of document.querySelectorAll('.title-block, .caution, main table')) {
          part.remove();
        }
      });
      const margin = { top: '10mm', right: '10mm', bottom: '10mm', left: '10mm' };
      const sheets = await renderPdf(await page.pdf({ format: 'A4', margin }), DPI);
      const bars = sheets.filter((sheet) => Math.abs(longestRun(sheet, 'up') - 50) < NEAR);
      expect(bars).toHaveLength(1);
      expect(Math.abs(longestRun(bars[0]!, 'across') - 100)).toBeLessThan(NEAR);
    });
  });

  it('is drawn, and its files lie ready, without JavaScript', async () => {
    await visit({ path: PLATE, javaScriptEnabled: false }, async (page) => {
      expect(await page.locator('svg.true-scale').isVisible()).toBe(true);
      const link = page.getByRole('link', { name: 'True scale, SVG' });
      const address = new URL((await link.getAttribute('href'))!, page.url()).href;
      const answer = await page.request.get(address);
      const document = svgOf(await answer.body());
      expect(document.getElementById('hole-3-2')).not.toBeNull();
      expect(document.getElementById('bar-across')).not.toBeNull();
    });
  });
});

describe('a degree disc', () => {
  const engine = { stroke: 51, rodLength: 104, pinOffset: 1.5 };
  const query =
    '?stroke=51mm&rod=104mm&offset=1.5mm&marks=2.2mm&marks-after=13mm&outside=160mm&rotor=96mm&thickness=0.2mm';

  it('has its marks where big-number arithmetic puts them', async () => {
    await open(DISC + query, async (page) => {
      const before = exactAngle(engine, 2.2, -1);
      await expectResult(page, 'mark-angle-1', before, 8);
      await expectResult(page, 'mark-reading-1', 360 - before, 8);
      await expectResult(page, 'mark-angle-2', exactAngle(engine, 13, 1), 8);
      await expectResult(page, 'tape-length', Math.PI * 96.2, 9);
      await expectResult(page, 'mark-place-1', (-before / 360) * Math.PI * 96.2, 8);
    });
  });

  it('says beside the field that a piston does not go so far', async () => {
    await open(DISC + query, async (page) => {
      await field(page, 'marks').fill('2.2 60');
      await expect.poll(() => page.locator('#marks-problem').textContent()).toMatch(/60|travel/);
      await expect.poll(() => field(page, 'marks').inputValue()).toBe('2.2 60');
      expect(await result(page, 'tape-length')).toBeUndefined();
    });
  });

  it('grows and shrinks when its rim is dragged or stepped', async () => {
    await open(DISC + query, async (page) => {
      await dragPart(page, slider(page), -20, 20);
      await expect
        .poll(async () => Number(await field(page, 'outside').inputValue()))
        .toBeLessThan(150);
      const size = Number(await field(page, 'outside').inputValue());
      await expectResult(page, 'disc-per-degree', (Math.PI * size) / 360);
      await slider(page).focus();
      await page.keyboard.press('ArrowUp');
      await expect.poll(() => field(page, 'outside').inputValue()).toBe(String(size + 1));
    });
  });

  it('saves disc and tape on two sheets with true bars', async () => {
    await open(DISC + query, async (page) => {
      const { bytes } = await saved(page, 'Disc and tape to print, PDF');
      const sheets = await renderPdf(bytes, DPI);
      expect(sheets).toHaveLength(2);
      expect(Math.abs(longestRun(sheets[0]!, 'across') - 100)).toBeLessThan(NEAR);
      expect(Math.abs(longestRun(sheets[1]!, 'up') - 50)).toBeLessThan(NEAR);
      expect(sheets[0]!.words).toContain('2.2 mm before');
    });
  });

  it('saves an SVG whose piston mark stands at its angle', async () => {
    await open(DISC + query, async (page) => {
      const { bytes } = await saved(page, 'Disc at true scale, SVG');
      const mark = svgOf(bytes).getElementById('piston-1')!;
      const [x, y] = ['x2', 'y2'].map((name) => Number(mark.getAttribute(name)));
      const direction = (Math.atan2(-y!, x!) * 180) / Math.PI;
      expect(direction).toBeCloseTo(90 - exactAngle(engine, 2.2, -1), 4);
      expect(Math.hypot(x!, y!)).toBeCloseTo(80, 5);
    });
  });
});
