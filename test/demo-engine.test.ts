import { describe, expect, it } from 'vitest';
import { evaluate } from '../calculators/frame/evaluate.ts';
import { flatten } from '../calculators/frame/spreads.ts';
import type { AnyValue } from '../calculators/frame/types.ts';
import { plugHoleVolume } from '../calculators/maths/cylinder/head-volume.ts';
import { angleAfter } from '../calculators/maths/crank/slider-crank.ts';
import { demoSheet } from '../calculators/sheet/demo.ts';
import { inputFor } from '../calculators/sheet/fill.ts';
import { figureKeys } from '../calculators/sheet/figures.ts';
import { order, steps } from '../calculators/sheet/steps.ts';
import { calculators } from '../site/all-calculators.ts';

const atDefaults = new Map(
  calculators.map((calculator) => {
    const { values, results } = evaluate(calculator, {}, { lengths: 'mm' });
    return [calculator.slug, { values, results: flatten(results) }] as const;
  }),
);

const named = (place: string) => {
  const [slug, name] = place.split(' ') as [string, string];
  return { at: atDefaults.get(slug)!, name };
};

/** An input's default: "slug key", with the member of a series or list after a #, or else its first. */
function figure(place: string): number {
  const { at, name } = named(place);
  const [key, member] = name.split('#') as [string, string?];
  const value: AnyValue = at.values[key];
  const found = Array.isArray(value)
    ? (value as readonly number[])[Number(member ?? 1) - 1]
    : value;
  // An answer is kept by its place among those that may be chosen.
  if (typeof found === 'string') {
    const input = calculators.find(({ slug }) => place.startsWith(`${slug} `))!.inputs[key]!;
    return Object.keys('options' in input ? input.options : {}).indexOf(found);
  }
  if (typeof found !== 'number') throw new Error(`${place} is no figure`);
  return found;
}

/** What a calculator makes of its defaults: "slug name". */
function result(place: string): number {
  const { at, name } = named(place);
  const found = at.results.get(name);
  if (found === undefined) throw new Error(`${place} is no result`);
  return found;
}

const demo = demoSheet();
const onePerCylinder: ReadonlySet<string> = new Set(['sets', 'carburettors']);

describe('one demo engine: the sheet and every calculator have the same figure', () => {
  const shared = figureKeys
    .map((key) => {
      const places = calculators.flatMap(({ slug, inputs }) => {
        const input = inputFor(key, slug);
        // What may be left empty has no figure until the sheet gives one.
        return input !== undefined && inputs[input] && inputs[input].kind !== 'optional'
          ? [`${slug} ${input}`]
          : [];
      });
      return [key, places] as const;
    })
    .filter(([, places]) => places.length > 0);

  it.each(shared)('%s', (key, places) => {
    expect(places.map((place) => [place, figure(place)])).toEqual(
      // Sets of points and carburettors that the sheet does not count are one to a cylinder.
      places.map((place) => [place, demo.figures[onePerCylinder.has(key) ? 'cylinders' : key]]),
    );
  });

  it.each(order.filter((id) => steps[id].series && demo.readings[id]))(
    'readings of the step “%s”',
    (id) => {
      for (const [slug, base] of Object.entries(steps[id].series!)) {
        const { found } = demo.readings[id]!;
        expect(found, slug).toEqual(atDefaults.get(slug)!.values[base]);
      }
    },
  );
});

