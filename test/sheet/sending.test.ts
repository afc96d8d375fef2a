import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { fileName } from '../../calculators/sheet/file-name.ts';
import { newEngine } from '../../calculators/sheet/model.ts';
import {
  archive,
  atHand,
  activeEngine,
  duplicate,
  type Store,
} from '../../calculators/sheet/store.ts';
import { sheetBbcode, sheetMarkdown } from '../../calculators/sheet/summary-forms.ts';
import { listLine } from '../../calculators/sheet/list-line.ts';
import { PATTERNS } from '../../calculators/sheet/validate.ts';
import { checklist } from '../../content/first-start/checklist.ts';
import { anyEngine } from './engines.ts';

const LINK = 'https://example.org/sheet/#engine=3.x';

describe('the sheet for a forum', () => {
  it('in Markdown: a table with as many cells in every line', () => {
    fc.assert(
      fc.property(anyEngine, fc.constantFrom('mm' as const, 'in' as const), (engine, lengths) => {
        const table = sheetMarkdown(engine, lengths, LINK)
          .split('\n')
          .filter((line) => line.startsWith('| '));
        const cells = table.map((line) => line.replaceAll('\\|', '').split('|').length);
        expect(new Set(cells).size).toBeLessThanOrEqual(1);
        expect(table.join('')).not.toMatch(/undefined|NaN/);
      }),
    );
    expect(sheetMarkdown({ ...newEngine('e-1', '*a*|b') }, 'mm', '')).toBe('**\\*a\\*\\|b**\n');
  });

  it('in BBCode: no mark but its own, columns of even width', () => {
    fc.assert(
      fc.property(anyEngine, (engine) => {
        const text = sheetBbcode(engine, 'mm', LINK);
        const marks = text.match(/\[[^\]]*\]/g) ?? [];
        for (const mark of marks) expect(mark).toMatch(/^\[(?:\/?b|\/?code|url=.*|\/url)\]$/);
      }),
    );
    const lines = sheetBbcode(demoSheet(), 'mm', LINK).split('\n');
    const head = lines[lines.indexOf('[code]') + 1]!;
    const gap = lines.find((line) => line.startsWith('Set the points gap'))!;
    expect(gap.indexOf('28 Feb 2026')).toBe(head.indexOf('Date'));
    expect(gap).toContain('0.39 mm → 0.34 mm');
  });
});

describe('a file’s name', () => {
  it('holds the engine and the day, and nothing that a disc refuses', () => {
    expect(fileName('engine-sheet', 'Béla’s “twin”', '2026-03-21', 'json')).toBe(
      'engine-sheet-béla-s-twin-2026-03-21.json',
    );
    expect(fileName('engine-sheets', '', '2026-03-21', 'json')).toBe(
      'engine-sheets-2026-03-21.json',
    );
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 80 }), (name) => {
        const file = fileName('engine-log', name, '2026-03-21', 'csv');
        expect(file).not.toMatch(/[\\/:*?"<>|\s]|--|\.\./);
        expect(file.length).toBeLessThan(200);
      }),
    );
  });
});

describe('several engines', () => {
  const store: Store = {
    engines: [newEngine('e-1', 'One'), newEngine('e-2', 'Two')],
    active: 'e-1',
    revision: 1,
  };

  it('a duplicate is an engine of its own', () => {
    const two = duplicate(store, store.engines[0]!);
    expect(two.engines.map(({ name }) => name)).toEqual(['One', 'Two', 'One (2)']);
    expect(activeEngine(two)?.name).toBe('One (2)');
  });

  it('one laid aside is kept, and is not among those to choose from', () => {
    const aside = archive(store, 'e-1', true);
    expect(aside.engines).toHaveLength(2);
    expect(atHand(aside).map(({ name }) => name)).toEqual(['Two']);
    expect(activeEngine(aside)?.name).toBe('Two');
    expect(activeEngine({ ...aside, active: 'e-1' })?.name).toBe('Two');
    expect(activeEngine(archive(aside, 'e-2', true))).toBeUndefined();
    expect(activeEngine(archive(aside, 'e-1', false))?.name).toBe('One');
  });
});

it('each line of the list of the first start has a name of its own in the log', () => {
  const lines = checklist.flatMap(({ items }) => items.map(listLine));
  expect(new Set(lines).size).toBe(lines.length);
  for (const line of lines) expect(line).toMatch(new RegExp(PATTERNS.line));
});
