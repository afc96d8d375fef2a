import { describe, expect, it } from 'vitest';
import { apart, inRow, spreadOut, spreadRound } from '../../calculators/picture/common/labels.ts';
import { textWidth } from '../../calculators/picture/common/text-width.ts';

describe('labels that would lie on each other', () => {
  it('one above the other stand a line apart, within the sheet', () => {
    expect(spreadOut([10, 12], 0, 100)).toEqual([10, 25]);
    expect(spreadOut([99, 98], 0, 100)).toEqual([100, 85]);
    expect(spreadOut([10, 60], 0, 100)).toEqual([10, 60]);
  });

  it('in a row are joined, in the order of their marks, between the ends of the row', () => {
    const near = inRow(
      [
        { at: 105, words: '60°' },
        { at: 100, words: '50°' },
      ],
      0,
      300,
    );
    expect(near.map(({ words }) => words)).toEqual(['50°, 60°']);
    expect(near[0]!.at).toBeCloseTo(102.5, 9);
    const room = textWidth('50°') + 8;
    const apart = (far: number) =>
      inRow(
        [100, 100 + far].map((at) => ({ at, words: '50°' })),
        0,
        300,
      ).length;
    expect([apart(room + 0.1), apart(room - 0.1)]).toEqual([2, 1]);
    const half = textWidth('50°') / 2;
    expect(inRow([{ at: 0, words: '50°' }], 0, 300)[0]!.at).toBeCloseTo(half, 9);
    expect(inRow([{ at: 300, words: '50°' }], 0, 300)[0]!.at).toBeCloseTo(300 - half, 9);
  });

  it('in a row too short for all their words are counted', () => {
    const seven = [0, 1, 2, 3, 4, 5, 6].map((at) => ({ at: 10 * at, words: `${String(at)}00°` }));
    expect(inRow(seven, 0, 90).map(({ words }) => words)).toEqual(['7 marks']);
  });

  it('are left out behind the first of them, where there is no room for both', () => {
    expect([...apart([10, 20, 30, 40], 15)]).toEqual([0, 2]);
    expect([...apart([40, 10, 30, 25.1], 15)]).toEqual([0, 1]);
    expect([...apart([10, 25], 15)]).toEqual([0, 1]);
  });

  it('round a circle stand about the middle of their marks', () => {
    const turn = (angle: number): number => ((angle % 360) + 360) % 360;
    expect(spreadRound([90, 90], 10).map(turn)).toEqual([85, 95]);
    expect(spreadRound([0, 2], 10).map(turn)).toEqual([356, 6]);
    expect(spreadRound([0, 120, 240], 10).map(turn)).toEqual([0, 120, 240]);
  });
});
