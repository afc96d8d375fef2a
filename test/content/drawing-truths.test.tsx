import { parseHTML } from 'linkedom';
import type { FunctionComponent } from 'preact';
import { render } from 'preact-render-to-string';
import { expect, it } from 'vitest';
import { demoBarrel } from '../../calculators/demo/barrel.ts';
import { demoCoil } from '../../calculators/demo/coil.ts';
import { demoEngine, DEMO_RATIO } from '../../calculators/demo/engine.ts';
import { demoHead } from '../../calculators/demo/head.ts';
import { demoJets } from '../../calculators/demo/jets.ts';
import { demoTop } from '../../calculators/demo/top.ts';
import { airDensity, standardPressure } from '../../calculators/maths/carburettor/air.ts';
import { inputs as air } from '../../calculators/carburettors/air-and-jet/inputs.ts';
import AirInTwoPlaces from '../../content/drawings/AirInTwoPlaces.tsx';
import CoilPolarity from '../../content/drawings/CoilPolarity.tsx';
import CurrentClimbs from '../../content/drawings/CurrentClimbs.tsx';
import DegreeNearTop from '../../content/drawings/DegreeNearTop.tsx';
import DwellAtTheTop from '../../content/drawings/DwellAtTheTop.tsx';
import NeedleClipAndMouth from '../../content/drawings/NeedleClipAndMouth.tsx';
import OnePartOfOil from '../../content/drawings/OnePartOfOil.tsx';
import PassagesOfTheBody from '../../content/drawings/PassagesOfTheBody.tsx';
import PortsUnrolled from '../../content/drawings/PortsUnrolled.tsx';
import ScatterAndBias from '../../content/drawings/ScatterAndBias.tsx';
import SpaceAboveThePiston from '../../content/drawings/SpaceAboveThePiston.tsx';
import StrippedInOrder from '../../content/drawings/StrippedInOrder.tsx';
import TwoDiscScales from '../../content/drawings/TwoDiscScales.tsx';
import WithAndAgainstTheCam from '../../content/drawings/WithAndAgainstTheCam.tsx';

const drawn = (Drawing: FunctionComponent) =>
  parseHTML(`<body>${render(<Drawing />)}</body>`).document;

const texts = (Drawing: FunctionComponent, chosen = 'text'): string[] =>
  [...drawn(Drawing).querySelectorAll(chosen)].map((text) => text.textContent.trim());

/** The upright places of the level lines of a path. */
const levels = (path: Element): number[] =>
  [...path.getAttribute('d')!.matchAll(/M\S+ (\S+?)H/g)].map(([, y]) => Number(y));

it('the coil’s terminal of the earthed pole’s sign goes to the points', () => {
  expect(texts(CoilPolarity, '.axis-text').filter((words) => words.includes('earth'))).toEqual([
    'Negative earth: − to the points',
    'Positive earth: + to the points',
  ]);
  expect(texts(CoilPolarity, '.sign-points')).toEqual(['−', '+']);
  expect(texts(CoilPolarity, '.sign-fed')).toEqual(['+', '−']);
});

it('a degree near the top is as wide as Pythagoras has it', () => {
  const r = demoEngine.stroke / 2;
  const height = (degrees: number): number => {
    const angle = (degrees * Math.PI) / 180;
    return r * Math.cos(angle) + Math.sqrt(demoEngine.rod ** 2 - (r * Math.sin(angle)) ** 2);
  };
  const [near, far] = [...drawn(DegreeNearTop).querySelectorAll('path.motion')].map((path) => {
    const [a, b] = levels(path) as [number, number];
    return a - b;
  }) as [number, number];
  expect(far / near).toBeCloseTo((height(19) - height(20)) / (height(4) - height(5)), 1);
});

it('the crown’s edge of the wall rolled out lies level with the exhaust’s', () => {
  const sheet = drawn(PortsUnrolled);
  const deck = levels(sheet.querySelector('path.edge')!)[0]!;
  const crown = levels(sheet.querySelector('path.crown')!)[0]!;
  expect((crown - deck) / 2).toBeCloseTo(demoBarrel.exhaust, 6);
});

