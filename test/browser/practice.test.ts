import { brotliCompressSync } from 'node:zlib';
import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { tdcReading } from '../../calculators/maths/crank/find-tdc.ts';
import { gapOf, setUp } from '../../calculators/practice/bench.ts';
import { inventEngine, targetAngle } from '../../calculators/practice/engine.ts';
import { inventFloat } from '../../calculators/practice/float.ts';
import { firesAt } from '../../calculators/practice/reckoning.ts';
import { inventSlides } from '../../calculators/practice/slides.ts';
import { isCrankTask, taskNames } from '../../calculators/practice/tasks.ts';
import { COLOURS, expectAccessible } from './support/axe.ts';
import { tooWide } from './support/enlarged.ts';
import { painted } from './support/handles.ts';
import { holdTimers, pass } from './support/held-timers.ts';
import { phone, visit } from './support/page.ts';

const ENGINE = 4711;

const open = (
  task: string,
  body: (page: Page) => Promise<void>,
  options = {},
  engine = ENGINE,
): Promise<void> =>
  visit({ path: `practice/?engine=${engine}&task=${task}`, ...options }, async (page) => {
    await page.locator('[data-practice][data-ready]').waitFor();
    await expect.poll(() => page.locator('[data-asked]').count()).toBe(0);
    await body(page);
  });

/** Unfolds what task and engine are chosen by. */
const choosing = (page: Page): Promise<void> => page.locator('.chosen > summary').click();

const crank = (page: Page): Locator => page.getByRole('slider', { name: /^Crank/ });
const said = async (page: Page): Promise<string> =>
  (await crank(page).getAttribute('aria-valuetext')) ?? '';
const named = (page: Page, name: string | RegExp): Locator =>
  page.getByRole('button', { name, exact: typeof name === 'string' });

/** Degrees after the disc's zero, as the crank's own words tell it. */
function discOf(words: string): number {
  const [, figure, side] = /disc ([\d.]+)°(?: (before|after) 0)?/.exec(words)!;
  return side === 'before' ? -Number(figure) : Number(figure);
}
const dialOf = (words: string): number | undefined => {
  const figure = /Indicator (−?[\d.]+) mm/.exec(words)?.[1];
  return figure === undefined ? undefined : Number(figure.replace('−', '-'));
};
const lit = (words: string): boolean => words.includes('lamp lit');
const verdict = (page: Page): Promise<string | null> =>
  page.locator('[data-part="reckoning"] h2').textContent();

/** Everything that can be read in the page as it stands, by eye or by a program, and what it keeps. */
const source = (page: Page): Promise<string> =>
  page.evaluate(() =>
    [
      document.documentElement.outerHTML,
      location.href,
      JSON.stringify([history.state, { ...sessionStorage }, { ...localStorage }]),
    ].join(' '),
  );

function numbersOf(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(numbersOf);
}

/** What is hidden of an engine in one task, each figure to three decimals. */
function secrets(task: (typeof taskNames)[number]): string[] {
  const told = (value: number): boolean => Math.abs(value * 100 - Math.round(value * 100)) < 1e-9;
  const figures = (): number[] => {
    if (task === 'slides') return numbersOf(inventSlides(ENGINE).hidden);
    if (task === 'float') return numbersOf(inventFloat(ENGINE).hidden);
    const engine = inventEngine(ENGINE, task);
    const bench = setUp(engine);
    const sets = engine.hidden.tops.map((_, set) => set);
    return [
      ...numbersOf(engine.hidden),
      targetAngle(engine),
      ...sets.map((set) => firesAt(engine, bench, set)),
      ...sets.map((set) => gapOf(engine, bench, set)),
    ];
  };
  return figures()
    .filter((figure) => !told(figure))
    .map((figure) => Math.abs(figure).toFixed(3));
}

