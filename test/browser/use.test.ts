import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { angleBefore, travelBefore } from '../../calculators/maths/crank/slider-crank.ts';
import { alertText, expectResult, field, result, settled, query } from './support/calculator.ts';
import { CLIPBOARD, copied } from './support/clipboard.ts';
import { dragPart, middleOf, painted } from './support/handles.ts';
import { phone, visit, visitEarly } from './support/page.ts';

const PATH = 'calculators/piston-position/';
const demo = { stroke: 51, rodLength: 104, pinOffset: 0 };
const given = 'from=travel&stroke=51mm&rod=104mm&offset=0mm';

const open = (search: string, body: (page: Page) => Promise<void>, options = {}): Promise<void> =>
  visit({ path: `${PATH}${search}`, ...options }, async (page) => {
    await settled(page);
    await body(page);
  });

/** Types as a person does: into the field, key by key. */
async function type(page: Page, key: string, text: string): Promise<void> {
  await field(page, key).click();
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type(text);
}

describe('what cannot be read', () => {
  it('leaves what stood before the first key, never what was half typed, and nothing once the box is left', async () => {
    await open(`?${given}&travel=3.1mm`, async (page) => {
      await type(page, 'travel', '22');
      await expectResult(page, 'travel', 22);
      await page.keyboard.type(' thoo');
      await expectResult(page, 'travel', 3.1);
      await expectResult(page, 'angle', angleBefore(demo, 3.1));
      const wrong = page.locator('#travel-problem');
      await expect
        .poll(() => wrong.innerText())
        .toMatch(/ Until then what stood here before is used\.$/);
      await page.keyboard.press('Tab');
      await expect.poll(() => result(page, 'angle')).toBeUndefined();
      await expect
        .poll(() => wrong.innerText())
        .toMatch(/ Until then there is no result that rests on it\.$/);
      await expect.poll(() => field(page, 'travel').inputValue()).toBe('22 thoo');
      await page.reload();
      await settled(page);
      await expect.poll(() => field(page, 'travel').inputValue()).toBe('22 thoo');
      expect(await result(page, 'angle')).toBeUndefined();
      await type(page, 'travel', '22 thou');
      await expectResult(page, 'travel', 22 * 0.0254);
    });
  });
});

describe('typing', () => {
  it.each([
    ['2.8', 2.8],
    ['2,8', 2.8],
    ['2.8mm', 2.8],
    ['0.087in', 0.087 * 25.4],
    ['87 thou', 0.087 * 25.4],
    ['3/32 in', (3 / 32) * 25.4],
  ])('takes %s', async (text, millimetres) => {
    await open(`?${given}`, async (page) => {
      await type(page, 'travel', text);
      await expectResult(page, 'travel', millimetres);
      await expectResult(page, 'angle', angleBefore(demo, millimetres));
      await expect.poll(() => field(page, 'travel').inputValue()).toBe(text);
      expect(await alertText(page)).toBe('');
    });
  });

  it('reads any unit at once, with nothing to fetch', async () => {
    await open(`?${given}`, async (page) => {
      const fetched: string[] = [];
      page.on('request', (request) => {
        // What the unfolded parts fetch, where the ± comes from and the words to copy, has no unit.
        if (/^(?!.*(?:AllBudgets|copies)).*\.js$/.test(request.url())) fetched.push(request.url());
      });
      await type(page, 'travel', '1.7');
      await expectResult(page, 'angle', angleBefore(demo, 1.7));
      expect(fetched).toEqual([]);
      await type(page, 'travel', '1 in');
      await expectResult(page, 'travel', 25.4);
      await type(page, 'travel', '3/32 in');
      await expectResult(page, 'travel', 2.38125);
      expect(fetched).toEqual([]);
    });
  });

  it('goes on from what was typed before the script came', async () => {
    await visitEarly(PATH, async (page, letScriptsCome) => {
      await field(page, 'travel').fill('2.8');
      letScriptsCome();
      await settled(page);
      await expect.poll(() => field(page, 'travel').inputValue()).toBe('2.8');
      await expectResult(page, 'travel', 2.8);
    });
  });
});

