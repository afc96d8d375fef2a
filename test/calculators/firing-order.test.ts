import { describe, expect, it } from 'vitest';
import firingOrder from '../../calculators/plate/firing-order/calculator.tsx';
import { presetFields, presets } from '../../calculators/plate/firing-order/presets.ts';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';

const calculator = firingOrder as unknown as AnyCalculator;
const resultsOf = (texts: Record<string, string>) =>
  evaluate(calculator, texts, { lengths: 'mm' }).results;

// Law of propagation, JCGM 100:2008, 5.1.2: a top is two pins and two leans of half a degree each, so 1°;
// the two intervals of a twin make up a turn, so that their difference moves by twice as much.
it('tells the ± of each interval and of what they differ by', () => {
  const given = { cylinders: '2', 'pin-1': '0', 'pin-2': '170', 'lean-1': '0', 'lean-2': '0' };
  const { results, spreads } = evaluate(calculator, given, { lengths: 'mm' });
  expect(results).toMatchObject({ interval: [190, 170], uneven: 20 });
  expect(spreads['interval-1']).toBeCloseTo(1, 9);
  expect(spreads['interval-2']).toBeCloseTo(1, 9);
  expect(spreads.uneven).toBeCloseTo(2, 9);
});

/** The ways on from a crank whose pins stand so many degrees after the first. */
function onwards(...pins: readonly number[]) {
  const texts = Object.fromEntries(pins.map((pin, i) => [`pin-${String(i + 1)}`, String(pin)]));
  const given = { cylinders: String(pins.length), turning: 'anticlockwise', ...texts };
  const { values, results } = evaluate(calculator, given, { lengths: 'mm' });
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

  it('goes on with the engine that it is of', () => {
    const texts = { cylinders: '2', stroke: '54', rod: '110' };
    const { values, results } = evaluate(calculator, texts, { lengths: 'mm' });
    const setting = firingOrder.onwards!(values as never, results as never)[1]!;
    expect(setting.query).toEqual({ cylinders: '2', stroke: '54mm', rod: '110mm' });
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

describe('when a crank fires', () => {
  it('is one after the other by number, evenly, where nothing but the count is said', () => {
    for (const [cylinders, order] of [
      ['2', 12],
      ['4', 1234],
      ['5', 12345],
    ] as const) {
      expect(resultsOf({ cylinders }), cylinders).toMatchObject({ sequence: order, uneven: 0 });
    }
  });

  // A cylinder is at its top its lean less its pin after cylinder 1: a nought joins those that come together.
  it.each([
    ['Twin, 180°', 12, 0],
    ['Twin, 360°', 102, 0],
    ['Triple, 120°', 123, 0],
    ['Four, 180°', 10_4203, 0],
    ['Four, 90°', 1324, 0],
    ['Vee twin, 90°', 12, 180],
    ['Vee four, 90°', 1234, 0],
    ['Boxer twin', 102, 0],
  ])('of a usual crank, %s, is as its tops come', (name, sequence, uneven) => {
    const preset = presets.find((one) => one.name === name)!;
    const texts = presetFields(preset, { place: [] }, 100).map(([key, value]) => [key, `${value}`]);
    expect(resultsOf(Object.fromEntries(texts) as Record<string, string>)).toMatchObject({
      sequence,
      uneven,
    });
  });

  // Tops less than 0.1° apart are fired from one set: what is said of them is said of one firing.
  it.each([
    ['after', '-0.07'],
    ['before', '0.07'],
  ])('is told of two as of one where the second comes a hair %s the first', (_, pin) => {
    const texts = { cylinders: '2', 'pin-2': pin };
    const { sequence, uneven, sets, ...results } = resultsOf(texts);
    expect({ sequence, uneven, sets }).toEqual({ sequence: 102, uneven: 0, sets: 1 });
    const { values } = evaluate(calculator, texts, { lengths: 'mm' });
    const said = firingOrder.remarks!(
      values as never,
      { sequence, uneven, sets, ...results } as never,
      { isAssumed: () => false, lengths: 'mm', spreads: {} },
    );
    const [first] = said.map((remark) => (typeof remark === 'string' ? remark : remark.say()));
    expect(first).toBe('All cylinders fire together, once a turn. Order 1+2.');
  });

  it('is told of three so too, where one of them comes a hair before cylinder 1', () => {
    expect(resultsOf({ cylinders: '3', 'pin-2': '180', 'pin-3': '0.05' })).toMatchObject({
      ...{ sequence: 10_32, uneven: 0, sets: 2 },
    });
  });
});
