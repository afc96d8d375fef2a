import { describe, expect, it } from 'vitest';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { setEntry } from '../../calculators/sheet/set-entry.ts';
import { setFigure } from '../../calculators/sheet/set-figure.ts';
import { newEngine } from '../../calculators/sheet/model.ts';
import { order, steps } from '../../calculators/sheet/steps.ts';
import { figured } from '../sheet/job.ts';
import { symptoms } from '../../content/faults/symptoms.ts';
import { actionsOf } from '../../content/faults/types.ts';
import { contradiction, ownLines } from '../../site/faults/own-lines.ts';

const demo = demoSheet();
const empty = newEngine('e-1', 'New');

describe('what an answer of the fault finder says of the reader’s own engine', () => {
  it.each([
    ['insulation', [], /^Prove the insulation of each set \(at least 1 MΩ\): 1\) 200 MΩ/],
    ['leak', [], /^Test crankcase and cylinder under pressure: at most 3 kPa$/],
    ['wiring', ['volts'], /^Prove the wiring: at most 0\.5 V, Battery: 12 V$/],
    ['reeds', [], /^Try the reeds: not on this engine, no reeds are entered$/],
    ['polarity', [], /^Prove the polarity of each coil: − of each coil to its points$/],
  ] as const)('%s', (step, keys, words) => {
    expect(ownLines(demo, step, keys, 'mm').join(', ')).toMatch(words);
  });

  it('is nothing of a figure that the sheet has not, whatever the kind of limit', () => {
    const judged = order.filter((id) => steps[id].reading?.target && id !== 'reeds');
    for (const id of judged) expect(ownLines(empty, id, [], 'mm'), id).toEqual([]);
  });

  describe('against an answer that its own readings do not bear out', () => {
    const timed = (...entries: number[]) =>
      entries.reduce(
        (so, entry, i) => setEntry(so, 'timing', 'found', i, entry),
        setFigure({ ...newEngine('e-1', 'Twin'), figures: figured().figures }, 'cylinders', 2),
      );
    it.each([
      ['early', [2.2, 2], / none is early\. .* read it again/],
      ['late', [2.2, 2], undefined],
      ['late', [2.8, 2.2], /none is late/],
      ['early', [2.8, 2.2], undefined],
      ['out', [2.2, 2.2], /all are within their limits/],
      ['out', [2.8, 2.2], undefined],
      // One cylinder that was not read may be the early one.
      ['early', [2.2], undefined],
      [undefined, [2.2, 2.2], undefined],
    ] as const)('%s, of %j', (measured, entries, words) => {
      const said = contradiction(timed(...entries), 'timing', measured);
      if (words === undefined) expect(said).toBeUndefined();
      else expect(said).toMatch(words);
    });

    it('every cause says what its readings must show, and only where they do', () => {
      const told = /\b(early|late)$/;
      for (const { id, cause, measured, step } of symptoms.flatMap(actionsOf)) {
        if (measured === undefined) continue;
        expect(steps[step!].reading, id).toBeDefined();
        // Of all that is read only a moment can be early or late.
        if (measured !== 'out') expect(step, id).toBe('timing');
        const way = told.exec(cause)?.[1];
        expect(measured === 'out' || cause.includes(measured), cause).toBe(true);
        if (way !== undefined && !cause.includes(' or ')) expect(measured, cause).toBe(way);
      }
    });
  });

  it('has something to say of most answers once the sheet is filled', () => {
    const actions = symptoms.flatMap(actionsOf).filter(({ step }) => step !== undefined);
    const silent = actions.filter(
      ({ step, figures = [] }) => ownLines(demo, step!, figures, 'mm').length === 0,
    );
    expect(silent.length / actions.length).toBeLessThan(0.2);
  });
});