describe('how exact the readings are', () => {
  const spread = (page: Page): Promise<string | null> =>
    page.locator('output[name="angle"] .spread').first().textContent();

  it('is told in a line, and has fields once somebody asks', async () => {
    await open(`?${given}&travel=2.2mm`, async (page) => {
      const details = page.locator('.errors');
      await expect.poll(() => details.textContent()).toContain('± of stroke: 0.05 mm');
      expect(await field(page, 'travel-error').count()).toBe(0);
      await details.locator('summary').click();
      const before = await spread(page);
      await type(page, 'travel-error', '0.2');
      await expect.poll(() => spread(page)).not.toBe(before);
    });
  });

  it('has its field at once where the address gives it', async () => {
    await open(`?${given}&travel=2.2mm&travel-error=0.2mm`, async (page) => {
      await expect.poll(() => field(page, 'travel-error').inputValue()).toBe('0.2');
    });
  });
});

describe('the picture', () => {
  it('is dragged, and the figures follow', async () => {
    await open(`?${given}&travel=2.2mm`, async (page) => {
      const handle = page.locator('[role="slider"]').first();
      const start = await dragPart(page, handle, -40, 0);
      await expect.poll(() => result(page, 'travel')).not.toBeCloseTo(2.2, 3);
      const travel = (await result(page, 'travel'))!;
      await expect.poll(() => field(page, 'travel').inputValue()).toBe(String(travel));
      await expectResult(page, 'angle', angleBefore(demo, travel));
      await expect.poll(() => query(page).get('travel')).toBe(`${travel}mm`);
      expect((await middleOf(handle)).x).toBeCloseTo(start.x - 40, -1);
    });
  });

  it('is stepped by the arrow keys, and says its state in words', async () => {
    await open('?from=angle&angle=24deg&stroke=51mm&rod=104mm&offset=0mm', async (page) => {
      const handle = page.locator('[role="slider"]').first();
      await handle.focus();
      const words = await handle.getAttribute('aria-valuetext');
      await page.keyboard.press('ArrowRight');
      await expect.poll(() => result(page, 'angle')).not.toBeCloseTo(24, 6);
      const angle = (await result(page, 'angle'))!;
      await expectResult(page, 'travel', travelBefore(demo, angle));
      expect(await handle.getAttribute('aria-valuetext')).not.toBe(words);
    });
  });
});

describe('the address', () => {
  it('holds the whole state: a reload and a shared link give the same figures', async () => {
    await open(`?${given}`, async (page) => {
      await type(page, 'travel', '87 thou');
      await type(page, 'rod', '108,5');
      await expect.poll(() => query(page).get('rod')).toBe('108,5mm');
      const angle = (await result(page, 'angle'))!;
      expect(angle).toBeCloseTo(angleBefore({ ...demo, rodLength: 108.5 }, 0.087 * 25.4), 6);
      const link = page.url();
      await page.reload();
      await settled(page);
      await expectResult(page, 'angle', angle, 9);
      await expect.poll(() => field(page, 'travel').inputValue()).toBe('87 thou');
      await visit({ path: link }, async (other) => {
        await settled(other);
        await expectResult(other, 'angle', angle, 9);
      });
    });
  });

  it('takes one step back for each edit', async () => {
    await open(`?${given}&travel=2.2mm`, async (page) => {
      const before = (await result(page, 'angle'))!;
      await type(page, 'travel', '2.85');
      await page.keyboard.press('Tab');
      await expect.poll(() => query(page).get('travel')).toBe('2.85mm');
      await type(page, 'stroke', '54');
      await page.keyboard.press('Tab');
      await expect.poll(() => query(page).get('stroke')).toBe('54mm');
      await page.goBack();
      await expectResult(page, 'angle', angleBefore(demo, 2.85));
      await expect.poll(() => field(page, 'stroke').inputValue()).toBe('51');
      await page.goBack();
      await expectResult(page, 'angle', before, 9);
      await page.goForward();
      await expectResult(page, 'angle', angleBefore(demo, 2.85));
    });
  });

  it('is copied as a link, as text and as Markdown', async () => {
    const search = `?${given}&travel=2.2mm`;
    await open(
      search,
      async (page) => {
        const copy = async (form: string): Promise<string> => {
          await page.getByRole('button', { name: form, exact: true }).click();
          await page
            .getByRole('status')
            .filter({ hasText: `${form} copied` })
            .waitFor();
          return copied(page);
        };
        const link = await copy('Link');
        expect(new URL(link).searchParams.get('travel')).toBe('2.2mm');
        expect(await copy('Text')).toContain(link);
        expect(await copy('Markdown')).toContain(`](${link})`);
        await page.goto(link);
        await settled(page);
        await expectResult(page, 'angle', angleBefore(demo, 2.2));
      },
      { permissions: CLIPBOARD },
    );
  });
});

