import { describe, expect, it } from 'vitest';
import piston from '../../calculators/position/piston-position/calculator.tsx';
import { carriedOver } from '../../calculators/frame/carry.ts';
import { remarksOf } from '../../calculators/frame/whose.ts';
import { evaluate, type Texts } from '../../calculators/frame/evaluate.ts';
import { Absent, type AnyCalculator } from '../../calculators/frame/types.ts';

const calculator = piston as unknown as AnyCalculator;
const own = { stroke: '51', rod: '104', offset: '0' };
const other = { given: 'other', 'given-stroke': '54', 'given-rod': '110', 'given-offset': '0' };
const asked = (texts: Texts) => evaluate(calculator, { ...own, ...texts }, { lengths: 'mm' });
const at = (angle: string, texts: Texts = {}) => asked({ from: 'angle', angle, ...texts });

describe('piston position and crank angle', () => {
  it.each(['0', '0.03', '180'])('at %s° a tenth of a mm is worth no number of degrees', (angle) => {
    const { angle: found, 'degrees-per-tenth': worth } = at(angle).results;
    expect(found).toBe(Number(angle));
    expect(worth).toBeInstanceOf(Absent);
    expect((worth as Absent).why).toMatch(/^At dead centre the piston stands still/);
  });

  // A pin 10 mm towards the falling side: sines of 10/78.5 and 10/129.5 are 7.32° and 4.43°.
  it('refuses what lies beyond the bottom of the reader’s own crank, though not of the other', () => {
    const { problems } = at('178', { ...other, offset: '10' });
    expect(problems).toEqual([
      {
        key: 'angle',
        sentence: expect.stringContaining(
          '178.0° before the top, but bottom dead centre is only 177.1°',
        ),
      },
    ]);
    expect(at('178', { ...other, offset: '10', 'given-offset': '10' }).problems).toHaveLength(1);
    expect(at('178', other).problems).toEqual([]);
  });

  it('lays an arc that goes past the bottom to the rotor too, and to the rotor nothing else', () => {
    const wrong = ({ fields }: ReturnType<typeof asked>): string[] =>
      fields.filter(({ problem }) => problem !== undefined).map(({ key }) => key);
    // 60 mm on a rim of 20 mm are 344°.
    const byArc = asked({ from: 'arc', arc: '60', rotor: '20' });
    expect(wrong(byArc)).toEqual(['arc', 'rotor']);
    expect(byArc.problems[0]!.sentence).not.toMatch(/still the example’s/);
    expect(asked({ from: 'arc', arc: '300' }).problems[0]!.sentence).toContain(
      'Rotor diameter is still the example’s; give it first.',
    );
    const byAngle = at('178', { ...other, offset: '10' });
    expect(wrong(byAngle)).toEqual(['angle']);
    expect(byAngle.problems[0]!.sentence).not.toMatch(/Rotor/);
  });

  // By hand: 20 mm of a rim of 127 mm are 360 · 20 / (π · 127) = 18.046°, and on one of 95 mm π · 95 · 18.046 / 360 = 14.961 mm.
  it('takes an arc that was given for another engine on the rotor of that engine', () => {
    const arc = { ...other, from: 'arc', arc: '20', rotor: '95' };
    const on = asked({ ...arc, 'given-rotor': '127' });
    expect(on.results.angle).toBeCloseTo(18.0459, 4);
    expect(on.results.arc).toBeCloseTo(14.9606, 4);
    expect(remarksOf(calculator, on).join(' ')).not.toMatch(/counted on the rotor of this engine/);
    const carried = carriedOver(calculator, on, 'from', 'arc').texts;
    expect(carried.arc ?? '20').toMatch(/^20/);
    // Left empty it counts on this engine's own, as links of old have it, and that is said.
    const unsaid = asked(arc);
    expect(unsaid.results.angle).toBeCloseTo(24.1245, 4);
    expect(remarksOf(calculator, unsaid).join(' ')).toMatch(/counted on the rotor of this engine/);
    const beyond = asked({ ...arc, arc: '60', 'given-rotor': '20' });
    expect(beyond.fields.find(({ key }) => key === 'given-rotor')!.problem).toMatch(
      /before the top/,
    );
    const byAngle = at('20', { ...other, 'given-rotor': '127', rotor: '95' });
    // 20° of a rim of 127 mm are π · 127 · 20 / 360 = 22.166 mm.
    expect(
      Number.parseFloat(carriedOver(calculator, byAngle, 'from', 'arc').texts.arc!),
    ).toBeCloseTo(22.166, 2);
  });

  it('lays a crank that cannot be to the engine that it belongs to', () => {
    // A throw of 27 mm and an offset of 20 mm are more than a rod of 40 mm.
    const state = asked({ ...other, 'given-rod': '40', 'given-offset': '20' });
    expect(state.problems).toMatchObject([{ key: 'given-offset' }]);
  });

  // What stood is taken on as the kind of figure that is asked for, as it was told: of the other engine.
  it('carries a figure on when it is asked for as another kind', () => {
    const state = asked({ ...other, from: 'angle', angle: '20' });
    const { texts } = carriedOver(calculator, state, 'from', 'travel');
    // 27 + 110 − 27 cos 20° − √(110² − (27 sin 20°)²).
    expect(Number.parseFloat(texts.travel!)).toBeCloseTo(2.0166, 4);
  });
});

describe('a figure as a book writes it', () => {
  const problem = (key: 'travel' | 'angle', text: string): string | undefined =>
    evaluate(
      calculator,
      { from: key, [key]: text },
      { lengths: 'mm', origins: { [key]: 'yours' } },
    ).fields.find((field) => field.key === key)!.problem;

  it.each(['20°', '20 deg', '22,5°', '20 deg BTDC', '20° before TDC'])(
    'an angle in the box of a travel is told where it belongs: %s',
    (text) => {
      expect(problem('travel', text)).toMatch(
        /is an angle of the crank\. Under “You have” choose “Crank angle”, and type it there: 2[02]/,
      );
    },
  );

  it.each(['2.2 mm ATDC', '22 after TDC', '22 ABDC'])(
    '%s is not taken for before the top',
    (text) => {
      for (const key of ['travel', 'angle'] as const) {
        expect(problem(key, text) ?? '', key).not.toMatch(
          /and type it there|leave those words away/,
        );
      }
    },
  );

  it.each(['2.2 mm', '0.090 in', '90 thou B.T.D.C.'])(
    'a travel in the box of an angle is too: %s',
    (text) => {
      expect(problem('angle', text)).toMatch(/is a length: .* choose “Piston travel”/);
    },
  );

  it('words behind a figure are to be left away, and without them it is read', () => {
    expect(problem('travel', '2.2 mm BTDC')).toMatch(/leave those words away and type “2\.2 mm”/);
    expect(problem('angle', '20 before top dead centre')).toMatch(/type “20”/);
    for (const text of ['2.2', '2.2 mm', '2.2 mm + 5 thou']) {
      expect(problem('travel', text) ?? '').not.toMatch(/choose|leave/);
    }
    expect(problem('angle', '20°')).toBeUndefined();
  });
});
