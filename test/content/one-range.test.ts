import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { sheetFigures, type FigureKey } from '../../calculators/sheet/figures.ts';
import { steps, type StepId } from '../../calculators/sheet/steps.ts';
import * as causes from '../../content/faults/causes-ignition.ts';
import { FIT } from '../../calculators/geometry/fits.ts';

const read = (path: string): string =>
  readFileSync(new URL(`../../content/${path}`, import.meta.url), 'utf8');
const glossary = read('glossary.yaml');

/** What one place of the site says, without tags, and with one kind of space and of per cent. */
function said(place: string): string {
  const [kind, name] = place.split(' ') as [string, string];
  const text = {
    article: () => read(`articles/${name}.mdx`),
    figure: () => sheetFigures[name as FigureKey].help,
    step: () => JSON.stringify(steps[name as StepId]),
    cause: () => causes[name as keyof typeof causes].act,
    symptom: () => read(`faults/symptoms/${name}.ts`),
    term: () => new RegExp(`^${name}:\\n(?: .*\\n)+`, 'm').exec(glossary)![0],
  }[kind]!();
  return text
    .replace(/<[^>]*>/g, '')
    .replace(/\s+/g, ' ')
    .replace(/ ?%/g, ' per cent')
    .replace(/(\d\.\d)0(?= µF| to \d\.\d+ µF)/g, '$1')
    .toLowerCase();
}

/** What stands where no manual does: the words of the range, and every place that gives it. */
const ranges: readonly (readonly [what: string, range: string, ...places: string[]])[] = [
  ['points gap', '0.3 to 0.4 mm', 'article gap-dwell-and-timing', 'figure gap', 'term points-gap'],
  ['plug gap', '0.4 to 0.6 mm', 'article coils-and-condensers', 'figure plug-gap', 'term plug-gap'],
  ['condenser', '0.15 to 0.3 µF', 'article coils-and-condensers', 'figure condenser'],
  [
    'squish',
    '0.8 to 1.2 mm',
    'article squish-and-compression',
    'article proving-a-mixed-engine',
    'article clearances',
    'figure squish',
    'term squish',
  ],
  [
    'piston clearance',
    '1.0 to 1.5 thousandths of the bore',
    'article proving-a-mixed-engine',
    'article clearances',
    'figure piston-clearance',
    'term piston-clearance',
  ],
  [
    'ring gap',
    '0.3 to 0.5 per cent of the bore',
    'article proving-a-mixed-engine',
    'article clearances',
    'figure ring-gap',
    'term ring-gap',
  ],
  ['run-out', 'up to 0.03 mm', 'article proving-a-mixed-engine', 'figure shaft-run-out'],
  ['end float', '0.1 to 0.3 mm', 'article proving-a-mixed-engine', 'figure end-float'],
  ['side play', '0.2 to 0.5 mm', 'article proving-a-mixed-engine', 'figure side-play'],
  ['leak', 'less than 7 kPa (1 psi)', 'article proving-a-mixed-engine', 'figure leak-drop'],
  ['pressure', '40 kPa', 'article proving-a-mixed-engine', 'figure leak-drop', 'step leak'],
  ['most pressure', 'never more than 50 kPa (7 psi', 'article proving-a-mixed-engine', 'step leak'],
  ['fuel level', '2 to 6 mm below', 'article float-height-and-fuel-level', 'figure height'],
  [
    'air screw',
    '1 to 1.5',
    'article which-circuit-at-which-throttle',
    'article stripping-and-cleaning',
    'figure air-screw',
    'term air-screw',
  ],
  [
    'slide at idle',
    '0.5 to 1 mm',
    'article which-circuit-at-which-throttle',
    'article opening-all-slides-together',
    'figure idle-lift',
  ],
  [
    'contacts shut',
    'less than 0.2 V',
    'article how-the-points-make-the-spark',
    'cause contacts',
    'symptom poor-spark',
  ],
  ['bad earth', 'more than about 0.2 V', 'step wiring', 'cause earth', 'symptom poor-spark'],
  ['standing engine', 'two or three minutes', 'article opening-all-slides-together', 'step run'],
];

describe('where no manual is, every place gives one range', () => {
  it.each(ranges)('%s: %s', (_, range, ...places) => {
    for (const place of places) expect(said(place), place).toContain(range.toLowerCase());
  });

  it('and the calculator judges by it', () => {
    expect(`${FIT.least} to ${FIT.most}`).toBe('1 to 1.5');
  });
});