describe('whose figures they are', () => {
  const remarked = 'calculators/plate-setting/';
  const givenAll = '?as=travel&target=2.2mm&stroke=51mm&rod=104mm&fired-1=2.2mm&fired-2=2mm';

  it('an example’s figure is marked until it is touched, and stays one after a reload', async () => {
    await open('', async (page) => {
      const mark = page.locator('#stroke-mark');
      await expect.poll(() => mark.innerText()).toBe('example');
      expect(await field(page, 'stroke').getAttribute('aria-describedby')).toContain('stroke-mark');
      await type(page, 'travel', '3');
      await expect.poll(() => query(page).get('example')).toBe('stroke,rod,rotor');
      await page.reload();
      await settled(page);
      // The page stands back until its address is read.
      await expect.poll(() => mark.innerText()).toBe('example');
      await expect
        .poll(() => page.locator('.whose').innerText())
        .toBe('2 figures are still the example’s.');
      await expect
        .poll(() => page.locator('.to-give').innerText())
        .toBe('Give your own: stroke and rod length.');
      // Confirmed as it stands, it is the reader's.
      await field(page, 'stroke').press('Enter');
      await expect.poll(() => mark.innerText()).toBe('yours');
      await type(page, 'rod', '104');
      await expect.poll(() => page.locator('.whose').count()).toBe(0);
    });
  });

  it('pressed as it stands, an example’s choice is the reader’s', async () => {
    await open('', async (page) => {
      await page.locator('#from .option').first().click();
      await expect.poll(() => page.locator('#from-mark').innerText()).toBe('yours');
    });
  });

  it('the example’s in rows are marked beside their number', async () => {
    await visit({ path: 'calculators/hole-pattern/' }, async (page) => {
      await settled(page);
      await field(page, 'hole-1').fill('7');
      const second = page.locator('.field-in-row', { has: field(page, 'hole-2') });
      await expect.poll(() => second.locator('.field-number').innerText()).toMatch(/^2\s*example$/);
    });
  });

  it('a verdict waits for every figure behind it', async () => {
    await visit({ path: `${remarked}${givenAll}` }, async (page) => {
      await settled(page);
      const remarks = page.locator('.remarks');
      await expect.poll(() => remarks.innerText()).toContain('Not judged yet: pass or fail');
      expect(await remarks.innerText()).not.toMatch(/Pass|Fail/);
      await field(page, 'fired-3').fill('2.1');
      await expect.poll(() => remarks.innerText()).toMatch(/^(Pass|Fail)/);
    });
  });

  it('what cannot be read is neither copied nor written to the address', async () => {
    await open(
      `?${given}&travel=2.2mm`,
      async (page) => {
        await type(page, 'stroke', '80');
        await page.keyboard.press('Tab');
        await expect.poll(() => query(page).get('stroke')).toBe('80mm');
        await type(page, 'stroke', '80 q');
        await type(page, 'rod', '110');
        await expect.poll(() => query(page).get('rod')).toBe('110mm');
        await expect.poll(() => query(page).get('stroke')).toBe('80mm');
        expect(await result(page, 'angle')).toBeUndefined();
        await page.getByRole('button', { name: 'Link', exact: true }).click();
        await page.getByText('Nothing was copied. “Stroke” cannot be taken').waitFor();
        expect(
          await page.getByRole('button', { name: 'Send figures to the sheet' }).isDisabled(),
        ).toBe(true);
        // What was typed is not lost, and nothing rests on it.
        await page.reload();
        await settled(page);
        await expect.poll(() => query(page).get('stroke')).toBe('80mm');
        await expect.poll(() => field(page, 'stroke').inputValue()).toBe('80 q');
        expect(await result(page, 'angle')).toBeUndefined();
        await type(page, 'stroke', '80');
        await expectResult(
          page,
          'angle',
          angleBefore({ ...demo, stroke: 80, rodLength: 110 }, 2.2),
        );
      },
      { permissions: CLIPBOARD },
    );
  });

  it('a link that cannot be read leaves no result that rests on it', async () => {
    await open('?stroke=abc&travel=2.2mm', async (page) => {
      await expect.poll(() => alertText(page)).toContain('“abc” cannot be read');
      expect(await page.locator('.calc output data').count()).toBe(0);
      expect(await page.locator('.calc-picture svg').count()).toBe(0);
      const [told] = await page.locator('.problems a').all();
      expect(await told!.getAttribute('href')).toBe('#stroke');
      expect(await page.locator('.no-picture').innerText()).toBe(
        'There is nothing to draw until this is put right: stroke.',
      );
      await type(page, 'stroke', '51');
      await expectResult(page, 'angle', angleBefore(demo, 2.2));
    });
  });
});

