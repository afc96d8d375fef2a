import { describe, expect, it } from 'vitest';
import type { FigureKey } from '../../calculators/sheet/figures.ts';
import { judge, lastAsked } from '../../calculators/sheet/judge.ts';
import { newEngine, type Engine } from '../../calculators/sheet/model.ts';
import { setEntry } from '../../calculators/sheet/set-entry.ts';
import type { StepId } from '../../calculators/sheet/steps.ts';

// Worked by hand from x = r (1 − cos θ) + l − √(l² − r² sin² θ) with r 25.5 and l 104: 30.4378 mm at
// 94°, 30.8727 mm at 95°, 31.7344 mm at 97°, 32.5849 mm at 99° and 33.0055 mm at 100°.
const engine = (more: Partial<Record<FigureKey, number | undefined>> = {}): Engine => ({
  ...newEngine('e-1', 'Single'),
  figures: Object.fromEntries(
    Object.entries({
      ...{ cylinders: 1, stroke: 51, rod: 104, bore: 54, 'top-tolerance': 0.25 },
      ...{ squish: 1.2, 'squish-tolerance': 0.15, 'exhaust-opens': 97, 'exhaust-tolerance': 1 },
      ...{ 'head-volume': 14, 'head-volume-tolerance': 0.3 },
      ...more,
    }).filter(([, value]) => value !== undefined),
  ),
});
const found = (so: Engine, id: StepId, value: number): Engine =>
  setEntry(so, id, 'found', 0, value);
const changed = (so: Engine, id: StepId, value: number): Engine =>
  setEntry(so, id, 'left', 0, value, { kind: 'change' });
const words = (so: Engine, id: StepId): string => judge(so, id, 'mm').rows[0]!.words;

describe('a barrel that is to be moved', () => {
  it('says which way, and what that does to a squish that nobody has measured', () => {
    expect(words(found(engine(), 'exhaust', 100), 'exhaust')).toBe(
      'It opens 3° late: raise the barrel by 1.27 mm, which opens it earlier. That adds 1.27 mm to its squish.',
    );
  });

  it('does not reckon with a squish that was measured before the barrel was last moved', () => {
    const moved = (to: number): Engine =>
      changed(found(found(engine(), 'squish', 2), 'exhaust', 90), 'exhaust', to);
    expect(words(moved(95), 'exhaust')).toBe(
      'It opens 2° early: lower the barrel by 0.86 mm, which opens it later. That takes 0.86 mm off its squish, which was measured before the barrel was last moved: measure it again first.',
    );
    expect(words(moved(99), 'exhaust')).toBe(
      'It opens 2° late: raise the barrel by 0.85 mm, which opens it earlier. That adds 0.85 mm to its squish, which was measured before the barrel was last moved: measure it again first.',
    );
  });

  it('says what the squish comes to where the sheet has no figure for it', () => {
    const bare = found(found(engine({ squish: undefined }), 'squish', 2.5), 'exhaust', 94);
    expect(words(bare, 'exhaust')).toContain(
      'Its squish of 2.5 mm comes to 1.2 mm; the sheet has no figure to hold that against.',
    );
  });

  it('is not moved for a reading further off than any gasket', () => {
    // 25° from 97° are 72°.
    expect(words(found(engine(), 'exhaust', 71), 'exhaust')).toMatch(
      /which no gasket makes: check/,
    );
    expect(words(found(engine(), 'exhaust', 73), 'exhaust')).toMatch(/lower the barrel by/);
  });
});

describe('a squish', () => {
  it('says nothing of a port that was read before the squish was last altered', () => {
    const read = found(found(engine(), 'exhaust', 97), 'squish', 0.8);
    expect(words(read, 'squish')).toMatch(/Under the barrel instead/);
    expect(words(changed(read, 'squish', 0.7), 'squish')).toBe(
      'Use a thicker head gasket, by 0.5 mm.',
    );
  });

  it('says nothing of a barrel that came back to where it stood', () => {
    const there = changed(found(found(engine(), 'squish', 1.2), 'exhaust', 97), 'exhaust', 95);
    expect(judge(changed(there, 'exhaust', 97), 'squish', 'mm').whole).toEqual([]);
  });
});

it('where the skirt is cut goes by the side on which it opens: a pin offset tells them apart', () => {
  // Crank and rod laid out apart, the pin 5 mm aside: 22.087 mm below the top at 75° before it and
  // 19.775 mm at 70°; as far after it 21.675 and 19.417 mm, which would be 2.26 mm.
  const offset = engine({ offset: 5, 'inlet-opens': 75, 'inlet-tolerance': 1 });
  expect(words(found(offset, 'inlet', 70), 'inlet')).toMatch(/That is 2\.31 mm of skirt/);
});

describe('what was asked for is told again without what may have changed since', () => {
  const asked = (so: Engine, id: StepId): readonly string[] | undefined =>
    lastAsked(so, id, 'mm')?.sentences;

  it('the port without its squish', () => {
    const read = found(found(engine(), 'squish', 1.2), 'exhaust', 94);
    expect(asked(changed(read, 'exhaust', 97), 'exhaust')).toEqual([
      'Cylinder 1: It opens 3° early: lower the barrel by 1.3 mm, which opens it later.',
    ]);
  });

  it('the squish without its port, whatever the barrel did after', () => {
    const read = changed(found(found(engine(), 'exhaust', 94), 'squish', 0.8), 'squish', 1.2);
    const moved = changed(read, 'exhaust', 97);
    for (const so of [read, moved]) {
      expect(asked(so, 'squish')).toEqual(['Cylinder 1: Use a thicker head gasket, by 0.4 mm.']);
    }
  });

  it('the head without the squish that a skim would have left', () => {
    const read = found(found(engine(), 'squish', 1.2), 'head-volume', 14.6);
    expect(asked(changed(read, 'head-volume', 14), 'head-volume')).toEqual([
      'Head 1: This head is too large by 0.6 cc.',
    ]);
  });

  it('nothing while the readings as found still stand, log or none', () => {
    expect(
      lastAsked({ ...found(engine(), 'squish', 0.8), log: [] }, 'squish', 'mm'),
    ).toBeUndefined();
  });

  it('nor what the sheet’s figures say against one another now', () => {
    const gap = engine({ gap: 0.4, 'gap-tolerance': 0.03, lift: 0.3 });
    expect(asked(changed(found(gap, 'gap', 0.5), 'gap', 0.4), 'gap')).toEqual([
      'Set 1: Close the gap, which makes it fire later, by 0.1 mm.',
    ]);
  });
});