it('both discs show the same two readings, each in its own count', () => {
  const readings = texts(TwoDiscScales, '.axis-text').filter((words) => words.includes(':'));
  expect(readings).toEqual([
    `before: ${demoTop.before}`,
    `after: ${demoTop.after}`,
    `before: ${360 - demoTop.before}`,
    `after: ${demoTop.after}`,
  ]);
});

type Point = readonly [x: number, y: number];

/** The places that a path of straight pieces, written as M and L, goes through. */
const places = (path: Element): Point[] =>
  [...path.getAttribute('d')!.matchAll(/[ML](-?[\d.]+)[ ,](-?[\d.]+)/g)].map(([, x, y]) => [
    Number(x),
    Number(y),
  ]);

const number = (element: Element, name: string): number => Number(element.getAttribute(name));

it('a heel moved against the cam is lifted already, and one moved with it hangs clear', () => {
  const sheet = drawn(WithAndAgainstTheCam);
  const centre: Point = [89, 168];
  const radius = ([x, y]: Point): number => Math.hypot(x - centre[0], y - centre[1]);
  const tipOf = (which: string): Point => {
    const [, a, b] = places(sheet.querySelector(`.${which} .heel`)!);
    return [(a![0] + b![0]) / 2, (a![1] + b![1]) / 2];
  };
  const camUnder = (which: string, tip: Point): number => {
    const direction = ([x, y]: Point): number => Math.atan2(x - centre[0], centre[1] - y);
    const outline = places(sheet.querySelector(`.${which} .cam`)!);
    const nearest = outline.reduce((best, point) =>
      Math.abs(direction(point) - direction(tip)) < Math.abs(direction(best) - direction(tip))
        ? point
        : best,
    );
    return radius(nearest);
  };
  const [against, after] = [tipOf('against'), tipOf('with')];
  // The cam turns clockwise, so that its lobe comes from the left: against is to the left.
  expect(against[0]).toBeLessThan(centre[0]);
  expect(after[0]).toBeGreaterThan(centre[0]);
  expect(radius(against)).toBeGreaterThan(radius(after) + 3);
  expect(Math.abs(radius(against) - camUnder('against', against))).toBeLessThan(1.5);
  expect(radius(after)).toBeGreaterThan(camUnder('with', after) + 3);
});

it('the ring between needle and jet is as wide as the taper makes it', () => {
  const [shut, open] = ['shut', 'open'].map((state) => {
    const sheet = drawn(NeedleClipAndMouth);
    const jet = number(sheet.querySelector(`.${state} .jet-from-above`)!, 'r');
    return (
      (number(sheet.querySelector(`.${state} .needle-from-above`)!, 'r') / jet) * demoJets.needleJet
    );
  });
  expect(shut).toBeCloseTo(demoJets.needle, 2);
  const raised = (demoJets.clip - 1) * demoJets.clipPitch;
  const above = 0.75 * demoJets.slideTravel + raised - demoJets.straight;
  const lost = 2 * above * Math.tan((demoJets.taper * Math.PI) / 360);
  expect(open).toBeCloseTo(demoJets.needle - lost, 2);
});

it('twice as far from the top the piston is four times as far down', () => {
  const [four, eight] = texts(DwellAtTheTop).flatMap((words) =>
    /^0\.\d\d$/.test(words) ? [Number(words)] : [],
  );
  expect(eight! / four!).toBeGreaterThan(3.7);
  expect(eight! / four!).toBeLessThan(4.3);
});

it('after one time constant a coil has 63 per cent of its current, after three 95', () => {
  expect(texts(CurrentClimbs).filter((words) => words.endsWith('%'))).toEqual(['63%', '95%']);
  const times = texts(CurrentClimbs, '[text-anchor="middle"]').map(Number);
  expect(times[1]).toBe(demoCoil.inductance / demoCoil.resistance);
});