describe('what is remembered', () => {
  it('turns what was typed into the lengths that are chosen after it', async () => {
    await open('', async (page) => {
      await type(page, 'travel', '3');
      await page.getByLabel('inch', { exact: true }).check();
      // 3 mm are 0.1181 in.
      const shown = async (): Promise<number> => Number(await field(page, 'travel').inputValue());
      await expect.poll(shown).toBeCloseTo(0.1181, 4);
    });
  });

  it('keeps the display in inches, and the results in their own units', async () => {
    await open(`?${given}&travel=2.2mm`, async (page) => {
      await page.getByLabel('inch', { exact: true }).check();
      await expect
        .poll(() => page.locator('output[name="travel"]').textContent())
        .toContain('thou');
      expect(await result(page, 'travel')).toBeCloseTo(2.2, 9);
      await page.reload();
      await settled(page);
      await expect.poll(() => page.getByLabel('inch', { exact: true }).isChecked()).toBe(true);
      await expect.poll(() => field(page, 'travel').inputValue()).toBe('0.0866');
      await type(page, 'travel', '0.1');
      await expectResult(page, 'travel', 2.54);
      await type(page, 'travel', '87 thou');
      await expectResult(page, 'travel', 2.2098);
      await page.getByText('5 thou is worth').first().waitFor();
      await field(page, 'travel').press('Enter');
      await expect.poll(() => query(page).get('travel')).toBe('87 thou');
      await page.reload();
      await settled(page);
      await expect.poll(() => field(page, 'travel').inputValue()).toBe('87 thou');
    });
  });

  it.each(['{"broken', 'furlongs', '\u0000'])(
    'does without what it cannot read: %j',
    async (kept) => {
      await open(`?${given}&travel=2.2mm`, async (page) => {
        await page.evaluate((text) => {
          for (const key of ['gudgeon.lengths', ...Object.keys(localStorage)]) {
            localStorage.setItem(key, text);
          }
        }, kept);
        await page.reload();
        await settled(page);
        await expectResult(page, 'angle', angleBefore(demo, 2.2));
      });
    },
  );
});