describe('what is hidden', () => {
  it.each(taskNames)('is in no part of the page before the reckoning: %s', async (task) => {
    await open(task, async (page) => {
      if (isCrankTask(task)) {
        await named(page, 'Indicator').click();
        await crank(page).press('PageUp');
        await named(page, 'Write down what is shown').click();
        await expect
          .poll(() => page.evaluate(() => JSON.stringify({ ...sessionStorage })))
          .toContain('note');
      }
      const text = await source(page);
      expect(secrets(task).length).toBeGreaterThan(1);
      expect(secrets(task).filter((figure) => text.includes(figure))).toEqual([]);
      expect(text).not.toMatch(/camPlay|rodPlay|discZero|stopHeight|middles|screwRate/);
      expect(await page.locator('[data-part="reckoning"]').count()).toBe(0);
      expect(
        await page.evaluate(() =>
          Object.keys(globalThis).filter((key) => /engine|hidden/i.test(key)),
        ),
      ).toEqual([]);
    });
  });

  it('would be seen if it were there', async () => {
    await open('gap', async (page) => {
      const [first] = secrets('gap');
      await page.evaluate((figure) => {
        document.querySelector('main')!.setAttribute('data-truth', `${figure}9`);
      }, first);
      const text = await source(page);
      expect(secrets('gap').filter((figure) => text.includes(figure))).toContain(first);
    });
  });
});

/** The top by a stop, with whatever hands: the readings on both sides, and the disc shifted. */
async function topByStop(
  page: Page,
  forwards: () => Promise<void>,
  backwards: () => Promise<void>,
  press: (target: Locator) => Promise<void>,
): Promise<void> {
  await press(named(page, 'Positive stop'));
  const stop = named(page, 'Positive stop');
  await expect.poll(() => stop.getAttribute('aria-pressed')).toBe('true');
  const middles: number[] = [];
  for (let pair = 0; pair < 2; pair += 1) {
    await forwards();
    const before = discOf(await said(page));
    await press(named(page, 'Write down what is shown'));
    await backwards();
    const after = discOf(await said(page));
    await press(named(page, 'Write down what is shown'));
    middles.push(tdcReading(-before, after, 'both-ways'));
  }
  const top = (middles[0]! + middles[1]!) / 2;
  // Where the top shows less than nothing the disc goes on, the way the engine turns.
  const steps = Math.round(-top / 0.25);
  for (let i = 0; i < Math.abs(steps); i += 1) {
    await press(
      named(
        page,
        `Disc on the crank: ${steps > 0 ? '+0.25°, the way the engine turns' : '−0.25°, against the turning'}`,
      ),
    );
  }
  await press(named(page, 'Show the truth'));
}

/** Hundreds of presses, each read before the next. */
const LONG = { timeout: 240_000 };

