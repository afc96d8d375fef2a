import { cylindersOf, sharesSets, type Engine } from './model.ts';
import { steps, type StepId } from './steps.ts';

/** Whether a coil of the engine fires two plugs, or may, by what the sheet says. */
function hasSharedCoil(engine: Engine): boolean {
  const coils = engine.figures['fed-coils'];
  return coils === undefined ? sharesSets(engine) : coils > 0 && coils < cylindersOf(engine);
}

const TWO_LEADS =
  'A coil with two leads fires one plug with its centre electrode negative and the other with it positive, whichever way its wires are: one plug is always positive. Swapped wires only change which; what is said of them holds for a coil with one lead.';

const SEVERAL_CYLINDERS =
  'One set fires several cylinders: read at the lowest-numbered of them. Then prove each other one: turn forwards until the points open again at its top, and read its piston. Its reading has no box here: put it in the notes. Where it differs, the tops themselves stand apart (crank pins, rods, pistons), and no turn of the plate mends that: let none of them be earlier than the figure.';

/** What to do at a step on this engine, one act after another. */
export function howOf(engine: Engine, id: StepId): readonly string[] {
  const { how } = steps[id];
  if (id === 'polarity' && hasSharedCoil(engine)) return [...how, TWO_LEADS];
  if (id === 'timing' && sharesSets(engine)) return [SEVERAL_CYLINDERS, ...how];
  return how;
}
