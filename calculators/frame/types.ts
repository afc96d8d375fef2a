import type { VNode } from 'preact';
import type { OrderReader } from './field/fields.ts';
import type { LengthDisplay, UnitName } from './text/units.ts';

/** Whose figure a field holds. An `example` is nobody's: the invented engine's, until it is touched. */
export type Origin = 'yours' | 'link' | 'sheet' | 'example';

interface InputBase {
  readonly label: string;
  /** One line under the label: what the figure is. */
  readonly help: string;
  /** How to measure it at the bench; shown on request. */
  readonly measure?: string;
  /** Heading of the group of fields it stands in. Neighbours with the same heading share it. */
  readonly group?: string;
  /**
   * Set where the default is no reading: a tolerance, a question that is asked, how many boxes there
   * are, or none of something. What is said may rest on it though nobody gave it.
   */
  readonly assumed?: true;
  /**
   * Set where something is judged by it: a tolerance, a largest or a least. What is said by it says,
   * while nobody gave it, that it is assumed (`test/calculators/assumed.test.ts`).
   */
  readonly judgesBy?: true;
  /** Whether the field applies, given the choices made so far and the plain numbers before it. */
  readonly when?: (values: AnyValues) => boolean;
}

export interface NumberInput extends InputBase {
  readonly kind: 'number';
  /** Home unit: what a bare number means in an address. */
  readonly unit: UnitName;
  /** Legal range in the home unit, both ends included. */
  readonly min: number;
  readonly max: number;
  /** Why the range is what it is; completes "… must be from A to B: ". */
  readonly why: string;
  readonly default: number;
  readonly whole?: boolean;
  /** Set where it is often stamped on the part in hundredths of a millimetre: the bore of a jet. */
  readonly stamped?: boolean;
  /** Set where engines are so alike in it that ten times as much, or a tenth, is a slip of the point. */
  readonly alike?: boolean;
  /**
   * What is said of a text that names the figure otherwise than by its quantity, such as the gauge number
   * of a wire, and what to type for it; nothing of any other text.
   */
  readonly otherwise?: (typed: string) => string | undefined;
  /** Step of the buttons and arrow keys, in the home unit. */
  readonly step: number;
  /** How fine its tool reads it, in the home unit, where that is finer than its step. */
  readonly reads?: number;
  /** Usual ± of a reading, in the home unit. Makes it a measured quantity with its own field. */
  readonly error?: number;
  /** Set where 0 is seen and not measured, such as an empty tank: it has no ±. */
  readonly exactAtZero?: true;
  /**
   * Key of the input that holds its ±, where it shares one with others and the calculator reckons with
   * that itself. Several readings of it may be given too.
   */
  readonly errorIn?: string;
  /**
   * About what is read there, in the home unit, where the default does not say it; 0 where anything may
   * be. A bare figure far from it is doubted that would come near it in another unit.
   */
  readonly usual?: number;
  /**
   * What stands for a figure that nobody gave where it would make one that was given impossible;
   * nothing where it does not. `own` is the figure as it is, `values` all of them, in home units.
   */
  readonly givesWay?: (own: number, values: AnyValues) => number | undefined;
}

/** A number that may be left empty. */
export interface OptionalInput extends Omit<NumberInput, 'kind' | 'default' | 'givesWay'> {
  readonly kind: 'optional';
}

/** The same figure for each of several cylinders, sets, ports …: keys `key-1`, `key-2`, … */
export interface SeriesInput extends Omit<NumberInput, 'kind' | 'default'> {
  readonly kind: 'series';
  readonly count: (values: AnyValues) => number;
  /** Longest series the address may hold. */
  readonly most: number;
  /** First index in the keys; 1 unless given. */
  readonly first?: number;
  readonly default: (index: number, values: AnyValues) => number;
  /**
   * Neighbours with the same word here stand side by side in one row for each index, headed by the
   * word and its number: “Distance 3”, from hole, to hole, how far.
   */
  readonly row?: string;
  /** Label of one member; index counts from 1. */
  readonly member: (index: number, values: AnyValues) => string;
}

/** Several numbers in one field, separated by spaces or semicolons. */
export interface ListInput extends Omit<NumberInput, 'kind' | 'default' | 'error' | 'givesWay'> {
  readonly kind: 'list';
  readonly most: number;
  /**
   * Set where it is a firing order, read in any common way of writing it (`1-3-2`, `1,3,2`, `132`): of
   * how many cylinders. It names each of them once, or is empty.
   */
  readonly order?: { readonly of: (values: AnyValues) => number; readonly read: OrderReader };
  readonly default: readonly number[];
}

