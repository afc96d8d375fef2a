import { describe, expect, it } from 'vitest';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { setEntry } from '../../calculators/sheet/set-entry.ts';
import { setFigure } from '../../calculators/sheet/set-figure.ts';
import { enter } from '../../calculators/sheet/enter.ts';
import { readingSpec } from '../../calculators/sheet/box-specs.ts';
import { readOrder } from '../../calculators/sheet/read-order.ts';
import { judge, targetWords } from '../../calculators/sheet/judge.ts';
import { fillFrom, placesFor } from '../../calculators/sheet/fill.ts';
import { boxTitle, orderWords } from '../../calculators/sheet/firing-order.ts';
import { howOf } from '../../calculators/sheet/how-of.ts';
import { leadWords } from '../../calculators/sheet/leads.ts';
import {
  boxesOf,
  boxName,
  countedAs,
  newEngine,
  type Engine,
} from '../../calculators/sheet/model.ts';
import { movedOrNot } from '../../calculators/sheet/unmoved.ts';
import { progressOf } from '../../calculators/sheet/progress.ts';
import { directionsOf, setEven } from '../../calculators/sheet/sets.ts';
import { hasStep, steps, type StepId } from '../../calculators/sheet/steps.ts';
import { sheetSummary } from '../../calculators/sheet/summary.ts';
import { summaryTable } from '../../calculators/sheet/summary-table.ts';

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

it('of which the step says how it is proved: each plug by its piston, those of one set together', () => {
  const how = steps.leads.how.join(' ');
  expect(how).toMatch(/each plug sparks as its own piston comes near its top, in the firing order/);
  expect(how).toContain('plugs of one set spark together');
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

  it('that contradict it are judged by nothing, and no leads are told, until one is put right', () => {
    const even = setFigure(setEven(told(four, '1-3-2-4')), 'plate-tolerance', 1);
    // Set 2 at 180°, 3 at 90°, 4 at 270°: on from each to the next by number.
    const measured = [90, 180, 270, 180].reduce(
      (so, angle, i) => setEntry(so, 'plate', 'found', i, angle),
      even,
    );
    const results = (engine: Engine): string[] =>
      judge(engine, 'plate', 'mm').rows.map(({ result }) => result);
    expect(results(measured)).toEqual(['pass', 'pass', 'pass', 'pass']);
    const odd = told(measured, '1-2-3-4');
    expect(results(odd)).toEqual(['unjudged', 'unjudged', 'unjudged', 'unjudged']);
    expect(judge(odd, 'plate', 'mm').rows[0]!.words).toMatch(/^not judged: .* in the sheet$/);
    expect(progressOf(odd).plate.state).toBe('unjudged');
    const text = sheetSummary(odd, 'mm', '');
    expect(text).toContain('One of the two is wrong');
    expect(text).not.toContain('Leads in firing order');
    expect(targetWords(odd, 'leads', 'mm')).toMatch(/^No leads are told yet\. The firing order/);
  });

  it('of the demo agree', () => {
    expect(judge(demoSheet(), 'plate', 'mm').whole.join(' ')).not.toContain('firing order');
  });
});

/** Two pairs that fire together, each by one set with a coil of two leads. */
const paired = setFigure(four, 'sets', 2);