/** Figures under different names that mean the same part of the engine. */
const same: readonly (readonly string[])[] = [
  ['coil-charge rpm', 'time-area rpm', 'squish-velocity rpm', 'wiring rpm'],
  ['coil-charge rpm', 'firing-order rpm'],
  ['plate-setting cylinders', 'firing-order cylinders'],
  ['compression bore', 'time-area bore', 'squish-velocity bore'],
  ['compression bore', 'piston-clearance bore', 'piston-clearance standard'],
  ['compression deck', 'port-timing deck', 'time-area deck'],
  ['compression cylinders', 'port-timing cylinders', 'plate-setting cylinders'],
  ['compression other-deck#1', 'port-timing other-deck#1'],
  ['compression other-deck#2', 'port-timing other-deck#2'],
  ['port-timing skirt', 'time-area skirt'],
  ['port-timing port#1', 'time-area exhaust-edge'],
  ['port-timing port#2', 'time-area transfer-edge'],
  ['port-timing height#1', 'time-area exhaust-height'],
  ['port-timing height#2', 'time-area transfer-height'],
  ['port-timing inlet-edge', 'time-area inlet-edge'],
  ['port-timing inlet-height', 'time-area inlet-height'],
  ['port-timing disc-opens', 'time-area disc-opens'],
  ['port-timing disc-closes', 'time-area disc-closes'],
  ['compression exhaust-opens', 'squish-velocity exhaust-closes'],
  ['compression bowl-mouth', 'squish-velocity bowl'],
  ['compression solder', 'squish-velocity squish'],
  ['compression whole-volume', 'squish-velocity clearance'],
  ['breaker-cam dwell', 'coil-charge dwell-angle'],
  ['breaker-cam lobes', 'coil-charge lobes'],
  ['breaker-cam speed-ratio', 'coil-charge speed-ratio', 'plate-setting speed-ratio'],
  ['piston-position travel', 'plate-setting target', 'degree-disc marks#1'],
  ['piston-position angle', 'plate-setting target-angle'],
  ['piston-position rotor', 'degree-disc rotor'],
  ['plate-layout radius#1', 'plate-setting slot-radius'],
  ['air-and-jet jet', 'needle-and-clip main-jet', 'jet-set known-bore', 'jet-set bore'],
  ['air-and-jet number', 'jet-set known-number', 'jet-set number'],
  ['needle-and-clip needle-diameter', 'needle-and-clip second-diameter'],
  ['fuel-and-oil ratio', 'float-level oil-ratio'],
];

it.each(same)('%s is the same as its like', (first, ...others) => {
  for (const other of others) expect(figure(other), other).toBeCloseTo(figure(first), 12);
});

it('its crank gives the firing order and the directions of the sets that its sheet holds', () => {
  const fired = demo.firingOrder.map((_, k) => result(`firing-order order-${String(k + 1)}`));
  expect(fired).toEqual(demo.firingOrder);
  const directions = [2, 3].map((set) => result(`firing-order set-${String(set)}`));
  expect(directions).toEqual([demo.figures['set-2'], demo.figures['set-3']]);
});

const plugHole = plugHoleVolume(
  figure('compression plug-thread'),
  figure('compression plug-pitch'),
  figure('compression plug-reach'),
);
const found = (figure('find-tdc before') + figure('find-tdc after')) / 2;
const engine = {
  stroke: figure('find-tdc stroke'),
  rodLength: figure('find-tdc rod'),
  pinOffset: 0,
};

/** A default, what the rest of the engine comes to, and half of what it is read to. */
const derived: readonly (readonly [string, number, number, number])[] = (
  [
    ['compression exhaust-opens', result('port-timing opens-1'), 0.05],
    ['compression whole-volume', result('compression clearance'), 0.05],
    ['compression solder', result('compression squish'), 0.025],
    ['compression plug-hole', plugHole, 0.05],
    ['breaker-cam dwell', result('breaker-cam dwell-angle'), 0.5],
    ['piston-position angle', result('piston-position angle'), 0.25],
    ['piston-position arc', result('piston-position arc'), 0.05],
    ['plate-setting fired-angle#1', result('plate-setting as-found-1'), 0.25],
    ['plate-setting fired-angle#2', result('plate-setting as-found-2'), 0.25],
    ['plate-setting fired-angle#3', result('plate-setting as-found-3'), 0.25],
    [
      'wiring dwell-percent',
      (100 * figure('breaker-cam dwell') * figure('wiring lobes')) / 360,
      0.05,
    ],
    ['plate-setting plate-radius', figure('plate-layout outside') / 2, 0],
    ['plate-layout heel-radius', figure('breaker-cam base') / 2, 0],
    ['fuel-and-oil percent', 100 / figure('fuel-and-oil ratio'), 0],
    ['air-and-jet number', 100 * figure('air-and-jet jet'), 1e-9],
  ] as const
).map(([place, from, within]) => [place, figure(place), from, within]);

it.each([
  ...derived,
  [
    'where the sheet has its inlet open',
    demo.figures['inlet-opens']!,
    result('port-timing inlet-opens'),
    0.5,
  ],
  ['the mean of the stopped readings', found, angleAfter(engine, figure('find-tdc height')), 0.25],
  // The trials were made with the timing as it is set, so that its gap opens where it should.
  [
    'the timing that the trials give',
    result('breaker-cam trial-angle-at-gap'),
    figure('piston-position angle'),
    result('breaker-cam trial-range'),
  ],
  [
    'what the trials say of the gap',
    result('breaker-cam trial-slope'),
    result('breaker-cam crank-degrees-per-gap'),
    result('breaker-cam trial-range'),
  ],
] as const)('%s is what the rest comes to', (_, typed, from, within) => {
  expect(Math.abs(typed - from)).toBeLessThanOrEqual(within);
});
