import { Ajv } from 'ajv';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkSum } from '../../calculators/sheet/check-sum.ts';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { recounted } from '../../calculators/sheet/clock.ts';
import { SheetError } from '../../calculators/sheet/errors.ts';
import { lastDay } from '../../calculators/sheet/log.ts';
import { changeWords, whenWords } from '../../calculators/sheet/log-words.ts';
import { progressOf } from '../../calculators/sheet/progress.ts';
import { order } from '../../calculators/sheet/steps.ts';
import { engineFragment, engineFromFragment } from '../../calculators/sheet/link.ts';
import { documentOf, newEngine, type Engine } from '../../calculators/sheet/model.ts';
import { engineSheetSchema } from '../../calculators/sheet/schema.ts';
import { readStore, writeStore } from '../../calculators/sheet/store.ts';
import { readDocument, writeDocument } from '../../calculators/sheet/validate.ts';
import { acts, blank } from './acts.ts';
import { anyEngine } from './engines.ts';
import { parseDocument } from './parse-document.ts';

const worked = fc
  .array(acts, { maxLength: 30 })
  .map((done) => done.reduce((engine, act) => act(engine), blank));
const distinct = fc.uniqueArray(anyEngine, { maxLength: 3, selector: ({ id }) => id });

const ajv = new Ajv({ strict: true, strictTypes: false, unicodeRegExp: true });
const followsSchema = ajv.compile(engineSheetSchema);

describe('an engine sheet comes back as it went', () => {
  it('through a file', () => {
    fc.assert(
      fc.property(distinct, (engines) => {
        expect(parseDocument(writeDocument(engines)).engines).toEqual(engines);
      }),
    );
  });

  it('through a link', async () => {
    await fc.assert(
      fc.asyncProperty(anyEngine, async (engine) => {
        const sent = { ...engine, unread: {} };
        expect(await engineFromFragment(await engineFragment(engine))).toEqual(sent);
      }),
    );
  });

  it('through a link of a browser that cannot compress', async () => {
    const { CompressionStream: compression } = globalThis;
    try {
      Object.assign(globalThis, { CompressionStream: undefined });
      const fragment = await engineFragment(demoSheet());
      expect(fragment).toMatch(/^engine=2\./);
      expect(await engineFromFragment(fragment)).toEqual(demoSheet());
    } finally {
      Object.assign(globalThis, { CompressionStream: compression });
    }
  });

  it('through what the browser keeps', () => {
    fc.assert(
      fc.property(distinct, fc.nat(), (engines, revision) => {
        const store = { engines, active: engines[0]?.id, revision };
        expect(readStore(writeStore(store))).toEqual(store);
      }),
    );
  });

  it('in a link short enough to send, with the days of its last readings', async () => {
    const demo = demoSheet();
    const fragment = await engineFragment(demo, 'last');
    expect(fragment.length).toBeLessThan(1850);
    expect(fragment).toMatch(/^engine=5\.[\w.-]+$/);
    const read = await engineFromFragment(fragment);
    expect({ ...read, log: [] }).toEqual({ ...recounted(demo), log: [] });
    for (const id of order) {
      expect(lastDay(read, id), id).toBe(lastDay(demo, id));
      for (let i = 0; i < 3; i += 1) {
        expect(whenWords(read, id, i), id).toBe(whenWords(demo, id, i));
      }
      expect(progressOf(read)[id]).toEqual(progressOf(demo)[id]);
      const { because, stale } = progressOf(demo)[id];
      for (const by of because) {
        expect(changeWords(read, by, id, stale, 'mm')).toBe(changeWords(demo, by, id, stale, 'mm'));
      }
    }
  });

  it('in such a link, whatever it holds: what stands, and each day that is known of it', async () => {
    await fc.assert(
      fc.asyncProperty(fc.oneof(anyEngine, worked), async (engine) => {
        const read = await engineFromFragment(await engineFragment(engine, 'last'));
        const sent = recounted({ ...engine, unread: {} });
        expect({ ...read, log: [] }).toEqual({ ...sent, log: [] });
        for (const entry of read.log) {
          if (!('value' in entry) && entry.kind !== 'done') continue;
          const { clock: _, ...told } = entry;
          expect(sent.log.map(({ clock: __, ...known }) => known)).toContainEqual(told);
          // What a change upset is told by its moment.
          if (entry.kind === 'change') expect(sent.log).toContainEqual(entry);
        }
      }),
    );
  });

  it('and one whose days are not of their form is refused', async () => {
    const demo = demoSheet();
    const told = (days: unknown): Promise<Engine> => {
      const document = { ...documentOf([demo]), days };
      const letters = Buffer.from(JSON.stringify(document)).toString('base64url');
      return engineFromFragment(`engine=4.${checkSum(`4.${letters}`)}.${letters}`);
    };
    const from = '2026-02-01';
    expect(lastDay(await told({ from, at: { gap: [[], [3]] } }), 'gap')).toBe('2026-02-02');
    for (const days of [
      ...[undefined, null, 7, [], { from: 1, at: {} }, { from: 'x', at: {} }, { from: '', at: 7 }],
      ...[7, '7', [7], [[0.5], []], [[1e300], []], [[[]], []], [[], [0.5]], [[], [[1]]]].map(
        (gap) => ({ from, at: { gap } }),
      ),
    ]) {
      await expect(told(days), JSON.stringify(days)).rejects.toThrow(SheetError);
    }
  });
});