describe('sets that fire several cylinders', () => {
  it.each(['1+4-2+3', '1+4, 2+3', '1 + 4 - 2 + 3', '14-23', '1&4 2&3'])(
    'take the order “%s”',
    (text) => {
      const engine = told(paired, text);
      expect(engine.unread).toEqual({});
      expect(engine.firingOrder).toEqual([1, 4, 2, 3]);
      expect(orderWords(engine)).toBe('1+4-2+3');
      expect(leadWords(engine)).toBe(
        'Leads in firing order: set 1 fires plugs 1 and 4, set 2 fires plugs 2 and 3',
      );
    },
  );

  it('have their leads told in the order in which they fire, and not as they are numbered', () => {
    const six = setFigure(setFigure(four, 'cylinders', 6), 'sets', 3);
    expect(leadWords(told(six, '1+6-3+4-2+5'))).toBe(
      'Leads in firing order: set 1 fires plugs 1 and 6, set 3 fires plugs 3 and 4, set 2 fires plugs 2 and 5',
    );
  });

  it.each(['1-4-2-3', '1, 4, 2, 3', '1423'])('are not guessed from the order “%s”', (text) => {
    const engine = told(paired, text);
    expect(engine.firingOrder).toEqual([]);
    expect(leadWords(engine)).toBeUndefined();
    expect(readOrder(engine, text, { lengths: 'mm' }).problem).toMatch(
      /names one cylinder after the other, but 2 sets of points fire 4 cylinders here, 2 each, and it does not say which share a set\. Join those that one set fires by \+, such as 1\+2/,
    );
  });

  it('are not guessed from an order that was told before there were fewer sets than cylinders', () => {
    const engine = setFigure(told(four, '1-4-2-3'), 'sets', 2);
    expect(engine.firingOrder).toEqual([]);
    expect(engine.unread['order:firing']).toBe('1-4-2-3');
    // By one set all are fired, in whatever order.
    expect(setFigure(told(four, '1-4-2-3'), 'sets', 1).firingOrder).toEqual([1, 4, 2, 3]);
  });

  it('stand evenly by their own number, and not by that of the cylinders', () => {
    expect(directionsOf(setEven(told(paired, '1+4-2+3')))).toEqual([0, 180]);
    const six = setFigure(setFigure(newEngine('e-2', 'Six'), 'cylinders', 6), 'sets', 3);
    // Set 2 fires 2 and 5, which come last.
    expect(directionsOf(setEven(told(six, '1+6-3+4-2+5')))).toEqual([0, 240, 120]);
  });

  it('have one box each for gap, plate, coil and timing, named by the set', () => {
    const boxes = (id: StepId): number => boxesOf(paired, id);
    expect(
      ['gap', 'insulation', 'plate', 'timing', 'condenser', 'coil'].map((id) =>
        boxes(id as StepId),
      ),
    ).toEqual([2, 2, 2, 2, 2, 2]);
    expect(['squish', 'ring-gap', 'compression', 'plug'].map((id) => boxes(id as StepId))).toEqual([
      4, 4, 4, 4,
    ]);
    expect(boxName(steps.timing.reading!, 1, paired)).toBe('Set 2');
    expect(boxName(steps.timing.reading!, 1, four)).toBe('Cylinder 2');
    // A coil for each plug, two of them to a set.
    expect(boxesOf(setFigure(paired, 'fed-coils', 4), 'coil')).toBe(4);
    expect(boxesOf(setFigure(paired, 'fed-coils', 0), 'coil')).toBe(2);
  });

  it('fill the calculators of the plate by their own number', () => {
    const fill = fillFrom(told(paired, '1+4-2+3'), 'plate-layout', ['sets', 'spacing-1']);
    expect(fill.sets).toBe('2');
    expect(fillFrom(paired, 'plate-setting', ['cylinders']).cylinders).toBe('2');
    expect(fillFrom(paired, 'compression', ['cylinders']).cylinders).toBe('4');
  });

  it('need no plate proved where there is one', () => {
    expect(hasStep(setFigure(four, 'sets', 1).figures, 'plate')).toBe(false);
    expect(hasStep(paired.figures, 'plate')).toBe(true);
  });

  it.each([
    ['1+4-2+3+', '“+” is no cylinder number'],
    ['1+4-2-3', '“1+4” cannot be so: 2 sets of points fire 4 cylinders, 2 each.'],
    ['1-4+2-3', '“4+2” cannot be so'],
    ['1+4-2', 'leaves out cylinder 3.'],
    ['1+4-2+2', 'names cylinder 2 more than once.'],
  ])('refuse the order “%s”', (text, words) => {
    expect(readOrder(paired, text, how).problem).toContain(words);
  });

  it('an order of pairs asks first how many sets there are, and is read once that is said', () => {
    const early = told(four, '1+4-2+3');
    expect(readOrder(four, '1+4-2+3', how).problem).toContain('Say first under “Sets of points”');
    expect(early.firingOrder).toEqual([]);
    expect(setFigure(early, 'sets', 2).firingOrder).toEqual([1, 4, 2, 3]);
  });

  it('are told by the calculator of the crank, and no directions by the cylinder with them', () => {
    const results: Record<string, number> = { sets: 2, 'set-2': 180, 'set-3': 180, 'set-4': 0 };
    const keys = (engine: Engine, sets: number): string[] =>
      placesFor(
        engine,
        'firing-order',
        (key) => (key === 'cylinders' ? 4 : undefined),
        (name) => (name === 'sets' ? sets : results[name]),
      ).flatMap((place) => (place.kind === 'figure' ? [place.key] : []));
    expect(keys(four, 2)).toEqual(['cylinders', 'sets']);
    expect(keys(four, 4)).toEqual(['cylinders', 'sets', 'set-2', 'set-3', 'set-4']);
    expect(keys(paired, 4)).not.toContain('set-2');
  });

  it('are told with the order in which they fire, where the sheet can read it', () => {
    const orders = (sequence: number, cylinders: number, sets: number): string[] =>
      placesFor(
        newEngine('e-9', 'Any'),
        'firing-order',
        (key) => (key === 'cylinders' ? cylinders : undefined),
        (name) => ({ sequence, sets })[name],
      ).flatMap((place) => (place.kind === 'order' ? [place.text] : []));
    expect(orders(10423, 4, 3)).toEqual([]);
    expect(orders(104203, 4, 2)).toEqual(['1+4-2+3']);
    expect(orders(1324, 4, 4)).toEqual(['1-3-2-4']);
  });

  it('are no more than the cylinders', () => {
    const box = { kind: 'figure', key: 'sets' } as const;
    const more = enter(four, box, '5', how);
    expect(more.figures.sets).toBeUndefined();
    expect(more.unread).toHaveProperty(['figure:sets']);
  });
});

