import { readFileSync } from 'node:fs';
import { Path2D, createCanvas } from '@napi-rs/canvas';
import { describe, expect, it } from 'vitest';
import { evaluate, type Texts } from '../../calculators/frame/evaluate.ts';
import portTiming from '../../calculators/geometry/port-timing/calculator.tsx';
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

/** The patch of a port in the ring, from its middle. */
const patchOf = (html: string, kind: string): Path2D =>
  new Path2D(
    new RegExp(`<path class="port port-${kind} [^"]*" d="([^"A]*A[^"]+)"`).exec(html)![1]!,
  );

describe('exhaust and inlet in the ring hide nothing of each other', () => {
  const context = createCanvas(1, 1).getContext('2d');
  it.each<[string, Texts]>([
    ['by the skirt', {}],
    ['130° before to 55° after', { inlet: 'disc', 'disc-opens': '130', 'disc-closes': '55' }],
    ['150° before to 70° after', { inlet: 'disc', 'disc-opens': '150', 'disc-closes': '70' }],
    ['70° before to 120° after', { inlet: 'disc', 'disc-opens': '70', 'disc-closes': '120' }],
  ])('%s', (_, texts) => {
    const evaluation = evaluate(portTiming, texts, { lengths: 'mm' });
    expect(evaluation.problems).toEqual([]);
    const html = drawn(portTiming, { texts, lengths: 'mm', evaluation });
    const [exhaust, inlet] = [patchOf(html, 'exhaust'), patchOf(html, 'inlet')];
    const seen = new Map<Path2D, Set<number>>([
      [exhaust, new Set()],
      [inlet, new Set()],
    ]);
    for (let angle = 0; angle < 360; angle += 1) {
      for (let radius = 90; radius < 125; radius += 0.5) {
        const [x, y] = [
          radius * Math.sin((angle * Math.PI) / 180),
          -radius * Math.cos((angle * Math.PI) / 180),
        ];
        const on = [exhaust, inlet].filter((patch) => context.isPointInPath(patch, x, y));
        expect(on.length, `${angle}° at ${radius}`).toBeLessThan(2);
        for (const patch of on) seen.get(patch)!.add(angle);
      }
    }
    const { results } = evaluation;
    const opens = (results.opens as number[])[0]!;
    const closes = (results.closes as number[])[0]!;
    expect(Math.abs(seen.get(exhaust)!.size - (closes - opens))).toBeLessThan(1.5);
    const turned = (results['inlet-opens'] as number) + (results['inlet-closes'] as number);
    expect(Math.abs(seen.get(inlet)!.size - turned)).toBeLessThan(1.5);
  });
});
