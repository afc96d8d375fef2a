import { describe, expect, it } from 'vitest';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { setEntry, setFigure } from '../../calculators/sheet/edit.ts';
import { enter } from '../../calculators/sheet/enter.ts';
import { readOrder } from '../../calculators/sheet/boxes.ts';
import { judge, targetWords } from '../../calculators/sheet/judge.ts';
import { newEngine, type Engine } from '../../calculators/sheet/model.ts';
import { setEven } from '../../calculators/sheet/sets.ts';
import { sheetSummary } from '../../calculators/sheet/summary.ts';

const how = { lengths: 'mm' } as const;
const four = setFigure(newEngine('e-1', 'Four'), 'cylinders', 4);
const told = (engine: Engine, text: string): Engine => enter(engine, { kind: 'order' }, text, how);
const order = (engine: Engine, text: string): string => told(engine, text).firingOrder.join('-');

describe('a firing order', () => {
  it.each([
    '1-3-2-4',
    '1,3,2,4',
    '1, 3, 2, 4',
    '1324',
    '1 3 2 4',
    ' 1  3\t2\u00a04 ',
    '1.3.2.4',
    '1·3·2·4',
    '1–3–2–4',
    '1 — 3 — 2 — 4',
    '1−3−2−4',
    '1\u20113\u20112\u20114',
    '1/3/2/4',
    '1;3;2;4',
    '1 → 3 → 2 → 4',
    '1>3>2>4',
    '1->3->2->4',
  ])('is read from “%s”', (text) => {
    expect(order(four, text)).toBe('1-3-2-4');
    expect(told(four, text).unread).toEqual({});
  });

  it.each([
    ['1-3-2', 'leaves out cylinder 4.'],
    ['12', 'leaves out cylinders 3 and 4.'],
    ['1-3-2-2', 'names cylinder 2 more than once.'],
    ['1-3-2-4-1', 'names cylinder 1 more than once.'],
    ['1-3-2-5', 'names cylinder 5, and cylinders are counted from 1 to 4 here.'],
    ['0-1-2-3', 'names cylinder 0, and cylinders are counted from 1 to 4 here.'],
    ['13 24', '“13” is no cylinder number.'],
    ['1-3-b-4', '“b” is no cylinder number.'],
    ['1-3-2mm-4', '“2mm” is no cylinder number.'],
    ['-', 'leaves out cylinders 1, 2, 3 and 4.'],
  ])('is refused as “%s”, with what is wrong and what to do', (text, words) => {
    const { problem, value } = readOrder(four, text, how);
    expect(problem).toContain(words);
    expect(problem).toContain('Type each number from 1 to 4 once, such as 1-2-3-4');
    expect(value).toEqual([]);
    expect(told(four, text)).toMatchObject({ firingOrder: [], unread: { 'order:firing': text } });
  });

  it('may be left empty, and then no lead is named', () => {
    expect(readOrder(four, '  ', how).problem).toBeUndefined();
    expect(sheetSummary(four, 'mm', '')).not.toMatch(/lead|firing/i);
  });

  it('names each lead, in the text too', () => {
    expect(sheetSummary(told(four, '1324'), 'mm', '')).toContain(
      'Firing order: 1-3-2-4\nLeads in firing order: coil 1 to plug 1, coil 3 to plug 3, coil 2 to plug 2, coil 4 to plug 4',
    );
  });
});

it('is what the step of the leads is done to', () => {
  expect(targetWords(told(four, '1324'), 'leads', 'mm')).toMatch(/^Leads in firing order: coil 1 /);
  expect(targetWords(four, 'leads', 'mm')).toBeUndefined();
});

describe('sets and the firing order', () => {
  const directions = ({ figures }: Engine): unknown[] =>
    (['set-2', 'set-3', 'set-4'] as const).map((key) => figures[key]);

  it('that fire evenly stand in it, counted from set 1 whatever it begins with', () => {
    expect(directions(setEven(told(four, '1-3-2-4')))).toEqual([180, 90, 270]);
    expect(directions(setEven(told(four, '2-4-1-3')))).toEqual([180, 90, 270]);
    expect(directions(setEven(four))).toEqual([90, 180, 270]);
  });

  it('that contradict it are told so, before the plate is drilled', () => {
    const even = setEven(told(four, '1-3-2-4'));
    const plate = setFigure(even, 'plate-tolerance', 1);
    const said = (engine: Engine): string => judge(engine, 'plate', 'mm').whole.join(' ');
    expect(said(plate)).not.toContain('firing order');
    const other = told(plate, '1-2-3-4');
    expect(said(other)).toContain(
      'The firing order in the sheet is 1-2-3-4, and by their directions the sets come round as 1-3-2-4',
    );
    expect(said(setEntry(other, 'plate', 'found', 0, 90))).toContain('One of the two is wrong');
    // A set a lobe further on fires at the same moment.
    const lobes = setFigure(setFigure(setFigure(plate, 'lobes', 2), 'set-2', 270), 'set-3', 45);
    expect(said(setFigure(lobes, 'set-4', 135))).not.toContain('firing order');
  });

  it('of the demo agree', () => {
    expect(judge(demoSheet(), 'plate', 'mm').whole.join(' ')).not.toContain('firing order');
  });
});
