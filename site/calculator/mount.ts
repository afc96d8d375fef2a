import { h, hydrate } from 'preact';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import type { Texts } from '../../calculators/frame/evaluate.ts';
import { Live } from './Live.tsx';
import { keptWork } from '../offline/kept-work.ts';
import { typedBefore } from './typed-before.ts';

const loaders = import.meta.glob<{ default: AnyCalculator }>('../../calculators/*/calculator.tsx');

/** Brings every calculator on the page to life; each one's code is fetched on its own. */
async function mount(place: HTMLElement, kept: Texts | undefined): Promise<void> {
  const { calculator: slug, set, prefix = '', owns } = place.dataset;
  const load = loaders[`../../calculators/${slug}/calculator.tsx`];
  if (!load) throw new Error(`No calculator named ${slug}`);
  const { default: calculator } = await load();
  hydrate(
    h(Live, {
      calculator,
      idPrefix: prefix,
      ownsAddress: owns === 'true',
      typed: { ...kept, ...typedBefore(place, prefix) },
      ...(set === undefined ? {} : { set: JSON.parse(set) as Texts }),
    }),
    place,
  );
  place.dataset.ready = 'true';
}

const kept = keptWork();
document
  .querySelectorAll<HTMLElement>('[data-calculator]')
  .forEach((place, index) => void mount(place, kept[index]));
