import { parseHTML } from 'linkedom';
import type { FunctionComponent } from 'preact';
import { render } from 'preact-render-to-string';
import { expect, it } from 'vitest';
import { demoBarrel, demoEngine, demoTop } from '../../calculators/demo-engine.ts';
import CoilPolarity from '../../content/drawings/CoilPolarity.tsx';
import DegreeNearTop from '../../content/drawings/DegreeNearTop.tsx';
import PortsUnrolled from '../../content/drawings/PortsUnrolled.tsx';
import TwoDiscScales from '../../content/drawings/TwoDiscScales.tsx';

const drawn = (Drawing: FunctionComponent) =>
  parseHTML(`<body>${render(<Drawing />)}</body>`).document;

const texts = (Drawing: FunctionComponent, chosen = 'text'): string[] =>
  [...drawn(Drawing).querySelectorAll(chosen)].map((text) => text.textContent.trim());

/** The upright places of the level lines of a path. */
const levels = (path: Element): number[] =>
  [...path.getAttribute('d')!.matchAll(/M\S+ (\S+?)H/g)].map(([, y]) => Number(y));

it('the coil’s terminal of the earthed pole’s sign goes to the points', () => {
  expect(texts(CoilPolarity, '.axis-text').filter((words) => words.includes('earth'))).toEqual([
    'Negative earth: − to the points',
    'Positive earth: + to the points',
  ]);
  expect(texts(CoilPolarity, '.sign-points')).toEqual(['−', '+']);
  expect(texts(CoilPolarity, '.sign-fed')).toEqual(['+', '−']);
});

it('a degree near the top is as wide as Pythagoras has it', () => {
  const r = demoEngine.stroke / 2;
  const height = (degrees: number): number => {
    const angle = (degrees * Math.PI) / 180;
    return r * Math.cos(angle) + Math.sqrt(demoEngine.rod ** 2 - (r * Math.sin(angle)) ** 2);
  };
  const [near, far] = [...drawn(DegreeNearTop).querySelectorAll('path.motion')].map((path) => {
    const [a, b] = levels(path) as [number, number];
    return a - b;
  }) as [number, number];
  expect(far / near).toBeCloseTo((height(19) - height(20)) / (height(4) - height(5)), 1);
});

it('the crown’s edge of the wall rolled out lies level with the exhaust’s', () => {
  const sheet = drawn(PortsUnrolled);
  const deck = levels(sheet.querySelector('path.edge')!)[0]!;
  const crown = levels(sheet.querySelector('path.crown')!)[0]!;
  expect((crown - deck) / 2).toBeCloseTo(demoBarrel.exhaust, 6);
});

it('both discs show the same two readings, each in its own count', () => {
  const readings = texts(TwoDiscScales, '.axis-text').filter((words) => words.includes(':'));
  expect(readings).toEqual([
    `before: ${demoTop.before}`,
    `after: ${demoTop.after}`,
    `before: ${360 - demoTop.before}`,
    `after: ${demoTop.after}`,
  ]);
});
