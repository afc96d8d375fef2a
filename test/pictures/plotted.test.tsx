import { describe, expect, it } from 'vitest';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import { calculatorBySlug } from '../../site/all-calculators.ts';
import { drawn, picture } from './support/draw.tsx';
import type { ShapeMark, Sheet } from './support/marks.ts';
import type { Point } from './support/paths.ts';
import { boxOf, middleOf, pointsOf, shapeOf, shapesOf } from './support/shapes.ts';

type Texts = Record<string, string>;

const wordsOf = (sheet: Sheet): string[] => sheet.texts.map(({ words }) => words);
const state = (slug: string, texts: Texts) =>
  evaluate(calculatorBySlug(slug), texts, { lengths: 'mm' });
const result = (slug: string, texts: Texts, name: string): number =>
  state(slug, texts).results[name] as number;

/** The height of a line above or below a place along it. */
function heightAt(line: readonly Point[], x: number): number {
  const i = line.findIndex(([there], k) => k > 0 && (there - x) * (line[k - 1]![0] - x) <= 0);
  const [[x1, y1], [x2, y2]] = [line[i - 1]!, line[i]!];
  return x1 === x2 ? y1 : y1 + ((y2 - y1) * (x - x1)) / (x2 - x1);
}
const curveOf = (sheet: Sheet, ...look: string[]): readonly Point[] =>
  pointsOf(shapeOf(sheet, ...look));
const handleOf = (sheet: Sheet): Point => middleOf(shapeOf(sheet, 'handle-dot'));
/** The foot of a plot: where its axis across lies. */
const footOf = (sheet: Sheet): number => boxOf(shapeOf(sheet, 'axis-line')).bottom;
/** The ends of a band, up and down, at a place along it. */
function bandAt(band: ShapeMark, x: number): readonly [top: number, bottom: number] {
  const points = pointsOf(band);
  const far = points.reduce((most, [at], i) => (at > points[most]![0] ? i : most), 0);
  const [one, other] = [points.slice(0, far + 1), points.slice(far + 1)];
  const ys = [heightAt(one, x), heightAt(other, x)];
  return [Math.min(...ys), Math.max(...ys)];
}

describe('the jet against the air', () => {
  const texts = {
    ...{ jet: '1.1', sizes: '1.00 1.10 1.20', temperature: '20', 'right-temperature': '20' },
    ...{ altitude: '1500', 'right-altitude': '0' },
  };
  const [sheet] = picture('air-and-jet', texts);
  const jets = shapeOf(sheet!, 'rule-line').lines.map((line) => line[0]![1]);

  it('has what was right on the jet that was right, and what is wanted in the air now below it', () => {
    // The mark in the key comes first.
    const right = middleOf(shapeOf(sheet!, 'found-mark'));
    const wanted = handleOf(sheet!);
    expect(right[0]).toBeCloseTo(wanted[0], 0);
    expect(jets.some((y) => Math.abs(y - right[1]) < 0.1)).toBe(true);
    expect(wanted[1]).toBeGreaterThan(right[1] + 20);
    expect(heightAt(curveOf(sheet!, 'curve-main'), wanted[0])).toBeCloseTo(wanted[1], 0);
    expect(heightAt(curveOf(sheet!, 'curve-other'), right[0])).toBeCloseTo(right[1], 0);
  });

  it('has the ± of the jet either side of it', () => {
    const { spreads, results } = state('air-and-jet', texts);
    const right = middleOf(shapeOf(sheet!, 'found-mark'));
    const [x, y] = handleOf(sheet!);
    const scale = (y - right[1]) / (1.1 - (results['jet'] as number));
    const [top, bottom] = bandAt(shapeOf(sheet!, 'band-error'), x);
    expect((bottom - top) / scale).toBeCloseTo(2 * spreads['jet']!, 3);
  });
});

