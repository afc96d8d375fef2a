import { listed } from '../maths/numeric/listed.ts';
import { showInput } from '../frame/text/format.ts';
import { skimFor } from '../maths/cylinder/compression.ts';
import { angleAfter, travelAt, type SliderCrank } from '../maths/crank/slider-crank.ts';
import { readingOf } from './readings.ts';
import { sheetFigures, type FigureKey } from './figures.ts';
import { crankFigures, sliderCrankOf } from './geometry.ts';
import {
  against,
  amount,
  attempted,
  degrees,
  EPSILON,
  fitted,
  type Case,
  type Judgement,
  type Verdict,
} from './judge-words.ts';
import { boxName, checkedAt, entriesOf, type Engine } from './model.ts';

const named = (keys: readonly FigureKey[]): string =>
  listed(keys.map((key) => sheetFigures[key].label.toLowerCase()));

const missingOf = ({ figures }: Engine): FigureKey[] =>
  crankFigures.filter((key) => figures[key] === undefined);

/** Further from its figure than a barrel of this engine can be, crank degrees. */
const UNLIKELY = 25;

/** Whether a cylinder's reading at a step was taken before another step altered the engine. */
const isStale = (
  engine: Engine,
  id: 'squish' | 'exhaust',
  by: 'squish' | 'exhaust',
  index: number,
): boolean => readingOf(engine, by).changed > checkedAt(readingOf(engine, id), index);

/** What the squish comes to by `change` mm, with a warning where that is too little or too much. */
function squishAfter({ engine, lengths }: Case, index: number, change: number): string {
  const show = (value: number): string => fitted(value, lengths);
  const now = entriesOf(engine, 'squish')[index] ?? null;
  if (now === null) {
    return change < 0
      ? `That takes ${show(-change)} off its squish, which has not been measured: measure it before anything is lowered, since the piston may strike the head.`
      : `That adds ${show(change)} to its squish.`;
  }
  if (isStale(engine, 'squish', 'exhaust', index)) {
    return `That ${change < 0 ? 'takes' : 'adds'} ${show(Math.abs(change))} ${change < 0 ? 'off' : 'to'} its squish, which was measured before the barrel was last moved: measure it again first.`;
  }
  const then = now + change;
  const goes = `Its squish of ${show(now)}`;
  if (then <= EPSILON) {
    return `Do not do it as it is. ${goes} would come to ${show(then)}: the piston strikes the head. As much has to be put back under the head, which gives its volume back too, or another head or barrel used.`;
  }
  const { squish: figure, 'squish-tolerance': allowed = 0 } = engine.figures;
  if (figure === undefined) {
    return `${goes} comes to ${show(then)}; the sheet has no figure to hold that against.`;
  }
  if (then < figure - allowed - EPSILON) {
    return `Take care: ${goes.toLowerCase()} would shrink to ${show(then)}, below its least of ${show(figure - allowed)}. At least ${show(figure - allowed - then)} has to be put back under the head.`;
  }
  if (then > figure + allowed + EPSILON) {
    return `${goes} would grow to ${show(then)}, above its most of ${show(figure + allowed)}: at least ${show(then - figure - allowed)} has to come off between barrel and head.`;
  }
  return `${goes} comes to ${show(then)}, which is within its limits.`;
}

const needsCrank = (engine: Engine): string =>
  `By how much the barrel moves follows from ${named(missingOf(engine))}: enter what is missing in the sheet. Raising it adds as much to the squish, and lowering it takes as much off.`;

/** How far the barrel moves, mm, positive upwards, for the port to open at another angle. */
const barrelMove = (crank: SliderCrank, from: number, to: number): number | string =>
  attempted(() => travelAt(crank, from) - travelAt(crank, to));

/** Where a port opens, with the barrel's move in fitted and what is then left of the squish. */
export function judgePort(given: Case): Judgement {
  const { engine, reading, entries, lengths, past } = given;
  const target = engine.figures[reading.target!]!;
  const crank = sliderCrankOf(engine);
  const rows = entries.map<Verdict>((entry, i) => {
    const verdict = against(given, entry, target);
    if (verdict.result !== 'fail' || entry === null || crank === undefined) return verdict;
    if (Math.abs(entry - target) > UNLIKELY) {
      return {
        ...verdict,
        words: `It reads ${amount(entry - target, 'deg', reading.step)} from the figure, which no gasket makes: check the disc, the reading, and which edge it was.`,
      };
    }
    const move = barrelMove(crank, entry, target);
    if (typeof move === 'string') return { ...verdict, words: `${verdict.words} ${move}` };
    const off = amount(entry - target, 'deg', reading.step);
    const size = fitted(Math.abs(move), lengths);
    const act =
      move > 0
        ? `It opens ${off} late: raise the barrel by ${size}, which opens it earlier.`
        : `It opens ${off} early: lower the barrel by ${size}, which opens it later.`;
    return { ...verdict, words: past ? act : `${act} ${squishAfter(given, i, move)}` };
  });
  const out = rows.some(({ result }) => result === 'fail');
  return { rows, whole: out && crank === undefined ? [needsCrank(engine)] : [], missing: [] };
}

