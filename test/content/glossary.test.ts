import { expect, it } from 'vitest';
import { glossary } from './prose.ts';

it('refers from term to term that is there, and to none from itself', () => {
  const ids = glossary.map(({ id }) => id);
  const lost = glossary.flatMap(({ id, see }) =>
    see.filter((other) => other === id || !ids.includes(other)).map((other) => `${id}: ${other}`),
  );
  expect(lost).toEqual([]);
  expect(glossary.flatMap(({ see }) => see).length).toBeGreaterThan(100);
});

it('has each term and each name of one once', () => {
  const names = glossary.flatMap(({ id, names }) => [...new Set([id, ...names].map(lower))]);
  expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([]);
});

function lower(name: string): string {
  return name.toLowerCase().replace(/[- ]+/g, ' ');
}
