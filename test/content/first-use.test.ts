import { describe, expect, it } from 'vitest';
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
  ].map((name) => name.toLowerCase()),
);

/** The terms of which a name stands in the text before the link to the glossary. */
function beforeLink(text: string): string[] {
  const words = proseWithTerms(text);
  return glossary
    .filter(({ id, names }) => {
      const link = words.indexOf(`⟦${id} `);
      if (link < 0) return false;
      const before = words.slice(0, link).replace(/⟦[^⟧]*⟧/g, ' ');
      return names.some(
        (name) =>
          (name.includes(' ') || unmistakable.has(name.toLowerCase())) &&
          new RegExp(`\\b${name}s?\\b`, 'i').test(before),
      );
    })
    .map(({ id }) => id);
}

const stages = ['position', 'plate', 'points'];
const taught = articles.filter(({ text }) =>
  stages.includes(/^stage: (.+)$/m.exec(text)?.[1] ?? ''),
);

describe('the articles of piston, plate and points', () => {
  it.each(taught)('$slug links a term where it first stands', ({ text }) => {
    expect(beforeLink(text)).toEqual([]);
  });
});

it('sees a term that is used before its link', () => {
  expect(taught.length).toBeGreaterThan(7);
  expect(
    beforeLink('A feeler gauge drags. <Term id="feeler-gauge">Feeler gauges</Term> lie.'),
  ).toEqual(['feeler-gauge']);
  expect(beforeLink('A <Term id="feeler-gauge">feeler gauge</Term> drags.')).toEqual([]);
  expect(beforeLink('The rotor. <Term id="rotor">Rotor</Term>.')).toEqual(['rotor']);
});
