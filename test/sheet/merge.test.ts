import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LIMITS, newEngine, type Engine } from '../../calculators/sheet/model.ts';
import { freeName, merge, type Store } from '../../calculators/sheet/store.ts';

const engine = (id: string, notes = ''): Engine => ({ ...newEngine(id, id), notes });
const store = (...engines: Engine[]): Store => ({ engines, active: engines[0]?.id, revision: 1 });

describe('two tabs', () => {
  const base = store(engine('a'), engine('b'));

  it('changed in different engines: both changes stand', () => {
    const { store: joined, both } = merge(
      base,
      store(engine('a', 'mine'), engine('b')),
      store(engine('a'), engine('b', 'theirs')),
    );
    expect(joined.engines).toEqual([engine('a', 'mine'), engine('b', 'theirs')]);
    expect(both).toEqual([]);
  });

  it('named one engine differently: both are kept and told apart', () => {
    const named = (name: string): Engine => ({ ...engine('a'), name });
    const { store: joined, both } = merge(
      base,
      store(named('mine'), engine('b')),
      store(named('b'), engine('b')),
    );
    expect(joined.engines.map(({ id, name }) => [id, name])).toEqual([
      ['a', 'mine'],
      ['b', 'b'],
      ['e-1', 'b (2)'],
    ]);
    expect(both).toEqual([{ name: 'mine', other: 'b (2)', apart: ['name'] }]);
  });

  it('each made an engine under one id: both are kept', () => {
    const { store: joined, both } = merge(
      store(),
      store(engine('a', 'mine')),
      store(engine('a', 'theirs')),
    );
    expect(joined.engines.map(({ name, notes }) => [name, notes])).toEqual([
      ['a', 'mine'],
      ['a (2)', 'theirs'],
    ]);
    expect(both).toEqual([{ name: 'a', other: 'a (2)', apart: [] }]);
  });

  it('removed there: it goes, unless it was changed here', () => {
    expect(merge(base, base, store(engine('b'))).store.engines).toEqual([engine('b')]);
    const mine = store(engine('a', 'mine'), engine('b'));
    expect(merge(base, mine, store(engine('b'))).store.engines).toContainEqual(engine('a', 'mine'));
  });

  it('added on both sides: all are there', () => {
    const { store: joined } = merge(store(), store(engine('a')), store(engine('b')));
    expect(joined.engines.map(({ id }) => id).sort()).toEqual(['a', 'b']);
  });

  it('never lose a change, whatever each does', () => {
    const side = fc.uniqueArray(
      fc.record({ id: fc.constantFrom('a', 'b', 'c'), notes: fc.constantFrom('', '1', '2') }),
      { selector: ({ id }) => id },
    );
    const make = (members: { id: string; notes: string }[]): Store =>
      store(...members.map(({ id, notes }) => engine(id, notes)));
    fc.assert(
      fc.property(side, side, side, (was, here, there) => {
        const [from, mine, theirs] = [make(was), make(here), make(there)];
        const { engines } = merge(from, mine, theirs).store;
        expect(new Set(engines.map(({ id }) => id)).size).toBe(engines.length);
        for (const changed of [...mine.engines, ...theirs.engines]) {
          const before = from.engines.find(({ id }) => id === changed.id);
          if (before?.notes === changed.notes) continue;
          const lines = engines.flatMap(({ notes }) => notes.split('\n'));
          expect(lines).toContain(changed.notes);
        }
      }),
    );
  });
});

it('finds a free name that still fits', () => {
  const long = 'x'.repeat(LIMITS.name);
  const next = freeName(long, [newEngine('a', long)]);
  expect(next).toHaveLength(LIMITS.name);
  expect(next.endsWith(' (2)')).toBe(true);
});
