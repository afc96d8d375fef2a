import { expect, it } from 'vitest';
import { isUnread } from '../../calculators/sheet/box-places.ts';
import { readNumber } from '../../calculators/sheet/read-number.ts';
import { setEntry } from '../../calculators/sheet/set-entry.ts';
import { enter } from '../../calculators/sheet/enter.ts';
import { lastGoodWords } from '../../calculators/sheet/log-words.ts';
import { judge, saidOfAll } from '../../calculators/sheet/judge.ts';
import { entriesOf, type Engine } from '../../calculators/sheet/model.ts';
import { figured } from './job.ts';

it('a step knows of a refused text in either box of a cylinder, and what stands there', () => {
  const read = setEntry(figured({ cylinders: 2 }), 'timing', 'found', 0, 2.27);
  expect(isUnread(read, 'timing')).toBe(false);
  for (const moment of ['found', 'left'] as const) {
    const box = { kind: 'reading', step: 'timing', moment, index: 0 } as const;
    const refused = enter(read, box, '2..9', { lengths: 'mm' });
    expect(isUnread(refused, 'timing')).toBe(true);
    expect(isUnread(refused, 'timing', 0)).toBe(true);
    expect(isUnread(refused, 'timing', 1)).toBe(false);
    expect(isUnread(refused, 'gap')).toBe(false);
  }
  const figure = enter(read, { kind: 'figure', key: 'gap' }, '2..9', { lengths: 'mm' });
  expect(isUnread(figure, 'gap')).toBe(false);
  const [held = null] = entriesOf(read, 'timing');
  expect(lastGoodWords('timing', held, 'mm')).toBe('The last good reading, 2.27 mm, stands.');
  expect(lastGoodWords('timing', null, 'mm')).toBe('');
});

it('a tolerance typed per cent is told what it comes to, and of what', () => {
  const box = { kind: 'figure', key: 'resistance-tolerance' } as const;
  const problem = (engine: Engine, text: string) =>
    readNumber(engine, box, text, { lengths: 'mm' }).problem;
  const given = figured({ cylinders: 2, resistance: 3.4 });
  // A tenth of 3.4 ohm.
  expect(problem(given, '10%')).toMatch(/10%.* of 3\.4 Ω is 0\.34 Ω\. Type “0\.34 Ω”/u);
  const { resistance: _, ...figures } = given.figures;
  expect(problem({ ...given, figures }, '20 %')).toMatch(/of what\?/);
});

it('a bare figure out of range is told the unit in which it would be taken: nF as well as thou', () => {
  const box = { kind: 'figure', key: 'condenser' } as const;
  const { problem } = readNumber(figured({ cylinders: 2 }), box, '220', { lengths: 'mm' });
  expect(problem?.match(/type “220 nF”/g)).toHaveLength(1);
});

it('what an instrument reads beyond its scale is told to be written as the end of the scale', () => {
  const problem = (step: 'insulation' | 'gap', text: string) =>
    readNumber(
      figured({ cylinders: 2 }),
      { kind: 'reading', step, moment: 'found', index: 0 },
      text,
      { lengths: 'mm' },
    ).problem;
  for (const text of ['inf', '>1000', '∞', 'OL']) {
    expect(problem('insulation', text)).toMatch(/the end of that scale: type that figure\.$/);
  }
  expect(problem('gap', '>1')).toMatch(/Type a figure such as/);
});

it('while one box is refused the others are told whom they wait for, and nothing of what was read there', () => {
  const box = { kind: 'reading', step: 'compression', moment: 'found', index: 0 } as const;
  const beside = setEntry(figured({ cylinders: 2 }), 'compression', 'found', 1, 820);
  const refused = enter(beside, box, '8..2', { lengths: 'mm' });
  expect(saidOfAll(judge(refused, 'compression', 'mm'), true)).toEqual([
    'These readings are judged against one another, and there is none yet of cylinder 1.',
  ]);
  const judged = {
    rows: [{ result: 'pass', words: '' }],
    whole: ['Turn it.'],
    missing: [],
  } as const;
  expect(saidOfAll(judged, true)).toEqual([]);
  const out = { ...judged, rows: [{ result: 'fail', words: '' }] } as const;
  expect(saidOfAll(out, true)).toEqual([]);
  expect(saidOfAll(judged, false)).toEqual(['Turn it.']);
});