describe('the float', () => {
  it('is held up by the fuel, and pushed down by the feed and its own weight', () => {
    const [section] = picture('float-level', {});
    const ways = shapesOf(section!, 'force-head').map((head) => {
      const [tip, ...foot] = pointsOf(head);
      return Math.sign(tip![1] - foot[0]![1]);
    });
    // In the order in which they are named: P, W, B.
    expect(ways).toEqual([1, 1, -1]);
  });

  it('stands in fuel that is as deep as it is told, above the face or below it, to eye and ear', () => {
    for (const [height, word] of [
      ['24', 'below'],
      ['11', 'above'],
    ] as const) {
      const texts = { height, edge: 'far', tilt: '0' };
      const [section] = picture('float-level', texts);
      const level = result('float-level', texts, 'level');
      expect(Math.sign(level)).toBe(word === 'below' ? 1 : -1);
      expect(section!.label).toContain(` ${word} the gasket face`);
      expect(wordsOf(section!)).toContainEqual(expect.stringMatching(new RegExp(`^F .*${word}$`)));
      const face = boxOf(shapeOf(section!, 'face-line')).top;
      const fuel = boxOf(shapeOf(section!, 'fuel-line')).top;
      expect(Math.sign(fuel - face)).toBe(Math.sign(level));
    }
  });

  it('on a carburettor that hangs lower at the float has the fuel nearer to the face there', () => {
    // The pivot is drawn at the left. Fuel lies level: of a body tipped down at the right it stands higher there.
    const surface = (tilt: string): number => {
      const line = pointsOf(shapeOf(picture('float-level', { tilt })[0]!, 'fuel-line'));
      return Math.round(line[0]![1] - line.at(-1)![1]);
    };
    expect(surface('10')).toBeGreaterThan(5);
    expect(surface('0')).toBe(0);
    expect(surface('-10')).toBeLessThan(-5);
  });

  it('with more head stands higher, and its level has its ± on both sides', () => {
    const plot = picture('float-level', {})[1]!;
    const [x, y] = handleOf(plot);
    expect(heightAt(curveOf(plot, 'curve-other'), x)).toBeLessThan(y - 1);
    expect(heightAt(curveOf(plot, 'curve-main'), x)).toBeCloseTo(y, 0);
    const [top, bottom] = bandAt(shapeOf(plot, 'band-error'), x);
    expect(y - top).toBeGreaterThan(1);
    expect(bottom - y).toBeCloseTo(y - top, 0);
  });
});

describe('needle and jet', () => {
  const texts = {
    ...{ 'main-jet': '1.2', throttle: '60', 'needle-diameter': '2.5', taper: '2', straight: '15' },
    ...{ 'second-diameter': '2.5', 'second-taper': '1.5', 'second-straight': '15' },
    ...{ 'jet-bore': '2.6', clip: '3', clips: '5', 'clip-pitch': '1', 'slide-travel': '30' },
  };
  const [plot, drawing] = picture('needle-and-clip', texts);

  it('has ring, second needle and main jet at their areas', () => {
    const [x, y] = handleOf(plot!);
    const foot = boxOf(shapeOf(plot!, 'zone')).bottom;
    const scale = result('needle-and-clip', texts, 'annulus') / (foot - y);
    const main = shapeOf(plot!, 'rule-line').lines[0]![0]![1];
    // A hole of 1.2 mm has 1.131 mm².
    expect((foot - main) * scale).toBeCloseTo(1.131, 1);
    const second = heightAt(curveOf(plot!, 'curve-other'), x);
    expect((foot - second) * scale).toBeCloseTo(
      result('needle-and-clip', texts, 'second-annulus'),
      1,
    );
    expect(second - y).toBeGreaterThan(3);
  });

  it('is drawn as thick in the mouth as it is told, and straight for as long as it is', () => {
    // 2.5 mm less 2 tan 1° for each mm of taper above the mouth.
    const atMouth = Number(/needle ([\d.]+) mm in/.exec(drawing!.label)![1]);
    const rise = 18 + (3 - 1) * 1;
    expect(atMouth).toBeCloseTo(2.5 - 2 * Math.tan(Math.PI / 180) * (rise - 15), 2);
    const ring = shapeOf(drawing!, 'ring-line').lines.map((line) => line.map(([at]) => at));
    const ends = ring.flat();
    const [left, right] = [Math.min(...ends), Math.max(...ends)];
    const middle = (left + right) / 2;
    const inner = Math.max(...ends.filter((at) => at < middle));
    expect((middle - inner) / ((right - left) / 2)).toBeCloseTo(atMouth / 2.6, 2);
    const outline = pointsOf(shapeOf(drawing!, 'needle'));
    const mouth = boxOf(shapeOf(drawing!, 'ring-line'));
    const bend = outline.filter(([at]) => at < middle).sort((a, b) => a[1] - b[1])[1]!;
    // The taper begins above the mouth by as much as the needle has risen out of its straight part.
    expect(bend[1]).toBeLessThan((mouth.top + mouth.bottom) / 2);
  });
});