it('there is one part of oil to the petrol of the ratio, all of one size', () => {
  const sheet = drawn(OnePartOfOil);
  const areas = (look: string): number[] =>
    [...sheet.querySelectorAll(look)].map((part) => number(part, 'width') * number(part, 'height'));
  expect(areas('.petrol')).toHaveLength(DEMO_RATIO);
  expect(new Set([...areas('.petrol'), ...areas('.oil')]).size).toBe(1);
  expect(areas('.oil')).toHaveLength(1);
});

it('the dots are in the proportion of the two densities', () => {
  const [right, now] = [...drawn(AirInTwoPlaces).querySelectorAll('.place')].map(
    (place) => place.querySelectorAll('.air').length,
  ) as [number, number];
  const density = (place: 'right-' | ''): number =>
    airDensity({
      temperature: air[`${place}temperature`].default,
      humidity: air[`${place}humidity`].default,
      pressure: standardPressure(air[`${place}altitude`].default),
    });
  expect(now / right).toBeCloseTo(density('') / density('right-'), 2);
});

it('readings that scatter alone have their mean at the truth, and a bias moves all alike', () => {
  const at = [...drawn(ScatterAndBias).querySelectorAll('.reading')].map((dot) =>
    number(dot, 'cx'),
  );
  const rows = [0, 1, 2].map((row) => at.slice(6 * row, 6 * row + 6));
  const mean = (row: readonly number[]): number => row.reduce((sum, x) => sum + x, 0) / row.length;
  const range = (row: readonly number[]): number => Math.max(...row) - Math.min(...row);
  const truth = 178;
  expect(Math.abs(mean(rows[0]!) - truth)).toBeLessThan(1);
  expect(mean(rows[1]!) - truth).toBeGreaterThan(50);
  expect(mean(rows[2]!)).toBeCloseTo(mean(rows[1]!), 6);
  expect(range(rows[2]!)).toBe(range(rows[0]!));
  expect(range(rows[1]!)).toBeLessThan(range(rows[0]!) / 3);
});

it('the bowl holds what the demo head holds', () => {
  const [hollow] = [...drawn(SpaceAboveThePiston).querySelectorAll('.liquid')];
  const half = (demoHead.bowl / 2) * 3.4;
  const right = places(hollow!).filter(([x]) => x >= 128 && x <= 128 + half + 0.1);
  const profile = right.toSorted((a, b) => a[0] - b[0]);
  const [first] = profile;
  // A body of revolution: shells about the middle, down to the face of the head.
  const shells = profile.slice(1).reduce((sum, [x, y], i) => {
    const [x0, y0] = profile[i]!;
    const radius = (x + x0) / 2 - 128;
    return sum + 2 * Math.PI * radius * (x - x0) * (128 - (y + y0) / 2);
  }, 0);
  const core = Math.PI * (first![0] - 128) ** 2 * (128 - first![1]);
  expect((shells + core) / 3.4 ** 3 / 1000).toBeCloseTo(demoHead.volume, 0);
});

it('every passage is numbered at both of its ends, at a hole', () => {
  const sheet = drawn(PassagesOfTheBody);
  const ends = texts(PassagesOfTheBody, '.axis-text').flatMap((words) => words.split(', '));
  for (const passage of ['1', '2', '3', '4', '5', '6']) {
    expect(ends.filter((end) => end === passage).length, passage).toBeGreaterThan(1);
  }
  expect(texts(PassagesOfTheBody).filter((words) => /^\d [a-z]/.test(words))).toHaveLength(7);
  expect(sheet.querySelector('.drilling')!.getAttribute('d')).toBe(
    sheet.querySelector('.drilling-inside')!.getAttribute('d'),
  );
});

it('the parts come out in the order of their numbers', () => {
  const numbers = texts(StrippedInOrder).flatMap((words) => /^\d/.exec(words)?.[0] ?? []);
  expect(numbers).toEqual(['1', '2', '3', '4', '5', '6', '7', '8']);
});
