import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxAt, placeOf, type Box } from '../../calculators/sheet/box-places.ts';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { dropKept, keep } from '../../calculators/sheet/kept-results.ts';
import { confirm, setDone } from '../../calculators/sheet/set-entry.ts';
import { setFigure } from '../../calculators/sheet/set-figure.ts';
import { enter } from '../../calculators/sheet/enter.ts';
import { SheetError } from '../../calculators/sheet/errors.ts';
import { figureKeys, MOST_CYLINDERS } from '../../calculators/sheet/figures.ts';
import { LIMITS, newEngine, VERSION, type Engine } from '../../calculators/sheet/model.ts';
import { progressOf } from '../../calculators/sheet/progress.ts';
import { openText } from '../../calculators/sheet/rescue.ts';
import { order, steps } from '../../calculators/sheet/steps.ts';
import { adopt, emptyStore, writeStore } from '../../calculators/sheet/store.ts';
import { readEngine, writeDocument } from '../../calculators/sheet/validate.ts';
import { anyEngine } from './engines.ts';
import { parseDocument } from './parse-document.ts';

const boxes: readonly Box[] = [
  ...figureKeys.map((key): Box => ({ kind: 'figure', key })),
  ...order
    .filter((id) => steps[id].reading !== undefined)
    .flatMap((step) =>
      (['found', 'left'] as const).map((moment): Box => ({
        kind: 'reading',
        step,
        moment,
        index: MOST_CYLINDERS - 1,
      })),
    ),
  { kind: 'order' },
  { kind: 'name' },
  { kind: 'notes' },
];

type Edit = (engine: Engine) => Engine;

const texts = fc.oneof(
  fc.string({ maxLength: 6 }),
  fc.constantFrom('1', '2', '0.4', '51', '104', '1 2', 'x'.repeat(250), 'é'.repeat(2001), '2 in'),
);
const anyStep = fc.constantFrom(...order);
const edits: fc.Arbitrary<Edit> = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.tuple(fc.constantFrom(...boxes), texts).map(
      ([box, text]): Edit =>
        (engine) =>
          enter(engine, box, text, { lengths: 'mm' }),
    ),
  },
  {
    weight: 1,
    arbitrary: fc.tuple(anyStep, fc.boolean()).map(
      ([id, done]): Edit =>
        (engine) =>
          setDone(engine, id, done),
    ),
  },
  {
    weight: 1,
    arbitrary: anyStep.map(
      (id): Edit =>
        (engine) =>
          confirm(engine, id),
    ),
  },
  {
    weight: 1,
    arbitrary: fc
      .tuple(fc.string({ maxLength: 250 }), fc.stringMatching(/^[a-z0-9=&]{0,40}$/))
      .map(([label, query]): Edit => (engine) => {
        try {
          return keep(engine, { label, text: '', calculator: 'c', query });
        } catch (error) {
          if (!(error instanceof SheetError)) throw error;
          return engine;
        }
      }),
  },
  {
    weight: 1,
    arbitrary: fc.nat(3).map(
      (i): Edit =>
        (engine) =>
          dropKept(engine, i),
    ),
  },
  {
    weight: 1,
    arbitrary: fc.integer({ min: 1, max: MOST_CYLINDERS }).map(
      (n): Edit =>
        (engine) =>
          setFigure(engine, 'cylinders', n),
    ),
  },
);

describe('what is accepted', () => {
  it('passes its own validation after any edits, and comes back as it went', () => {
    fc.assert(
      fc.property(anyEngine, fc.array(edits, { minLength: 1, maxLength: 6 }), (engine, done) => {
        let now = readEngine(engine);
        for (const edit of done) {
          now = edit(now);
          expect(readEngine(JSON.parse(JSON.stringify(now)))).toEqual(now);
        }
      }),
      { numRuns: 500, seed: 20261126 },
    );
  });

  it('with its clock run out goes on counting, and keeps what came after what', () => {
    const last = Number.MAX_SAFE_INTEGER;
    const reading = { found: [0.4], left: [], done: false };
    const engine: Engine = {
      ...newEngine('e-1', 'Old'),
      readings: {
        gap: { ...reading, checked: 5, changed: last },
        timing: { ...reading, checked: last - 1, changed: 0 },
      },
      clock: last,
    };
    expect(progressOf(engine).timing.because).toEqual(['gap']);
    const checked = confirm(engine, 'timing');
    expect(readEngine(checked)).toEqual(checked);
    expect(progressOf(checked).timing.because).toEqual([]);
    expect(progressOf(confirm(engine, 'plug')).timing.because).toEqual(['gap']);
  });

  it('with a moment later than its clock still marks what is changed from now on', () => {
    const engine: Engine = {
      ...demoSheet(),
      readings: {
        ...demoSheet().readings,
        timing: { ...demoSheet().readings.timing!, checked: 1_000_000 },
      },
    };
    const wider = enter(
      engine,
      { kind: 'reading', step: 'gap', moment: 'left', index: 0 },
      '0.43',
      { lengths: 'mm' },
    );
    expect(progressOf(wider).timing.because).toContain('gap');
  });

  it('names each place so that it is found again', () => {
    for (const box of boxes) expect(boxAt(placeOf(box))).toEqual(box);
    for (const place of ['found:gap:9', 'found:gap:0', 'found:gap:01', 'left:fuel:1', 'figure:x']) {
      expect(boxAt(place)).toBeUndefined();
    }
  });
});