describe('slides as found', () => {
  const texts = { method: 'drill', slides: '3', to: 'wanted', wanted: '2.5', thread: '1' };
  const [sheet] = picture('slide-balance', {
    ...texts,
    ...{ 'opening-1': '2', 'opening-2': '2.5', 'opening-3': '3.25' },
  });

  it('are told their turns with their sign', () => {
    expect(wordsOf(sheet!)).toEqual(expect.arrayContaining(['+0.50', '−0.75', 'leave it']));
  });

  it('have arrows whose heads are at the line that they are brought to', () => {
    const line = shapeOf(sheet!, 'target-line').lines[0]![0]![1];
    const arrows = shapesOf(sheet!, 'dimension');
    expect(arrows).toHaveLength(2);
    for (const { lines } of arrows) {
      const [shaft, ...barbs] = lines;
      const [tail, tip] = [shaft![0]!, shaft![1]!];
      expect(tip[1]).toBeCloseTo(line, 1);
      const ends = [shaft!.at(-1)!, barbs.at(-1)!.at(-1)!];
      // Behind the tip, on the side of the tail.
      for (const [, y] of ends) expect(Math.sign(y - tip[1])).toBe(Math.sign(tail[1] - tip[1]));
    }
  });
});

describe('ports over a turn', () => {
  const texts = { deck: '3', 'exhaust-edge': '25', 'transfer-edge': '38', inlet: 'disc' };
  const disc = { ...texts, 'disc-opens': '130', 'disc-closes': '60' };
  const [speed, open] = picture('time-area', disc);
  const perDegree = (sheet: Sheet): number => {
    const at = (figure: string): number => {
      const { area } = sheet.texts.find(({ words }) => words === figure)!;
      return (area.left + area.right) / 2;
    };
    return (at('300') - at('100')) / 200;
  };

  it('open where their blowdown begins and ends', () => {
    const patch = boxOf(shapeOf(open!, 'port-blowdown'));
    expect(patch.right - patch.left).toBeGreaterThan(10);
    const from = (port: string): number => boxOf(shapeOf(open!, `port-line-${port}`)).left;
    const step = 2.1 * perDegree(open!);
    expect(Math.abs(from('exhaust') - patch.left)).toBeLessThan(step);
    expect(Math.abs(from('transfer') - patch.right)).toBeLessThan(step);
  });

  it('a disc opens its inlet before the top and shuts it after it', () => {
    const parts = shapesOf(open!, 'port-line-inlet').slice(-2).map(boxOf);
    const top = open!.texts.find(({ words }) => words === '0')!.area;
    const nought = (top.left + top.right) / 2;
    const degrees = (x: number): number => (x - nought) / perDegree(open!);
    // Shut 60° after the top, open again 130° before the next.
    expect(Math.abs(degrees(parts[0]!.right) - 60)).toBeLessThan(4);
    expect(Math.abs(degrees(parts[1]!.left) - 230)).toBeLessThan(4);
  });

  it('against the speed are as far apart as their time-areas', () => {
    const [x, y] = handleOf(speed!);
    const foot = Math.max(...shapesOf(speed!, 'rule-line').map((line) => boxOf(line).bottom));
    const transfer = heightAt(curveOf(speed!, 'port-line-transfer'), x);
    expect((foot - transfer) / (foot - y)).toBeCloseTo(
      result('time-area', disc, 'transfer-time-area') /
        result('time-area', disc, 'exhaust-time-area'),
      1,
    );
  });
});

