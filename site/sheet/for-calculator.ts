import {
  allFrom,
  knownKeys,
  type Evaluation,
  type Origins,
  type Texts,
} from '../../calculators/frame/evaluate.ts';
import { resultLines, figureText } from '../../calculators/frame/summary.ts';
import { wordsOf } from '../../calculators/frame/show-result.ts';
import { finenessOf, showInput } from '../../calculators/frame/text/format.ts';
import { decimalsFor } from '../../calculators/maths/numeric/rounding.ts';
import { flatten } from '../../calculators/frame/spreads.ts';
import type { AnyCalculator, ResultSpec } from '../../calculators/frame/types.ts';
import type { LengthDisplay } from '../../calculators/frame/text/units.ts';
import { whoseResults } from '../../calculators/frame/whose.ts';
import { wound } from '../../calculators/sheet/clock.ts';
import { enter } from '../../calculators/sheet/enter.ts';
import { keep } from '../../calculators/sheet/kept-results.ts';
import { setEntry } from '../../calculators/sheet/set-entry.ts';
import { setFigure } from '../../calculators/sheet/set-figure.ts';
import { SheetError } from '../../calculators/sheet/errors.ts';
import { fillFrom, leftOut, placesFor, type Place } from '../../calculators/sheet/fill.ts';
import { sheetFigures } from '../../calculators/sheet/figures.ts';
import { boxName, newEngine, type Engine } from '../../calculators/sheet/model.ts';
import { steps } from '../../calculators/sheet/steps.ts';
import { activeEngine, freeId, withEngine } from '../../calculators/sheet/store.ts';
import { secondsNow, today } from '../browser/today.ts';
import { Keeper, keptStore } from './keeper.ts';

export interface Filled {
  readonly name: string;
  /** Whether it is the reader's own engine. Of the invented one the figures are still nobody's. */
  readonly own: boolean;
  /** None where the sheet has nothing for the calculator. */
  readonly texts: Texts;
  readonly origins: Origins;
  /** All that the sheet holds for the calculator, whether it is filled in or not. */
  readonly holds: Texts;
  /** Why the calculator has nothing to say of this engine, where it has not. */
  readonly leftOut?: string;
}

/** Whether a figure of the sheet lies in the range of the input it fills. */
function fits({ inputs }: AnyCalculator, key: string, value: number): boolean {
  const input = inputs[key] ?? inputs[key.replace(/-\d+$/, '')];
  return !input || input.kind === 'choice' || (value >= input.min && value <= input.max);
}

/** What the engine in use fills into a calculator; nothing where there is no engine. */
export function filledFor(calculator: AnyCalculator): Filled | undefined {
  const engine = activeEngine(keptStore());
  if (!engine) return undefined;
  const why = leftOut(engine, calculator);
  const held = why === undefined ? fillFrom(engine, calculator.slug, knownKeys(calculator)) : {};
  const texts = Object.fromEntries(
    Object.entries(held).filter(([key, text]) => fits(calculator, key, Number.parseFloat(text))),
  );
  const origins = allFrom(texts, engine.invented ? 'example' : 'sheet');
  return {
    name: engine.name,
    own: !engine.invented,
    texts,
    origins,
    holds: texts,
    ...(why === undefined ? {} : { leftOut: why }),
  };
}

/** Something of a calculator that can be sent to the sheet. */
export interface Offer {
  readonly label: string;
  readonly send: (engine: Engine) => Engine;
}

function placeOffer(place: Place, owner: Engine, lengths: LengthDisplay): Offer {
  if (place.kind === 'order') {
    const { text } = place;
    return {
      label: `Firing order: ${text}`,
      send: (engine) => enter(engine, { kind: 'order' }, text, { lengths }),
    };
  }
  const { value } = place;
  if (place.kind === 'figure') {
    const { key } = place;
    const spec = sheetFigures[key];
    return {
      label: `${spec.label}: ${showInput(value, spec.unit, lengths, finenessOf(spec))}`,
      send: (engine) => setFigure(engine, key, value, today()),
    };
  }
  const { step, index } = place;
  const reading = steps[step].reading!;
  return {
    label: `${boxName(reading, index, owner)}, ${reading.label.toLowerCase()} as found: ${showInput(value, reading.unit, lengths, reading.step)}`,
    send: (engine) => setEntry(engine, step, 'found', index, value, { on: today() }),
  };
}

