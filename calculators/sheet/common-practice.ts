import { withUnit } from '../frame/text/format.ts';
import { sayNumber } from '../maths/numeric/rounding.ts';
import { sheetFigures, type FigureKey } from './figures.ts';
import type { Engine } from './model.ts';

interface Range {
  readonly least?: number;
  readonly most?: number;
}

/** Between what figures lie where no maker gives them, as the help of each says: common practice, in home units. */
const PRACTICE: Partial<Record<FigureKey, Range>> = {
  gap: { least: 0.3, most: 0.4 },
  'plug-gap': { least: 0.4, most: 0.6 },
  condenser: { least: 0.15, most: 0.3 },
  'feed-drop': { most: 0.5 },
  insulation: { least: 1 },
  'leak-drop': { most: 7 },
  'reed-gap': { most: 0.2 },
  squish: { least: 0.8, most: 1.2 },
  'shaft-run-out': { most: 0.03 },
  'plate-run-out': { most: 0.05 },
  'end-float': { most: 0.3 },
  'side-play': { least: 0.2, most: 0.5 },
  'least-play': { least: 1 },
  ratio: { least: 16, most: 50 },
};

/** So many times the most of it, or so small a part of the least, is more likely a slip than a maker's figure. */
const SLIP = 2;

/** What speaks against a figure that is far from common practice; nothing of any other. */
export function farFromPractice(figures: Engine['figures'], key: FigureKey): string | undefined {
  const value = figures[key];
  const range = PRACTICE[key];
  if (value === undefined || range === undefined) return undefined;
  const { least = 0, most = Infinity } = range;
  if (value * SLIP >= least && value <= most * SLIP) return undefined;
  const { label, unit } = sheetFigures[key];
  const say = (figure: number): string => withUnit(sayNumber(figure), unit);
  const practice =
    range.most === undefined
      ? `${say(least)} or more`
      : range.least === undefined
        ? `${say(most)} at most`
        : `${say(least)} to ${say(most)}`;
  return `“${label}” of ${say(value)} is far from common practice, which is ${practice}: check the figure and its unit before anything is judged by it.`;
}