describe('whatever is saved can be opened', () => {
  const result = (n: number) => ({
    label: `Transfer time-area of port ${String(n)}`,
    text: '0.000 83 s/m ± 0.000 02 s/m',
    calculator: 'time-area',
    query: Array.from({ length: 40 }, (_, i) => `port-${String(i)}-width=${String(n)}.5mm`).join(
      '&',
    ),
  });
  const full: Engine = {
    ...demoSheet(),
    kept: Array.from({ length: LIMITS.kept }, (_, n) => result(n)),
  };

  it.each([20, LIMITS.engines])('%i engines with 60 results each, in one file', (count) => {
    const { engines } = adopt(
      emptyStore,
      Array.from({ length: count }, () => full),
    );
    const text = writeDocument(engines);
    expect(text.length).toBeGreaterThan(1_000_000);
    expect(parseDocument(text).engines).toEqual(engines);
  });

  it('more than a file can hold is not written, and that is said', () => {
    const huge: Engine = {
      ...full,
      kept: full.kept.map((one) => ({ ...one, query: 'x'.repeat(LIMITS.query) })),
      notes: 'x'.repeat(LIMITS.notes),
    };
    const engines = Array.from({ length: LIMITS.engines }, () => huge);
    expect(() => writeDocument(engines)).toThrow('Save the engines one by one');
    expect(parseDocument(writeDocument([huge])).engines).toEqual([huge]);
  });
});

describe('a file that is not whole is opened as far as it can be read', () => {
  const one = { ...demoSheet(), id: 'e-1', name: 'One' };
  const two = { ...demoSheet(), id: 'e-2', name: 'Two' };
  const whole = writeDocument([one, two]);
  const namesOf = (text: string): string[] => openText(text).engines.map(({ name }) => name);

  it('a whole one is taken whole, and nothing is said to be lost', () => {
    expect(openText(whole)).toEqual({ engines: [one, two], lost: [] });
  });

  it('what a browser kept, as it was put aside', () => {
    const kept = writeStore({ engines: [one, two], active: 'e-1', revision: 3 });
    expect(namesOf(kept)).toEqual(['One', 'Two']);
    expect(namesOf(kept.replace('"stroke":51', '"stroke":1e9'))).toEqual(['Two']);
  });

  it('one damaged engine is left out and named', () => {
    const { engines, lost } = openText(whole.replace('"stroke": 51', '"stroke": 1e9'));
    expect(engines).toEqual([two]);
    expect(lost).toHaveLength(1);
    expect(lost[0]).toContain('“One”');
    expect(lost[0]).toContain('stroke');
  });

  it('a text that breaks off gives the engines that stand whole in it', () => {
    const at = whole.indexOf('"name": "Two"');
    const { engines, lost } = openText(whole.slice(0, at + 40));
    expect(engines).toEqual([one]);
    expect(lost).toEqual(['What came after the place where the text breaks off.']);
  });

  it('two of one id are both taken', () => {
    expect(namesOf(whole.replace('"e-2"', '"e-1"'))).toEqual(['One', 'Two']);
  });

  it('of the first version too', () => {
    const first = {
      format: 'engine-sheet',
      version: 1,
      engines: [
        {
          id: 'a',
          name: 'A',
          invented: true,
          notes: '',
          firingOrder: [],
          figures: {},
          readings: {},
        },
        { id: 'b', name: 'B' },
      ],
    };
    expect(namesOf(JSON.stringify(first))).toEqual(['A']);
  });

  it.each([
    ['nothing whole in it', whole.replaceAll('"stroke": 51', '"stroke": 1e9'), 'invalid'],
    [
      'a newer version',
      whole.replace(`"version": ${String(VERSION)}`, '"version": 99'),
      'future-version',
    ],
    [
      'a newer one cut short',
      whole.replace(`"version": ${String(VERSION)}`, '"version": 99').slice(0, 900),
      'future-version',
    ],
    ['another text', '{"format":"engine-sheet"', 'not-json'],
  ])('%s is refused', (_, text, code) => {
    expect(() => openText(text)).toThrow(SheetError);
    try {
      openText(text);
    } catch (error) {
      expect((error as SheetError).code).toBe(code);
    }
  });

  it('cut anywhere, it never gives an engine that was not in it', () => {
    fc.assert(
      fc.property(fc.nat(whole.length), (at) => {
        try {
          for (const engine of openText(whole.slice(0, at)).engines) {
            expect([one, two]).toContainEqual(engine);
          }
        } catch (error) {
          expect(error).toBeInstanceOf(SheetError);
        }
      }),
      { numRuns: 300, seed: 20261126 },
    );
  });
});
