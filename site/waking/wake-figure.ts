import { h } from 'preact';
import type { Texts } from '../../calculators/frame/evaluate.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import { FigureInText } from '../figures/FigureInText.tsx';
import { answerWhenTouched } from './until-touched.ts';

/** Makes a figure of an article answer. */
export const ready = (
  place: HTMLElement,
  calculator: AnyCalculator,
  kept: Texts | undefined,
): void =>
  answerWhenTouched(place, {
    calculator,
    kept,
    demonstration: true,
    stirred: false,
    differs: () => place.dataset.wanted !== undefined,
    draw: (waking) => {
      const { inputs, results } = place.dataset;
      return h(FigureInText, {
        ...waking,
        inputs: inputs?.split(' '),
        results: results?.split(' '),
        place,
      });
    },
  });