export interface ChoiceInput<Option extends string = string> extends InputBase {
  readonly kind: 'choice';
  readonly options: Readonly<Record<Option, string>>;
  readonly default: NoInfer<Option>;
}

export type Input = NumberInput | OptionalInput | SeriesInput | ListInput | ChoiceInput<string>;

export type Inputs = Readonly<Record<string, Input>>;

/** What `compute` receives for each kind of input. */
export type ValueOf<I extends Input> = I extends { kind: 'choice'; options: infer O }
  ? keyof O & string
  : I extends { kind: 'series' | 'list' }
    ? readonly number[]
    : I extends { kind: 'optional' }
      ? number | undefined
      : number;

export type ValuesOf<I extends Inputs> = { readonly [K in keyof I]: ValueOf<I[K]> };

export type AnyValue = number | undefined | string | readonly number[];
export type AnyValues = Readonly<Record<string, AnyValue>>;

export interface ResultSpec {
  readonly label: string;
  readonly unit: UnitName;
  readonly help: string;
  /** Shown large and first. At most three. */
  readonly lead?: boolean;
  /** Shorter words for the strip of answers, where the label is longer than half a phone's line. */
  readonly short?: string;
  /** What it is called while figures of the example are behind it, where its label is an order. */
  readonly unjudged?: string;
  /** Decimals when no measured input limits them, and the most ever shown, in the home unit. */
  readonly decimals: number;
  /** Table in which a series of results is a column. */
  readonly table?: string;
  /** Set where its digits are the numbers of cylinders, shown one by one: 132 as 1-3-2. */
  readonly isOrder?: true;
  /** Whether a plus sign is written before positive values. */
  readonly signed?: boolean;
  /** Whether its word tells the side, advance or retard, so that a sign would say it twice. */
  readonly sided?: boolean;
  /** Name of the result that is this one's own ±, joined with that of the measured inputs. */
  readonly spreadFrom?: string;
  /**
   * What stands for it where lengths are shown in inches, if its name holds a length in mm: for
   * “0.1 mm is worth” there, “5 thou is worth” and `times` 1.27. The figure for programs stays.
   */
  readonly inInches?: {
    readonly label: string;
    readonly short?: string;
    readonly help: string;
    readonly times: number;
  };
  /** Shown without a ±, as where it is itself one. */
  readonly bare?: boolean;
  /** After how much it starts again, as an angle after 360: two figures so far apart are one. */
  readonly cyclic?: number;
  /** Set where it goes in jumps, as an order does: no ± can be told of it. */
  readonly jumps?: true;
  /**
   * A size out of a standard's list, which steps: a wire, a fuse. It has no ±, and shows the decimals
   * that it has and no others: 0.75, 1, 2.5. Where a reading moves it, it moves by a whole step.
   */
  readonly standard?: boolean;
  /** A word for people that follows the figure, such as "early" or "BTDC", or a unit that is chosen. */
  readonly word?: (value: number, values: AnyValues) => string;
}

export type Results = Readonly<Record<string, ResultSpec>>;

/** A result that does not exist for these inputs, with the sentence that says why. */
export class Absent {
  readonly why: string;
  /** Set where it lies with figures, and not with what is asked: the quantities at fault by name, if known. */
  readonly at: readonly string[] | undefined;
  /** Whether the sentence judges figures, and so is said only where all of them were given. */
  readonly judges: boolean;
  /** Whether `at` names all figures that it lies with. */
  readonly all: boolean;
  constructor(why: string, at?: readonly string[], judges = false, all = false) {
    this.why = why;
    this.at = at;
    this.judges = judges;
    this.all = all;
  }
}
/** No result, by what is asked or by a figure that can only have been given. */
export const absent = (why: string): Absent => new Absent(why);
/** No result, by figures: where some of them are the example’s, the page says so. */
export const impossible = (why: string, at: readonly string[] = []): Absent => new Absent(why, at);

/** The same, where `at` names all the figures that it lies with, and no other of the result’s. */
export const impossibleBy = (why: string, at: readonly string[]): Absent =>
  new Absent(why, at, false, true);

