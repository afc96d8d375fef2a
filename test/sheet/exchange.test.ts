import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { putBack } from '../../calculators/sheet/edit-log.ts';
import { readingOf } from '../../calculators/sheet/readings.ts';
import { setEntry } from '../../calculators/sheet/set-entry.ts';
import { exchange, exchangedWith } from '../../calculators/sheet/exchange.ts';
import { judge, lastAsked } from '../../calculators/sheet/judge.ts';
import { isReading } from '../../calculators/sheet/log-entry.ts';
import { progressOf } from '../../calculators/sheet/progress.ts';
import { order, steps } from '../../calculators/sheet/steps.ts';
import { writeDocument } from '../../calculators/sheet/validate.ts';
import { anyEngine } from './engines.ts';
import { figured } from './job.ts';
import { parseDocument } from './parse-document.ts';

const DAY = '2026-03-21';
const four = figured({ cylinders: 4 });
/** The squish of cylinder 2 written under 3, and mended there. */
const wrong = [
  ['found', 0, 1.4],
  ['found', 1, 1.4],
  ['found', 2, 1.9],
  ['left', 2, 1.4],
] as const;
const read = wrong.reduce(
  (so, [moment, i, value]) => setEntry(so, 'squish', moment, i, value, { on: DAY }),
  four,
);

describe('readings written one under the other', () => {
  it('are exchanged with their days, and what was asked for is told of the right one', () => {
    const right = exchange(read, ['squish'], [1, 2], DAY);
    expect(readingOf(right, 'squish')).toMatchObject({
      found: [1.4, 1.9, 1.4],
      left: [null, 1.4],
    });
    expect(lastAsked(read, 'squish', 'mm')?.sentences[0]).toMatch(/^Cylinder 3: /);
    expect(lastAsked(right, 'squish', 'mm')?.sentences[0]).toMatch(/^Cylinder 2: /);
    const at = right.log.filter(isReading).map(({ cylinder, value, on }) => [cylinder, value, on]);
    expect(at).toEqual([
      [1, 1.4, DAY],
      [3, 1.4, DAY],
      [2, 1.9, DAY],
      [2, 1.4, DAY],
    ]);
    expect(right.log.at(-1)).toMatchObject({
      kind: 'note',
      on: DAY,
      text: `Exchanged, since they were written one under the other: the readings of cylinder 2 and cylinder 3 at “${steps.squish.title}”.`,
    });
  });

  it('alter nothing of the engine: no other step is to be checked again for it', () => {
    const right = exchange(read, ['squish'], [1, 2], DAY);
    for (const id of order) {
      expect(progressOf(right)[id].because, id).toEqual(progressOf(read)[id].because);
    }
  });

  it('are put back', () => {
    const right = exchange(read, ['squish'], [1, 2], DAY);
    const back = putBack(right, read, right);
    expect([back.log, back.readings]).toEqual([read.log, read.readings]);
  });

  it('in every step that counts alike, and in no other', () => {
    const every = exchangedWith(four, 'squish', [1, 2]);
    expect(every).toContain('exhaust');
    expect(every).toContain('timing');
    for (const id of ['gap', 'end-float', 'coil', 'float'] as const) {
      expect(every).not.toContain(id);
    }
    // A set that fires two is a set; the pair of a step with fewer boxes is not all there.
    const paired = figured({ cylinders: 4, sets: 2 });
    expect(exchangedWith(paired, 'timing', [0, 1])).toContain('gap');
    expect(exchangedWith(paired, 'timing', [0, 1])).not.toContain('squish');
    expect(exchangedWith(paired, 'timing', [2, 3])).toEqual([]);
    const both = setEntry(read, 'exhaust', 'found', 1, 95, { on: DAY });
    const right = exchange(both, every, [1, 2], DAY);
    expect(readingOf(right, 'exhaust').found).toEqual([null, null, 95]);
    expect(judge(right, 'squish', 'mm').rows[1]!.result).toBe('pass');
    const note = right.log.at(-1);
    expect(note?.kind === 'note' ? note.text : '').toContain(`“${steps.exhaust.title}”.`);
  });

  it('where there are none, nothing is written', () => {
    expect(exchange(four, ['squish'], [1, 2], DAY)).toBe(four);
    expect(exchange(read, ['squish'], [1, 1], DAY)).toBe(read);
    expect(exchange(read, [], [1, 2], DAY)).toBe(read);
  });

  it('twice are as they were, on any engine, and a file holds it', () => {
    fc.assert(
      fc.property(anyEngine, fc.nat({ max: 3 }), fc.nat({ max: 3 }), (engine, one, other) => {
        const once = exchange(engine, ['squish', 'exhaust'], [one, other]);
        expect(parseDocument(writeDocument([once])).engines).toEqual([once]);
        const twice = exchange(once, ['squish', 'exhaust'], [one, other]);
        for (const id of ['squish', 'exhaust'] as const) {
          for (const i of [0, 1, 2, 3, 4, 5, 6, 7]) {
            for (const moment of ['found', 'left'] as const) {
              expect(readingOf(twice, id)[moment][i] ?? null).toBe(
                readingOf(engine, id)[moment][i] ?? null,
              );
            }
          }
        }
      }),
      { numRuns: 60 },
    );
  });
});