describe('one whole task', () => {
  it('by touch: the disc is dragged, everything else tapped', LONG, async () => {
    await open(
      'stop',
      async (page) => {
        const touch = await page.context().newCDPSession(page);
        const send = (type: string, points: { x: number; y: number }[]): Promise<unknown> =>
          touch.send('Input.dispatchTouchEvent', {
            type: type as 'touchStart',
            touchPoints: points,
          });
        const drag = async (way: 1 | -1): Promise<void> => {
          await crank(page).scrollIntoViewIfNeeded();
          for (let round = 0; round < 12; round += 1) {
            const box = (await page.locator('.crank-hit').boundingBox())!;
            const [x, y, r] = [box.x + box.width / 2, box.y + box.height / 2, box.width * 0.4];
            const at = (degrees: number): { x: number; y: number } => ({
              x: x + r * Math.sin((way * degrees * Math.PI) / 180),
              y: y - r * Math.cos((way * degrees * Math.PI) / 180),
            });
            const words = await said(page);
            await send('touchStart', [at(0)]);
            for (let degrees = 10; degrees <= 120; degrees += 10) {
              await send('touchMove', [at(degrees)]);
            }
            await send('touchEnd', []);
            await painted(page);
            if (round > 0 && (await said(page)) === words) return;
          }
        };
        await topByStop(
          page,
          () => drag(1),
          () => drag(-1),
          (target) => target.tap(),
        );
        await expect.poll(() => verdict(page)).toContain('Right');
        expect(await tooWide(page)).toEqual([]);
      },
      { viewport: phone, hasTouch: true, isMobile: true },
    );
  });

  it('by the keyboard alone: gap, then time one cylinder', LONG, async () => {
    await open('gap', async (page) => {
      const press = async (target: Locator, times = 1): Promise<void> => {
        await target.focus();
        for (let i = 0; i < times; i += 1) await page.keyboard.press('Enter');
      };
      // A key is drawn before it is over, so that what it brought can be read at once.
      const key = async (name: string, until: (words: string) => boolean): Promise<number> => {
        await crank(page).focus();
        for (let i = 0; i < 400; i += 1) {
          if (until(await said(page))) return i;
          await page.keyboard.press(name);
        }
        throw new Error(`${name} did not bring it about`);
      };
      await press(named(page, 'Coil’s wire off'));
      await key('PageUp', lit);
      await key('PageUp', (words) => !lit(words));
      const open = await key('PageUp', lit);
      await key('PageUp', (words) => !lit(words));
      await crank(page).focus();
      for (let i = 0; i < open / 2; i += 1) await page.keyboard.press('PageUp');

      const { gap, target } = inventEngine(ENGINE, 'gap').card;
      await press(named(page, `Leaf of ${gap.toFixed(2)} mm`));
      const fit = page.locator('.fit');
      await fit.waitFor();
      for (let i = 0; i < 90; i += 1) {
        const words = (await fit.textContent())!;
        if (words.includes('tight')) break;
        const wider = words.includes('not go in');
        await press(named(page, `Gap screw: ${wider ? '+5°, wider' : '−5°, narrower'}`));
      }
      await expect.poll(() => fit.textContent()).toContain('tight');

      await press(named(page, 'Indicator'));
      await expect.poll(() => named(page, 'Indicator').getAttribute('aria-pressed')).toBe('true');
      if ((await named(page, 'Set the indicator upright').count()) > 0) {
        await press(named(page, 'Set the indicator upright'));
      }
      await key('PageUp', (words) => dialOf(words) === undefined);
      await key('PageUp', (words) => dialOf(words) !== undefined);
      let last = Infinity;
      await key('ArrowUp', (words) => {
        const now = dialOf(words)!;
        const risen = now > last;
        last = now;
        return risen;
      });
      for (let i = 0; i < 30; i += 1) await page.keyboard.press('ArrowDown');
      last = Infinity;
      let still = 0;
      await key('ArrowUp', (words) => {
        const now = dialOf(words)!;
        still = now < last ? 0 : still + 1;
        last = now;
        return still > 3;
      });
      await press(named(page, 'Zero the indicator here'));

      const opens = async (): Promise<number> => {
        await key('PageUp', lit);
        await key('PageUp', (words) => !lit(words));
        for (let i = 0; i < 2; i += 1) await page.keyboard.press('PageDown');
        await key('ArrowUp', (words) => !lit(words));
        await page.keyboard.press('PageDown');
        await key('ArrowUp', (words) => !lit(words));
        for (let i = 0; i < 2; i += 1) await page.keyboard.press('ArrowDown');
        await key('Shift+ArrowUp', (words) => !lit(words));
        return dialOf(await said(page))!;
      };
      for (let round = 0; round < 4; round += 1) {
        const found = await opens();
        const off = target - found;
        if (Math.abs(off) < 0.04) break;
        // Some 5° for a mm near there, 0.06° for each step of the screw: nearer at each round.
        const steps = Math.round((off * 5) / 0.062);
        await press(
          named(page, `Plate: ${steps > 0 ? '+0.05 mm, earlier' : '−0.05 mm, later'}`),
          Math.abs(steps),
        );
      }
      await page.getByLabel(/^How sure/).focus();
      await page.keyboard.type('0.8');
      await press(named(page, 'Show the truth'));
      await expect.poll(() => verdict(page)).toContain('Right');
      await expect
        .poll(() => page.locator('[data-part="reckoning"]').textContent())
        .toContain('Your ±');
      await expectAccessible(page);
    });
  });

  it('by what a screen reader names: the top by a stop', LONG, async () => {
    await open('stop', async (page) => {
      const status = page.locator('.bench-bar [role="status"]');
      const all = async (name: string): Promise<void> => {
        for (let i = 0; i < 60; i += 1) {
          const words = await said(page);
          await named(page, name).click();
          const rests = async (): Promise<boolean> =>
            i > 0 && ((await status.textContent()) ?? '').includes('The piston rests on the stop.');
          await expect.poll(async () => (await said(page)) !== words || rests()).toBe(true);
          if ((await said(page)) === words) break;
        }
        await expect.poll(() => status.textContent()).toContain('The piston rests on the stop.');
      };
      await topByStop(
        page,
        () => all('+10°, forwards'),
        () => all('−10°, backwards'),
        (target) => target.click(),
      );
      await expect.poll(() => page.evaluate(() => document.activeElement?.localName)).toBe('h2');
      await expect.poll(() => verdict(page)).toContain('Right');
    });
  });
});

