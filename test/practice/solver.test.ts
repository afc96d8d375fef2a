import { describe, expect, it } from 'vitest';
import { reckon } from '../../calculators/practice/reckoning.ts';
import { crankTasks } from '../../calculators/practice/tasks.ts';
import type { Player } from './player.ts';
import { badReading, byHeights, byStop, carried, gapAlone, inOrder, timedFirst } from './solver.ts';

const thousand = Array.from({ length: 1000 }, (_, i) => i * 7 + 1);
const right = ({ engine, bench }: Player): boolean => reckon(engine, bench).right;

/** Hands for each task of the crank, by what they do. */
const hands = [
  ['gap and time one cylinder', (seed: number) => inOrder(seed, 'gap')],
  ['find the top by a stop', (seed: number) => byStop(seed, 'stop')],
  ['bend the pointer to the top', (seed: number) => byStop(seed, 'stop', 'pointer-zero')],
  ['bend one of two pointers', (seed: number) => byStop(seed, 'disc', 'pointer-zero')],
  ['carry a figure', carried],
  ['put a worn heel right by the gap alone', gapAlone],
  ['find the top by equal heights', byHeights],
  ['find the top on a disc off centre', (seed: number) => byStop(seed, 'disc')],
  ['time three from one plate', (seed: number) => inOrder(seed, 'plate')],
  ['bring a set drilled 1° out to the others', (seed: number) => inOrder(seed, 'spacing')],
] as const;

describe('hands that do everything right', () => {
  it.each(hands)('%s on a thousand engines', { timeout: 300_000 }, (_, play) => {
    expect(thousand.filter((seed) => !right(play(seed)))).toEqual([]);
  });

  it('play every task of the crank', () => {
    const played = [...hands.map(([, play]) => play(1)), badReading(1)[0]];
    expect([...new Set(played.map(({ engine }) => engine.task))].sort()).toEqual(
      [...crankTasks].sort(),
    );
  });

  it('name the bad reading on a thousand engines', { timeout: 300_000 }, () => {
    const missed = thousand.filter((seed) => {
      const [{ engine, bench }, named] = badReading(seed);
      return !reckon(engine, bench, named).right;
    });
    expect(missed).toEqual([]);
  });
});

describe('hands as careful, in the wrong order', () => {
  it.each([
    ['one cylinder', 'gap'],
    ['three from one plate', 'plate'],
  ] as const)(
    'fail on every one of a thousand engines, and are told why: %s',
    { timeout: 300_000 },
    (_, task) => {
      const passed = thousand.filter((seed) => {
        const { engine, bench } = timedFirst(seed, task);
        const reckoning = reckon(engine, bench);
        return reckoning.right || !reckoning.costs[0]!.say.includes('Gap first, then timing');
      });
      expect(passed).toEqual([]);
    },
  );
});
