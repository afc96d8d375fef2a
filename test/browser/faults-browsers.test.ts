import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { documentOf, type Engine as Sheet } from '../../calculators/sheet/model.ts';
import { readStore, writeStore } from '../../calculators/sheet/store.ts';
import { fillStorage } from './support/full-storage.ts';
import { dist } from './support/built.ts';
import { chromium } from './support/engines/chromium.ts';
import type { Engine, Killable, Tab } from './support/engines/engine.ts';
import { firefox } from './support/engines/firefox.ts';
import { watchedCopy } from './support/engines/watched.ts';
import { webkit } from './support/engines/webkit.ts';
import { phone } from './support/page.ts';
import { serve, type Served } from './support/serve.ts';
import { KEY, stirred } from './support/sheet.ts';

vi.setConfig({ testTimeout: 120_000 });

/** By the law of cosines, of a stroke of 80 and a rod of 160: not the worked example's. */
const LINK = 'calculators/piston-position/?from=travel&travel=3mm&stroke=80mm&rod=160mm&offset=0mm';
const OF_LINK = (() => {
  const [crank, rod, between] = [40, 160, 197];
  const cosine = (between ** 2 + crank ** 2 - rod ** 2) / (2 * between * crank);
  return (Math.acos(cosine) * 180) / Math.PI;
})();
const ARTICLE = 'articles/where-the-piston-is/';
const ASIDE = 'gudgeon.sheet.aside';
const NOTES = 'textarea:not([readonly])';
const AGAIN = '.waiting [data-reload]';

const demo: Sheet = { ...demoSheet(), id: 'e-1', notes: 'Known.' };
const SHEET_LINK = `sheet/#engine=0.${Buffer.from(JSON.stringify(documentOf([demo]))).toString('base64url')}`;
/** A link to an engine nested so deep that no recursion comes through it. */
const NESTED = (() => {
  const deep = `${'['.repeat(10_000)}${']'.repeat(10_000)}`;
  const text = JSON.stringify(documentOf([demo])).replace('"invented":true', `"invented":${deep}`);
  return `sheet/#engine=0.${Buffer.from(text).toString('base64url')}`;
})();

/** Plays the fault that a tab was told of, before anything of the page runs. */
const FAULTS = `{
  const fault = sessionStorage.getItem('fault');
  const refuse = () => { throw new DOMException('No.', 'SecurityError'); };
  if (fault === 'storage refused') Object.defineProperty(window, 'localStorage', { get: refuse });
  if (fault === 'storage refused' || fault === 'database refused') indexedDB.constructor.prototype.open = refuse;
  if (fault === 'database silent') indexedDB.constructor.prototype.open = () => ({});
  if (fault === 'asleep') {
    const deafTo = ['storage', 'focus', 'pageshow', 'visibilitychange'];
    const add = EventTarget.prototype.addEventListener;
    EventTarget.prototype.addEventListener = function listen(type, ...rest) {
      if (!deafTo.includes(type)) add.call(this, type, ...rest);
    };
  }
}`;

let copy: Awaited<ReturnType<typeof watchedCopy>>;
beforeAll(async () => {
  copy = await watchedCopy(dist, FAULTS);
});
afterAll(() => copy?.remove());

const button = (name: string): string => `//button[normalize-space()="${name}"]`;
const said = (tab: Tab): Promise<string> => tab.run(() => document.body.innerText);
const expectSaid = (tab: Tab, words: string): Promise<void> =>
  expect.poll(() => said(tab)).toContain(words);
const kept = (tab: Tab, key = KEY): Promise<string> =>
  tab.run((of) => localStorage.getItem(of) ?? '', key);
const engines = async (tab: Tab): Promise<readonly Sheet[]> => readStore(await kept(tab)).engines;
const valueOf = (tab: Tab, where: string): Promise<string> =>
  tab.run(
    (of) => document.querySelector<HTMLInputElement | HTMLTextAreaElement>(of)?.value ?? '',
    where,
  );
/** Puts the focus at the end of what stands in a box. */
const goTo = async (tab: Tab, where: string): Promise<void> => {
  await tab.click(where);
  await tab.run((of) => {
    const box = document.querySelector<HTMLTextAreaElement>(of)!;
    box.setSelectionRange(box.value.length, box.value.length);
  }, where);
};
const sheetReady = (tab: Tab): Promise<void> => expect.poll(() => tab.run(stirred)).toBe(true);

