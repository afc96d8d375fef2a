import type { ComponentChild } from 'preact';
import { figureKeys, sheetFigures } from '../../calculators/sheet/figures.ts';

/** A sentence in which each figure of the sheet that it names in quotation marks leads to its box. */
export const figureLinks = (sentence: string): ComponentChild[] =>
  sentence.split(/(“[^”]+”)/u).map((part) => {
    const key = figureKeys.find((each) => `“${sheetFigures[each].label}”` === part);
    return key ? <a href={`#figure-${key}`}>{part}</a> : part;
  });