/** What the headers of one answer come to, as they come over the wire. */
const HEADERS = 450;

describe('the pointer', () => {
  const pointer = (page: Page): Locator => page.getByRole('slider', { name: /^Pointer/ });
  const bent = async (page: Page): Promise<number> =>
    Number(await pointer(page).getAttribute('aria-valuenow'));

  it('is bent by touch, keys and buttons, changes the reading, and stays so over a reload', async () => {
    await open(
      'stop',
      async (page) => {
        const before = discOf(await said(page));
        await pointer(page).scrollIntoViewIfNeeded();
        const box = (await page.locator('.pointer-hit').boundingBox())!;
        expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(44);
        const [x, y] = [box.x + 12, box.y + box.height / 2];
        const scrolled = await page.evaluate(() => scrollY);
        const touch = await page.context().newCDPSession(page);
        const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', down?: number) =>
          touch.send('Input.dispatchTouchEvent', {
            type,
            touchPoints: down === undefined ? [] : [{ x, y: y + down }],
          });
        await send('touchStart', 0);
        for (const down of [2, 4, 6, 8, 10]) await send('touchMove', down);
        await send('touchEnd');
        await expect.poll(() => bent(page)).toBeGreaterThan(3);
        expect(await page.evaluate(() => scrollY)).toBe(scrolled);
        const dragged = await bent(page);
        expect(Math.abs(discOf(await said(page)) - (before - dragged))).toBeLessThan(0.3);

        await pointer(page).press('ArrowLeft');
        await pointer(page).press('PageUp');
        await named(page, 'Tip of the pointer: −0.25°, against the turning').tap();
        await expect.poll(() => bent(page)).toBeCloseTo(dragged + 1.5, 4);
        const words = `bent +${(dragged + 1.5).toFixed(2)}°`;
        await expect.poll(() => pointer(page).getAttribute('aria-valuetext')).toContain(words);
        const screw = page.getByRole('group', { name: 'Tip of the pointer' });
        await expect.poll(() => screw.textContent()).toContain(words);
        const status = page.locator('.bench-bar [role="status"]');
        await expect.poll(() => status.textContent()).toContain(words);

        await page.reload();
        await page.locator('[data-practice][data-ready]').waitFor();
        await expect.poll(() => bent(page)).toBeCloseTo(dragged + 1.5, 4);
        await named(page, 'Bend the pointer to 0 here').tap();
        await expect.poll(() => page.locator('.said').textContent()).toContain('bends no further');
      },
      { viewport: phone, hasTouch: true, isMobile: true },
    );
  });
});

