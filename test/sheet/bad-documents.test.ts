import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { SheetError } from '../../calculators/sheet/errors.ts';
import { engineFragment, engineFromFragment } from '../../calculators/sheet/link.ts';
import { documentOf, LIMITS, newEngine, VERSION } from '../../calculators/sheet/model.ts';
import { rescue } from '../../calculators/sheet/rescue.ts';
import { adopt, emptyStore, readStore, writeStore } from '../../calculators/sheet/store.ts';
import { writeDocument } from '../../calculators/sheet/validate.ts';
import { parseDocument } from './parse-document.ts';

const codeOf = (work: () => unknown): string => {
  try {
    work();
  } catch (error) {
    if (!(error instanceof SheetError)) throw error;
    expect(error.message).toMatch(/^[“A-Z].+\.$/su);
    expect(error.message).not.toMatch(/undefined|NaN|\[object/);
    return error.code;
  }
  return 'taken';
};

const whole = writeDocument([demoSheet()]);
const changed = (change: (document: Record<string, unknown>) => void): string => {
  const document = JSON.parse(whole) as Record<string, unknown>;
  change(document);
  return JSON.stringify(document);
};
const engineOf = (document: Record<string, unknown>): Record<string, unknown> =>
  (document.engines as Record<string, unknown>[])[0]!;

describe('a file that is not a whole engine sheet is refused in words', () => {
  it('takes the sound one', () => {
    expect(codeOf(() => parseDocument(whole))).toBe('taken');
  });

  it.each([
    ['nothing', '', 'not-json'],
    ['a picture', '\u0089PNG\r\n', 'not-json'],
    ['half a file', whole.slice(0, whole.length / 2), 'not-json'],
    ['a number', '5', 'not-a-sheet'],
    ['null', 'null', 'not-a-sheet'],
    ['a list', '[]', 'not-a-sheet'],
    ['another format', '{"format":"other","version":2,"engines":[]}', 'not-a-sheet'],
    ['no version', '{"format":"engine-sheet","engines":[]}', 'no-version'],
    ['version 0', '{"format":"engine-sheet","version":0,"engines":[]}', 'no-version'],
    ['version 1.5', '{"format":"engine-sheet","version":1.5,"engines":[]}', 'no-version'],
    ['version "2"', '{"format":"engine-sheet","version":"2","engines":[]}', 'no-version'],
    [
      'a later version',
      `{"format":"engine-sheet","version":${String(VERSION + 1)},"engines":[]}`,
      'future-version',
    ],
    ['no engines', '{"format":"engine-sheet","version":2}', 'invalid'],
    ['a huge one', `"${'x'.repeat(LIMITS.text)}"`, 'too-large'],
  ])('%s', (_, text, code) => {
    expect(codeOf(() => parseDocument(text))).toBe(code);
  });

  it.each<[string, (document: Record<string, unknown>) => void]>([
    ['a text for a figure', (d) => Object.assign(engineOf(d).figures as object, { stroke: '51' })],
    ['a figure out of range', (d) => Object.assign(engineOf(d).figures as object, { stroke: 1e9 })],
    ['an unknown figure', (d) => Object.assign(engineOf(d).figures as object, { colour: 1 })],
    ['an unknown step', (d) => Object.assign(engineOf(d).readings as object, { paint: {} })],
    ['too many engines', (d) => Object.assign(d, { engines: Array(51).fill(engineOf(d)) })],
    ['two of one id', (d) => Object.assign(d, { engines: [engineOf(d), engineOf(d)] })],
    ['a name too long', (d) => Object.assign(engineOf(d), { name: 'x'.repeat(81) })],
    ['no name', (d) => delete engineOf(d).name],
    ['a stranger', (d) => Object.assign(d, { script: 'x' })],
    [
      'an address for a query',
      (d) =>
        Object.assign(engineOf(d), {
          kept: [{ label: 'a', text: 'b', calculator: 'c', query: 'javascript:"<x>"' }],
        }),
    ],
  ])('%s', (_, change) => {
    expect(codeOf(() => parseDocument(changed(change)))).toBe('invalid');
  });

  it.each(['__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty'])(
    'the key %s anywhere, and no object gains anything by it',
    (key) => {
      const hostile = `"${key}":{"polluted":true}`;
      const named = [
        whole.replace('{', `{${hostile},`),
        whole.replace('"id"', `${hostile},"id"`),
        whole.replace('"figures": {', `"figures": {${hostile},`),
        whole.replace('"readings": {', `"readings": {${hostile},`),
        whole.replace('"unread": {}', `"unread": {${hostile}}`),
        whole.replace('"gap": {', `"gap": {${hostile},`),
      ];
      for (const text of named) {
        expect(text).not.toBe(whole);
        // A figure may be called "gap" too; then the change makes that one a group.
        expect(codeOf(() => parseDocument(text))).toBe('invalid');
      }
      expect(({} as Record<string, unknown>).polluted).toBeUndefined();
    },
  );

  it('any cut and any changed letter is refused or still a whole sheet', () => {
    fc.assert(
      fc.property(fc.nat(whole.length - 1), fc.string({ maxLength: 3 }), (at, put) => {
        expect([
          'taken',
          'not-json',
          'not-a-sheet',
          'no-version',
          'future-version',
          'invalid',
        ]).toContain(codeOf(() => parseDocument(whole.slice(0, at) + put + whole.slice(at + 1))));
      }),
      { numRuns: 300 },
    );
  });

  it('any JSON at all', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        expect(codeOf(() => parseDocument(JSON.stringify(value)))).not.toBe('taken');
      }),
    );
  });
});

