import { describe, expect, it } from 'vitest';
import { readNumber } from '../../calculators/sheet/read-number.ts';
import { setEntry } from '../../calculators/sheet/set-entry.ts';
import { enter } from '../../calculators/sheet/enter.ts';
import type { FigureKey } from '../../calculators/sheet/figures.ts';
import { placesFor } from '../../calculators/sheet/fill.ts';
import { judge, targetWords } from '../../calculators/sheet/judge.ts';
import { newEngine, type Engine } from '../../calculators/sheet/model.ts';

const how = { lengths: 'mm', sums: undefined } as const;
const vee = (more: Partial<Record<FigureKey, number>> = {}): Engine => ({
  ...newEngine('e-1', 'Vee'),
  figures: { cylinders: 2, 'set-2': 90, 'top-tolerance': 0.25, 'plate-tolerance': 0.8, ...more },
});
const box = (index: number) => ({ kind: 'reading', step: 'top', moment: 'found', index }) as const;
const typed = (engine: Engine, index: number, text: string) =>
  readNumber(engine, box(index), text, how);
const read = (engine: Engine, ...entries: number[]): Engine =>
  entries.reduce((so, entry, i) => setEntry(so, 'top', 'found', i, entry), engine);
const words = (engine: Engine): string[] => judge(engine, 'top', 'mm').rows.map((row) => row.words);

describe('a disc that stays zeroed on cylinder 1', () => {
  it.each([
    ['90.2', 0.2],
    ['89.5', -0.5],
    // A disc marked both ways from its zero, and one read past a whole turn.
    ['-269.8', 0.2],
  ])('%s at cylinder 2 is taken from that cylinder’s own top', (text, value) => {
    const field = typed(vee(), 1, text);
    expect(field.problem).toBeUndefined();
    expect(field.value).toBeCloseTo(value, 9);
    expect(field.doubt).toMatch(/stands at 90° of a disc zeroed on cylinder 1/);
    const held = enter(vee(), box(1), text, how).readings.top!.found[1];
    expect(held).toBeCloseTo(value, 9);
  });

  it('on a half-speed shaft the crank turns twice as far as the plate', () => {
    expect(typed(vee({ 'set-2': 45, 'speed-ratio': 0.5 }), 1, '90.2').value).toBeCloseTo(0.2, 9);
  });

  it('a reading from its own zero is what it says, and cylinder 1 has no other', () => {
    expect(typed(vee(), 1, '0.2')).toMatchObject({ value: 0.2 });
    expect(typed(vee(), 1, '0.2').doubt).toBeUndefined();
    expect(typed(vee(), 0, '90.2').problem).toMatch(/from −30° to 30°/);
  });

  it('what is near neither is refused, with where its top stands', () => {
    expect(typed(vee(), 1, '180').problem).toMatch(
      /By the sheet its top stands at 90° of a disc zeroed on cylinder 1, and this is 90° past that/,
    );
    const unsaid = { ...vee(), figures: { cylinders: 2 } };
    expect(typed(unsaid, 1, '90.2').problem).toMatch(
      /Enter “Set 2, from set 1” in the sheet first/,
    );
  });

  it('is turned for no other cylinder while its own is not known', () => {
    const alone = setEntry(vee(), 'top', 'found', 1, 3);
    expect(words(alone)[1]).toMatch(/^It stands 3° past its place\. Read cylinder 1 first/);
    // Read as last, the other's change makes what was read of cylinder 1 old.
    const both = setEntry(read(vee(), 0, 0.4), 'top', 'left', 0, 0);
    const changed = setEntry(both, 'top', 'left', 1, 3, { kind: 'change' });
    expect(words(changed)[1]).not.toMatch(/Turn the disc/);
    expect(words(read(vee(), 3, 3))[1]).toMatch(/Turn the disc on the crank/);
  });

  it('where both would do it asks', () => {
    const narrow = typed(vee({ 'set-2': 20 }), 1, '20.1');
    expect(narrow.value).toBe(20.1);
    expect(narrow.doubt).toMatch(/0\.1° past it: write 0\.1 then/);
  });

  it('a calculator’s figure lands so too', () => {
    const places = placesFor(
      vee(),
      'find-tdc',
      () => undefined,
      (name) => ({ 'tdc-reading': 90.2 })[name],
    );
    expect(places).toEqual([{ kind: 'reading', step: 'top', index: 1, value: 0.2 }]);
  });

  it('each box says to what it is set, and on which cylinder the disc is zeroed', () => {
    const of = (index?: number) => targetWords(vee(), 'top', 'mm', index);
    expect(of(0)).toBe('0° ± 0.25°, the disc zeroed on this cylinder');
    expect(of(1)).toBe('0° ± 0.25° from its own top, at 90° of the disc zeroed on cylinder 1');
    // On paper there is no room for each.
    expect(of()).toBe('0° ± 0.25°');
    expect(targetWords({ ...vee(), figures: { 'top-tolerance': 0.25 } }, 'top', 'mm', 0)).toBe(
      '0° ± 0.25°',
    );
  });
});

