import { h } from 'preact';
import type { Texts } from '../../calculators/frame/evaluate.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import { addressRead } from '../opening/answering.ts';
import { keepsLast } from '../opening/keeps-last.ts';
import { keepsSheet } from '../opening/keeps-sheet.ts';
import { Live } from '../calculator/Live.tsx';
import { answerWhenTouched } from './until-touched.ts';

/** Makes the page's own calculator answer, which keeps its state in the address. */
export const ready = (
  place: HTMLElement,
  calculator: AnyCalculator,
  kept: Texts | undefined,
  stirred: boolean,
): void =>
  answerWhenTouched(place, {
    calculator,
    kept,
    demonstration: false,
    stirred,
    differs: () => location.search !== '' || keepsSheet() || keepsLast(calculator.slug),
    draw: (waking) => h(Live, waking),
    awake: addressRead,
  });