export interface Offers {
  /** Name of the engine in use; none when there is no engine yet. */
  readonly engine: string | undefined;
  /** Figures and boxes of the sheet that mean the same. */
  readonly places: readonly Offer[];
  /** Results, to stand in the list of results with their link. */
  readonly results: readonly Offer[];
}

/** All that a calculator's state has to offer the sheet. */
export function offersOf(
  calculator: AnyCalculator,
  evaluation: Evaluation,
  lengths: LengthDisplay,
  query: string,
): Offers {
  const engine = activeEngine(keptStore());
  const flat = flatten(evaluation.results);
  const baseOf = (name: string): string =>
    calculator.results[name] ? name : name.replace(/(-\d+)+$/, '');
  // The sheet holds the reader's own engine: nothing of the example goes into its fields.
  const input = (key: string): number | undefined => {
    const field = evaluation.fields.find((candidate) => candidate.key === key);
    return field?.kind === 'figure' && field.problem === undefined && field.origin !== 'example'
      ? field.value
      : undefined;
  };
  // A result with a ± goes over with the digits with which it is shown: it is known no better.
  const result = (name: string): number | undefined => {
    const value = flat.get(name);
    const { decimals } = calculator.results[baseOf(name)]!;
    if (value === undefined || whoseResults(calculator, evaluation, [baseOf(name)]) !== '') {
      return undefined;
    }
    const spread = evaluation.spreads[name] ?? 0;
    if (!(spread > 0)) return value;
    return Number(value.toFixed(Math.max(0, Math.min(decimals, decimalsFor(spread)))));
  };
  const specs = Object.entries<ResultSpec>(calculator.results);
  const single = specs.flatMap(([name, spec]) => {
    const value = flat.get(name);
    return value === undefined
      ? []
      : [
          [
            wordsOf(spec, lengths).label,
            figureText(value, spec, evaluation.spreads[name], lengths, evaluation.values) +
              whoseResults(calculator, evaluation, [name]),
          ] as const,
        ];
  });
  const labels = new Set(single.map(([label]) => label));
  const inTables = resultLines(calculator, evaluation, lengths)
    .filter(({ label }) => !labels.has(label))
    .map(
      ({ label, text, name }) =>
        [label, text + whoseResults(calculator, evaluation, [name])] as const,
    );
  const owner = engine ?? newEngine('none', 'none');
  return {
    engine: engine?.name,
    places: placesFor(owner, calculator.slug, input, result).map((place) =>
      placeOffer(place, owner, lengths),
    ),
    results: [...single, ...inTables].map(([label, text]) => ({
      label: `${label}: ${text}`,
      send: (target) => keep(target, { label, text, calculator: calculator.slug, query }),
    })),
  };
}

/** Sends what was chosen to the engine in use (a new one where there is none); says how it went. */
export async function send(offers: readonly Offer[]): Promise<string> {
  const keeper = new Keeper();
  const loaded = keeper.load();
  const { store, keeping } = (await keeper.recover(() => loaded.store)) ?? loaded;
  const engine = activeEngine(store) ?? newEngine(freeId(store.engines), 'My engine');
  let changed: Engine;
  try {
    changed = offers.reduce((so, offer) => offer.send(so), wound(engine, secondsNow()));
  } catch (error) {
    if (!(error instanceof SheetError)) throw error;
    return `Not sent. ${error.message}`;
  }
  const saved = keeper.save({ ...withEngine(store, changed), active: engine.id });
  const problem = saved.keeping.problem ?? keeping.problem;
  return problem === undefined
    ? `Sent to ${engine.name}: ${offers.map(({ label }) => label).join('; ')}.`
    : `Not sent. ${problem}`;
}