describe('one disc shows every cylinder, and is turned for all or not', () => {
  it('is not turned where that puts out a cylinder which is right', () => {
    const [first, second] = words(read(vee(), 0, 0.5));
    expect(first).toBe('within its limits');
    expect(second).not.toMatch(/^Turn the disc/);
    expect(second).toMatch(/Do not turn the disc for this one: cylinder 1 would be out/);
    expect(second).toMatch(/90\.5° after that of cylinder 1 and not 90°.*enter 90\.5° at “Set 2/);
    expect(words(read(vee(), 1, 0))[0]).toMatch(/Do not turn .*: cylinder 2 would be out/);
    // 0.1 would come to 0.25 the other way, which is still within.
    expect(words(read(vee(), 0.1, 0.35))[1]).toMatch(/cylinder 1, on which it is zeroed, would/);
  });

  it('on a half-speed shaft it is the plate’s degrees that are entered', () => {
    // The top of a set at 45° of the plate comes 90° of the crank later, and 0.5° of it are 0.25°.
    const half = vee({ 'set-2': 45, 'speed-ratio': 0.5 });
    expect(words(read(half, 0, 0.5))[1]).toMatch(
      /90\.5° after that of cylinder 1 and not 90°.*enter 45\.25° at “Set 2/,
    );
  });

  it('is turned once where that puts all right', () => {
    // Half way between 1 and 1.4 both are 0.2 off.
    expect(words(read(vee(), 1, 1.4))).toEqual([
      'Turn the disc on the crank, against the way the engine turns, by 1.2°, which leaves 0.2° here.',
      'Turn the disc on the crank, against the way the engine turns, by 1.2°, which leaves 0.2° here.',
    ]);
    expect(words(read(vee(), -2))[0]).toBe(
      'Turn the disc on the crank, the way the engine turns, by 2°.',
    );
  });

  it('is not turned for two where that puts out a third which is right', () => {
    const three = vee({ cylinders: 3, 'set-2': 120, 'set-3': 240 });
    const said = words(read(three, 1, 1, 0));
    expect(said[0]).toMatch(/^Do not turn the disc for this one: cylinder 3 would be out/);
    expect(said[2]).toBe('within its limits');
    const four = vee({ cylinders: 4, 'set-2': 90, 'set-3': 180, 'set-4': 270 });
    expect(words(read(four, 0, 0, 0, 1))[3]).toMatch(
      /: cylinder 1, cylinder 2 and cylinder 3 would be out/,
    );
  });

  it('says what the disc is to show where the sheet does not say where a top stands', () => {
    const { 'set-2': _, ...figures } = vee().figures;
    const unsaid = { ...vee(), figures };
    // What is read less its own place is the error: past it, as much less is to be shown.
    expect(words(read(unsaid, 0, 0.5))[1]).toMatch(
      /stands 0\.5° past its place\. .* take 0\.5° off what the disc shows of this cylinder\.$/,
    );
    expect(words(read(unsaid, 0, -0.5))[1]).toMatch(
      /stands 0\.5° short of its place\. .* take 0\.5° more than what the disc shows of this cylinder\.$/,
    );
    expect(words(read(unsaid, 1, 0))[0]).toMatch(
      /the other places are off by that, and not the disc\.$/,
    );
  });

  it('goes by cylinder 1 where no one turn does', () => {
    const [first, second] = words(read(vee(), 1, 3));
    expect(first).toMatch(/by 1°\.$/);
    expect(second).toMatch(/by 1°; that is for all\. .*it stands 2° past its place/);
  });
});

it('a set of points is told which angle is its own', () => {
  const of = (index?: number) => targetWords(vee(), 'plate', 'mm', index);
  expect([of(0), of(1)]).toEqual(['270° ± 0.8°', '90° ± 0.8°']);
  expect(of()).toBe('set 1: 270°, set 2: 90° ± 0.8°');
  expect(targetWords(vee({ 'set-2': 180 }), 'plate', 'mm')).toBe('180° ± 0.8°');
});
