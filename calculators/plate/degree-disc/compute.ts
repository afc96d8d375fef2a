import { blameFields } from '../../frame/attempt.ts';
import { BAR_ACROSS, BAR_UP } from '../../drawing/proving-bar.ts';
import { sliderCrank } from '../../position/engine-inputs.ts';
import { absent, type ComputedOf, type ValuesOf } from '../../frame/types.ts';
import {
  assertDisc,
  marksAfter,
  marksBefore,
  offCentreDiscError,
  stretchedDiscError,
  stretchedTapeError,
  tapeLength,
  tapePlace,
} from '../../maths/crank/degree-disc.ts';
import { arcOf } from '../../maths/crank/rim-arc.ts';
import { assertGeometry } from '../../maths/crank/slider-crank.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

export type Values = ValuesOf<typeof inputs>;
/** All that a tape depends on. */
export type TapeValues = Omit<Values, 'outside' | 'inside'>;

export interface Mark {
  /** Piston travel, mm below the top. */
  readonly travel: number;
  /** Degrees from the top, on the side that `before` says. */
  readonly angle: number;
  readonly before: boolean;
}

/** An error about a travel belongs to the field it was typed in. */
const atField = <T>(key: string, work: () => T): T =>
  blameFields((names) => (names.includes('pistonTravel') ? [key] : names), work);

/** The piston positions to be marked, those before the top first. */
export function marksOf(v: TapeValues): readonly Mark[] {
  const engine = sliderCrank(v);
  assertGeometry(engine);
  const before = atField('marks', () => marksBefore(engine, v.marks));
  const after = atField('marks-after', () => marksAfter(engine, v['marks-after']));
  return [
    ...before.map((angle, i) => ({ travel: v.marks[i]!, angle, before: true })),
    ...after.map((angle, i) => ({ travel: v['marks-after'][i]!, angle, before: false })),
  ];
}

/** What the pointer shows at a mark. */
function reading({ angle, before }: Mark, numbering: Values['numbering']): number {
  return before && numbering === 'one-way' && angle !== 0 ? 360 - angle : angle;
}

export function compute(v: Values): ComputedOf<typeof results> {
  assertDisc(v.outside, v.inside);
  const marks = marksOf(v);
  const none = absent(
    'There are no piston positions to mark. Enter one or more for marks to be drawn; the disc and the tape can be saved without.',
  );
  const listed = (values: readonly number[]) => (marks.length === 0 ? none : values);
  return {
    'tape-length': tapeLength(v.rotor, v.thickness),
    'tape-per-degree': tapePlace(v.rotor, v.thickness, 1),
    'disc-per-degree': arcOf(v.outside, 1),
    'mark-angle': listed(marks.map(({ angle }) => angle)),
    'mark-reading': listed(marks.map((mark) => reading(mark, v.numbering))),
    'mark-place': listed(
      marks.map(({ angle, before }) => tapePlace(v.rotor, v.thickness, before ? -angle : angle)),
    ),
    'off-centre-error': offCentreDiscError(v['off-centre'], v.outside / 2),
    'disc-print-error': stretchedDiscError(v['bar-across'] / BAR_ACROSS, v['bar-up'] / BAR_UP),
    'tape-print-error': stretchedTapeError(v['bar-across'], BAR_ACROSS),
  };
}