/** The same, where the sentence is a verdict on the figures: of the example’s it says only whose they are. */
export const unfit = (why: string, at: readonly string[]): Absent => new Absent(why, at, true);

/** One figure, a series (rows 1, 2, …), or rows of figures (`name-S-H`). */
export type ResultValue = number | readonly number[] | readonly (readonly number[])[] | Absent;

export type ComputedOf<R extends Results> = { readonly [K in keyof R]: ResultValue };

/** The ± of each result that has one, by result name (`name-1` … in a series), worked out when read. */
export interface Uncertain {
  readonly spreads: Readonly<Record<string, number>>;
}

/** What a sentence that follows from the figures may know besides them. */
export interface Known extends Uncertain {
  /** In which lengths the reader has the page. */
  readonly lengths: LengthDisplay;
  /** Whether an input holds what is assumed, which nobody gave: it is then never called the reader’s. */
  readonly isAssumed: (key: string) => boolean;
}

/** A sentence that follows from the result. */
export interface Remark {
  /** What it judges, in lower case: named where it cannot be said yet. */
  readonly about: string;
  /** Set where nobody misses it: about a question that the reader may not have asked. */
  readonly quiet?: true;
  /** Set where nobody is to go by the answer without it: how it begins stands under the answer too. */
  readonly leads?: true;
  /** What it reads is what it rests on. Nothing where there is nothing to say. */
  readonly say: () => string | undefined;
}

/**
 * The inputs each result rests on, by result name: those that can change it. A result that is left
 * out rests on all. `key-N` is the member of a series in the result's own row, `key-2` one of them.
 */
export type RestsOn<I extends Inputs = Inputs, R extends Results = Results> = {
  readonly [K in keyof R]?: Rests<I>;
};
type RestKey<I extends Inputs> =
  | (string & keyof I)
  | {
      [K in keyof I]: I[K] extends { kind: 'series' }
        ? `${string & K}-N` | `${string & K}-${number}`
        : never;
    }[keyof I];
// Taken from a method, so that one calculator can stand where any calculator is taken.
type Rests<I extends Inputs> =
  readonly RestKey<I>[] | { of(values: ValuesOf<I>): readonly RestKey<I>[] }['of'];

export interface TableSpec {
  readonly caption: string;
  /** Heading of the first column. */
  readonly rowHeading: string;
  /** Label of a row; the index counts from 1 (with a second one for rows of figures). */
  readonly row: (
    values: AnyValues,
    index: number,
    inner: number | undefined,
    known: Pick<Known, 'lengths'>,
  ) => string;
  /** A column of words beside the figures, such as pass or fail. */
  readonly verdict?: {
    readonly heading: string;
    readonly say: (
      values: AnyValues,
      computed: Readonly<Record<string, ResultValue>>,
      index: number,
      inner: number | undefined,
      known: Known,
    ) => string;
  };
}

export interface PictureProps<I extends Inputs = Inputs, R extends Results = Results> {
  readonly values: ValuesOf<I>;
  readonly results: ComputedOf<R>;
  /** Gives the ± of each result that has one, by result name (and `name-1` … in a series). */
  readonly spreads: () => Readonly<Record<string, number>>;
  readonly lengths: LengthDisplay;
  /** Distinguishes the ids of several pictures on one page. */
  readonly idPrefix: string;
  /** Writes an input, as if typed, in its home unit. */
  readonly set: (key: string, value: number) => void;
  /** Ends a drag: the address takes the state as one step back. */
  readonly commit: () => void;
}

/** A ready table for the page without JavaScript: one input varied, some results shown. */
export interface ReadyTable {
  readonly caption: string;
  readonly vary: string;
  readonly over: readonly number[];
  readonly show: readonly string[];
  /** Inputs other than their defaults, as in an address. */
  readonly set?: Readonly<Record<string, string>>;
}

/** Something the page offers to save, made only when asked for. */
export interface Download<I extends Inputs = Inputs> {
  readonly name: string;
  readonly label: string;
  readonly type: string;
  /** What it is lettered with follows `lengths`; its size never does. A `note` stands below what is drawn. */
  make(values: ValuesOf<I>, lengths: LengthDisplay, note?: string): Promise<string | Uint8Array>;
}

/** Another calculator that takes figures of this one on. */
export interface Onward {
  readonly slug: string;
  /** What the link says. */
  readonly words: string;
  /** Inputs of the other calculator, as in an address. */
  readonly query: Readonly<Record<string, string>>;
  /** Inputs of this one from which they come: where any is the example's, they are there too. */
  readonly from: readonly string[];
}