describe('on a phone', () => {
  it.each(taskNames)(
    'what is asked for and what it is done on stand on one screen: %s',
    async (task) => {
      for (const [width, height] of [
        [360, 740],
        [390, 844],
      ] as const) {
        await open(
          task,
          async (page) => {
            const box = async (part: string) => (await page.locator(part).first().boundingBox())!;
            const asked = await box('.asked');
            const view = await box('.bench-view svg');
            expect(asked.y + asked.height).toBeLessThanOrEqual(view.y);
            expect(view.y).toBeLessThanOrEqual(480);
            if (!isCrankTask(task)) return;
            const bar = await box('.bench-bar');
            expect(bar.y + bar.height).toBeLessThanOrEqual(height + 1);
            // The pointer and the disc above it are seen, whatever is read there.
            expect(bar.y - view.y).toBeGreaterThan(height === 844 ? 240 : 120);
          },
          { viewport: { width, height }, hasTouch: true, isMobile: true },
        );
      }
    },
  );

  it('a tool that makes the drawing grow stays under the thumb', async () => {
    await open(
      'stop',
      async (page) => {
        const tool = named(page, 'Indicator');
        await tool.scrollIntoViewIfNeeded();
        await page.evaluate(() => scrollBy(0, 60));
        const height = (await page.locator('.practice-engine').boundingBox())!.height;
        const { y } = (await tool.boundingBox())!;
        await tool.tap();
        const grown = async () => (await page.locator('.practice-engine').boundingBox())!.height;
        await expect.poll(grown).toBeGreaterThan(height + 40);
        expect(Math.abs((await tool.boundingBox())!.y - y)).toBeLessThanOrEqual(1);
      },
      { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true },
    );
  });

  const narrow = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true };

  it('what the instruments show and what turns the crank stay in reach of every tool', async () => {
    await open(
      'plate',
      async (page) => {
        const bar = page.locator('.bench-bar');
        for (const tool of [
          'Positive stop',
          'Disc on the crank: +5°, the way the engine turns',
          'Leaf of 0.35 mm',
          'Plate: +0.05 mm, earlier',
          'Set 1 in its slot: +0.05 mm, earlier',
        ]) {
          await named(page, tool).tap();
          await painted(page);
          const box = (await bar.boundingBox())!;
          expect(box.y, tool).toBeGreaterThan(360);
          expect(box.y + box.height, tool).toBeLessThanOrEqual(741);
          const used = (await named(page, tool).boundingBox())!;
          expect(used.y + used.height, tool).toBeLessThanOrEqual(box.y + 1);
        }
        await named(page, 'Write down what is shown').tap();
        await expect
          .poll(() => bar.locator('.said').textContent())
          .toContain('Written on the pad, line 1.');
      },
      narrow,
    );
  });

  it.each(['plate', 'disc'])(
    'pad and reckoning are read without pushing them aside: %s',
    async (task) => {
      await open(
        task,
        async (page) => {
          const hidden = (): Promise<number[]> =>
            page
              .locator('.practice .table-wrap')
              .evaluateAll((all) => all.map((each) => each.scrollWidth - each.clientWidth));
          await named(page, 'Indicator').tap();
          for (let i = 0; i < 20; i += 1) await named(page, '+10°, forwards').tap();
          await named(page, 'Write down what is shown').tap();
          await expect.poll(hidden).toEqual([0]);
          await page.getByLabel(/^How sure/).fill('12.5');
          await named(page, 'Show the truth').tap();
          await expect.poll(async () => (await hidden()).length).toBeGreaterThan(1);
          const all = await hidden();
          expect(Math.max(...all)).toBe(0);
        },
        narrow,
      );
    },
  );
});

