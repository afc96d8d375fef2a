import { globSync, readFileSync } from 'node:fs';
import { Ajv } from 'ajv';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readingOf } from '../../calculators/sheet/readings.ts';
import { engineFromFragment } from '../../calculators/sheet/link.ts';
import { documentOf, VERSION } from '../../calculators/sheet/model.ts';
import { engineSheetSchema } from '../../calculators/sheet/schema.ts';
import { readStore } from '../../calculators/sheet/store.ts';
import { anyEngine } from './engines.ts';
import { parseDocument } from './parse-document.ts';

const FOLDER = 'test/sheet/kept';
const read = (name: string): string => readFileSync(`${FOLDER}/${name}`, 'utf8').trim();
const follows = new Ajv({ strict: true, strictTypes: false, unicodeRegExp: true }).compile(
  engineSheetSchema,
);

it('an example of every older version is kept, as a file and as a link', () => {
  const older = Array.from({ length: VERSION - 1 }, (_, i) => i + 1);
  const kept = globSync(`${FOLDER}/version-*`).map((file) => file.slice(FOLDER.length + 1));
  for (const version of older) {
    expect(kept).toContain(`version-${String(version)}.json`);
    expect(kept).toContain(`version-${String(version)}-link.txt`);
    expect(JSON.parse(read(`version-${String(version)}.json`))).toMatchObject({ version });
  }
});

describe.each([1, 2])('version %i, as it was written then', (version) => {
  const name = `version-${String(version)}`;
  const [engine] = parseDocument(read(`${name}.json`)).engines;

  it('opens as a file that follows the present schema', () => {
    expect(follows(documentOf([engine!]))).toBe(true);
  });

  it('opens as a link, with the same in it', async () => {
    const linked = await engineFromFragment(read(`${name}-link.txt`));
    expect(linked).toEqual({ ...engine, unread: {} });
  });

  it('every figure that stood in a box begins the log, on a day not known', () => {
    const { engines } = JSON.parse(read(`${name}.json`)) as {
      engines: [{ readings: Record<string, unknown> }];
    };
    const stood = JSON.stringify(engines[0].readings).match(/(?<=[[,])-?\d[\d.]*(?=[,\]])/g) ?? [];
    const readings = engine!.log.filter((entry) => 'cylinder' in entry);
    expect(readings.length).toBe(stood.length);
    expect(new Set(engine!.log.map(({ on }) => on))).toEqual(new Set(['']));
  });
});

it('a link with the last readings and no days, as it was written before there were any, opens', async () => {
  const engine = await engineFromFragment(read('version-3-link-without-days.txt'));
  expect(engine).toMatchObject({ name: 'Demo: club triple', figures: { stroke: 51 }, log: [] });
  expect(readingOf(engine, 'gap').left.length).toBeGreaterThan(0);
});

it('what a browser kept in version 2 is taken over', () => {
  const { engines, active, revision } = readStore(read('version-2-store.json'));
  expect(active).toBe('e-1');
  expect(revision).toBe(7);
  expect(engines).toEqual(parseDocument(read('version-2.json')).engines);
  expect(engines[0]!.unread).toEqual({ 'figure:plug-gap': '0.6 m' });
  expect(engines[0]!.kept).toHaveLength(1);
  const gap = engines[0]!.log.filter((entry) => 'cylinder' in entry && entry.step === 'gap');
  expect(gap.map(({ kind }) => kind)).toEqual([
    ...['found', 'found', 'found'],
    ...['change', 'change', 'check'],
  ]);
});

it('of any engine of version 2 nothing is lost, and what stands is in the log', () => {
  fc.assert(
    fc.property(anyEngine, ({ log: _, archived: __, ...engine }) => {
      const old = { format: 'engine-sheet', version: 2, engines: [engine] };
      const [now] = parseDocument(JSON.stringify(old)).engines;
      expect(now).toMatchObject(engine);
      const clocks = now!.log.map(({ clock }) => clock);
      expect(clocks).toEqual([...clocks].sort((a, b) => a - b));
      for (const [id, { found, left, done }] of Object.entries(engine.readings)) {
        const here = now!.log.filter((entry) => 'step' in entry && entry.step === id);
        const stood = [...found, ...left].filter((entry) => entry !== null).length;
        expect(here).toHaveLength(stood + (done ? 1 : 0));
      }
    }),
  );
});