describe('one cam with a lobe for each cylinder of a set', () => {
  const twin = [['cylinders', 2] as const, ['sets', 1] as const, ['lobes', 2] as const].reduce(
    (so, [key, value]) => setFigure(so, key, value),
    newEngine('e-3', 'Twin at 180'),
  );

  it('fires them one after the other, and is so told', () => {
    expect(orderWords(told(twin, '1-2'))).toBe('1-2');
    expect(leadWords(told(twin, '1-2'))).toBe('Leads in firing order: set 1 fires plugs 1 and 2');
    expect(told(twin, '1+2').firingOrder).toEqual([]);
    const asRead = (order: string) => readOrder(twin, order, how).problem;
    expect(asRead('1 + 2')).toMatch(
      /^“1 \+ 2” joins cylinders that fire together, and by its lobes the cam opens each set 2 times a turn/,
    );
    expect(asRead('1+2')).toContain('Type 1-2, or correct the lobes');
    expect(asRead('1+3')).toMatch(/names cylinder 3/);
    // Told before the lobes were.
    const early = told(setFigure(twin, 'lobes', undefined), '1-2');
    expect(orderWords(setFigure(early, 'lobes', 2))).toBe('1-2');
    expect(orderWords(setFigure(early, 'lobes', 1))).toBe('1+2');
  });

  // Four that fire 1-3-2-4, a quarter of a turn apart: a set that opens twice a turn fires 1 and 2, the other 3 and 4.
  it('has the others’ sets between: four fire a quarter of a turn apart by two sets so far apart', () => {
    const two = setFigure(setFigure(four, 'sets', 2), 'lobes', 2);
    const engine = told(two, '1-3-2-4');
    expect(leadWords(engine)).toBe(
      'Leads in firing order: set 1 fires plugs 1 and 2, set 2 fires plugs 3 and 4',
    );
    expect(directionsOf(setEven(engine))).toEqual([0, 90]);
  });
});