/** What a field held, told in another way. */
export interface Carried {
  /** The input whose figure it is. */
  readonly from: string;
  /** The same figure for the input that now applies, in its home unit. */
  readonly to: Readonly<Record<string, number>>;
}

export interface Calculator<I extends Inputs = Inputs, R extends Results = Results> {
  readonly slug: string;
  readonly title: string;
  /** One sentence: what it answers. Shown in lists and under the title. */
  readonly purpose: string;
  /** Words people may search for. */
  readonly alsoCalled: readonly string[];
  /** It is of coils fed from a battery alone, and has nothing to say of a magneto. */
  readonly forBattery?: true;
  readonly inputs: I;
  /** Headings of groups of fields that are side questions: set in quieter type. */
  readonly folded?: readonly string[];
  /**
   * Keys of the inputs that the page is about, which the picture's handle moves: they stand under it
   * in this order, a reading first and what is chosen or counted after it, while the others are folded
   * in their groups. The name of a series stands for all its members.
   * The first number of all where none is named.
   */
  readonly inHand?: readonly string[];
  readonly results: R;
  readonly tables?: Readonly<Record<string, TableSpec>>;
  /** From the maths package's names to the input keys, for errors. */
  readonly fieldOf: Readonly<Record<string, string & keyof I>>;
  /**
   * What a refusal rests on besides the quantities that it names, by its code: a hole without metal
   * about it on the distances too. Where any of it is the example’s, the page says so.
   */
  readonly refusedBy?: Readonly<Record<string, readonly (string & keyof I)[]>>;
  // Methods rather than function properties from here on, so that one calculator can stand where
  // any calculator is taken.
  /**
   * What is decided once, by the readings as they are, and stands while a ± moves them: which jets make
   * the set. Without it a ± would tell how far another choice lies, and not how sure this one is.
   */
  decide?(values: ValuesOf<I>): unknown;
  compute(values: ValuesOf<I>, decided?: unknown): ComputedOf<R>;
  /**
   * What a result is called whose label is an order, where these figures give none: nothing is to be
   * done, or they are to be put right first. Nothing where the order stands.
   */
  noOrder?(
    name: string & keyof R,
    values: ValuesOf<I>,
    computed: ComputedOf<R>,
  ): string | undefined;
  /**
   * Which of the results that lead answers what is asked, where that is not always the first: one that
   * only says again what was typed is no answer.
   */
  main?(values: ValuesOf<I>): string & keyof R;
  /**
   * How many times wider the ± of these results is than the ± of the readings makes it, where the
   * readings contradict each other; 1 where they agree.
   */
  readonly widened?: {
    by(computed: ComputedOf<R>, spreads: Known['spreads']): number;
    readonly results: readonly (string & keyof NoInfer<R>)[];
  };
  readonly restsOn?: RestsOn<NoInfer<I>, NoInfer<R>>;
  /**
   * Remarks for people that follow from the result: pass or fail, what to do next. What is read
   * outside of a remark's own `say` counts for all of them.
   */
  remarks?(values: ValuesOf<I>, results: ComputedOf<R>, known: Known): readonly (string | Remark)[];
  /**
   * What becomes of the figures given when a choice is about to take another option: each told in the
   * way that is chosen, so that a change converts them and throws none away.
   */
  carry?(
    choice: string,
    option: string,
    values: ValuesOf<I>,
    results: ComputedOf<R>,
  ): readonly Carried[];
  /** Where the figures can be taken from here. */
  onwards?(values: ValuesOf<I>, results: ComputedOf<R>): readonly Onward[];
  picture(props: PictureProps<NoInfer<I>, NoInfer<R>>): VNode;
  readonly ready?: ReadyTable;
  readonly downloads?: readonly Download<I>[];
  /** The gist of the cautions in one line, to stand under the answer. */
  readonly care: string;
  /** Usual cautions shown with the calculator. */
  readonly cautions?: readonly string[];
  /** What the model leaves out, how far to trust it. */
  readonly limits: readonly string[];
  /** Slugs of the articles that explain it. */
  readonly articles: readonly string[];
}

/** A calculator whose input and result names are not known at compile time. */
export type AnyCalculator = Calculator<Inputs, Results>;