describe('squish velocity', () => {
  const texts = { at: '30' };
  const [sheet] = picture('squish-velocity', texts);
  const curve = curveOf(sheet!, 'curve-main');

  it('has its largest named where it is, and not where it is read off', () => {
    const peak = curve.reduce((most, point) => (point[1] < most[1] ? point : most));
    const tick = middleOf(shapesOf(sheet!, 'dimension').at(-1)!);
    expect(Math.abs(tick[0] - peak[0])).toBeLessThan(8);
    expect(Math.abs(handleOf(sheet!)[0] - peak[0])).toBeGreaterThan(40);
  });

  it('has the ± of the largest either side of it', () => {
    const { spreads, results } = state('squish-velocity', texts);
    const share = spreads['peak']! / (results['peak'] as number);
    const peak = curve.reduce((most, point) => (point[1] < most[1] ? point : most));
    const foot = footOf(sheet!);
    const [top, bottom] = bandAt(shapeOf(sheet!, 'band-error'), peak[0]);
    expect((bottom - top) / (foot - peak[1])).toBeCloseTo(2 * share, 2);
  });
});

describe('oil against petrol', () => {
  const texts = { fuel: '5', by: 'ratio', ratio: '25', already: '2', 'already-ratio': '25' };
  const [sheet] = picture('fuel-and-oil', texts);

  it('has this ratio’s line through the petrol that is put in and its oil', () => {
    const [x, y] = handleOf(sheet!);
    expect(heightAt(curveOf(sheet!, 'curve-main'), x)).toBeCloseTo(y, 0);
    // 20 to 1 asks for a quarter more than 25 to 1.
    const foot = curveOf(sheet!, 'curve-main')[0]![1];
    const others = shapesOf(sheet!, 'curve-other').slice(1);
    const most = Math.min(...others.map((other) => heightAt(pointsOf(other), x)));
    expect((foot - most) / (foot - y)).toBeCloseTo(1.25, 1);
  });

  it('has all that is then in the tank, each part as long as its share', () => {
    // 2 litres at 25 to 1 are 1.923 of petrol and 0.077 of oil; 5 more take 0.2.
    expect(wordsOf(sheet!)).toContain('in the tank then: 7.20 litres at 25.0 : 1');
    const parts = ['fuel', 'petrol-new', 'oil-part'].map((look) => {
      const { left, right } = boxOf(shapeOf(sheet!, 'tank-part', look));
      return right - left;
    });
    const whole = parts.reduce((sum, part) => sum + part, 0);
    const shares = parts.map((part) => part / whole);
    [1.923, 5, 0.277].forEach((litres, i) => expect(shares[i]).toBeCloseTo(litres / 7.2, 2));
  });
});

describe('the degree disc as it is printed', () => {
  /** Whether the figure of a quarter turn stands left or right of the middle. */
  const sideOf = (turning: string, fixed: string): string => {
    const [disc] = picture('degree-disc', { turning, 'fixed-to': fixed, numbering: 'one-way' });
    const { area } = disc!.texts.find(({ words }) => words === '90')!;
    return (area.left + area.right) / 2 < (disc!.frame.left + disc!.frame.right) / 2
      ? 'left'
      : 'right';
  };

  // On the crank it comes round to the pointer at the top; on the case the pointer goes round to it.
  it('has its figures on the side from which they come to the pointer', () => {
    expect(sideOf('clockwise', 'crank')).toBe('left');
    expect(sideOf('anticlockwise', 'crank')).toBe('right');
    expect(sideOf('clockwise', 'case')).toBe('right');
    expect(sideOf('anticlockwise', 'case')).toBe('left');
  });

  it('says below which mark is before the top and which after it', () => {
    const texts = { marks: '2.2', 'marks-after': '3' };
    const evaluation = state('degree-disc', texts);
    const html = drawn(calculatorBySlug('degree-disc'), { texts, lengths: 'mm', evaluation });
    expect(html).toMatch(/A: 2\.20 mm before, [\d.]+°; B: 3\.00 mm after, /);
  });
});