describe('the page', () => {
  it.each(['plate', 'slides'])('fetches 60 kB of script at most: %s', async (task) => {
    await open(task, async (page) => {
      const scripts = new Set<string>();
      page.on('response', (response) => {
        if (new URL(response.url()).pathname.endsWith('.js')) scripts.add(response.url());
      });
      await page.reload({ waitUntil: 'networkidle' });
      const bytes = await Promise.all(
        [...scripts].map(async (address) => {
          const script = await (await page.request.get(address)).body();
          return brotliCompressSync(script).length + HEADERS;
        }),
      );
      expect(bytes.length).toBeGreaterThan(2);
      expect(bytes.reduce((sum, each) => sum + each, 0)).toBeLessThanOrEqual(60_000);
    });
  });

  it('says what of an address it cannot read, and opens an engine all the same', async () => {
    await visit({ path: 'practice/?engine=lots&task=nonsense' }, async (page) => {
      await page.locator('[data-practice][data-ready]').waitFor();
      await expect
        .poll(() => page.locator('#engine-problem').textContent())
        .toContain('whole number');
      await expect.poll(() => page.locator('.task-title').textContent()).toContain('Engine 1:');
    });
  });

  it('keeps engine and task in the address, and goes back', async () => {
    await open('stop', async (page) => {
      await choosing(page);
      await page.getByLabel('Task').selectOption('plate');
      await expect.poll(() => page.url()).toContain(`?engine=${ENGINE}&task=plate`);
      await page.getByLabel('Engine number').fill('12');
      await named(page, 'Fetch it').click();
      await expect.poll(() => page.url()).toContain('?engine=12&task=plate');
      await page.goBack();
      await page.goBack();
      await expect.poll(() => page.locator('.task-title').textContent()).toContain('by a stop');
    });
  });

  it('loses no work when it is loaded again, and begins anew when asked to', async () => {
    await open('stop', async (page) => {
      await named(page, 'Positive stop').click();
      for (let i = 0; i < 8; i += 1) await crank(page).press('PageUp');
      await named(page, 'Write down what is shown').click();
      const words = await said(page);
      await page.reload();
      await page.locator('[data-practice][data-ready]').waitFor();
      await expect.poll(() => said(page)).toBe(words);
      expect(await named(page, 'Positive stop').getAttribute('aria-pressed')).toBe('true');
      expect(await page.locator('.tool tbody tr').count()).toBe(1);
      await named(page, 'Show the truth').click();
      await named(page, 'This engine again').click();
      await expect.poll(() => said(page)).not.toBe(words);
    });
  });

  it('opens as an article left it, or says that it cannot', async () => {
    await visit(
      { path: 'practice/?engine=1&task=stop&done=put:stop,turn:150,note' },
      async (page) => {
        await page.locator('[data-practice][data-ready]').waitFor();
        expect(await named(page, 'Positive stop').getAttribute('aria-pressed')).toBe('true');
        expect(await page.locator('.tool tbody tr').count()).toBe(1);
      },
    );
    await visit({ path: 'practice/?engine=1&task=stop&done=put:finger' }, async (page) => {
      await expect
        .poll(() => page.locator('#engine-problem').textContent())
        .toContain('could not be read');
    });
  });

  it('tells what was wrong, and keeps the best in this browser only', async () => {
    await open('stop', async (page) => {
      await named(page, 'Show the truth').click();
      await expect.poll(() => verdict(page)).toContain('Not right');
      await expect.poll(() => page.locator('.costs').textContent()).toContain('Halve an arc');
      expect(await page.evaluate(() => localStorage.getItem('gudgeon.practice'))).toBeNull();
      await expectAccessible(page);
    });
  });

  it('is heard briefly: a drag of the crank says nothing by itself', async () => {
    await open('stop', async (page) => {
      const status = page.locator('.bench-bar [role="status"]');
      await holdTimers(page);
      for (let i = 0; i < 5; i += 1) await crank(page).press('PageUp');
      await painted(page);
      await pass(page, 1000);
      await painted(page);
      expect((await status.textContent())!.trim()).toBe('');
      await named(page, '+10°, forwards').click();
      await painted(page);
      await pass(page, 1000);
      await expect.poll(() => status.textContent()).toContain('disc');
    });
  });

  it.each(taskNames)('is accessible in light and dark, and fits a phone: %s', async (task) => {
    await open(
      task,
      async (page) => {
        expect(await tooWide(page)).toEqual([]);
        await expectAccessible(page);
        await page.emulateMedia({ colorScheme: 'dark' });
        await expectAccessible(page, COLOURS);
      },
      { viewport: phone },
    );
  });

  it('is found by what a reader calls it', async () => {
    for (const words of ['practice', 'learn timing']) {
      await visit({ path: `search/?q=${encodeURIComponent(words)}` }, async (page) => {
        const found = page.locator('#search-list a', { hasText: 'Practice bench' });
        await found.first().waitFor();
        expect(await found.first().getAttribute('href')).toMatch(/practice\/$/);
      });
    }
  });

  it('without JavaScript says so, and lists the tasks with what to read', async () => {
    await visit({ path: 'practice/', javaScriptEnabled: false }, async (page) => {
      const said = page.locator('main .noscript');
      await said.waitFor({ state: 'visible' });
      await expect.poll(() => said.textContent()).toContain('this engine cannot be turned');
      expect(await page.getByRole('link', { name: 'Set a float', exact: true }).count()).toBe(1);
    });
  });

  it.each(['gap', 'slides', 'float', 'disc', 'figure'])(
    'tells the truth of %s on a phone: columns apart, whole, and each figure beside its tick where there is room',
    async (task) => {
      await open(
        task,
        async (page) => {
          await page.getByLabel(/^How sure/).fill('0.8');
          await named(page, 'Show the truth').click();
          await page.locator('.reckoned').first().waitFor();
          const look = () =>
            page.evaluate(() =>
              [...document.querySelectorAll('.reckoned')].map((table) => {
                const row = table.querySelector('tbody tr')!;
                const texts = [...row.children].map((cell) => {
                  const range = document.createRange();
                  range.selectNodeContents(cell);
                  const shown = [...range.getClientRects()].filter(({ width }) => width > 1);
                  return [
                    Math.min(...shown.map(({ left }) => left)),
                    Math.max(...shown.map(({ right }) => right)),
                  ] as const;
                });
                const apart = texts.slice(1, -1).map(([left], i) => left - texts[i]![1]);
                const last = document.createRange();
                const figure = row.lastElementChild!;
                last.setStartBefore(figure.firstChild!);
                last.setEndBefore(figure.lastChild!);
                return {
                  lines: new Set([...last.getClientRects()].map(({ top }) => Math.round(top / 9)))
                    .size,
                  over: table.scrollWidth - table.parentElement!.clientWidth,
                  apart: Math.min(...apart),
                  heads: [...table.querySelectorAll('thead th')]
                    .slice(1)
                    .map((th) => th.textContent),
                };
              }),
            );
          for (const { lines, apart } of await look()) {
            expect(lines).toBe(1);
            expect(apart).toBeGreaterThanOrEqual(5);
          }
          await page.setViewportSize({ width: 360, height: 740 });
          for (const { over, apart, heads } of await look()) {
            expect(over).toBeLessThanOrEqual(0);
            expect(apart).toBeGreaterThanOrEqual(5);
            for (const head of heads) expect(head).toMatch(/, (mm|°)$/);
          }
        },
        { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true },
      );
    },
  );

  it('prints the bench sheet: the card, the pad and the reckoning, and no tools', async () => {
    await open('gap', async (page) => {
      await named(page, 'Write down what is shown').click();
      await named(page, 'Show the truth').click();
      await page.locator('[data-part="reckoning"]').waitFor();
      await page.emulateMedia({ media: 'print' });
      const seen = await page.locator('main').innerText();
      expect(seen).toContain('Stroke');
      expect(seen).toContain('Note pad');
      expect(seen).toContain('Gap of set 1');
      expect(seen).not.toContain('The tasks');
      expect(await page.locator('button:visible').count()).toBe(0);
    });
  });

  it('a best result is kept, and told the next time', async () => {
    await open('stop', async (page) => {
      await page.evaluate(() =>
        localStorage.setItem(
          'gudgeon.practice',
          JSON.stringify({ stop: { right: 2, worst: 0.12, engine: 77 }, gap: 'spoilt' }),
        ),
      );
      await page.reload();
      await expect.poll(() => page.locator('.best').textContent()).toContain('0.12° on engine 77');
      await choosing(page);
      await page.getByLabel('Task').selectOption('gap');
      await expect.poll(() => page.locator('.task-title').textContent()).toContain('Gap');
      expect(await page.locator('.best').count()).toBe(0);
    });
  });
});

it('the bad reading, named, is right, and is not called within the tolerance', () =>
  open('reading', async (page) => {
    const { odd } = inventEngine(ENGINE, 'reading').hidden;
    await page.locator('.answers input').nth(odd).check();
    await named(page, 'Show the truth').click();
    await expect.poll(() => verdict(page)).toBe('Right: that is the bad reading');
    await expect.poll(() => page.locator('.reckoned .not-right').count()).toBe(1);
  }));
