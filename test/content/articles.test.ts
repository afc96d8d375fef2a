import { describe, expect, it } from 'vitest';
import { articles, glossary, prose } from './prose.ts';

/**
 * The terms that a text uses and does not link. Only names of two words or more: "set", "lift" or
 * "float" mean other things as well.
 */
function unlinked(text: string): string[] {
  const words = prose(text);
  return glossary
    .filter(({ id }) => !text.includes(`<Term id="${id}"`))
    .filter(({ names }) =>
      names.some((name) => name.includes(' ') && new RegExp(`\\b${name}s?\\b`, 'i').test(words)),
    )
    .map(({ id }) => id);
}

describe.each(articles)('$slug', ({ text }) => {
  it('teaches with a live calculator, a worked example and the terms of the glossary', () => {
    expect(text).toContain('<Calculator ');
    expect(text).toContain('<Worked');
    expect(text).toContain('<Term ');
  });

  it('links every term of the trade that it uses to the glossary', () => {
    expect(unlinked(text)).toEqual([]);
  });

  it('ends with how to check it on the bench', () => {
    expect(text.trimEnd()).toMatch(/<\/OnTheBench>$/);
  });

  it('names its sources', () => {
    expect(text).toMatch(/^sources:\n {2}- /m);
  });
});

describe('no chapter stands alone', () => {
  const linked = (text: string): string[] =>
    [...text.matchAll(/[("]\/articles\/([a-z-]+)\//g)].map(([, slug]) => slug!);

  it.each(articles)('$slug is named by another, and names another', ({ slug, text }) => {
    const others = articles.filter((other) => other.slug !== slug);
    expect(others.some((other) => linked(other.text).includes(slug))).toBe(true);
    expect(linked(text).some((to) => to !== slug)).toBe(true);
  });
});

it('sees a term that is not linked', () => {
  expect(glossary.length).toBeGreaterThan(100);
  expect(unlinked('Lay a feeler gauge between them.')).toEqual(['feeler-gauge']);
  expect(unlinked('<Term id="feeler-gauge">Feeler gauges</Term> lie.')).toEqual([]);
});

/** What can hurt in the work that an article tells of; each has to be said in it. */
const dangers: readonly (readonly [article: string, ...said: RegExp[]])[] = [
  [
    'stripping-and-cleaning',
    /hydrofluoric acid or its salts/i,
    /never a flame on penetrating oil or on fuel/i,
    /vapour is heavier than air/i,
    /\*\*battery\.\*\* disconnect it/i,
    /safety data sheet/i,
    /gloves/i,
    /glasses/i,
    /never mix cleaners/i,
    /\*\*waste\.\*\*/i,
    /out of doors, or doors open/i,
    /every drilling proved clear/i,
    /calcium gluconate gel of 2\.5 per cent/i,
    /never by mouth/i,
    /keep the plunger cold/i,
    /begins to melt at \{ZINC_MELTS\}/i,
    /white crust on the casting/i,
  ],
  [
    'float-height-and-fuel-level',
    /no flame/i,
    /extinguisher/i,
    /vapour/i,
    /use a tube of \{tubes\.at\(-1\)\} mm bore or more/i,
    /do not kick it/i,
  ],
  ['which-circuit-at-which-throttle', /seizes/i, /weak never means short of power/i],
  [
    'needles-and-jets-by-area',
    /tap shut/i,
    /slide must fall shut/i,
    /a round pin cannot tell/i,
    /never push or turn it/i,
  ],
  ['air-weather-and-altitude', /maker's limits decide/i, /no flame/i],
  [
    'opening-all-slides-together',
    /runs away/i,
    /carbon monoxide/i,
    /never a hand, a glove or a rag/i,
  ],
  [
    'fuel-and-oil',
    /vapour is heavier than air/i,
    /never a drinking bottle/i,
    /do not kick, and do not push/i,
    /the petrol has washed the oil off/i,
  ],
  [
    'ports-by-the-degree',
    /eye protection/i,
    /swarf/i,
    /maker's/i,
    /measure squish and <Term id="head-volume">head volume<\/Term> again/i,
  ],
  [
    'squish-and-compression',
    /liquids for measuring burn/i,
    /maker's figure rules/i,
    /oil on bore, .*big end.* and .*main bearings.* before the first turn/i,
    /common practice for an old engine/i,
  ],
  [
    'proving-a-mixed-engine',
    /ring gap/i,
    /end float/i,
    /maker['’]s limits rule/i,
    /never use a workshop air line/i,
    /second way to stop/i,
    /oil before the first turn/i,
    /under pressure and under vacuum/i,
  ],
  [
    'first-fire',
    /a garage with its door open is not out of doors/i,
    /reach it without passing the engine/i,
    /a hand, a glove or a rag is no board/i,
    /stalls the engine by gear and brake is \*\*not\*\* there/i,
    /the third way and the last/i,
    /straightens a stiff leg/i,
    /do not reach across it/i,
    /ears and eyes covered/i,
  ],
  [
    'gaskets-and-tags',
    /asbestos/i,
    /never scrape them dry/i,
    /no iron where petrol is or was/i,
    /never hold it by hand/i,
    /never hammer it through/i,
    /it gives a shock/i,
  ],
  [
    'battery-to-plug',
    /battery disconnected/i,
    /rated for 1000 V/,
    /never turn the engine with a lead open to nothing/i,
    /pacemaker/i,
    /fuse sits next to the battery/i,
  ],
  [
    'crank-of-your-own',
    /parts under a press fly/i,
    /nut or bolt that holds/i,
    /fingers out of ports/i,
  ],
  ['clearances', /nothing is turned dry/i, /maker['’]s limits rule/i, /break with sharp ends/i],
];

it.each(dangers)('%s warns of what can hurt', (article, ...said) => {
  const { text } = articles.find(({ slug }) => slug === article)!;
  for (const words of said) expect(text).toMatch(words);
});
