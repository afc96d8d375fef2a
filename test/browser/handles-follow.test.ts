import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { documentOf, slugs } from './support/built.ts';
import { settled } from './support/calculator.ts';
import { middleOf, painted, take } from './support/handles.ts';
import { visit } from './support/page.ts';

/** Handles that go round a circle, where only the way round counts. */
const ROUND =
  /^(?:Outside diameter of the disc|Reading (?:before|after) the top|Crank, degrees after)/;
/** Half of the coarsest step of any figure, in pixels, and a little. */
const NEAR = 8;

const dragged = slugs.flatMap((slug) =>
  [...documentOf(`calculators/${slug}/index.html`).querySelectorAll('[role="slider"]')].flatMap(
    (slider, index) => {
      const label = slider.getAttribute('aria-label')!;
      const along = slider.getAttribute('aria-orientation') === 'vertical' ? 'y' : 'x';
      return ROUND.test(label) ? [] : [{ slug, index, label, along } as const];
    },
  ),
);

/** Shows the page as it was served once more, as a step back leads to another address of it. */
const asServed = async (page: Page, path: string): Promise<void> => {
  await page.evaluate((to) => {
    history.pushState(null, '', to);
    dispatchEvent(new PopStateEvent('popstate'));
  }, `/${path}`);
  await painted(page);
};

/** By the arrow keys, and what it says goes the way that they point. */
async function steps(page: Page, handle: Locator, along: 'x' | 'y', label: string): Promise<void> {
  const says = async (): Promise<number> => Number(await handle.getAttribute('aria-valuenow'));
  await handle.focus();
  const [place, value] = [(await middleOf(handle))[along], await says()];
  for (let i = 0; i < 3; i += 1) {
    await page.keyboard.press(along === 'x' ? 'ArrowRight' : 'ArrowUp');
    await painted(page);
  }
  expect(await says(), label).toBeGreaterThan(value);
  const moved = (await middleOf(handle))[along] - place;
  if (along === 'x') expect(moved, label).toBeGreaterThan(0);
  else expect(moved, label).toBeLessThan(0);
}

/** Dragged to and fro, it stays where the finger is. */
async function follows(
  page: Page,
  handle: Locator,
  along: 'x' | 'y',
  label: string,
): Promise<void> {
  const start = await take(page, handle);
  for (const by of [10, 20, 30, 20, 0, -10, -20]) {
    const finger = { ...start, [along]: start[along] + by };
    await page.mouse.move(finger.x, finger.y);
    await painted(page);
    const off = (await middleOf(handle))[along] - finger[along];
    expect.soft(Math.abs(off), `${label}, ${by} pixels away`).toBeLessThan(NEAR);
  }
  await page.mouse.up();
}

describe('every handle stays under the finger, and the arrow keys move it the way they point and enlarge what it says', () => {
  it.each([...Map.groupBy(dragged, ({ slug }) => slug)])('%s', async (slug, handles) => {
    const path = `calculators/${slug}/`;
    await visit({ path, viewport: { width: 800, height: 1600 } }, async (page) => {
      await settled(page);
      for (const { index, label, along } of handles) {
        const handle = page.getByRole('slider').nth(index);
        expect(await handle.getAttribute('aria-label')).toBe(label);
        // The angle of a hole goes round the plate, anticlockwise.
        if (!label.startsWith('Hole')) {
          await steps(page, handle, along, label);
          await asServed(page, path);
        }
        await follows(page, handle, along, label);
        await asServed(page, path);
      }
    });
  });
});

describe('a handle that goes round stays at the angle of the finger', () => {
  it.each([
    'Crank, degrees after the found top',
    'Reading before the top',
    'Reading after the top',
  ])('find-tdc: %s', async (name) => {
    await visit(
      { path: 'calculators/find-tdc/', viewport: { width: 800, height: 1600 } },
      async (page) => {
        await settled(page);
        const grip = page.getByRole('slider', { name });
        const start = await take(page, grip);
        const centre = await middleOf(page.locator('.calc-picture .disc'));
        const angleOf = ({ x, y }: { x: number; y: number }): number =>
          (Math.atan2(x - centre.x, centre.y - y) * 180) / Math.PI;
        const [from, radius] = [angleOf(start), Math.hypot(start.x - centre.x, start.y - centre.y)];
        for (const by of [-4, -8, -16, -10, -20]) {
          const angle = ((from + by) * Math.PI) / 180;
          await page.mouse.move(
            centre.x + radius * Math.sin(angle),
            centre.y - radius * Math.cos(angle),
          );
          await painted(page);
          const off = angleOf(await middleOf(grip)) - (from + by);
          expect(Math.abs(((off + 540) % 360) - 180), `${by} degrees on`).toBeLessThan(2);
        }
        await page.mouse.up();
      },
    );
  });
});

it('its field opens once the finger lets go, not before', async () => {
  await visit(
    { path: 'calculators/piston-position/', viewport: { width: 800, height: 1600 } },
    async (page) => {
      await settled(page);
      const handle = page.getByRole('slider').first();
      const plot = page.locator('.calc-picture .plot').filter({ has: handle });
      const ticks = (): Promise<string[]> => plot.locator('.tick-text').allTextContents();
      const before = await ticks();
      const { y } = await take(page, handle);
      const sheet = (await plot.boundingBox())!;
      await page.mouse.move(sheet.x + sheet.width - 4, y, { steps: 4 });
      await painted(page);
      expect(await ticks()).toEqual(before);
      await page.mouse.up();
      await expect.poll(ticks).not.toEqual(before);
    },
  );
});

it('a crank that is turned by its handle stands where the finger is, on either side', async () => {
  await visit(
    { path: 'calculators/firing-order/?turned=0', viewport: { width: 800, height: 1600 } },
    async (page) => {
      await settled(page);
      const end = page.locator('.calc-picture svg').first();
      const turned = (): Promise<string | null> =>
        end.locator('[role="slider"]').first().getAttribute('aria-valuenow');
      // The middle of the crank is 170 across and 180 down on a sheet of 340 × 350.
      for (const [across, down, degrees] of [
        [40, 0, 90],
        [0, 40, 180],
        [-40, 0, 270],
      ] as const) {
        const { x, y, width, height } = (await end.boundingBox())!;
        const at = (right: number, below: number): [number, number] => [
          x + ((170 + right) / 340) * width,
          y + ((180 + below) / 350) * height,
        ];
        const handle = (await end.locator('[role="slider"] .handle-dot').first().boundingBox())!;
        await page.mouse.move(handle.x + handle.width / 2, handle.y + handle.height / 2);
        await page.mouse.down();
        await page.mouse.move(...at(across, down), { steps: 4 });
        await page.mouse.up();
        await expect.poll(async () => Math.abs(Number(await turned()) - degrees)).toBeLessThan(3);
      }
    },
  );
});
