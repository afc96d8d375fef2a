import { globSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { demoBarrel } from '../../calculators/geometry/barrel-inputs.ts';
import { demoEngine } from '../../calculators/position/engine-inputs.ts';
import { expansion, ZINC_MELTS } from '../../content/expansion.ts';

const folder = new URL('../../content/articles/', import.meta.url);
const articles = readdirSync(folder).filter((file) => file.endsWith('.mdx'));

/** What misleads or hurts wherever it stands, with what to say in its place. */
const misleading: readonly (readonly [words: RegExp, instead: string])[] = [
  [/\bclutch in\b|\blet the clutch (?:in|out)\b/i, 'the lever is pulled or let out'],
  [/(?<!never )(?<!never start a siphon )\bby mouth\b/i, 'a bulb or a syringe'],
  [/glove on a stick/i, 'a flat, rigid board'],
];

/** Hosts of sources that anybody can write, and documents that others have put up. */
const unsound = /https?:|www\.|forum|blog|scribd|docslib|issuu|wikipedia/i;

const bodyOf = (text: string): string => text.replace(/^---[\s\S]*?\n---/, '');
const sourcesOf = (text: string): string => /^sources:\n((?: {2}- .+\n)+)/m.exec(text)![1]!;
/** The words as typed: no code, no figures that are worked out. */
const typed = (text: string): string =>
  bodyOf(text)
    .replace(/^(?:import|export)[\s\S]*?\n\n/gm, ' ')
    .replace(/\{(?:[^{}]|\{[^{}]*\})*\}/g, ' ');

const demoLengths = [
  demoEngine.stroke,
  demoEngine.rod,
  demoBarrel.skirt,
  demoBarrel.exhaust,
  demoBarrel.transfer,
  demoBarrel.inlet,
];
const demoTyped = new RegExp(`\\b(?:${demoLengths.join('|').replaceAll('.', '\\.')})\\smm\\b`);

describe.each(articles)('%s', (file) => {
  const text = readFileSync(new URL(file, folder), 'utf8');

  it.each(misleading)('does not say %s', (words) => {
    expect(bodyOf(text)).not.toMatch(words);
  });

  it('stands on sources that can be held to', () => {
    expect(sourcesOf(text)).not.toMatch(unsound);
  });

  it('takes the demo engine’s figures from where they are kept', () => {
    expect(typed(text)).not.toMatch(demoTyped);
  });
});

it('sees each of them', () => {
  const bad = [
    'brake and let the clutch in',
    'Blow by mouth into it',
    'a leather glove on a stick',
  ];
  for (const [index, [words]] of misleading.entries()) expect(bad[index]).toMatch(words);
  expect('Never by mouth').not.toMatch(misleading[1]![0]);
  expect(`a stroke of ${demoEngine.stroke} mm`).toMatch(demoTyped);
  expect('see the forum at www.somewhere').toMatch(unsound);
});

it('says that soaking heat frees no plunger, and the figures agree', () => {
  const gained = (body: number, plunger: number): number => 20 * 60 * (body - plunger);
  expect(gained(expansion.zinc, expansion.brass)).toBeLessThan(0.01);
  expect(gained(expansion.zinc, 0)).toBeGreaterThan(3 * gained(expansion.zinc, expansion.brass));
  expect(gained(expansion.aluminium, expansion.zinc)).toBeLessThan(0);
  expect(ZINC_MELTS).toBeLessThan(385);
});

/** A per cent after a blank; one between two figures is the remainder of a division. */
const PARTED = /[\d}][ \u00a0]%(?! ?[\w(])|[\d}][ \u00a0]%(?= (?:of|is|to|and|on|in|less|more)\b)/u;

it.each(globSync('{calculators,content,site}/**/*.{ts,tsx,mdx,astro,yaml}'))(
  '%s writes a per cent close to its figure',
  (file) => {
    const parted = readFileSync(file, 'utf8')
      .split('\n')
      .filter((line) => PARTED.test(line));
    expect(parted).toEqual([]);
  },
);

it('knows a parted per cent from a division', () => {
  expect('Print at 100 %, not fitted').toMatch(PARTED);
  expect('about 2 % of the bore').toMatch(PARTED);
  expect('type “${short(share)} %”').toMatch(PARTED);
  expect('((turned % 360) + 360) % 360').not.toMatch(PARTED);
});
