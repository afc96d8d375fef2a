import { describe, expect, it } from 'vitest';
import { calculatorBySlug } from '../../site/all-calculators.ts';
import { picture } from './support/draw.tsx';
import type { ShapeMark, Sheet } from './support/marks.ts';
import type { Point } from './support/paths.ts';
import { middleOf, pointsOf, shapesOf } from './support/shapes.ts';

const circuit = (texts: Record<string, string>): Sheet => picture('wiring', texts)[0]!;
const wordsOf = (sheet: Sheet): string[] => sheet.texts.map(({ words }) => words);
const linesOf = (sheet: Sheet, look: string) => shapesOf(sheet, look).flatMap(({ lines }) => lines);

/** Which way an arrow's head points: its tip is drawn first, then the corners of its foot. */
function way(head: ShapeMark): Point {
  const [tip, one, other] = pointsOf(head);
  return [
    Math.sign(Math.round(tip![0] - (one![0] + other![0]) / 2)),
    Math.sign(Math.round(tip![1] - (one![1] + other![1]) / 2)),
  ];
}

it('what is chosen of earth and leads is what is drawn', () => {
  const { earth, leads } = calculatorBySlug('wiring').inputs as unknown as Record<
    'earth' | 'leads',
    { readonly options: Readonly<Record<string, string>> }
  >;
  for (const [option, words] of Object.entries(earth.options)) {
    const { label } = circuit({ earth: option, coils: '1' });
    expect(label).toContain(words.toLowerCase());
  }
  expect(leads.options).toEqual({ one: 'One plug', two: 'Two plugs' });
});

describe('the current of the circuit', () => {
  it.each(['negative', 'positive'])(
    'leaves the battery at its plus and comes home at its minus, %s to earth',
    (earth) => {
      const sheet = circuit({ earth, coils: '2' });
      const signs = sheet.texts.filter(({ words }) => /^[+−]$/.test(words));
      const placeOf = (pair: typeof signs, sign: string): number =>
        pair.find(({ words }) => words === sign)!.area.left;
      const heads = shapesOf(sheet, 'pointer').filter(({ classes }) => !classes.includes('plug'));
      const [feed, bus, ...coils] = heads.map(way);
      // The upper post is at the feed, which goes off to the left and down to the coils.
      const out = signs[0]!.words === '+' ? 1 : -1;
      expect(feed).toEqual([-out, 0]);
      expect(bus).toEqual([0, out]);
      expect(coils).toHaveLength(2);
      coils.forEach((coil, i) => {
        const pair = signs.slice(2 + 2 * i, 4 + 2 * i);
        expect(coil).toEqual([Math.sign(placeOf(pair, '−') - placeOf(pair, '+')), 0]);
      });
    },
  );

  it('goes over contacts that are shut, and past no condenser', () => {
    const sheet = circuit({ coils: '1' });
    const live = linesOf(sheet, 'wire-live').filter((line) => line.length === 2);
    const slanting = live.filter(([a, b]) => a![0] !== b![0] && a![1] !== b![1]);
    // The lever of the switch, high up, and the moving contact.
    const [moving, ...more] = slanting.filter(([a]) => a![1] > 100);
    expect(more).toEqual([]);
    const meets = live.some(([a, b]) => {
      const [[x1, y1], [x2, y2]] = [moving![0]!, moving![1]!];
      const y = a![1];
      if (y !== b![1] || y < Math.min(y1, y2) || y > Math.max(y1, y2)) return false;
      const x = x1 + ((x2 - x1) * (y - y1)) / (y2 - y1);
      return x >= Math.min(a![0], b![0]) - 0.5 && x <= Math.max(a![0], b![0]) + 0.5;
    });
    expect(meets).toBe(true);
    const condenser = shapesOf(sheet, 'plates').find(({ lines }) => lines.length === 2)!;
    const [x, y] = middleOf(condenser);
    const through = linesOf(sheet, 'wire').filter((line) =>
      line.some(([, at], i) => {
        const last = line[i - 1];
        return last !== undefined && last[0] === x && (last[1] - y) * (at - y) < 0;
      }),
    );
    expect(through).toEqual([]);
  });

  it('goes through the ballast that there is, and each coil has what both let through', () => {
    // 12 V on 4 and 2 Ω, and next to nothing lost in half an inch of bus bar.
    const bare = { volts: '12', resistance: '4', contacts: '0', length: '0.05', area: '100' };
    const held = circuit({ ...bare, coils: '2', ballast: '2' });
    expect(wordsOf(held)).toEqual(expect.arrayContaining(['coil 1: 2.00 A', 'coil 2: 2.00 A']));
    expect(wordsOf(held).filter((words) => words === '2 Ω')).toHaveLength(2);
    const free = circuit({ ...bare, coils: '2', ballast: '0' });
    expect(wordsOf(free)).toEqual(expect.arrayContaining(['coil 1: 3.00 A', 'coil 2: 3.00 A']));
    expect(wordsOf(free).join(' ')).not.toContain('Ω');
    // The fuse, and a resistor for each coil.
    expect(shapesOf(held, 'part')).toHaveLength(3);
    expect(shapesOf(free, 'part')).toHaveLength(1);
  });

  it('is told to whoever hears it as it is written', () => {
    const texts = { volts: '12', current: '8', length: '5.8', area: '1', temperature: '20' };
    const sheet = circuit({ ...texts, contacts: '20', coils: '2', leads: 'two' });
    // 5.8 ÷ 58 and 0.02 Ω on 8 A are 0.96 V.
    expect(sheet.label).toMatch(
      /^Circuit of 2 coils with two plugs each, negative to earth, .*: battery 12\.0 volts, 8\.0 amperes .* lose 0\.96 volts, so that 11\.0 volts reach the coils\.$/,
    );
    expect(circuit({ ...texts, leads: 'one' }).label).not.toContain('two plugs');
    expect(wordsOf(sheet)).toContain('5.8 m, 1 mm²');
  });
});

describe('the current against the speed', () => {
  // Three coils of 4 Ω on 12 V.
  const texts = {
    volts: '12',
    resistance: '4',
    ballast: '0',
    coils: '3',
    rpm: '6000',
    idle: '1200',
  };
  const plot = picture('wiring', texts)[1]!;
  const curve = linesOf(plot, 'curve-main').at(-1)!;
  const at = (x: number): number => {
    const i = curve.findIndex(([there]) => there >= x);
    const [[x1, y1], [x2, y2]] = [curve[i - 1]!, curve[i]!];
    return y1 + ((y2 - y1) * (x - x1)) / (x2 - x1);
  };

  it('has its line of standing still named by what that draws', () => {
    expect(wordsOf(plot)).toContain('9.0 A');
  });

  it('has idle and the speed on the curve, each at its own place', () => {
    const marks = [shapesOf(plot, 'drop-end').at(-1)!, shapesOf(plot, 'handle-dot').at(-1)!];
    const places = marks.map(middleOf);
    for (const [x, y] of places) expect(y).toBeCloseTo(at(x), 0);
    // Of one scale from nought: 6000 rpm lie five times as far out as 1200.
    const nought = curve[0]![0] - (50 / 6000) * (places[1]![0] - curve[0]![0]);
    expect((places[1]![0] - nought) / (places[0]![0] - nought)).toBeCloseTo(5, 1);
    expect(places[1]![1]).toBeGreaterThan(places[0]![1] + 5);
  });
});