describe('the timing of cylinders that one set fires by lobes of their own', () => {
  const figures = { cylinders: 2, sets: 1, lobes: 2, stroke: 50, rod: 100, target: 2.5 };
  const twin: Engine = {
    ...newEngine('e-6', 'Twin at 180'),
    figures: { ...figures, 'timing-tolerance': 1 },
  };
  const read = (...entries: number[]): Engine =>
    entries.reduce((so, value, i) => setEntry(so, 'timing', 'found', i, value), twin);

  it('is read at each, and is not done by the first alone', () => {
    expect(boxesOf(twin, 'timing')).toBe(2);
    expect(boxName(steps.timing.reading!, 1, twin)).toBe('Cylinder 2');
    expect(boxesOf(twin, 'gap')).toBe(1);
    expect(progressOf(read(2.5)).timing.state).not.toBe('pass');
    expect(progressOf(read(2.5, 2.5)).timing.state).toBe('pass');
    expect(howOf(twin, 'timing').join(' ')).toMatch(/read every one of them, at its own top/);
    expect(howOf(twin, 'timing').join(' ')).not.toMatch(/no box/);
  });

  // On 50 and 100 mm, 3.25 mm before the top are 26.4°, 2.5 mm 23.1° and 2.0 mm 20.6° (cosines of the slider-crank).
  it('is put right by what moves both, and what lobes leave is told', () => {
    expect(judge(read(3.25, 3.25), 'timing', 'mm').whole.join(' ')).toMatch(
      /^Turn the plate, or move the set, the way the cam turns, .* by 3\.3° of crank\. Every cylinder is then within its limits\./,
    );
    expect(judge(read(3.25, 2), 'timing', 'mm').whole.join(' ')).toMatch(
      /by 3\.3° of crank\. The earliest is then at the figure, and none is early\. The rest is in the lobes/,
    );
    expect(judge(read(2.5, 2), 'timing', 'mm').whole.join(' ')).toMatch(
      /^Leave plate and set where they are\. The earliest is then at the figure/,
    );
  });

  // Four lobes of a cam at half speed pass as often as two at crank speed; two at half speed pass once.
  it('goes by how often lobes pass, and not by how many there are', () => {
    const at = (lobes: number, ratio: number): Engine =>
      setFigure(setFigure(twin, 'lobes', lobes), 'speed-ratio', ratio);
    expect(boxesOf(at(4, 0.5), 'timing')).toBe(2);
    expect(boxesOf(at(2, 0.5), 'timing')).toBe(1);
    // By a cam at half speed two sets of two lobes fire pairs, which the order did not name.
    const two = told(setFigure(setFigure(four, 'sets', 2), 'lobes', 2), '1-3-2-4');
    expect(two.firingOrder).toEqual([1, 3, 2, 4]);
    expect(setFigure(two, 'speed-ratio', 0.5).firingOrder).toEqual([]);
  });

  it('is moved at both by the one set: there is no other that was not, and a gap that is out is of both', () => {
    const limits = { gap: 0.35, 'gap-tolerance': 0.03 };
    const gapped = { ...twin, figures: { ...twin.figures, ...limits } };
    const out = [2.5, 2.5].reduce(
      (so, value, i) => setEntry(so, 'timing', 'found', i, value),
      setEntry(gapped, 'gap', 'found', 0, 0.28),
    );
    const words = judge(out, 'timing', 'mm').rows.map((row) => row.words);
    expect(words).toEqual([
      expect.stringContaining('set 1 is still to be corrected'),
      expect.stringContaining('set 1 is still to be corrected'),
    ]);
    const again = setEntry(read(3.25, 2.5), 'timing', 'left', 0, 2.5);
    expect(movedOrNot(again, 'timing')).toBeUndefined();
    expect(judge(again, 'timing', 'mm').rows[1]!.words).toMatch(/Read this one again\.$/);
  });

  it('has the tops of both on one disc, half a turn apart', () => {
    const box = { kind: 'reading', step: 'top', moment: 'found', index: 1 } as const;
    const at = (shown: string): unknown => enter(twin, box, shown, how).readings.top?.found[1];
    expect(at('180.3')).toBeCloseTo(0.3, 9);
    expect(at('120.2')).toBeUndefined();
  });
});