describe('the schema', () => {
  it('takes every engine that the sheet can hold', () => {
    fc.assert(
      fc.property(distinct, (engines) => {
        const document = documentOf(engines);
        expect(followsSchema(document) || ajv.errorsText(followsSchema.errors)).toBe(true);
      }),
    );
  });

  it('and the reader agree about any change to a document', () => {
    const places = [
      'id',
      'name',
      'invented',
      'notes',
      'firingOrder',
      'figures',
      'readings',
      'kept',
      'unread',
      'log',
      'archived',
      'clock',
      'stranger',
    ];
    const values = [
      null,
      true,
      -1,
      0.5,
      1e300,
      '',
      'x',
      'x'.repeat(300),
      [],
      [1, 1],
      [9],
      {},
      { stroke: 51 },
      { stroke: '51' },
      { stroke: 1e9 },
      { cylinders: 1.5 },
      { nothing: 1 },
      { gap: { found: [0.4, null], left: [], done: false, checked: 1, changed: 0 } },
      { gap: { found: [-1], left: [], done: false, checked: 1, changed: 0 } },
      { gap: { found: Array(9).fill(1), left: [], done: false, checked: 1, changed: 0 } },
      { fuel: { found: [1], left: [], done: true, checked: 1, changed: 0 } },
      { clip: { found: [1.5], left: [], done: true, checked: 1, changed: 0 } },
      { gap: { found: [], left: [], done: false, checked: 1 } },
      { 'figure:gap': 'abc' },
      { 'figure gap': 'abc' },
      [{ label: 'a', text: 'b', calculator: 'c', query: 'd=1' }],
      [{ label: 'a', text: 'b', calculator: '../c', query: 'd=1' }],
      ...[
        { kind: 'check', step: 'gap', cylinder: 1, value: 0.4, clock: 1, on: '2026-03-21' },
        { kind: 'check', step: 'gap', cylinder: 9, value: 0.4, clock: 1, on: '' },
        { kind: 'check', step: 'gap', cylinder: 1, value: -1, clock: 1, on: '' },
        { kind: 'check', step: 'gap', cylinder: 1, value: null, clock: 1, on: '' },
        { kind: 'check', step: 'fuel', cylinder: 1, value: 1, clock: 1, on: '' },
        { kind: 'check', step: 'gap', cylinder: 1, value: 0.4, clock: 1, on: '21.3.26' },
        { kind: 'check', step: 'gap', cylinder: 1, value: 0.4, clock: 1.5, on: '' },
        { kind: 'check', step: 'gap', cylinder: 1, value: 0.4, on: '' },
        { kind: 'found', step: 'clip', cylinder: 1, value: 2.5, clock: 1, on: '' },
        { kind: 'done', step: 'fuel', clock: 1, on: '' },
        { kind: 'done', step: 'gap', clock: 1, on: '' },
        { kind: 'done', step: 'fuel', value: 1, clock: 1, on: '' },
        { kind: 'done', step: 'colour', clock: 1, on: '' },
        { kind: 'figure', figure: 'stroke', value: 51, clock: 1, on: '' },
        { kind: 'figure', figure: 'stroke', value: null, clock: 1, on: '' },
        { kind: 'figure', figure: 'colour', value: 51, clock: 1, on: '' },
        { kind: 'hours', value: 0.5, clock: 1, on: '' },
        { kind: 'hours', value: -0.5, clock: 1, on: '' },
        { kind: 'note', text: 'It runs.', clock: 1, on: '' },
        { kind: 'note', text: '', clock: 1, on: '' },
        { kind: 'ticked', line: 'outdoors-away', clock: 1, on: '' },
        { kind: 'ticked', line: 'Outdoors!', clock: 1, on: '' },
        { kind: 'anew', clock: 1, on: '' },
        { kind: 'stranger', clock: 1, on: '' },
        { clock: 1, on: '' },
      ].map((entry) => [entry]),
    ];
    let refused = 0;
    for (const place of places) {
      for (const value of values) {
        const document = documentOf([{ ...newEngine('e-1', 'One'), [place]: value }]);
        let taken = true;
        try {
          readDocument(document);
        } catch {
          taken = false;
          refused += 1;
        }
        expect([place, value, followsSchema(document)]).toEqual([place, value, taken]);
      }
    }
    expect(refused).toBeGreaterThan(200);
  });
});