for (const kind of [chromium, firefox, webkit]) {
  if (kind.missing !== undefined) console.warn(kind.missing);

  // A driver that has lost its browser says nothing of the site: once more, with a fresh one.
  describe.skipIf(kind.missing !== undefined)(kind.missing ?? kind.name, { retry: 1 }, () => {
    let engine: Engine;
    let host: Served;
    /** What the line is cut for just now; each host has kept nothing of another. */
    let cut: string | undefined;
    /** How many files have been asked for. */
    let asked = 0;

    const comeToNewHost = async (): Promise<void> => {
      await host?.close();
      // One document stands in another there, which the headers forbid to other sites.
      const headers = kind !== webkit;
      host = await serve(copy.folder, {
        cut: (path) => {
          asked += 1;
          return path === cut;
        },
        headers,
      });
    };
    beforeAll(async () => {
      engine = await kind.start(phone);
    });
    beforeEach(comeToNewHost);
    afterEach(async ({ task }) => {
      cut = undefined;
      if (task.result?.state === 'fail') await engine.forget();
    });
    afterAll(async () => {
      await engine?.close();
      await host?.close();
    });

    const visit = (path: string): Promise<void> => engine.open(host.url + path);
    /** Every file that a page asks for, but for the one that watches it. */
    const filesOf = async (path: string, whole: () => Promise<void>): Promise<string[]> => {
      await visit(path);
      await whole();
      const names = await engine.run(() =>
        performance.getEntriesByType('resource').map(({ name }) => name),
      );
      const files = names.map((address) => address.slice(host.url.length).replace(/\?.*/, ''));
      // A style sheet, a font or a picture that is lacking is the same fault in every browser.
      return [...new Set(files)].filter(
        (file) => file !== 'watch.js' && (kind === chromium || file.endsWith('.js')),
      );
    };
    /** Waits until the page asks for nothing more: it has all that comes, and has drawn it. */
    const still = async (): Promise<void> => {
      for (let before = -1; before !== asked;) {
        before = asked;
        await engine.run(
          () =>
            new Promise<void>((done) => {
              requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done, 50)));
            }),
        );
      }
    };
    const seen = (where: string): Promise<boolean> =>
      engine.run((of) => {
        const part = document.querySelector(of);
        return part?.checkVisibility({ visibilityProperty: true }) ?? false;
      }, where);

    // What has not been seen to pass by the driver of WebKit is not tried there.
    const steadyDriver = kind !== webkit;
    describe('a line that is cut for one file', () => {
      /** What is seen at one moment: the page may still come to itself at the next. */
      const standing = () =>
        engine.run((of) => {
          const visible = (part: Element | null): boolean =>
            part?.checkVisibility({ visibilityProperty: true }) ?? false;
          return {
            again: visible(document.querySelector(of)),
            words: document.querySelector<HTMLElement>('.waiting')?.innerText ?? '',
            figures: [...document.querySelectorAll('main data, main td, .calc-form input')]
              .filter(visible)
              .map((part) => part.getAttribute('value') ?? part.textContent),
          };
        }, AGAIN);
      /** Works on a busy machine too, where the page may have come to itself meanwhile. */
      const press = (where: string): Promise<void> =>
        engine.run((of) => document.querySelector<HTMLElement>(of)!.click(), where);
      const angle = (): Promise<number> =>
        engine.run(() => {
          const data = document.querySelector('output[name="angle"] data');
          const shown = data?.checkVisibility({ visibilityProperty: true });
          return shown ? Number(data?.getAttribute('value')) : NaN;
        });
      const right = (): Promise<void> => expect.poll(angle).toBeCloseTo(OF_LINK, 6);

      it('leaves the link’s own figures or none, and Try again brings them', async () => {
        // In Chromium `faults-waiting` cuts each script of this link, but for the one of every page.
        const left = (file: string): boolean =>
          kind !== chromium || !file.endsWith('.js') || file.includes('Page.astro');
        const files = (await filesOf(LINK, right)).filter(left);
        let tries = 0;
        for (const file of files) {
          await comeToNewHost();
          cut = file;
          await visit(LINK);
          await expect
            .poll(async () => (await seen(AGAIN)) || Math.abs((await angle()) - OF_LINK) < 1e-6, {
              message: file,
            })
            .toBe(true);
          const { again, words, figures } = await standing();
          if (again) {
            expect(figures, file).toEqual([]);
            expect(words).toContain('have not been read');
            cut = undefined;
            await press(AGAIN);
            tries += 1;
          }
          await right();
          await expect.poll(() => seen(AGAIN), { message: file }).toBe(false);
        }
        console.info(`${kind.name}: ${String(files.length)} files, ${String(tries)} needed.`);
        expect(tries).toBeGreaterThan(kind === chromium ? 0 : 4);
      });

      it('leaves the sheet’s link unread and says so, and Try again reads it', async () => {
        const offered = (): Promise<boolean> =>
          said(engine).then((words) => words.includes('Keep it in this browser'));
        const read = (): Promise<void> => expect.poll(offered).toBe(true);
        const files = await filesOf(SHEET_LINK, read);
        let tries = 0;
        for (const file of files) {
          await comeToNewHost();
          cut = file;
          await visit(SHEET_LINK);
          await expect
            .poll(async () => (await seen(AGAIN)) || (await offered()), { message: file })
            .toBe(true);
          if (await seen(AGAIN)) {
            cut = undefined;
            await press(AGAIN);
            tries += 1;
          }
          await read();
          await expect.poll(() => seen(AGAIN), { message: file }).toBe(false);
        }
        console.info(`${kind.name}: ${String(files.length)} files, ${String(tries)} needed.`);
        expect(tries).toBeGreaterThan(2);
      });

      it.skipIf(!steadyDriver)(
        'leaves a calculator in an article saying so, and Try again wakes it with what was typed',
        async () => {
          const awake = (): Promise<boolean> =>
            engine.run(() => {
              const places = [...document.querySelectorAll<HTMLElement>('[data-calculator]')];
              for (const place of places) place.dispatchEvent(new FocusEvent('focusin'));
              return places.every((place) => place.dataset.ready === 'true');
            });
          const woken = (): Promise<void> => expect.poll(awake).toBe(true);
          const again = ':is(.waiting, .field-problem) [data-reload]';
          const box = '.calc-form input[type="text"]';
          const shown = (): Promise<string | null> =>
            engine.run((of) => {
              const buttons = [...document.querySelectorAll<HTMLElement>(of)];
              const at = buttons.findIndex((part) => part.checkVisibility());
              if (at < 0) return null;
              buttons[at]!.id = 'try-again';
              return '#try-again';
            }, again);
          /** Presses the button, and waits until the page that it loads has come. */
          const loadAgain = async (of: string): Promise<void> => {
            await engine.run(() => {
              document.documentElement.dataset.old = '';
            });
            await press(of);
            await expect
              .poll(() =>
                engine.run(
                  () =>
                    document.documentElement.dataset.old === undefined &&
                    document.readyState === 'complete',
                ),
              )
              .toBe(true);
          };
          const files = (await filesOf(ARTICLE, woken)).filter((file) => file.endsWith('.js'));
          let tries = 0;
          for (const file of files) {
            await comeToNewHost();
            cut = file;
            await visit(ARTICLE);
            await expect
              .poll(async () => (await awake()) || (await shown()) !== null, { message: file })
              .toBe(true);
            // What the figures can do without is told of only until they answer.
            await still();
            const where = await shown();
            if (where === null) continue;
            await engine.click(box);
            await engine.press('Control', 'a');
            await engine.type('54.25');
            // Pressed once in vain: what was typed before that stays too.
            await loadAgain(where);
            await expect.poll(shown, { message: file }).not.toBeNull();
            await still();
            cut = undefined;
            await loadAgain((await shown())!);
            await expect.poll(async () => (await shown()) === null && (await awake())).toBe(true);
            await expect.poll(() => valueOf(engine, box), { message: file }).toBe('54.25');
            tries += 1;
          }
          console.info(`${kind.name}: ${String(files.length)} scripts, ${String(tries)} needed.`);
          expect(tries).toBeGreaterThan(2);
        },
      );
    });

    const sheet = async (tab: Tab = engine): Promise<void> => {
      await tab.open(`${host.url}sheet/`);
      await sheetReady(tab);
    };
    const reload = async (tab: Tab = engine): Promise<void> => {
      await tab.reload();
      await sheetReady(tab);
    };
    const put = async (text: string): Promise<void> => {
      await engine.run((key, value) => localStorage.setItem(key, value), KEY, text);
      await reload();
    };
    const withDemo = async (): Promise<void> => {
      await sheet();
      await put(writeStore({ engines: [demo], active: demo.id, revision: 1 }));
      await expect.poll(() => valueOf(engine, '#figure-stroke')).toBe('51');
    };
    const fault = async (mode: string, tab: Tab = engine): Promise<void> => {
      await tab.run((which) => sessionStorage.setItem('fault', which), mode);
      await reload(tab);
    };
    const type = async (where: string, words: string, tab: Tab = engine): Promise<void> => {
      await tab.click(where);
      await tab.press('Control', 'a');
      await tab.type(words);
    };

    describe('a store that fails', () => {
      it('refused: it says so, and the sheet works for this tab', async () => {
        await sheet();
        await fault('storage refused');
        await expectSaid(engine, 'does not let the page keep anything');
        await engine.click(button('Try the demo'));
        await type('#figure-stroke', '52');
        await expectSaid(engine, 'The demo is open');
        expect(await valueOf(engine, '#figure-stroke')).toBe('52');
        await engine.run(() => sessionStorage.removeItem('fault'));
      });

      it('full: what was kept stays whole, and it says so until there is room', async () => {
        await withDemo();
        await engine.run(fillStorage);
        const before = await kept(engine);
        await goTo(engine, NOTES);
        await engine.type(' No room for this. '.repeat(3));
        await expectSaid(engine, 'is full');
        expect((await engines(engine))[0]!.figures).toEqual(demo.figures);
        expect((await kept(engine)).length).toBeLessThan(before.length + 50);
        await engine.run(() => {
          for (const key of Object.keys(localStorage)) {
            if (key.startsWith('filler-')) localStorage.removeItem(key);
          }
        });
        await engine.type('!');
        await expect
          .poll(async () => (await engines(engine))[0]!.notes)
          .toBe(`Known.${' No room for this. '.repeat(3)}!`);
        expect(await said(engine)).not.toContain('is full');
      });

      it.each([
        ['cut short', '{"revision":3,"active":"e-1","sheet":{"format":"engine-sh', 'damaged'],
        ['not a sheet', '"hello"', 'damaged'],
        [
          'of a newer version',
          '{"revision":1,"active":null,"sheet":{"format":"engine-sheet","version":99,"engines":[]}}',
          'newer version',
        ],
      ])('%s: it is put aside untouched, and told of', async (_, text, words) => {
        await sheet();
        await put(text);
        await expectSaid(engine, 'put aside');
        await expectSaid(engine, words);
        await engine.click(button('Try the demo'));
        await expect.poll(() => kept(engine)).toContain('club triple');
        await reload();
        await expect.poll(() => valueOf(engine, '#figure-stroke')).toBe('51');
        expect(JSON.parse(await kept(engine, ASIDE))).toEqual([text]);
      });

      it('damaged in one engine: the whole one is kept for good', async () => {
        const broken = { ...demo, id: 'e-2', name: 'Broken', figures: { stroke: 1e9 } };
        await sheet();
        await put(
          JSON.stringify({ revision: 1, active: 'e-1', sheet: documentOf([demo, broken]) }),
        );
        await reload();
        await expect.poll(() => valueOf(engine, '#figure-stroke')).toBe('51');
        expect(await engines(engine)).toEqual([demo]);
        await expectSaid(engine, 'put aside');
      });

      it.skipIf(!steadyDriver).each(['database refused', 'database silent'])(
        '%s: the sheet is kept all the same, and sent to',
        async (mode) => {
          await withDemo();
          await fault(mode);
          await type('#figure-stroke', '53');
          await expect.poll(async () => (await engines(engine))[0]!.figures.stroke).toBe(53);
          await reload();
          await expect.poll(() => valueOf(engine, '#figure-stroke')).toBe('53');
          await visit(LINK);
          // The page moves as it is brought to life.
          await expect
            .poll(() => engine.run(() => document.querySelector('[data-awake]') !== null))
            .toBe(true);
          await engine.click(button('To the sheet'));
          await engine.click('form.send input[type="checkbox"]');
          await engine.click('form.send button[type="submit"]');
          await expectSaid(engine, 'Sent to');
          await engine.run(() => sessionStorage.removeItem('fault'));
        },
      );
    });

    it('a link nested past any depth is told of in a sentence', async () => {
      await visit(NESTED);
      await expectSaid(engine, 'must be true or false');
    });

    it('a refused reading stands nowhere, and is there after a reload at once', async () => {
      await withDemo();
      await type('#figure-stroke', '51x');
      await reload();
      await expect.poll(() => valueOf(engine, '#figure-stroke')).toBe('51x');
      expect((await engines(engine))[0]!.figures).not.toHaveProperty('stroke');
    });

    describe('two tabs', () => {
      it('one key in a tab that shows older notes deletes nothing of the other’s', async () => {
        await withDemo();
        const two = await engine.tab();
        await sheetReady(engine);
        await sheet(two);
        await goTo(two, NOTES);
        await two.type(' Coil 2 is weak.');
        await expect.poll(() => valueOf(engine, NOTES)).toBe('Known. Coil 2 is weak.');
        await goTo(engine, NOTES);
        await engine.type('!');
        await expect
          .poll(async () => (await engines(two))[0]!.notes)
          .toBe('Known. Coil 2 is weak.!');
        await expect.poll(() => valueOf(two, NOTES)).toBe('Known. Coil 2 is weak.!');
        expect(await engines(two)).toHaveLength(1);
        await two.close();
      });

      it('one that slept while the other wrote joins both, and says what came', async () => {
        await withDemo();
        await fault('asleep');
        const two = await engine.tab();
        await sheetReady(engine);
        await engine.run(() => sessionStorage.removeItem('fault'));
        await sheet(two);
        await type(NOTES, 'Written in the other tab.', two);
        await expect
          .poll(async () => (await engines(two))[0]!.notes)
          .toBe('Written in the other tab.');
        await goTo(engine, NOTES);
        await engine.type('?');
        await expectSaid(engine, 'Another tab wrote into');
        await expect
          .poll(async () => (await engines(engine)).map(({ notes }) => notes))
          .toEqual(['Known.?\nWritten in the other tab.']);
        await two.close();
      });
    });

    describe.skipIf(kind.startIn === undefined)('a browser that is killed', () => {
      let profile: string;
      beforeEach(async () => {
        profile = await mkdtemp(join(tmpdir(), 'profile-'));
      });
      afterEach(() => rm(profile, { recursive: true, maxRetries: 5, retryDelay: 200 }));

      /** The second copy, as text. */
      const secondCopy = (tab: Tab): Promise<string> =>
        tab.run(
          () =>
            new Promise<string>((resolve) => {
              const asked = indexedDB.open('gudgeon', 1);
              asked.onsuccess = () => {
                const shelf = asked.result.transaction('sheet').objectStore('sheet');
                const copied = shelf.get('copy') as IDBRequest<{ text: string } | undefined>;
                copied.onsuccess = () => {
                  asked.result.close();
                  resolve(copied.result?.text ?? '');
                };
              };
            }),
        );

      // It starts three browsers of its own.
      const patient = { timeout: 180_000 };
      it(
        'has lost nothing that was typed, though it had kept it from its disk',
        patient,
        async () => {
          const open = async (): Promise<Killable> => kind.startIn!(profile, phone);
          const notes = 'Gap 0.36 as found. ';
          const first = await open();
          await sheet(first);
          await first.click(button('New engine'));
          await goTo(first, NOTES);
          await first.type(notes);
          await expect.poll(() => secondCopy(first)).toContain(`"notes":"${notes}"`);
          await first.kill();

          const second = await open();
          // What the browser itself brings back, seen from a page that asks for nothing.
          await second.open(`${host.url}404.html`);
          const own = await kept(second);
          await sheet(second);
          await expect.poll(() => valueOf(second, NOTES)).toBe(notes);
          await expect
            .poll(async () => (await engines(second)).map((one) => one.notes))
            .toEqual([notes]);
          await goTo(second, NOTES);
          const whole = `${notes}In mid-wo`;
          await second.type('In mid-wo');
          await second.kill();

          const third = await open();
          await sheet(third);
          await expect.poll(() => valueOf(third, NOTES)).toContain(notes);
          const last = await valueOf(third, NOTES);
          expect(whole.startsWith(last)).toBe(true);
          const lost = String(whole.length - last.length);
          console.info(
            `${kind.name}: ${lost} of ${String(whole.length)} letters lost in 2 kills; its own store held ${own.includes(notes) ? 'all' : 'less'}.`,
          );
          await third.kill();
        },
      );
    });
  });
}
