import { existsSync, globSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { figureKeys, sheetFigures } from '../../calculators/sheet/figures.ts';
import { order, steps } from '../../calculators/sheet/steps.ts';
import { checklist } from '../../content/first-start/checklist.ts';
import { symptoms } from '../../content/faults/symptoms.ts';
import { runaway } from '../../content/first-start/runaway.ts';
import { signGroups } from '../../content/first-start/signs.ts';

const hasCalculator = (slug: string): boolean =>
  globSync(`calculators/*/${slug}/calculator.tsx`).length === 1;
const hasArticle = (slug: string): boolean => existsSync(`content/articles/${slug}.mdx`);

describe('what a step leads to is there', () => {
  it.each(order)('%s', (id) => {
    const { calculators, articles } = steps[id];
    expect(calculators.length + articles.length, 'something behind it').toBeGreaterThan(0);
    expect(steps[id].calculators.filter((slug) => !hasCalculator(slug))).toEqual([]);
    expect(steps[id].articles.filter((slug) => !hasArticle(slug))).toEqual([]);
  });
});

describe('the first start page warns of what can hurt', () => {
  const all = JSON.stringify([checklist, signGroups, runaway]).toLowerCase();

  it.each([
    'carbon monoxide',
    'petrol vapour',
    'extinguisher',
    'outdoors',
    'ear protection',
    'runs away',
    'kick-back',
    'high voltage',
    'hot',
    'never water',
  ])('%s', (danger) => {
    expect(all).toContain(danger);
  });
});

describe('one truth each, in the words of the sheet and of the first start', () => {
  const pieces: readonly (readonly [string, string])[] = [
    ...order.map((id) => [`step ${id}`, JSON.stringify(steps[id])] as const),
    ...figureKeys.map((key) => [`figure ${key}`, JSON.stringify(sheetFigures[key])] as const),
    ['list', JSON.stringify(checklist)],
    ['faults', JSON.stringify(symptoms)],
    ['signs', JSON.stringify(signGroups)],
    ['runaway', JSON.stringify(runaway)],
  ];

  it.each([
    ['the clutch is pulled or let out, never in', /clutch in\b/i],
    ['a spark stops, it does not go', /spark goes\b/i],
    ['weak means lean, and not short of power', /hot and weak|weak spark|runs weak and/i],
    ['no glove or rag closes an inlet', /(?:glove|rag)[^.]{0,30} closes/i],
    ['no colder plug for a first start', /or colder\b/i],
    ['no steel wire or push in a jet', /pushed by hand/i],
    ['the oil never first', /oil first/i],
  ])('%s', (_, wrong) => {
    for (const [where, text] of pieces) expect(text, where).not.toMatch(wrong);
  });

  it.each([
    ['weak (lean', ['list', 'faults', 'signs', 'step leak', 'step fuel']],
    ['one that is oiled by oil mixed into its petrol', ['list', 'step fuel']],
    ['pull the clutch lever (the drive is free)', ['list', 'runaway', 'step stop', 'faults']],
    ['let the clutch lever out', ['list', 'runaway', 'step stop']],
    ['flat rigid board', ['list', 'runaway', 'step stop']],
    ['and away from the', ['list', 'step plug', 'step stop']],
    ['several hundred volts', ['list', 'faults', 'step timing']],
    ['A strobe makes', ['list', 'step timing']],
    ['Take the plugs out', ['list', 'step start']],
    ['crankcase', ['list', 'faults', 'step oil']],
    ['undo', ['step top', 'step gap']],
    ['suction', ['step leak', 'step suction', 'faults']],
    ['protective film', ['step gap', 'faults']],
    ['500 V', ['step insulation', 'step condenser', 'faults']],
    ['1000 V', ['step condenser', 'step insulation']],
    ['window', ['step gap']],
    ['White crust', ['step clean']],
    ['by mouth', ['step jets', 'step clean']],
    ['by its own weight', ['step jets', 'step pilot', 'figure jet']],
    ['20 °C', ['step coil', 'figure resistance']],
    ['Half the petrol', ['step fuel']],
  ])('“%s” stands where it is needed', (words, places) => {
    for (const place of places) {
      expect(pieces.find(([where]) => where === place)?.[1].toLowerCase(), place).toContain(
        words.toLowerCase(),
      );
    }
  });

  it.each([
    'squish',
    'piston-clearance',
    'ring-gap',
    'gap',
    'plug-gap',
    'leak-drop',
    'height',
    'air-screw',
    'idle-lift',
    'shaft-run-out',
    'end-float',
    'side-play',
    'reed-gap',
    'insulation',
    'plate-run-out',
    'feed-drop',
    'condenser',
    'least-play',
    'cutaway-tolerance',
    'compression-tolerance',
  ] as const)('%s can be filled without a manual', (key) => {
    expect(sheetFigures[key].help).toMatch(/No manual: .*\d/);
    expect(sheetFigures[key].help).toContain('common practice');
  });
});
