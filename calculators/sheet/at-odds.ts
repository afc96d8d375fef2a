import { decimalsApart, fixed } from '../frame/text/format.ts';
import { FIT, ringGapDoubt, squishDoubt } from '../geometry/fits.ts';
import { annulus } from '../maths/carburettor/needle.ts';
import { assertCam, gapForDwell } from '../maths/ignition/breaker-cam.ts';
import { finalCurrent } from '../maths/ignition/coil-charge.ts';
import { sayNumber } from '../maths/numeric/rounding.ts';
import { currentLimitInput } from '../points/coil-inputs.ts';
import { farFromPractice } from './common-practice.ts';
import { dwellOdds, gapOdds, refused } from './figures-together.ts';
import type { Judgement, Verdict } from './judge-words.ts';
import type { Engine, Entry } from './model.ts';
import { steps, type StepId } from './steps.ts';
import { unusualPlace } from './usual-place.ts';

type Figures = Engine['figures'];

/** What the calculator of a step says of a reading beside the other figures of the sheet, in millimetres. */
interface Odds {
  readonly words: string;
  /** Set where no engine runs with both, so that within its limits is no pass. */
  readonly never?: true;
}

const never = (words: string | undefined): Odds | undefined =>
  words === undefined ? undefined : { words, never: true };
const doubt = (words: string | undefined): Odds | undefined =>
  words === undefined ? undefined : { words };

const lengthOf = (value: number): string => `${sayNumber(value)} mm`;

function ofClearance(value: number, bore: number): string | undefined {
  const share = (1000 * value) / bore;
  const span = `${fixed(FIT.least, 1)} to ${fixed(FIT.most, 1)}‰ of the bore, common practice for aluminium in air-cooled iron`;
  const limit = share < FIT.least ? FIT.least : FIT.most;
  const is = `On the bore in the sheet that is ${fixed(share, decimalsApart(share, limit, 1))}‰`;
  if (share < FIT.least)
    return `${is}: tight against ${span}. Tight is the side that seizes; only the maker’s figure overrules it.`;
  if (share > FIT.most)
    return `${is}: wide against ${span}. Wide rattles, tilts the rings and blows by; only the maker’s figure overrules it.`;
  return undefined;
}

function ofCurrent(resistance: number, volts: number): string | undefined {
  const limit = currentLimitInput.default;
  if (!(resistance > 0)) return undefined;
  const full = finalCurrent({ volts, resistance, ballast: 0, inductance: 1 });
  return full > limit
    ? `Standing with the points shut it draws ${fixed(full, decimalsApart(full, limit, 1))} A on the ${sayNumber(volts)} V of the sheet, and contacts stand about ${fixed(limit, 1)} A (common practice): it wants a resistor in series, or it is a coil for another voltage.`
    : undefined;
}

function ofSquish({ deck, bore }: Figures, value: number): string | undefined {
  if (deck !== undefined && value < deck) {
    return `The crown alone stands ${lengthOf(deck)} below the deck in the sheet, and ${lengthOf(value)} is less: unless the head reaches into the bore, one of the two is to be measured again.`;
  }
  return bore === undefined ? undefined : squishDoubt((100 * value) / bore);
}

/** A reading against the figures of the sheet that its step is not judged by. */
function readingOdds(engine: Engine, id: StepId, value: number): Odds | undefined {
  const { figures } = engine;
  const { lift, gap, bore, volts } = figures;
  switch (id) {
    case 'timing':
      return doubt(unusualPlace(engine, value));
    case 'gap': {
      const said = gapOdds(value, lift);
      // What is said of the figure itself is not said again in full.
      return (
        never(said && gapOdds(gap, lift) ? 'Like its figure it is not below the lift.' : said) ??
        doubt(farFromPractice({ gap: value }, 'gap'))
      );
    }
    case 'ring-gap':
      return bore === undefined ? undefined : doubt(ringGapDoubt((100 * value) / bore));
    case 'clearance':
      return bore === undefined ? undefined : doubt(ofClearance(value, bore));
    case 'coil':
      return volts === undefined ? undefined : doubt(ofCurrent(value, volts));
    case 'wiring':
      return volts === undefined || value < volts
        ? undefined
        : never(
            `The sheet has a battery of ${sayNumber(volts)} V, and with ${sayNumber(value)} V lost on the way nothing is left for the coil. Measure battery and loss again.`,
          );
    case 'squish':
      return doubt(ofSquish(figures, value));
    default:
      return undefined;
  }
}

