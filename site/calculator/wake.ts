import { h, hydrate } from 'preact';
import type { Texts } from '../../calculators/frame/evaluate.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import { Live } from './Live.tsx';
import { typedBefore } from './typed-before.ts';

/** Takes a calculator that the server rendered into use. */
export function wake(place: HTMLElement, calculator: AnyCalculator, kept: Texts | undefined): void {
  const { set, prefix = '', owns } = place.dataset;
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
