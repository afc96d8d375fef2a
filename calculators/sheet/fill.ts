import { readDisc } from './disc-places.ts';
import { units, type UnitName } from '../frame/text/units.ts';
import { orderFigure } from '../frame/text/order.ts';
import { plainDecimal } from '../maths/numeric/rounding.ts';
import { spacingsOf } from '../maths/plate/set-places.ts';
import { answerOf, figureKeys, sheetFigures, type FigureKey } from './figures.ts';
import { boxesOf, cylindersOf, entriesOf, sharesSets, type Engine } from './model.ts';
import { outdatedAt } from './outdated.ts';
import { readOrder } from './read-order.ts';
import { setFigure } from './set-figure.ts';
import { directionsOf } from './sets.ts';
import { order, steps, type StepId } from './steps.ts';

/** The input of a calculator that means what a figure of the sheet means. */
export function inputFor(key: FigureKey, slug: string): string | undefined {
  const { fills, everywhere } = sheetFigures[key];
  return everywhere ? key : fills?.[slug];
}

const withToken = (value: number, unit: keyof typeof units): string =>
  `${plainDecimal(value)}${units[unit].token}`;

/** Whether a figure means on this engine what the input that it fills means. */
const holds = ({ figures }: Engine, key: FigureKey, slug: string): boolean =>
  (figures.offset ?? 0) === 0 || !sheetFigures[key].fillsWithoutOffset?.includes(slug);

/** The input that a step's reading of one cylinder means: its own of a series, or what its figure fills. */
function readingInput(id: StepId, slug: string, index: number, known: ReadonlySet<string>) {
  const { reading, series } = steps[id];
  const member = `${series?.[slug] ?? ''}-${String(index + 1)}`;
  if (known.has(member)) return member;
  return index === 0 && reading?.target !== undefined && isMeasuredOnce.has(reading.target)
    ? inputFor(reading.target, slug)
    : undefined;
}

/** Figures that a calculator asks for as they were measured on cylinder 1, where they were. */
const isMeasuredOnce: ReadonlySet<FigureKey> = new Set(['squish', 'head-volume', 'exhaust-opens']);

/** A series of this key goes on from each set to the next, from set 2, in every calculator that has it. */
const SPACING = 'spacing';

/** The way on from each set to the next, where the sheet says where they belong. */
function onwards(engine: Engine): (readonly [key: string, angle: number])[] {
  const directions = directionsOf(engine);
  if (directions === undefined) return [];
  // The first is from the last set to set 1, which the layout makes out for itself.
  return spacingsOf(directions)
    .map((angle, i) => [`${SPACING}-${String(i + 1)}`, angle] as const)
    .slice(1);
}

/** What the sheet knows of a calculator that it leads to. */
export interface Fillable {
  /** Those of its keys that a sheet can fill. */
  readonly keys: readonly string[];
  readonly forBattery?: true;
}

/** Why a calculator has nothing to say of an engine; nothing where it has. */
export const leftOut = (
  { figures }: Engine,
  { forBattery }: Pick<Fillable, 'forBattery'>,
): string | undefined =>
  forBattery && figures['fed-coils'] === 0
    ? 'By your sheet no coil is fed from a battery. A magneto makes its own current: nothing here about resistors, fuses and currents holds for it, and its coils are judged by their resistance and their spark.'
    : undefined;

/** What an engine's sheet fills into those of a calculator's `keys` it knows: texts as in an address. */
export function fillFrom(
  engine: Engine,
  slug: string,
  keys: Iterable<string>,
): Record<string, string> {
  const known = new Set(keys);
  const texts: Record<string, string> = {};
  const put = (key: string | undefined, text: string): void => {
    if (key !== undefined && known.has(key)) texts[key] = text;
  };
  for (const key of figureKeys) {
    const value = engine.figures[key];
    if (value === undefined || !holds(engine, key, slug)) continue;
    // An engine without a thing has no figure for what is worked out of it.
    if (value === 0 && sheetFigures[key].unit === 'count') continue;
    const { unit, chooses, fillsOthers } = sheetFigures[key];
    // An answer is an option of the same name.
    const text = answerOf(key, value)?.toLowerCase() ?? withToken(value, unit);
    put(inputFor(key, slug), text);
    const choice = chooses?.[slug];
    if (choice) put(...choice);
    const others = fillsOthers?.[slug];
    for (let i = 2; others !== undefined && i <= cylindersOf(engine); i += 1) {
      put(`${others}-${String(i)}`, text);
    }
  }
  for (const [key, angle] of onwards(engine)) put(key, withToken(angle, 'deg'));
  for (const id of order) {
    const { reading } = steps[id];
    if (!reading) continue;
    const old = outdatedAt(engine, id);
    entriesOf(engine, id).forEach((entry, i) => {
      if (entry === null || old.includes(i)) return;
      const key = readingInput(id, slug, i, known);
      if (key === undefined || (reading.target && !holds(engine, reading.target, slug))) return;
      put(key, withToken(entry, reading.unit));
      const choice =
        i === 0 && reading.target ? sheetFigures[reading.target].chooses?.[slug] : undefined;
      if (choice) put(...choice);
    });
  }
  return texts;
}

