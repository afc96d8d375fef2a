import { describe, expect, it } from 'vitest';
import { setEntry, withdraw } from '../../calculators/sheet/set-entry.ts';
import { engineFragment, engineFromFragment } from '../../calculators/sheet/link.ts';
import { isReading } from '../../calculators/sheet/log-entry.ts';
import { judge, lastAsked } from '../../calculators/sheet/judge.ts';
import type { Engine } from '../../calculators/sheet/model.ts';
import { progressOf } from '../../calculators/sheet/progress.ts';
import { order, steps } from '../../calculators/sheet/steps.ts';
import { keepUnmoved, movedOrNot } from '../../calculators/sheet/unmoved.ts';
import { figured } from './job.ts';

const DAY = '2026-03-21';
const results = (engine: Engine): string[] =>
  judge(engine, 'timing', 'mm').rows.map(({ result }) => result);

/** Two sets of four cylinders: the first is out, and the advice is to leave the plate. */
const found = [2.9, 2.2].reduce(
  (so, value, i) => setEntry(so, 'timing', 'found', i, value, { on: DAY }),
  figured({ cylinders: 4, sets: 2, target: 2.2 }),
);
const moved = setEntry(found, 'timing', 'left', 0, 2.21, { kind: 'change', on: DAY });

describe('one set that was moved while the plate stayed', () => {
  it('is asked about, since only the reader knows', () => {
    expect(judge(found, 'timing', 'mm').whole[0]).toMatch(/^Leave the plate where it is/);
    expect(movedOrNot(found, 'timing')).toBeUndefined();
    expect(results(moved)).toEqual(['pass', 'unjudged']);
    expect(judge(moved, 'timing', 'mm').rows[1]!.words).toMatch(
      /Read this one again, or say that only the other’s set was moved\.$/,
    );
    expect(movedOrNot(moved, 'timing')).toEqual({ changed: [0], before: [1] });
  });

  it('is still told which figure is wanted to judge by', () => {
    const { target: _, ...figures } = moved.figures;
    const wanting = { ...moved, figures };
    expect(judge(wanting, 'timing', 'mm').missing).toEqual(['target']);
    expect(judge(wanting, 'timing', 'mm').rows[1]!.words).toMatch(/before the last change/);
  });

  it('leaves the reading of the others standing, and the log says why', async () => {
    const kept = keepUnmoved(moved, 'timing', DAY);
    expect(results(kept)).toEqual(['pass', 'pass']);
    expect(movedOrNot(kept, 'timing')).toBeUndefined();
    expect(progressOf(kept).timing.stale).toEqual([]);
    expect(kept.log.flatMap((entry) => (entry.kind === 'note' ? [entry.text] : []))).toEqual([
      `Only set 1 moved at “${steps.timing.title}”, and not the plate: what was read before at set 2 stands.`,
    ]);
    // A link that leaves the log behind tells it too.
    for (const holds of ['last', 'all'] as const) {
      const sent = await engineFromFragment(await engineFragment(kept, holds));
      expect(results(sent)).toEqual(['pass', 'pass']);
    }
  });

  it('is asked about anew after the next change, and when what was said is taken out', () => {
    const kept = keepUnmoved(moved, 'timing', DAY);
    const later = setEntry(kept, 'timing', 'left', 0, 2.22, { kind: 'change', on: DAY });
    expect(movedOrNot(later, 'timing')).toEqual({ changed: [0], before: [1] });
    const said = kept.log.findLast(isReading)!;
    expect(movedOrNot(withdraw(kept, said), 'timing')).toEqual({ changed: [0], before: [1] });
  });

  it('is not asked of a disc, which is one for all, nor where all were read after it', () => {
    expect(order.filter((id) => steps[id].reading?.movesOne)).toEqual(['timing']);
    const disc = [1, 1].reduce(
      (so, value, i) => setEntry(so, 'top', 'found', i, value),
      figured({ cylinders: 2 }),
    );
    const turned = setEntry(disc, 'top', 'left', 0, 0, { kind: 'change' });
    expect(movedOrNot(turned, 'top')).toBeUndefined();
    const both = setEntry(moved, 'timing', 'left', 1, 2.2, { kind: 'change', on: DAY });
    expect(movedOrNot(both, 'timing')).toBeUndefined();
    expect(keepUnmoved(both, 'timing', DAY)).toBe(both);
  });
});

it('a set that is found after another was changed is no answer to what that one asked for', () => {
  const first = setEntry(
    figured({ cylinders: 4, sets: 2, target: 2.2 }),
    'timing',
    'found',
    0,
    2.9,
    {
      on: '2026-03-01',
    },
  );
  const changed = setEntry(first, 'timing', 'left', 0, 2.5, { kind: 'change', on: '2026-03-02' });
  const both = setEntry(changed, 'timing', 'found', 1, 2.2, { on: '2026-03-03' });
  expect(lastAsked(both, 'timing', 'mm')).toMatchObject({ asFound: true, on: '2026-03-01' });
});
