import { describe, expect, it } from 'vitest';
import { judge } from '../../calculators/sheet/judge.ts';
import { setEntry } from '../../calculators/sheet/set-entry.ts';
import { order, steps, type StepId } from '../../calculators/sheet/steps.ts';
import { figured } from './job.ts';

/** What a reading asks for that is above its figure, and one below it; by hand, from what each does. */
const asked: Partial<Record<StepId, readonly [above: RegExp | 'pass', below: RegExp | 'pass']>> = {
  'run-out': [/^Have the crank pressed true/, 'pass'],
  'end-float': [/^Fit thicker shims/, /^Fit thinner shims/],
  'rod-play': [/thicker washers.* too wide/, /webs pressed further apart.* too narrow/],
  clearance: [/^Fit a larger piston.* loose/, /^Have the bore honed.* tight/],
  'ring-gap': [/^Fit another ring.* wide/, /^File one end/],
  squish: [/^Use a thinner head gasket/, /^Use a thicker head gasket/],
  'head-volume': [/too large/, /too small/],
  exhaust: [/late: raise the barrel/, /early: lower the barrel/],
  inlet: [/It is early by/, /^It opens late/],
  reeds: [/petals/, 'pass'],
  leak: [/^Find the leak.* soapy water/, 'pass'],
  suction: [/^Find the leak.* lips of the seals/, 'pass'],
  insulation: ['pass', /^Dry and clean the set/],
  'plate-fit': [/runs out by/, 'pass'],
  condenser: [/high by/, /low by/],
  coil: [/still above it.* high by/, /still below it has shorted turns.* low by/],
  gap: [/^Close the gap, which makes it fire later/, /^Open the gap, which makes it fire earlier/],
  pilot: [/larger by/, /smaller by/],
  float: [/height shrinks/, /height grows/],
  jets: [/larger by/, /smaller by/],
  cutaway: [/less cutaway, which is richer/, /more cutaway, which is weaker/],
  clip: [/up the needle, which is leaner/, /down the needle, which is richer/],
  cables: ['pass', /^Turn its adjuster in/],
  plug: [/^Close the gap/, /^Open the gap/],
  wiring: [/the one that loses most/, 'pass'],
};
/** What is judged against other readings, or by a piston: each has tests of its own. */
const others = ['top', 'plate', 'timing', 'strip', 'slides', 'compression'];

const engine = figured({
  cylinders: 1,
  reeds: 4,
  'reed-gap': 0.2,
  'inlet-opens': 75,
  'inlet-tolerance': 1,
});

it('is told for every step that is judged by a figure', () => {
  const judged = order.filter((id) => steps[id].reading && !others.includes(id));
  expect(Object.keys(asked).sort()).toEqual([...judged].sort());
});

describe.each(Object.entries(asked))('%s', (key, [above, below]) => {
  const id = key as StepId;
  const { target, tolerance, min } = steps[id].reading!;
  const figure = engine.figures[target!]!;
  const off = tolerance === undefined ? figure / 2 : 2 * engine.figures[tolerance]! || 1;
  it.each([
    ['above', above, figure + off],
    ['below', below, Math.max(min, figure - off)],
  ] as const)('%s its figure', (_, words, reading) => {
    const [row] = judge(setEntry(engine, id, 'found', 0, reading), id, 'mm').rows;
    if (words === 'pass') expect(row!.result).toBe('pass');
    else expect(row!.words).toMatch(words);
  });
});