describe('by keyboard alone', () => {
  it('reaches everything in order, shows where it is, and works a figure out', async () => {
    await open(`?${given}&travel=2.2mm`, async (page) => {
      await page.keyboard.press('Tab');
      await expect.poll(() => page.evaluate(() => document.activeElement?.className)).toBe('skip');
      await page.keyboard.press('Enter');
      await expect.poll(() => new URL(page.url()).hash).toBe('#main');

      const stops: string[] = [];
      for (let presses = 0; presses < 120; presses += 1) {
        await page.keyboard.press('Tab');
        const stop = await page.evaluate(() => {
          const element = document.activeElement as HTMLElement;
          // A figure's ring goes round its unit too.
          const box = element.closest('.field-box') ?? element;
          const ring = [box, ...box.querySelectorAll('*')].some((part) => {
            const style = getComputedStyle(part);
            return (
              style.outlineStyle !== 'none' ||
              style.boxShadow !== 'none' ||
              (part.matches('.handle-hit') && style.stroke !== 'none')
            );
          });
          const name =
            element.getAttribute('name') ?? element.getAttribute('role') ?? element.localName;
          return { name: element === document.body ? 'end' : name, ring };
        });
        if (stop.name === 'end') break;
        expect(stop.ring, `${stop.name} shows that it has the focus`).toBe(true);
        stops.push(stop.name);
      }
      for (const name of ['from', 'travel', 'stroke', 'rod', 'offset', 'slider', 'summary']) {
        expect(stops).toContain(name);
      }
      expect(stops.indexOf('slider')).toBeLessThan(stops.indexOf('travel'));
      expect(stops.indexOf('travel')).toBeLessThan(stops.indexOf('stroke'));

      await field(page, 'travel').focus();
      await page.keyboard.press('ArrowUp');
      await expectResult(page, 'travel', 2.25);
      await field(page, 'travel').press('Shift+Tab');
      await page.locator('input[name="from"]:checked').focus();
      await page.keyboard.press('ArrowDown');
      await expect.poll(() => query(page).get('from')).toBe('angle');
    });
  });
});

describe('on a phone', () => {
  it('shows the answer with the form, without a scroll sideways', async () => {
    await open(
      `?${given}&travel=2.2mm`,
      async (page) => {
        await field(page, 'stroke').scrollIntoViewIfNeeded();
        await type(page, 'stroke', '54');
        await expectResult(page, 'angle', angleBefore({ ...demo, stroke: 54 }, 2.2));
        const answer = (await page.locator('output[name="angle"]').boundingBox())!;
        expect(answer.y).toBeGreaterThanOrEqual(0);
        expect(answer.y + answer.height).toBeLessThanOrEqual(phone.height);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(phone.width);
      },
      { viewport: phone, hasTouch: true, isMobile: true },
    );
  });
});

describe('in an article', () => {
  it('comes to life when the reader sets about it, and costs one who only reads nothing', async () => {
    const options = { viewport: phone, hasTouch: true, isMobile: true };
    await visit({ path: 'articles/where-the-piston-is/', ...options }, async (page) => {
      const asked: string[] = [];
      page.on('request', (request) => asked.push(request.url()));
      const figures = await page.locator('[data-calculator]').all();
      await page.waitForLoadState('networkidle');
      for (const figure of figures) {
        await figure.scrollIntoViewIfNeeded();
        await painted(page);
      }
      expect(await page.locator('[data-calculator][data-ready]').count()).toBe(0);
      expect(asked.filter((address) => address.endsWith('.js'))).toEqual([]);
      await figures[0]!.locator('.calc-answer').tap();
      await expect.poll(() => figures[0]!.getAttribute('data-ready')).toBe('true');
    });
  });

  it('says so when it cannot be fetched, and leaves its figures', async () => {
    const options = {
      path: 'articles/where-the-piston-is/',
      expected: [/ERR_FAILED/],
      tolerated: [/Failed to fetch/],
    };
    await visit(options, async (page) => {
      await page.route(/\/_astro\/wake-figure\./, (route) => route.abort());
      const place = page.locator('.figure-place').first();
      await place.locator('.calc-answer').click();
      await expect.poll(() => place.textContent()).toContain('could not be fetched');
      expect(await place.locator('[aria-busy]').count()).toBe(0);
      expect(await place.locator('output data').count()).toBeGreaterThan(0);
    });
  });
});

it('a change of what is given converts the figure, and back', () =>
  visit({ path: 'calculators/piston-position/' }, async (page) => {
    await settled(page);
    await page.fill('input[name="travel"]', '2.7');
    const angle = async (): Promise<number> =>
      Number(await page.locator('output[name="angle"] data').getAttribute('value'));
    await expect.poll(angle).toBeGreaterThan(23);
    const before = await angle();
    await page.getByRole('radio', { name: 'Crank angle' }).check();
    await expect.poll(() => page.inputValue('input[name="angle"]')).toMatch(/^23\.\d+/);
    expect(await angle()).toBeCloseTo(before, 3);
    await page.getByRole('radio', { name: 'Piston travel' }).check();
    await expect
      .poll(() => page.inputValue('input[name="travel"]'))
      .toMatch(/^2\.(?:7|69999|70000)/);
  }));
