import { describe, expect, it } from 'vitest';
import firingOrder from '../../calculators/plate/firing-order/calculator.tsx';
import { presetFields, presets } from '../../calculators/plate/firing-order/presets.ts';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';

/** The ways on from a crank whose pins stand so many degrees after the first. */
function onwards(...pins: readonly number[]) {
  const texts = Object.fromEntries(pins.map((pin, i) => [`pin-${String(i + 1)}`, String(pin)]));
  const given = { cylinders: String(pins.length), turning: 'anticlockwise', ...texts };
  const { values, results } = evaluate(firingOrder as unknown as AnyCalculator, given, {
    lengths: 'mm',
  });
  const [layout, setting, wiring] = firingOrder.onwards!(values as never, results as never);
  return { layout: layout!, setting: setting!, wiring };
}

describe('the plate of a crank', () => {
  // A pin that follows by 240° comes to the top 120° later, and its set stands 120° on.
  it('has its sets in the order of the cylinders, each on from the one before', () => {
    expect(onwards(0, 240, 120).layout.query).toEqual({
      ...{ sets: '3', turning: 'anticlockwise', 'spacing-2': '120deg', 'spacing-3': '120deg' },
    });
    expect(onwards(0, 120, 240).layout.query).toMatchObject({
      ...{ 'spacing-2': '240deg', 'spacing-3': '240deg' },
    });
    expect(onwards(0, 90).layout.query).toMatchObject({ 'spacing-2': '270deg' });
    expect(onwards(0).layout.query).toEqual({ sets: '1' });
  });

  it('has one set for cylinders that fire together, which are set as one', () => {
    const four = onwards(0, 180, 180, 0);
    expect(four.layout.query).toMatchObject({ sets: '2', 'spacing-2': '180deg' });
    expect(four.setting.words).toBe('Set these sets of points from one plate');
    expect(four.setting.query).toMatchObject({ cylinders: '2' });
    expect(onwards(0, 240, 120).setting.words).toBe('Set these cylinders from one plate');
  });

  it('has a coil for each set, of two leads where each fires two, and none is told where they differ', () => {
    expect(onwards(0, 240, 120).wiring?.query).toEqual({ coils: '3' });
    expect(onwards(0, 180, 180, 0).wiring?.query).toEqual({ coils: '2', leads: 'two' });
    expect(onwards(0, 0).wiring?.query).toEqual({ coils: '1', leads: 'two' });
    expect(onwards(0, 0, 180).wiring).toBeUndefined();
    expect(onwards(0, 0, 0).wiring).toBeUndefined();
  });

  it('goes with the example’s engine where stroke or rod are the example’s', () => {
    expect(onwards(0, 180).setting.from).toEqual(expect.arrayContaining(['pin', 'stroke', 'rod']));
  });
});

describe('a usual crank', () => {
  const USUAL = 100;
  const fields = (name: string, place: readonly number[]): Readonly<Record<string, number>> => {
    const preset = presets.find((one) => one.name === name)!;
    return Object.fromEntries(presetFields(preset, { place: [...place] } as never, USUAL));
  };
  /** Where the throws stand once it is taken. */
  const places = (name: string, place: readonly number[]): number[] => {
    const written = fields(name, place);
    return Array.from(
      { length: written['cylinders']! },
      (_, i) => written[`place-${String(i + 1)}`] ?? place[i] ?? i * USUAL,
    );
  };

  it('has its pins and leans, and keeps the spacing that the throws have, the usual one where they have none', () => {
    expect(fields('Triple, 120°', [140, 0, 70])).toEqual({
      ...{ cylinders: 3, 'pin-1': 0, 'pin-2': 240, 'pin-3': 120 },
      ...{ 'lean-1': 0, 'lean-2': 0, 'lean-3': 0, 'place-1': 0, 'place-2': 70, 'place-3': 140 },
    });
    expect(places('Twin, 180°', [0, 0])).toEqual([0, 100]);
    expect(places('Twin, 180°', [0, 0, 80])).toEqual([0, 80]);
  });

  it('of a vee has two cylinders side by side on one throw', () => {
    expect(fields('Vee twin, 90°', [0, 80])).toMatchObject({ 'lean-1': -45, 'lean-2': 45 });
    expect(places('Vee twin, 90°', [0, 80])).toEqual([0, 0]);
    expect(places('Vee four, 90°', [0, 80])).toEqual([0, 0, 80, 80]);
  });

  it('writes no place that stands there already, which stays whose it is', () => {
    expect(
      Object.keys(fields('Boxer twin', [0, 88, 176])).filter((key) => /place/.test(key)),
    ).toEqual([]);
  });
});
