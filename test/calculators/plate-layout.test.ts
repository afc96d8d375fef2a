import { point } from '@flatten-js/core';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import { flatten } from '../../calculators/frame/spreads.ts';
import plateLayout from '../../calculators/plate/plate-layout/calculator.tsx';

const texts = {
  sets: '3',
  holes: '2',
  slots: '0',
  'radius-1': '31.5mm',
  'angle-1': '0deg',
  'radius-2': '25mm',
  'angle-2': '-24deg',
};

/** A place straight out along X, turned about the centre by an independent geometry library. */
const turned = (radius: number, degrees: number) =>
  point(radius, 0).rotate((degrees * Math.PI) / 180, point(0, 0));

describe('a plate marked out with dividers', () => {
  const figures = flatten(evaluate(plateLayout, texts, { lengths: 'mm' }).results);

  it('has each hole of a set from where the set’s line crosses its circle', () => {
    expect(figures.get('line-chord-1')).toBe(0);
    const [across] = turned(25, 90).distanceTo(turned(25, 90 - 24));
    expect(figures.get('line-chord-2')).toBeCloseTo(across, 9);
  });

  it('has each hole of set 2 from the same hole of set 1', () => {
    expect(figures.get('chord-1')).toBeCloseTo(turned(31.5, 0).distanceTo(turned(31.5, 120))[0], 9);
    expect(figures.get('chord-2')).toBeCloseTo(turned(25, 0).distanceTo(turned(25, 120))[0], 9);
  });
});
