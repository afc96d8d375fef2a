import {
  readList,
  type FieldSpec,
  type ListField,
  type OrderReader,
  type Reading as HowToRead,
} from '../frame/field/fields.ts';
import { quote } from '../frame/field/parse.ts';
import { readOrder as inOrder } from '../plate/order-reader.ts';
import { ORDER, orTooLong } from './box-places.ts';
import { MOST_CYLINDERS } from './figures.ts';
import { cylindersOf, setsOf, turnsOf, type Engine } from './model.ts';

const orderSpec: FieldSpec = {
  label: 'Firing order',
  help: 'Cylinder numbers in the order in which they fire: 1-3-2, 1,3,2, 1 3 2 or 132. Where one set fires two at once, say under Sets of points how many sets there are, and join the two: 1+4-2+3. Leave empty if not known.',
  unit: 'count',
  min: 1,
  max: MOST_CYLINDERS,
  why: 'cylinders are counted from 1',
  whole: true,
  step: 1,
  list: MOST_CYLINDERS,
};

/** What joins cylinders that fire together. */
const JOINS = /\s*[+&]\s*/g;

/** Reads an order where lobes of their own fire the cylinders of a set, so that none fire together. */
const byLobes =
  (engine: Engine): OrderReader =>
  (typed, cylinders, firings) => {
    const apart = typed.replace(JOINS, '-');
    const found = inOrder(apart, cylinders, firings);
    return apart === typed || 'problem' in found
      ? inOrder(typed, cylinders, firings)
      : {
          problem: `${quote(typed)} joins cylinders that fire together, and by its lobes the cam opens each set ${String(turnsOf(engine))} times a turn of the crank, for one cylinder after the other. Type ${apart}, or correct the lobes among the engine’s figures.`,
        };
  };

/** The firing order as its field reads it: every cylinder once, or nothing. */
export function readOrder(engine: Engine, text: string, how: HowToRead): ListField {
  // A set with several lobes fires others of its cylinders by each, as so many sets would.
  const sets = setsOf(engine) * turnsOf(engine);
  const cylinders = cylindersOf(engine);
  const read = turnsOf(engine) > 1 && sets === cylinders ? byLobes(engine) : inOrder;
  const order = { cylinders, sets, read };
  const spec = { ...orderSpec, order };
  const field = readList('firing-order', spec, text, [], [], how);
  const { problem } = field;
  return {
    ...field,
    heldOver: false,
    ...(problem === undefined ? {} : { problem: orTooLong(problem, ORDER, text) }),
  };
}