describe('a link that was cut or changed', () => {
  it('is refused in words, whatever was done to it', async () => {
    const fragment = await engineFragment(demoSheet());
    for (const cut of [8, 9, 10, 40, fragment.length - 1]) {
      await expect(engineFromFragment(fragment.slice(0, cut))).rejects.toThrow(SheetError);
    }
    await fc.assert(
      fc.asyncProperty(fc.base64String(), async (letters) => {
        await expect(engineFromFragment(`engine=1.${letters}`)).rejects.toThrow(SheetError);
        await expect(engineFromFragment(`engine=0.${letters}`)).rejects.toThrow(SheetError);
      }),
      { numRuns: 50 },
    );
  });

  it('is refused when it unpacks to a flood', async () => {
    const flood = new Blob(['x'.repeat(30_000_000)])
      .stream()
      .pipeThrough(new CompressionStream('deflate-raw'));
    const bytes = new Uint8Array(await new Response(flood).arrayBuffer());
    const letters = Buffer.from(bytes).toString('base64url');
    await expect(engineFromFragment(`engine=1.${letters}`)).rejects.toMatchObject({
      code: 'too-large',
    });
  });
});

describe('an older version', () => {
  const first = {
    format: 'engine-sheet',
    version: 1,
    engines: [
      {
        id: 'e-1',
        name: 'Old sheet',
        invented: true,
        notes: '',
        firingOrder: [1, 3, 2],
        figures: { stroke: 51, cylinders: 3 },
        readings: { gap: [0.4, null, 0.38], fuel: true },
      },
    ],
  };

  it('is brought to the present one: its readings become as found', () => {
    const [engine] = parseDocument(JSON.stringify(first)).engines;
    expect(engine).toEqual({
      ...newEngine('e-1', 'Old sheet'),
      invented: true,
      firingOrder: [1, 3, 2],
      figures: { stroke: 51, cylinders: 3 },
      readings: {
        gap: { found: [0.4, null, 0.38], left: [], done: false, checked: 1, changed: 0 },
        fuel: { found: [], left: [], done: true, checked: 2, changed: 0 },
      },
      log: [
        { kind: 'found', step: 'gap', cylinder: 1, value: 0.4, clock: 1, on: '' },
        { kind: 'found', step: 'gap', cylinder: 3, value: 0.38, clock: 1, on: '' },
        { kind: 'done', step: 'fuel', clock: 2, on: '' },
      ],
      clock: 2,
    });
  });

  it('is still refused when it is damaged', () => {
    for (const engines of [undefined, 5, [5], [{ ...first.engines[0], readings: { gap: 5 } }]]) {
      expect(codeOf(() => parseDocument(JSON.stringify({ ...first, engines })))).toBe('invalid');
    }
  });
});

describe('a damaged store', () => {
  const one = newEngine('e-1', 'Whole');

  it('is refused, and its whole engines can be taken out of it', () => {
    const text = JSON.stringify({
      revision: 1,
      active: 'e-1',
      sheet: {
        ...documentOf([one]),
        engines: [one, { ...one, id: 'e-2', figures: { stroke: 'x' } }],
      },
    });
    expect(codeOf(() => readStore(text))).toBe('invalid');
    expect(rescue(text)).toEqual([one]);
    expect(rescue(text.slice(0, 50))).toEqual([]);
  });

  it('forgets an engine in use that is not there', () => {
    const text = writeStore({ engines: [one], active: 'gone', revision: 3 });
    expect(readStore(text)).toEqual({ engines: [one], active: 'e-1', revision: 3 });
  });

  it('takes no more engines than there is room for', () => {
    const full = adopt(
      emptyStore,
      Array.from({ length: LIMITS.engines }, () => one),
    );
    expect(new Set(full.engines.map(({ id }) => id)).size).toBe(LIMITS.engines);
    expect(new Set(full.engines.map(({ name }) => name)).size).toBe(LIMITS.engines);
    expect(codeOf(() => adopt(full, [one]))).toBe('too-many');
  });
});
