import { parseHTML } from 'linkedom';
import { render } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import { calculators } from '../../site/all-calculators.ts';
import { Live } from '../../site/calculator/Live.tsx';
import { PictureGuard } from '../../site/calculator/PictureGuard.tsx';
import { drawn } from './support/draw.tsx';
import { sheetsOf } from './support/marks.ts';
import { pointsOf, shapesOf } from './support/shapes.ts';

const SAID = 'This picture cannot be drawn for these figures: the figures above stand.';
const fault = new Error('no such place');

function Broken({ when = true }: { readonly when?: boolean }) {
  if (when) throw fault;
  return <svg class="plot" />;
}

afterEach(() => vi.restoreAllMocks());

describe('a picture that throws', () => {
  it.each(calculators.map((calculator) => [calculator.slug, calculator] as const))(
    'leaves the figures of %s standing, on the server too',
    (_, calculator) => {
      const logged = vi.spyOn(console, 'error').mockImplementation(() => undefined);
      const broken: AnyCalculator = { ...calculator, picture: () => <Broken /> };
      const html = renderToString(<Live calculator={broken} idPrefix="" />);
      expect(html).toContain(SAID);
      expect(html).toMatch(/<data value="-?\d/);
      expect(logged).toHaveBeenCalledWith(fault);
    },
  );

  it('is tried anew with the next figures, in a page', async () => {
    const logged = vi.spyOn(console, 'error').mockImplementation(() => undefined);
    const { document } = parseHTML('<body><div></div></body>');
    vi.stubGlobal('document', document);
    const place = document.querySelector('div')!;
    const show = async (when: boolean): Promise<string> => {
      render(
        <PictureGuard>
          <Broken when={when} />
        </PictureGuard>,
        place,
      );
      await new Promise((done) => setTimeout(done, 10));
      return place.innerHTML;
    };
    expect(await show(false)).toContain('svg');
    expect(await show(true)).toContain(SAID);
    expect(await show(true)).toContain(SAID);
    expect(await show(false)).toContain('svg');
    expect(await show(false)).not.toContain(SAID);
    expect(logged).toHaveBeenCalledWith(fault);
    vi.unstubAllGlobals();
  });
});

it('the thinnest air draws what there is of its jets', () => {
  const air = calculators.find(({ slug }) => slug === 'air-and-jet')!;
  const texts = {
    pressure: '40kPa',
    'pressure-is': 'here',
    'right-pressure': '110kPa',
    'right-pressure-is': 'here',
    'right-temperature': '-30',
    temperature: '0',
  };
  const evaluation = evaluate(air, texts, { lengths: 'mm' });
  const [sheet] = sheetsOf(drawn(air, { texts, lengths: 'mm', evaluation }));
  expect(pointsOf(shapesOf(sheet!, 'curve-main')[0]!).length).toBeGreaterThan(20);
  expect(shapesOf(sheet!, 'handle-dot')).toHaveLength(1);
});

describe('where there is nothing to draw', () => {
  it('the picture names the figure at fault, with a way to its field', () => {
    const calculator = calculators.find(({ slug }) => slug === 'hole-pattern')!;
    const set = { outline: 'lands', band: '6mm' };
    const { document } = parseHTML(renderToString(<Live {...{ calculator, set }} idPrefix="" />));
    const way = document.querySelector('.no-picture a')!;
    const field = document.querySelector(`[id="${way.getAttribute('href')!.slice(1)}"]`)!;
    expect(field.getAttribute('aria-invalid')).toBe('true');
    expect(document.querySelector(`label[for="${field.id}"]`)!.textContent!.toLowerCase()).toBe(
      way.textContent!.toLowerCase(),
    );
  });
});
