import { expect, it } from 'vitest';
import { articles, glossary, proseWithTerms } from './prose.ts';

/**
 * Names of one word that mean nothing else in these articles. The others ("set", "lift", "float",
 * "gap") are plain English as well.
 */
const unmistakable = new Set(
  [
    'thou',
    'rotor',
    'parallax',
    'condenser',
    'heel',
    'lobe',
    'swarf',
    'strobe',
    'backlash',
    'inductance',
    'magneto',
    'dwell',
    'crankshaft',
    'crankcase',
    'carburettor',
    'burette',
    'cutaway',
    'web',
  ].map((name) => name.toLowerCase()),
);

/** What reads like a term and is none where it stands: the dwell at the top, a foot's heels. */
const other: Readonly<Record<string, readonly string[]>> = {
  'finding-top-dead-centre': ['dwell-angle'],
  'first-fire': ['heel'],
};

/** The terms of which a name stands in the text before the link to the glossary, or without one. */
function beforeLink(text: string, slug = ''): string[] {
  const words = proseWithTerms(text);
  return glossary
    .filter(({ id, names }) => {
      if (other[slug]?.includes(id)) return false;
      const link = words.indexOf(`⟦${id} `);
      const before = words.slice(0, link < 0 ? undefined : link).replace(/⟦[^⟧]*⟧/g, ' ');
      return names.some(
        (name) =>
          (name.includes(' ') || unmistakable.has(name.toLowerCase())) &&
          new RegExp(`\\b${name}s?\\b`, 'i').test(before),
      );
    })
    .map(({ id }) => id);
}

it.each(articles)('$slug links a term where it first stands', ({ slug, text }) => {
  expect(beforeLink(text, slug)).toEqual([]);
});

it('sees a term that is used before its link', () => {
  expect(articles.length).toBeGreaterThan(20);
  expect(
    beforeLink('A feeler gauge drags. <Term id="feeler-gauge">Feeler gauges</Term> lie.'),
  ).toEqual(['feeler-gauge']);
  expect(beforeLink('A <Term id="feeler-gauge">feeler gauge</Term> drags.')).toEqual([]);
  expect(beforeLink('The rotor turns.')).toEqual(['rotor']);
  expect(beforeLink('The rotor. <Term id="rotor">Rotor</Term>.')).toEqual(['rotor']);
});