it('a cylinder that shares its set is looked for where that set stands', () => {
  const pairs = setFigure(setFigure(told(paired, '1+2-3+4'), 'set-2', 180), 'cylinders', 4);
  const top = (index: number, shown: string): unknown =>
    enter(pairs, { kind: 'reading', step: 'top', moment: 'found', index }, shown, how).readings.top
      ?.found[index];
  expect(top(1, '0.2')).toBeCloseTo(0.2, 9);
  expect(top(2, '180.4')).toBeCloseTo(0.4, 9);
  expect(top(3, '179.9')).toBeCloseTo(-0.1, 9);
  expect(top(1, '180.4')).toBeUndefined();
});

it('of a coil with two leads the step says that it sparks at the bottom too', () => {
  const twin = setFigure(setFigure(newEngine('e-5', 'Twin'), 'cylinders', 2), 'sets', 1);
  expect(howOf(twin, 'leads').join(' ')).toMatch(/each plug sparks near the bottom of its own/);
  expect(howOf(four, 'leads').join(' ')).not.toMatch(/spare spark/);
});

describe('a box of a set that fires several cylinders', () => {
  const shared: Engine = {
    ...newEngine('e-4', 'Two sets'),
    figures: { cylinders: 4, sets: 2, 'fed-coils': 4 },
    firingOrder: [1, 4, 2, 3],
  };
  const timing = steps.timing.reading!;

  it('is called by its set, with the cylinders', () => {
    expect([0, 1].map((i) => boxTitle(timing, i, shared))).toEqual([
      'Set 1 (cylinders 1, 4)',
      'Set 2 (cylinders 2, 3)',
    ]);
    expect(readingSpec(shared, 'timing', 1, 'found').label).toMatch(/^Set 2 \(cylinders 2, 3\), /);
    // Where the order is not known, nobody says which.
    expect(boxTitle(timing, 1, { ...shared, firingOrder: [] })).toBe('Set 2');
    // Nor is anything said where each has its own.
    expect(boxTitle(timing, 1, { ...shared, figures: { cylinders: 4 } })).toBe('Cylinder 2');
    expect(boxTitle(steps.gap.reading!, 1, { ...shared, figures: { cylinders: 4 } })).toBe('Set 2');
    expect(boxTitle(steps.squish.reading!, 1, shared)).toBe('Cylinder 2');
  });

  it('and so is its line in a summary, whose columns say what they count', () => {
    const read = setEntry(
      setEntry(shared, 'timing', 'found', 1, 2.2),
      'end-float',
      'found',
      0,
      0.2,
    );
    expect(sheetSummary(read, 'mm', '')).toContain(
      'set 1 (cylinders 1, 4) –; set 2 (cylinders 2, 3) 2.2',
    );
    expect(summaryTable(read, 'mm').rows.map(({ step }) => step)).toEqual([
      `${steps['end-float'].title} (one crank)`,
      `${steps.timing.title} (each set)`,
    ]);
    expect(countedAs(steps.coil.reading!, shared)).toBe('each coil');
    expect(countedAs(steps.squish.reading!, shared)).toBe('');
  });
});
