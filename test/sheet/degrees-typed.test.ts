import { expect, it } from 'vitest';
import { offeredIn } from '../../calculators/frame/field/offered.ts';
import type { LengthDisplay } from '../../calculators/frame/text/units.ts';
import { placeOf } from '../../calculators/sheet/box-places.ts';
import { readNumber } from '../../calculators/sheet/read-number.ts';
import { setFigure } from '../../calculators/sheet/set-figure.ts';
import { enter } from '../../calculators/sheet/enter.ts';
import { newEngine, type Engine } from '../../calculators/sheet/model.ts';

const target = { kind: 'figure', key: 'target' } as const;
const fired = { kind: 'reading', step: 'timing', moment: 'found', index: 0 } as const;

/** Piston below its top, mm: crank radius and rod drawn to scale, by Pythagoras. */
const below = (stroke: number, rod: number, angle: number): number => {
  const r = stroke / 2;
  const turned = (angle * Math.PI) / 180;
  return r + rod - r * Math.cos(turned) - Math.sqrt(rod ** 2 - (r * Math.sin(turned)) ** 2);
};

const single = setFigure(newEngine('e-1', 'Single'), 'stroke', 58);
const known = setFigure(single, 'rod', 110);
const problem = (
  engine: Engine,
  box: typeof target | typeof fired,
  text: string,
  lengths: LengthDisplay = 'mm',
): string => readNumber(engine, box, text, { lengths }).problem ?? '';

it.each([target, fired])('degrees are offered as the length they come to: %s', (box) => {
  for (const text of ['22°', '22 deg', '22 degrees', '22°0′']) {
    const [offer] = offeredIn(problem(known, box, text));
    expect(Number(offer!.replace(' mm', ''))).toBeCloseTo(below(58, 110, 22), 1);
    const engine = enter(known, box, offer!, { lengths: 'mm' });
    expect(engine.unread).toEqual({});
    // Nothing stands of degrees themselves, and what was typed is kept.
    expect(enter(known, box, text, { lengths: 'mm' }).unread).toEqual({ [placeOf(box)]: text });
  }
  const [inches] = offeredIn(problem(known, box, '22°', 'in'));
  expect(inches).toMatch(/^0\.\d+ in$/);
  expect(Number(inches!.replace(' in', '')) * 25.4).toBeCloseTo(below(58, 110, 22), 1);
});

it('where the rod is not known it is said what gives the length, and how they are set without', () => {
  const said = problem(single, target, '22°');
  expect(offeredIn(said)).toEqual([]);
  expect(said).toMatch(/With “Rod length” in the sheet the length is offered here/);
  expect(said).toContain('the calculator Piston position');
  expect(said).toMatch(/by a degree disc, zeroed on the true top, to open at 22° before it/);
  const [, least, most] = /puts it from ([\d.]+) mm to ([\d.]+) mm/.exec(said)!;
  expect(Number(least)).toBeCloseTo(below(58, 58 * 2.25, 22), 1);
  expect(Number(most)).toBeCloseTo(below(58, 58 * 1.75, 22), 1);
  expect(problem(newEngine('e-2', 'Bare'), target, '22°')).toMatch(
    /With “Stroke” and “Rod length” in the sheet/,
  );
  expect(problem(single, fired, '-3°')).toContain('to open at 3° after it');
});

it('what comes to no place of this box is refused as elsewhere', () => {
  expect(offeredIn(problem(known, target, '-3°'))).toEqual([]);
  expect(offeredIn(problem(known, target, '200°'))).toEqual([]);
  expect(Number(offeredIn(problem(known, fired, '-3°'))[0]!.replace(/ mm|−/g, ''))).toBeCloseTo(
    below(58, 110, 3),
    1,
  );
  const squish = { kind: 'figure', key: 'squish' } as const;
  const other = readNumber(known, squish, '22°', { lengths: 'mm' }).problem;
  expect(other).toMatch(/^“22°” is an angle, and this field takes a length/);
  // A bare figure, and feet and inches, are lengths.
  for (const text of ['2.5', '0.1 in', '']) expect(problem(known, target, text)).toBe('');
});

it('a bare figure deeper than engines fire is asked about: degrees lose their sign in a note', () => {
  const engine = setFigure(setFigure(newEngine('a', 'A'), 'stroke', 58), 'rod', 110);
  const doubt = (text: string, lengths: LengthDisplay = 'mm') =>
    readNumber(engine, { kind: 'figure', key: 'target' }, text, { lengths }).doubt;
  // What is offered is taken: the length that the degrees come to, on this stroke and rod.
  const [length, asTyped] = offeredIn(doubt('22')!);
  expect(asTyped).toBe('22 mm');
  expect(parseFloat(length!)).toBeCloseTo(below(58, 110, 22), 2);
  const taken = readNumber(engine, target, length!, { lengths: 'mm' });
  expect([taken.problem, taken.doubt]).toEqual([undefined, undefined]);
  // No engine fires so early, and without a rod no degrees are a length.
  expect(offeredIn(doubt('55')!)).toEqual(['55 mm']);
  const unknown = setFigure(engine, 'rod', undefined);
  const asked = readNumber(unknown, target, '22', { lengths: 'mm' }).doubt!;
  expect(offeredIn(asked)).toEqual(['22 mm']);
  expect(asked).toContain('With “Rod length” in the sheet the length is offered here');
  // It is asked until it is answered: what is typed stands at once.
  const stands = setFigure(engine, 'target', 22);
  expect(readNumber(stands, target, '22', { lengths: 'mm' }).doubt).toBe(doubt('22'));
  // Typed with its unit it is no slip of that, and no engine is set so all the same.
  expect(doubt('22 mm')).toMatch(/^On the stroke and rod in the sheet that is \d+° before the top/);
  expect(offeredIn(doubt('22 mm')!)).toEqual([]);
  expect(doubt('2.3')).toBeUndefined();
  expect(doubt('0.09 in', 'in')).toBeUndefined();
});