/** Where the skirt opens the inlet, with what would have to come off the skirt for one that opens late. */
export function judgeInlet(given: Case): Judgement {
  const { engine, reading, entries, lengths } = given;
  const target = engine.figures[reading.target!]!;
  const crank = sliderCrankOf(engine);
  const rows = entries.map<Verdict>((entry) => {
    const verdict = against(given, entry, target);
    if (verdict.result !== 'fail' || entry === null || entry > target || crank === undefined) {
      return verdict;
    }
    const cut = barrelMove(crank, -target, -entry);
    return typeof cut === 'string'
      ? { ...verdict, words: `${verdict.words} ${cut}` }
      : {
          ...verdict,
          words: `${verdict.words} That is ${fitted(cut, lengths)} of skirt, taken off a little at a time.`,
        };
  });
  return { rows, whole: [], missing: [] };
}

/** Squish, with what the same gasket under the barrel would do to the port. */
export function judgeSquish(given: Case): Judgement {
  const { engine, reading, entries, past } = given;
  const target = engine.figures[reading.target!]!;
  const crank = sliderCrankOf(engine);
  const ports = past ? [] : entriesOf(engine, 'exhaust');
  const rows = entries.map<Verdict>((entry, i) => {
    const verdict = against(given, entry, target);
    const opens = isStale(engine, 'exhaust', 'squish', i) ? null : (ports[i] ?? null);
    if (verdict.result !== 'fail' || entry === null || opens === null || crank === undefined) {
      return verdict;
    }
    const raise = target - entry;
    const then = attempted(() => angleAfter(crank, travelAt(crank, opens) - raise));
    if (typeof then === 'string') return verdict;
    return {
      ...verdict,
      words: `${verdict.words} Under the barrel instead, the exhaust would open ${degrees(then - opens)} ${then < opens ? 'earlier' : 'later'}.`,
    };
  });
  return { rows, whole: past ? [] : movedSince(given, crank), missing: [] };
}

/** What the squish has come to by the move of the barrel since it was measured, as far as that is known. */
function movedSince(
  { engine, reading, entries, lengths }: Case,
  crank: SliderCrank | undefined,
): string[] {
  if (crank === undefined) return [];
  const { found, left } = readingOf(engine, 'exhaust');
  return entries.flatMap((entry, i) => {
    const [from, to] = [found[i] ?? null, left[i] ?? null];
    if (entry === null || from === null || to === null || from === to) return [];
    if (!isStale(engine, 'squish', 'exhaust', i)) return [];
    const move = barrelMove(crank, from, to);
    if (typeof move === 'string') return [];
    const then = entry + move;
    const angles = `${showInput(from, 'deg', lengths)} to ${showInput(to, 'deg', lengths)}`;
    return [
      `${boxName(reading, i, engine)}: the exhaust went from ${angles}. If the barrel was moved for it since this reading, the squish is now about ${fitted(then, lengths)}${then <= EPSILON ? ', and the piston strikes the head: do not turn it over' : ''}.`,
    ];
  });
}

/** Head volume, with what skimming for it takes off the squish. */
export function judgeVolume(given: Case): Judgement {
  const { engine, reading, entries, lengths, past } = given;
  const target = engine.figures[reading.target!]!;
  const { bore } = engine.figures;
  const rows = entries.map<Verdict>((entry, i) => {
    const verdict = against(given, entry, target);
    if (verdict.result !== 'fail' || entry === null) return verdict;
    if (entry < target) {
      return {
        ...verdict,
        words: `${verdict.words} Have its bowl cut out by that; its squish band stays as it is.`,
      };
    }
    const skim = bore === undefined ? undefined : attempted(() => skimFor(entry - target, bore));
    if (typeof skim !== 'number' || past) return verdict;
    return {
      ...verdict,
      words: `${verdict.words} Skimming its face over the bore’s width for that takes off about ${fitted(skim, lengths)}. ${squishAfter(given, i, -skim)}`,
    };
  });
  const tooLarge = rows.some(({ result }, i) => result === 'fail' && entries[i]! > target);
  return {
    rows,
    whole:
      bore === undefined && tooLarge
        ? [
            'Skimming a head takes as much off the squish as off its face: enter the cylinder bore in the sheet to see how much.',
          ]
        : [],
    missing: [],
  };
}
