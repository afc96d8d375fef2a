import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { calculators } from '../../site/all-calculators.ts';
import { drawn } from './support/draw.tsx';
import { statesOf } from './support/states.ts';

const KINDS = ['exhaust', 'transfer', 'inlet', 'blowdown'] as const;
const css = readFileSync('site/styles/picture.css', 'utf8');
const rule = (name: string): string =>
  new RegExp(`\\n\\.${name} \\{([^}]*)\\}`).exec(css)?.[1] ?? '';

describe('each kind of port has one look of its own', () => {
  it('told apart by its line without any colour', () => {
    const dashes = KINDS.map(
      (kind) => /stroke-dasharray: ([^;]+);/.exec(rule(`port-line-${kind}`))?.[1] ?? 'unbroken',
    );
    expect(new Set(dashes).size).toBe(KINDS.length);
  });

  it('and by its patch', () => {
    const fills = KINDS.map((kind) => rule(`port-${kind}`));
    expect(fills.every((fill) => fill.includes('fill:'))).toBe(true);
    expect(new Set(fills).size).toBe(KINDS.length);
  });

  it('the same in every picture, in the key as in the field', () => {
    const html = calculators
      .filter(({ slug }) => ['port-timing', 'time-area'].includes(slug))
      .map((calculator) => drawn(calculator, statesOf(calculator, 0)[0]!))
      .join('');
    const keyed = [
      ...html.matchAll(/<(?:path|rect) class="([^"]*)"[^>]*>(?:<\/\w+>)?<text[^>]*>(\w+)/g),
    ].map(([, look, words]) => ({ look: look!, words: words! }));
    for (const kind of KINDS) {
      const named = keyed.filter(({ words }) => words.startsWith(kind));
      expect(named.length, kind).toBeGreaterThan(0);
      for (const { look } of named) expect(look).toContain(`port-line-${kind}`);
    }
    const looks = [...html.matchAll(/class="([^"]*\bport-line-(\w+)[^"]*)"/g)];
    expect(looks.length).toBeGreaterThan(20);
    for (const [, look, kind] of looks) {
      if (look!.includes('port-shut') || look!.includes('curve-port')) continue;
      expect(look).toContain(`port-${kind!} `);
    }
    // No port borrows the look of another line.
    expect(html).not.toMatch(/curve-(?:exhaust|other|thin|main)/);
  });
});
