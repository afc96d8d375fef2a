/** Three throttle slides with their adjusters, drill shanks to try under them, and cables that hang. */
import { balanceSlides } from '../maths/carburettor/slide-balance.ts';
import { between, chanceOf, stepped } from './chance.ts';
import { driven } from './play.ts';
import type { Cost, Line, Reckoning } from './reckoning.ts';
import { tasks } from './tasks.ts';

export interface SlidesCard {
  readonly slides: number;
  /** Pitch of each adjuster's thread, mm. */
  readonly thread: number;
  /** The opening to bring all slides to, mm. */
  readonly target: number;
}

export interface Slides {
  readonly number: number;
  readonly card: SlidesCard;
  readonly hidden: {
    /** mm with the grip worked, as found. */
    readonly openings: readonly number[];
    /** By how much each slide hangs in its cable's friction until the grip is worked, mm. */
    readonly hangs: readonly number[];
  };
}

export interface SlidesBench {
  readonly slide: number;
  /** Of each adjuster, turns; more opens. */
  readonly turns: readonly number[];
  /** Where each slide now stands, mm. */
  readonly stands: readonly number[];
  /** Slides that were turned and not measured since with the grip worked. */
  readonly unsure: readonly boolean[];
  readonly worked: boolean;
  /** The shank that last dragged under each slide since its adjuster was turned, mm. */
  readonly found: readonly (number | undefined)[];
  readonly said: string;
}

export type SlidesAct =
  | { readonly act: 'slide'; readonly slide: number }
  | { readonly act: 'adjust'; readonly by: number }
  | { readonly act: 'try'; readonly drill: number }
  | { readonly act: 'grip' };

const COUNT = 3;
const three = <T>(make: (index: number) => T): T[] =>
  Array.from({ length: COUNT }, (_, i) => make(i));

/** Shanks of a set of drills, mm. */
export const DRILLS: readonly number[] = Array.from({ length: 31 }, (_, i) => (10 + i) / 10);
const MOST_TURNS = 4;

export function inventSlides(number: number): Slides {
  const chance = chanceOf(number, 40);
  const target = stepped(chance, 2, 3, 0.1);
  return {
    number,
    card: { slides: COUNT, thread: 1, target },
    hidden: {
      openings: three(() => target + (chance() < 0.5 ? -1 : 1) * between(chance, 0.15, 0.9)),
      hangs: three(() => between(chance, 0.16, 0.34)),
    },
  };
}

export const setUpSlides = ({ hidden }: Slides): SlidesBench => ({
  slide: 0,
  turns: three(() => 0),
  stands: hidden.openings,
  unsure: three(() => true),
  worked: true,
  found: three(() => undefined),
  said: '',
});

const settledAt = ({ card, hidden }: Slides, { turns }: SlidesBench, slide: number): number =>
  hidden.openings[slide]! + turns[slide]! * card.thread;

/** How a shank goes under a slide as it stands. */
export function drillFits(bench: SlidesBench, drill: number): 'loose' | 'drags' | 'no-go' {
  const room = bench.stands[bench.slide]! - drill;
  return room > 0.05 ? 'loose' : room < -0.02 ? 'no-go' : 'drags';
}

export function workSlides(slides: Slides, bench: SlidesBench, act: SlidesAct): SlidesBench {
  const put = <T>(list: readonly T[], value: T): T[] =>
    list.map((each, i) => (i === bench.slide ? value : each));
  switch (act.act) {
    case 'slide':
      return { ...bench, slide: act.slide, said: `The shank is under slide ${act.slide + 1}.` };
    case 'adjust': {
      const wanted = bench.turns[bench.slide]! + act.by;
      const turns = put(bench.turns, Math.min(MOST_TURNS, Math.max(-MOST_TURNS, wanted)));
      const at = settledAt(slides, { ...bench, turns }, bench.slide);
      const stands = driven(bench.stands[bench.slide]!, at, slides.hidden.hangs[bench.slide]!);
      return {
        ...bench,
        turns,
        stands: put(bench.stands, Math.max(0, stands)),
        unsure: put(bench.unsure, true),
        found: put(bench.found, undefined),
        worked: false,
        said: '',
      };
    }
    case 'grip':
      return {
        ...bench,
        stands: three((i) => Math.max(0, settledAt(slides, bench, i))),
        found: bench.worked ? bench.found : three(() => undefined),
        worked: true,
        said: 'Grip opened and let go: the slides have settled.',
      };
    case 'try':
      return {
        ...bench,
        unsure: bench.worked ? put(bench.unsure, false) : bench.unsure,
        found: drillFits(bench, act.drill) === 'drags' ? put(bench.found, act.drill) : bench.found,
        said: '',
      };
  }
}

export function reckonSlides(slides: Slides, bench: SlidesBench): Reckoning {
  const { target, thread } = slides.card;
  const { tolerance } = tasks.slides;
  const ends = three((i) => Math.max(0, settledAt(slides, bench, i)));
  const left = balanceSlides(ends, thread, target);
  const lines = ends.map((end, i): Line => {
    const error = end - target;
    return {
      label: `Slide ${i + 1}`,
      unit: 'mm',
      truth: target,
      set: end,
      error,
      right: Math.abs(error) <= tolerance + 1e-9,
    };
  });
  const costs = lines.flatMap(({ error, right }, i): Cost[] => {
    const size = Math.abs(error);
    if (right) return [];
    const read = { article: 'opening-all-slides-together' };
    return bench.unsure[i]
      ? [
          {
            cost: size,
            unit: 'mm',
            say: `Slide ${i + 1} was not measured after its last turn with the grip worked. A slide hangs in its cable’s friction until it is moved.`,
            read,
          },
        ]
      : [
          {
            cost: size,
            unit: 'mm',
            say: `Slide ${i + 1} wants ${Math.abs(left.turns[i]!).toFixed(2)} turns more ${left.turns[i]! > 0 ? 'open' : 'shut'}. Try shanks up to the one that just drags.`,
            read,
          },
        ];
  });
  return {
    lines,
    gaps: [],
    costs: costs.sort((a, b) => b.cost - a.cost),
    remarks: [],
    right: lines.every(({ right }) => right),
    worst: Math.max(...lines.map(({ error }) => Math.abs(error))),
  };
}