/** What is to be said of the figure that a step's readings are judged by. */
function ofItsFigure(figures: Figures, id: StepId): string | undefined {
  const { target } = steps[id].reading ?? {};
  return target === undefined ? undefined : farFromPractice(figures, target);
}

/** Whether the figure that a step's readings are judged by is itself among those that refuse one another. */
const isOwnFigureRefused = ({ lift, gap }: Figures, id: StepId): boolean =>
  id === 'gap' && gapOdds(gap, lift) !== undefined;

/** What the calculator of a step refuses of the figures in the sheet, before anything is read. */
function figureOdds(figures: Figures, id: StepId): string[] {
  const { lift, gap, lobes, rise, top, needle, dwell } = {
    ...figures,
    needle: figures['needle-diameter'],
    dwell: figures['dwell-angle'],
  };
  const said: (string | undefined)[] = [];
  if (id === 'gap') {
    said.push(gapOdds(gap, lift));
    const beyond = dwellOdds(figures);
    said.push(beyond);
    if (lift !== undefined && lobes !== undefined && rise !== undefined && top !== undefined) {
      const cam = { lobes, speedRatio: 1, lift, rise, top, profile: 'harmonic' as const };
      const noCam = refused(() => assertCam(cam));
      said.push(noCam);
      // By which curve the lobe rises changes the gap for a dwell, and not whether there is one.
      if (noCam === undefined && beyond === undefined && dwell !== undefined) {
        said.push(refused(() => gapForDwell(cam, dwell)));
      }
    }
  }
  const jetBore = figures['needle-jet'];
  if (id === 'clip' && needle !== undefined && jetBore !== undefined) {
    said.push(refused(() => annulus(jetBore, { diameter: needle, taper: 0, straight: 1 }, 0)));
  }
  return said.flatMap((words) =>
    words === undefined ? [] : [`The figures in the sheet do not go together. ${words}`],
  );
}

function beside(row: Verdict, odds: Odds | undefined): Verdict {
  // What is to be corrected comes to its figure, and with that to the others.
  if (odds === undefined || row.result === 'empty' || row.result === 'fail') return row;
  if (row.result === 'pass') {
    return odds.never
      ? {
          result: 'unjudged',
          words: `not judged: it is ${row.words}, but another figure of the sheet speaks against it. ${odds.words}`,
        }
      : { ...row, words: `${row.words}, but doubted. ${odds.words}`, doubted: true };
  }
  return { ...row, words: [row.words, odds.words].filter(Boolean).join(' ') };
}

/**
 * A judgement with what the step's calculator would say of the same readings: each is judged against
 * its own figure only, and may contradict another one of the sheet.
 */
export function againstSheet(
  engine: Engine,
  id: StepId,
  entries: readonly Entry[],
  judged: Judgement,
): Judgement {
  const { figures } = engine;
  const waits = isOwnFigureRefused(figures, id);
  const rows = judged.rows.map<Verdict>((row, i) => {
    const entry = entries[i] ?? null;
    if (entry === null) return row;
    const held = beside(row, readingOdds(engine, id, entry) ?? doubt(ofItsFigure(figures, id)));
    return waits && held.result !== 'unjudged'
      ? {
          result: 'unjudged',
          words: 'not judged: the figure that it would be held against is first to be put right',
        }
      : held;
  });
  return { ...judged, rows, whole: [...figureOdds(figures, id), ...judged.whole] };
}