/** The query string that opens a calculator with the sheet's figures. */
export function queryFor(engine: Engine, slug: string, calculator: Fillable): string {
  if (leftOut(engine, calculator) !== undefined) return '';
  return Object.entries(fillFrom(engine, slug, calculator.keys))
    .map(([key, text]) => `${key}=${encodeURIComponent(text)}`)
    .join('&');
}

/** Those of a calculator's keys that a sheet can fill. */
export function fillableKeys(slug: string, keys: Iterable<string>): string[] {
  const own = new Set(
    figureKeys.flatMap((key) => [inputFor(key, slug), sheetFigures[key].chooses?.[slug]?.[0]]),
  );
  const bases = [
    ...order.flatMap((id) => steps[id].series?.[slug] ?? []),
    ...figureKeys.flatMap((key) => sheetFigures[key].fillsOthers?.[slug] ?? []),
    SPACING,
  ];
  return [...keys].filter(
    (key) => own.has(key) || bases.some((base) => new RegExp(`^${base}-\\d+$`).test(key)),
  );
}

/** A disc that counts one way shows 358° where another shows 2° before its zero. */
const aboutZero = (value: number | undefined, unit: UnitName): number | undefined =>
  value !== undefined && unit === 'deg' && value > 180 ? value - 360 : value;

/** A place of the sheet that a calculator's figure may be sent to. */
export type Place =
  | { readonly kind: 'figure'; readonly key: FigureKey; readonly value: number }
  | {
      readonly kind: 'reading';
      readonly step: StepId;
      readonly index: number;
      readonly value: number;
    }
  | { readonly kind: 'order'; readonly text: string };

/**
 * The places of the sheet that take a calculator's results and inputs, where the figure lies in
 * the place's range.
 */
export function placesFor(
  engine: Engine,
  slug: string,
  input: (key: string) => number | undefined,
  result: (name: string) => number | undefined,
): Place[] {
  const places: Place[] = [];
  for (const key of figureKeys) {
    const { takes, min, max, whole, sets } = sheetFigures[key];
    const source = takes?.[slug];
    // Directions by the cylinder are those of the sets only where each has its own.
    if (
      source !== undefined &&
      sets !== undefined &&
      (sharesSets(engine) || result('sets')! < input('cylinders')!)
    ) {
      continue;
    }
    const from = inputFor(key, slug);
    const value =
      (source === undefined ? undefined : result(source)) ??
      (from === undefined ? undefined : input(from));
    if (value === undefined || !(value >= min && value <= max)) continue;
    if (whole && !Number.isInteger(value)) continue;
    places.push({ kind: 'figure', key, value });
  }
  for (const id of order) {
    const { reading, series, takes } = steps[id];
    const base = series?.[slug];
    const source = takes?.[slug];
    if (!reading || (base === undefined && source === undefined)) continue;
    for (let index = 0; index < boxesOf(engine, id); index += 1) {
      const given =
        source === undefined
          ? input(`${base!}-${String(index + 1)}`)
          : aboutZero(result(source), reading.unit);
      const onDisc =
        id === 'top' && given !== undefined ? readDisc(engine, index, given) : undefined;
      const value = onDisc?.value ?? given;
      if (value !== undefined && value >= reading.min && value <= reading.max) {
        places.push({ kind: 'reading', step: id, index, value });
      }
    }
  }
  return slug === 'firing-order' ? [...places, ...orderPlace(engine, places, result)] : places;
}

/** The firing order, where the sheet can read it of so many cylinders and sets as go with it. */
function orderPlace(
  engine: Engine,
  places: readonly Place[],
  result: (name: string) => number | undefined,
): Place[] {
  const sequence = result('sequence');
  if (sequence === undefined) return [];
  const text = orderFigure(sequence);
  const counted = places.reduce(
    (so, place) => (place.kind === 'figure' ? setFigure(so, place.key, place.value) : so),
    engine,
  );
  return readOrder(counted, text, { lengths: 'mm' }).problem === undefined
    ? [{ kind: 'order', text }]
    : [];
}
