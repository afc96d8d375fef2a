import { numberAndUnit } from '../../frame/field/parse.ts';

/** What a book writes behind a figure that is counted from the top. */
const BEFORE_TOP = /\s*(?:\(?b\.?t\.?d\.?c\.?\)?|before (?:top|tdc)(?: dead cent(?:re|er))?)$/iu;
const ANGLES: ReadonlySet<string> = new Set(['°', 'deg', 'degree', 'degrees']);
const LENGTHS: ReadonlySet<string> = new Set(['mm', 'in', '"', '″', 'inch', 'inches', 'thou']);

interface Other {
  readonly units: ReadonlySet<string>;
  readonly is: string;
  readonly choose: string;
}

const said =
  ({ units, is, choose }: Other) =>
  (typed: string): string | undefined => {
    const text = typed.trim();
    const figure = text.replace(BEFORE_TOP, '').trim();
    const unit = numberAndUnit(figure)?.unit.toLowerCase();
    if (unit === undefined) return undefined;
    if (units.has(unit)) {
      return `“${text}” is ${is}. Under “You have” choose “${choose}”, and type it there: ${figure}.`;
    }
    return figure === text
      ? undefined
      : `Every figure here counts before the top: leave those words away and type “${figure}”.`;
  };

/** What is said of an angle in the box of a travel, or of a figure with words behind it; nothing of any other text. */
export const travelOtherwise = said({
  units: ANGLES,
  is: 'an angle of the crank',
  choose: 'Crank angle',
});

/** The same of a length in the box of an angle. */
export const angleOtherwise = said({
  units: LENGTHS,
  is: 'a length: a travel of the piston',
  choose: 'Piston travel',
});
