import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import axe from 'axe-core';
import { afterAll, afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import corpus from '../corpus/links.json' with { type: 'json' };
import { STANDARD } from './support/axe.ts';
import { dist, documentOf, slugs } from './support/built.ts';
import { steady, unfold } from './support/calculator.ts';
import type { Engine } from './support/engines/engine.ts';
import { firefox } from './support/engines/firefox.ts';
import { serveWatched } from './support/engines/watched.ts';
import { webkit } from './support/engines/webkit.ts';
import { phone } from './support/page.ts';
import { serve, type Served } from './support/serve.ts';
import { KEY } from './support/sheet.ts';

vi.setConfig({ testTimeout: 120_000 });

const cache = new URL('../../.cache/', import.meta.url);
const NO_FIGURE = /\b(?:NaN|Infinity|undefined|null)\b|\[object/;
const PISTON = 'calculators/piston-position/';
const ENGINE = 'from=travel&stroke=51mm&rod=104mm&offset=0mm';

/**
 * Crank angle in degrees before top dead centre for a piston so far below it, in mm, by the law of
 * cosines in the triangle of crank, rod and the line between their far ends.
 */
function byTriangle(stroke: number, rod: number, travel: number): number {
  const crank = stroke / 2;
  const between = crank + rod - travel;
  const cosine = (between ** 2 + crank ** 2 - rod ** 2) / (2 * between * crank);
  return (Math.acos(cosine) * 180) / Math.PI;
}

const button = (name: string): string => `//button[normalize-space()="${name}"]`;

for (const kind of [firefox, webkit]) {
  const { name, missing, start } = kind;
  if (missing !== undefined) console.warn(missing);

  // A driver that has lost its browser says nothing of the site: once more, with a fresh one.
  describe.skipIf(missing !== undefined)(missing ?? name, { retry: 1 }, () => {
    let site: Served;
    let engine: Engine;

    beforeAll(async () => {
      site = await serveWatched(dist);
      engine = await start(phone);
    });
    afterAll(async () => {
      await engine?.close();
      await site?.close();
    });

    const complaints = (): Promise<string[]> =>
      engine.run(() => {
        const said = JSON.parse(sessionStorage.getItem('complaints') ?? '[]') as string[];
        sessionStorage.removeItem('complaints');
        return said;
      });
    /**
     * Enters everything that is drawn by script on the page, waits until it answers, and unfolds
     * the groups of its calculators.
     */
    const ready = async (): Promise<void> => {
      await expect
        .poll(() =>
          engine.run(() => {
            const asleep = document.querySelectorAll(
              ':is([data-calculator], [data-sheet]):not([data-ready="true"])',
            );
            for (const place of asleep) place.dispatchEvent(new FocusEvent('focusin'));
            // What was asked of the address is seen only once it has been drawn.
            return asleep.length + (document.documentElement.dataset.asked === undefined ? 0 : 1);
          }),
        )
        .toBe(0);
      await engine.run(unfold);
    };
    const visit = async (path: string): Promise<void> => {
      await engine.open(new URL(path, site.url).href);
      await ready();
    };
    const text = (selector: string): Promise<string> =>
      engine.run((where) => document.querySelector<HTMLElement>(where)?.innerText ?? '', selector);
    const input = (key: string): Promise<string> =>
      engine.run(
        (where) => document.querySelector<HTMLInputElement>(where)!.value,
        `input[name="${key}"]`,
      );
    /** Results by name, all of the same moment. */
    const all = async (names: readonly string[]): Promise<number[]> => {
      const texts = await engine.run(
        (given) =>
          given.map((name) => {
            const data = `output[name="${name}"] data, data[data-name="${name}"]`;
            return document.querySelector(data)?.getAttribute('value') ?? 'none';
          }),
        names,
      );
      return texts.map(Number);
    };
    const result = async (of: string): Promise<number> => (await all([of]))[0]!;
    const expectResult = (of: string, value: number): Promise<void> =>
      expect.poll(() => result(of), { message: of }).toBeCloseTo(value, 6);
    const type = async (where: string, words: string): Promise<void> => {
      await engine.click(where);
      await engine.press('Control', 'a');
      await engine.type(words);
    };
    const query = async (key: string): Promise<string | null> =>
      new URL(await engine.address()).searchParams.get(key);
    const links = (): Promise<string[]> =>
      engine.run(() =>
        [...document.querySelectorAll('#search-list a')].map((link) => link.getAttribute('href')!),
      );
    const violations = async (): Promise<string[]> => {
      await engine.load(axe.source);
      return engine.run(async (tags) => {
        const tool = (globalThis as unknown as { axe: typeof axe }).axe;
        const report = await tool.run(document, { runOnly: tags, resultTypes: ['violations'] });
        return report.violations.map(({ help, nodes }) => `${help}: ${nodes[0]?.html}`);
      }, STANDARD);
    };

    describe('the page', () => {
      afterEach(async ({ task }) => {
        if (task.result?.state === 'fail') {
          const picture = fileURLToPath(new URL(`failed-${name}.png`, cache));
          await engine.screenshot().then(
            async (image) => {
              await mkdir(cache, { recursive: true });
              await writeFile(picture, image);
              console.error(`${task.name}: the screen is in ${picture}`);
            },
            () => console.error(`${task.name}: ${name} no longer answers`),
          );
          await engine.forget();
          return;
        }
        expect(await complaints()).toEqual([]);
      });

      /** Leads the page that is open to another address of its own, as a step back in it does. */
      const lead = (path: string): Promise<void> =>
        engine.run((to) => {
          history.pushState(null, '', to);
          dispatchEvent(new PopStateEvent('popstate'));
        }, new URL(path, site.url).href);
      const named = (
        names: readonly string[],
        values: readonly number[],
      ): readonly (readonly [string, string])[] =>
        steady(values.map(String)).map((value, i) => [names[i]!, value]);
      const slugOf = (path: string): string => /^calculators\/([^/]+)\//.exec(path)![1]!;

      describe.each(slugs)('%s', (slug) => {
        it('shows the figures that were served, and fits a phone', async () => {
          await visit(`calculators/${slug}/`);
          const seen = await engine.run(() => ({
            values: [...document.querySelectorAll('.calc data')].map((d) =>
              d.getAttribute('value'),
            ),
            words: document.body.innerText,
            wider: document.documentElement.scrollWidth - document.documentElement.clientWidth,
            wide: innerWidth,
          }));
          const served = [
            ...documentOf(`calculators/${slug}/index.html`).querySelectorAll('.calc data'),
          ];
          expect(seen.values.length).toBeGreaterThan(0);
          expect(steady(seen.values)).toEqual(
            steady(served.map((data) => data.getAttribute('value'))),
          );
          expect(seen.words).not.toMatch(NO_FIGURE);
          expect(seen).toMatchObject({ wide: phone.width, wider: 0 });
        });

        // One link is opened; the page is led to the others, since to load it says no more of the engine.
        it('gives its figures for every kept link', async () => {
          const kept = corpus.filter(({ link }) => slugOf(link) === slug);
          expect(kept).not.toEqual([]);
          for (const [i, { link, results }] of kept.entries()) {
            await (i === 0 ? visit(link) : lead(link));
            const names = Object.keys(results);
            await expect
              .poll(async () => named(names, await all(names)), { message: link })
              .toEqual(named(names, Object.values(results)));
          }
        });
      });

      it('takes what is typed, in any unit, and keeps it in the address', async () => {
        await visit(`${PISTON}?${ENGINE}&travel=2.2mm`);
        await expectResult('angle', byTriangle(51, 104, 2.2));
        await type('input[name="travel"]', '2.8');
        await expectResult('angle', byTriangle(51, 104, 2.8));
        await type('input[name="travel"]', '87 thou');
        await expectResult('angle', byTriangle(51, 104, 0.087 * 25.4));
        await engine.press('Tab');
        await expect.poll(() => query('travel')).toBe('87 thou');
        await engine.reload();
        await ready();
        expect(await input('travel')).toBe('87 thou');
        await expectResult('angle', byTriangle(51, 104, 0.087 * 25.4));
      });

      it('takes one step back for each edit', async () => {
        await visit(`${PISTON}?${ENGINE}&travel=2.2mm`);
        await type('input[name="travel"]', '2.85');
        await engine.press('Tab');
        await expect.poll(() => query('travel')).toBe('2.85mm');
        await type('input[name="stroke"]', '54');
        await engine.press('Tab');
        await expect.poll(() => query('stroke')).toBe('54mm');
        await engine.back();
        await expectResult('angle', byTriangle(51, 104, 2.85));
        expect(await input('stroke')).toBe('51');
        await engine.back();
        await expectResult('angle', byTriangle(51, 104, 2.2));
        await expect.poll(() => query('travel')).toBe('2.2mm');
      });

      it('says beside the field what is wrong with a figure, and keeps it', async () => {
        await visit(`${PISTON}?${ENGINE}&travel=2.2mm`);
        await type('input[name="stroke"]', '5l');
        const wrong = () =>
          engine.run(() => {
            const field = document.querySelector<HTMLInputElement>('input[name="stroke"]')!;
            const described = (field.getAttribute('aria-describedby') ?? '').split(' ');
            const problem = described.find((id) => id.endsWith('-problem'));
            return {
              kept: field.value,
              invalid: field.getAttribute('aria-invalid'),
              sentence: problem ? (document.getElementById(problem)?.innerText ?? '') : '',
            };
          });
        await expect.poll(wrong).toMatchObject({
          kept: '5l',
          invalid: 'true',
          sentence: expect.stringContaining('“l” is not a unit'),
        });
        await expectResult('angle', byTriangle(51, 104, 2.2));
        await type('input[name="stroke"]', '52');
        await expect.poll(wrong).toEqual({ kept: '52', invalid: null, sentence: '' });
        await expectResult('angle', byTriangle(52, 104, 2.2));
      });

      it('has a handle that is dragged by the pointer and stepped by the arrow keys', async () => {
        await visit(`${PISTON}?${ENGINE}&travel=2.2mm`);
        await engine.drag('[role="slider"]', -40, 0);
        await expect.poll(() => result('travel')).not.toBeCloseTo(2.2, 2);
        const dragged = await result('travel');
        await expectResult('angle', byTriangle(51, 104, dragged));
        expect(await input('travel')).toBe(String(dragged));
        await expect.poll(() => query('travel')).toBe(`${dragged}mm`);

        await engine.run(() => document.querySelector<SVGElement>('[role="slider"]')!.focus());
        await engine.press('ArrowRight');
        await expect.poll(() => result('travel')).not.toBeCloseTo(dragged, 6);
        await expectResult('angle', byTriangle(51, 104, await result('travel')));
      });

      it('is worked by the keyboard alone, in the order in which it is read', async () => {
        await visit(`${PISTON}?${ENGINE}&travel=2.2mm`);
        const fields = ['slider', 'travel', 'from', 'stroke', 'rod', 'offset'];
        const stops: { name: string; top: number }[] = [];
        while (stops.length < 120 && stops.at(-1)?.name !== fields.at(-1)) {
          await engine.press('Tab');
          stops.push(
            await engine.run(() => {
              const at = document.activeElement!;
              return {
                name:
                  at.getAttribute('name') ??
                  at.getAttribute('role') ??
                  (at.matches('.skip') ? 'skip' : at.localName),
                top: at.getBoundingClientRect().top + scrollY,
              };
            }),
          );
        }
        const names = stops.map(({ name: stop }) => stop);
        expect(names[0]).toBe('skip');
        expect(
          names.filter((stop, i) => fields.includes(stop) && names.indexOf(stop) === i),
        ).toEqual(fields);
        const tops = fields.map((stop) => stops[names.indexOf(stop)]!.top);
        expect(tops, 'down the page').toEqual(tops.toSorted((one, other) => one - other));
        await engine.run(() =>
          document.querySelector<HTMLElement>('input[name="travel"]')!.focus(),
        );
        await engine.press('ArrowUp');
        await expectResult('travel', 2.25);
      });

      it('underlines the place in the site where one is, and terms with dots', async () => {
        await visit('articles/where-the-piston-is/');
        const drawn = await engine.run(() => {
          const style = (where: string, property: string): string => {
            const styles = getComputedStyle(document.querySelector(where)!);
            return (
              styles.getPropertyValue(property) || styles.getPropertyValue(`-webkit-${property}`)
            );
          };
          return [
            style('nav [aria-current]', 'text-decoration-line'),
            style('nav a:not([aria-current])', 'text-decoration-line'),
            style('.term', 'text-decoration-style'),
          ];
        });
        expect(drawn).toEqual(['underline', 'none', 'dotted']);
      });

      it('finds a calculator by another name of its subject', async () => {
        await visit('search/');
        await type('input[name="q"]', 'carb sync');
        await expect
          .poll(async () => (await links()).slice(0, 3))
          .toContainEqual(expect.stringMatching(/calculators\/slide-balance\/$/));
      });

      it('keeps an engine in the browser, and a link brings it to a browser that has none', async () => {
        const engines = (): Promise<{ figures: Record<string, number> }[]> =>
          engine.run((key) => {
            const kept = localStorage.getItem(key);
            return kept === null ? [] : JSON.parse(kept).sheet.engines;
          }, KEY);
        const strokes = async () => (await engines()).map(({ figures }) => figures['stroke']);

        await engine.forget();
        await visit('sheet/');
        await engine.click(button('New engine'));
        await type('#figure-stroke', '2 in');
        await expect.poll(strokes).toEqual([50.8]);
        await engine.reload();
        await ready();
        await expect
          .poll(() =>
            engine.run(() => document.querySelector<HTMLInputElement>('#figure-stroke')!.value),
          )
          .toBe('2 in');

        await engine.click(button('Copy the link'));
        await expect.poll(() => text('.sheet-share .share-state')).toBe('Link copied.');
        // A link is for pasting: into the notes, from where the test can read it.
        const notes = 'textarea:not([readonly])';
        await engine.click(notes);
        await engine.press('Control', 'v');
        const pasted = (): Promise<string> =>
          engine.run((where) => document.querySelector<HTMLTextAreaElement>(where)!.value, notes);
        await expect.poll(pasted).toMatch(/^http\S+#./);
        const link = await pasted();

        await engine.forget();
        await engine.open(link);
        await ready();
        expect(await strokes()).toEqual([]);
        await engine.click(button('Keep it in this browser'));
        await expect.poll(strokes).toEqual([50.8]);
        expect(await engine.run(() => location.hash)).toBe('');
      });

      it.each(['', PISTON, 'articles/where-the-piston-is/', 'sheet/'])(
        '/%s has no fault that axe can find',
        async (path) => {
          await visit(path);
          expect(await violations()).toEqual([]);
        },
      );
    });

    it('works offline after one visit', async () => {
      const host = await serve(dist);
      try {
        await engine.open(host.url);
        await engine.run(() => navigator.serviceWorker.ready.then(() => undefined));
        await host.close();
        await engine.open(`${host.url}${PISTON}?${ENGINE}&travel=87thou`);
        await ready();
        await expectResult('angle', byTriangle(51, 104, 0.087 * 25.4));
        await engine.open(`${host.url}search/?q=con+rod`);
        await expect.poll(async () => (await links()).length).toBeGreaterThan(0);
      } finally {
        await host.close().catch(() => undefined);
      }
    });

    it('asks again for a part of the site that did not come', async () => {
      let lacking = true;
      const host = await serve(dist, {
        lacks: (path) => lacking && /SendForm|picture-file/.test(path),
      });
      const said = (): Promise<string> => text('.calc-more');
      const ask = (): Promise<void> =>
        engine.run(() => {
          for (const part of document.querySelectorAll<HTMLElement>('.calc-more button')) {
            if (/^(?:To the sheet|Picture, SVG)/.test(part.innerText)) part.click();
          }
        });
      try {
        await engine.open(`${host.url}${PISTON}`);
        await ready();
        await ask();
        await expect
          .poll(async () => (await said()).split('A part of the site that this needs').length)
          .toBe(3);
        expect(await said()).not.toMatch(/module|import/i);
        lacking = false;
        await ask();
        await expect.poll(said).toContain('Saved: piston-position');
        await expect.poll(said).toContain('Send to a new sheet');
      } finally {
        await host.close();
      }
    });

    it('would be seen to complain', async () => {
      const folder = await mkdtemp(join(tmpdir(), 'gudgeon-faulty-'));
      const policy = `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'self'">`;
      const page = `<html><head>${policy}</head><body><p style="color: red">x</p><script>1</script><script src="throws.js"></script><script src="none.js"></script><script src="says.js"></script><button>b</button><input></body></html>`;
      await writeFile(join(folder, 'index.html'), page);
      await writeFile(join(folder, 'throws.js'), 'throw new Error("broken")');
      await writeFile(join(folder, 'says.js'), 'console.warn("odd"); Promise.reject("refused")');
      const faulty = await serveWatched(folder);
      try {
        await engine.open(faulty.url);
        const said = await complaints();
        for (const form of [
          /^policy: style-src/,
          /^policy: script-src/,
          /^uncaught: .*broken/,
          /^not loaded: .*none\.js/,
          /^console warn: odd/,
          /^unhandled: refused/,
        ]) {
          expect(said).toContainEqual(expect.stringMatching(form));
        }
        expect(await violations()).toContainEqual(expect.stringContaining('<input>'));
      } finally {
        await faulty.close();
        await rm(folder, { recursive: true });
      }
    });
  });
}
