import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { documentOf, slugs } from './support/built.ts';
import { alertText, settled, steady } from './support/calculator.ts';
import { visit } from './support/page.ts';

/** A page of many fields takes some seconds, and minutes beside a busy core. */
const LONG = { timeout: 300_000 };

const PLAIN_DECIMAL = /^-?\d+(?:\.\d+)?$/;
const NO_FIGURE = /\b(?:NaN|Infinity|undefined|null)\b|\[object/;
/** Words in which a sentence tells how to mend a figure. */
const MENDING =
  /from .+ to |Type |type |Enter |[Gg]ive |[Rr]ead |[Ww]rite |needed|Choose|[Cc]heck|must|Leave|less|more|larger|smaller|[Mm]ove|[Tt]ake|[Uu]se|[Ss]et|[Ll]onger|[Ss]horter/;
const HOSTILE = `"><script>window.hit = 1</script><img src=x onerror="window.hit=1">`;

// Of each kind as many as the page could take differently; test/calculators/every.test.tsx tries more.
const unreadable = ['abc', '', HOSTILE];
const impossible = ['1e300', '-1e300'];
const doubtful = ['0', '-1'];

interface Answer {
  readonly key: string;
  readonly text: string;
  readonly kept: string;
  readonly invalid: boolean;
  readonly sentence: string;
  readonly alert: string;
  readonly data: readonly string[];
  /** Words that are no figure, with what stands before and after them. */
  readonly noFigure: readonly string[];
}

/**
 * Types every text into every field that takes figures, one at a time, and says what the page made
 * of each. The field's first text is put back after each. Of a series the first and the last stand
 * for all: they have one definition, and test/calculators/every.test.tsx tries each. The page is
 * laid out but not painted meanwhile: nobody looks, and painting takes a third of the time.
 */
const answers = (page: Page, texts: readonly string[]): Promise<Answer[]> =>
  page.evaluate(
    async ([given, noFigure]) => {
      const unpainted = new CSSStyleSheet();
      unpainted.replaceSync('body { visibility: hidden }');
      document.adoptedStyleSheets = [unpainted];
      const never = new RegExp(noFigure!);
      /** Texts that stand in the page, folded away or not, in which a word is no figure. */
      const wrong = (): string[] => {
        const all = document.createTreeWalker(
          document.querySelector('.calc')!,
          NodeFilter.SHOW_TEXT,
        );
        const found: string[] = [];
        while (all.nextNode()) {
          const words = all.currentNode.nodeValue!;
          if (never.test(words)) found.push(words);
        }
        return found;
      };
      // The answer is drawn before the next frame, and what follows it by a timer set in that frame:
      // two timers on, all of it stands in the page, and no second frame is waited for.
      const drawn = (): Promise<unknown> =>
        new Promise((resolve) =>
          requestAnimationFrame(() => setTimeout(() => setTimeout(resolve))),
        );
      const form = document.querySelector<HTMLElement>('.calc-form')!;
      const names = [...form.querySelectorAll<HTMLInputElement>('input[type="text"]')].map(
        (i) => i.name,
      );
      const series = names.map((name) => name.replace(/-\d+$/, ''));
      const keys = names.filter(
        (_, i) => series.indexOf(series[i]!) === i || series.lastIndexOf(series[i]!) === i,
      );
      const input = (key: string): HTMLInputElement =>
        form.querySelector<HTMLInputElement>(`input[name="${key}"]`)!;
      const type = async (key: string, text: string): Promise<void> => {
        const box = input(key);
        box.value = text;
        box.dispatchEvent(new InputEvent('input', { bubbles: true }));
        await drawn();
      };
      const list: Answer[] = [];
      for (const key of keys) {
        const first = input(key).value;
        for (const text of given) {
          await type(key, text);
          const box = input(key);
          const described = (box.getAttribute('aria-describedby') ?? '').split(/\s+/);
          list.push({
            key,
            text,
            kept: box.value,
            invalid: box.getAttribute('aria-invalid') === 'true',
            sentence: described
              .filter((id) => id.endsWith('-problem'))
              .map((id) => document.getElementById(id)?.textContent ?? '')
              .join(' '),
            alert: document.querySelector('[role="alert"]')!.textContent ?? '',
            data: [...document.querySelectorAll<HTMLDataElement>('.calc data')].map(
              (d) => d.getAttribute('value') ?? '',
            ),
            noFigure: wrong(),
          });
        }
        await type(key, first);
      }
      document.adoptedStyleSheets = [];
      return list;
    },
    [texts, NO_FIGURE.source] as const,
  );

/** The place that an answer is about, for the message of a failed check. */
const at = ({ key, text }: Answer): string => `${key} = ${JSON.stringify(text)}`;

function expectHonest(answer: Answer): void {
  expect(answer.kept, `${at(answer)}: what was typed stays`).toBe(answer.text);
  expect(answer.noFigure, at(answer)).toEqual([]);
  for (const value of answer.data) expect(value, at(answer)).toMatch(PLAIN_DECIMAL);
}

function expectSentence(answer: Answer): void {
  expect(answer.invalid, `${at(answer)} is marked as wrong`).toBe(true);
  expect(answer.sentence, `${at(answer)} has its sentence`).toMatch(/\p{L}{2,} .+\./u);
  expect(answer.sentence, `${at(answer)}: how to mend it`).toMatch(MENDING);
  expect(answer.alert, `${at(answer)} is announced`).not.toBe('');
}

describe.each(slugs)('%s', (slug) => {
  const path = `calculators/${slug}/`;
  const server = documentOf(`${path}index.html`);
  const namesOf = (selector: string): string[] =>
    [...server.querySelectorAll(selector)].map((input) => input.getAttribute('name')!);

  it('holds its results before any script', () => {
    const place = server.querySelector('[data-calculator][data-owns="true"]')!;
    const outputs = [
      ...place.querySelectorAll('output[name] data'),
      ...place.querySelectorAll('td data[data-name]'),
    ];
    expect(outputs.length).toBeGreaterThan(0);
    for (const data of outputs) {
      expect(data.getAttribute('value')).toMatch(PLAIN_DECIMAL);
      expect(data.textContent).toMatch(/\d/);
    }
    expect(place.textContent).not.toMatch(NO_FIGURE);
    const leads = [...place.querySelectorAll('.lead output')];
    expect(leads.every((lead) => lead.querySelector('data') !== null)).toBe(true);
    expect(place.querySelector('[role="alert"]')!.textContent).toBe('');
    expect(place.querySelector('svg')).not.toBeNull();
  });

  it(
    'shows the same when the script has come, says which key it does not know, answers every bad figure with its sentence, and keeps what was typed',
    LONG,
    async () => {
      await visit({ path }, async (page) => {
        const read = (): Promise<(string | null)[]> =>
          page
            .locator('.calc data')
            .evaluateAll((all) => all.map((data) => data.getAttribute('value')));
        await settled(page);
        const before = [...server.querySelectorAll('.calc data')].map((data) =>
          data.getAttribute('value'),
        );
        expect(steady(await read())).toEqual(steady(before));

        // As a step back leads to another address of the page.
        const lead = (to: string): Promise<void> =>
          page.evaluate((search) => {
            history.pushState(null, '', search);
            dispatchEvent(new PopStateEvent('popstate'));
          }, to);
        await lead('?wombat=7');
        await expect.poll(() => alertText(page)).toContain('wombat');
        expect(steady(await read()), 'an unknown key changes nothing else').toEqual(steady(before));
        await lead(`/${path}`);
        await expect.poll(() => alertText(page)).toBe('');

        const all = await answers(page, [...unreadable, ...impossible, ...doubtful]);
        expect(all.length).toBeGreaterThan(0);
        for (const answer of all) {
          expectHonest(answer);
          const empty = answer.text.trim() === '';
          if (impossible.includes(answer.text) || (unreadable.includes(answer.text) && !empty)) {
            expectSentence(answer);
          } else if (answer.invalid) {
            expectSentence(answer);
          }
        }
        expect(await page.evaluate(() => 'hit' in window)).toBe(false);
        const leads = await page
          .locator('.lead output data')
          .evaluateAll((d) => d.map((x) => x.getAttribute('value')));
        const served = [...server.querySelectorAll('.lead output data')].map((d) =>
          d.getAttribute('value'),
        );
        expect(steady(leads), 'put right again').toEqual(steady(served));
      });
    },
  );

  it('runs no script from the address, and says what it could not read', async () => {
    const keys = [...new Set([...namesOf('.calc-form input'), 'nonsense', '__proto__', HOSTILE])];
    const query = new URLSearchParams(keys.map((key) => [key, HOSTILE]));
    query.delete('lengths');
    await visit({ path: `${path}?${query}#${encodeURIComponent(HOSTILE)}` }, async (page) => {
      await settled(page);
      await expect.poll(() => alertText(page)).toContain('nonsense');
      expect(await page.evaluate(() => 'hit' in window)).toBe(false);
      expect(await page.locator('img, .calc script').count()).toBe(0);
      const typed = await page
        .locator('.calc-form input[type="text"]')
        .evaluateAll((all) => all.map((input) => (input as HTMLInputElement).value));
      expect(typed.filter((text) => text === HOSTILE)).toHaveLength(typed.length);
      expect(await page.locator('.calc').innerText()).not.toMatch(NO_FIGURE);
    });
  });
});
