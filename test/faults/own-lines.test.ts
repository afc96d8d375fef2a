import { describe, expect, it } from 'vitest';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { newEngine } from '../../calculators/sheet/model.ts';
import { order, steps } from '../../calculators/sheet/steps.ts';
import { symptoms } from '../../content/faults/symptoms.ts';
import { actionsOf } from '../../content/faults/types.ts';
import { ownLines } from '../../site/faults/own-lines.ts';

const demo = demoSheet();
const empty = newEngine('e-1', 'New');

describe('what an answer of the fault finder says of the reader’s own engine', () => {
  it.each([
    ['insulation', [], /^Prove the insulation of each set \(at least 1 MΩ\): 1\) 200 MΩ/],
    ['leak', [], /^Test crankcase and cylinder under pressure: at most 3 kPa$/],
    ['wiring', ['volts'], /^Prove the wiring: at most 0\.5 V, Battery: 12 V$/],
    ['reeds', [], /^Try the reeds: not on this engine, no reeds are entered$/],
    ['polarity', [], /^$/],
  ] as const)('%s', (step, keys, words) => {
    expect(ownLines(demo, step, keys, 'mm').join(', ')).toMatch(words);
  });

  it('is nothing of a figure that the sheet has not, whatever the kind of limit', () => {
    const judged = order.filter((id) => steps[id].reading?.target && id !== 'reeds');
    for (const id of judged) expect(ownLines(empty, id, [], 'mm'), id).toEqual([]);
  });

  it('has something to say of most answers once the sheet is filled', () => {
    const actions = symptoms.flatMap(actionsOf).filter(({ step }) => step !== undefined);
    const silent = actions.filter(
      ({ step, figures = [] }) => ownLines(demo, step!, figures, 'mm').length === 0,
    );
    expect(silent.length / actions.length).toBeLessThan(0.2);
  });
});
