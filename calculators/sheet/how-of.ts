import { cylindersOf, setsOf, sharesSets, turnsOf, type Engine } from './model.ts';
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

const BY_LOBES =
  'One set fires several cylinders, each by a lobe of its own: read every one of them, at its own top. The plate, and the set in its slot, move all of them alike.';

const SPARE_SPARK =
  'A coil with two leads sparks at both its plugs each time, and changing over its two leads changes nothing. Where its cylinders fire half a turn apart, each plug sparks near the bottom of its own piston too: that spare spark is as it should be.';

const ONE_SET =
  'Turn the plate, or move the set in its slot, by the amount given, and lock it. Against the way the cam turns is earlier.';

const TIMED_BY_MAGNETS =
  'No coil is fed from a battery: on a magneto the points must open close to the magnet’s pull as well as at the right place of the piston. Turn its plate far from its marks and the timing may be right and the spark gone. The tester needs a battery of its own, the coil’s wire off.';

const EARTHED_COIL =
  'No coil is fed from a battery: one end of a magneto’s coil is earthed at its core. Take the points’ wire off, and measure from it to the core.';

const isMagneto = ({ figures }: Engine): boolean => figures['fed-coils'] === 0;

/** How the timing is set, by how many sets there are and what feeds them. */
function timingHow(engine: Engine): readonly string[] {
  const { how } = steps.timing;
  const [read = '', , again = ''] = how;
  const plain = setsOf(engine) === 1 ? [read, ONE_SET, again] : how;
  return [
    ...(sharesSets(engine) ? [turnsOf(engine) > 1 ? BY_LOBES : SEVERAL_CYLINDERS] : []),
    ...plain,
    ...(isMagneto(engine) ? [TIMED_BY_MAGNETS] : []),
  ];
}

/** What to do at a step on this engine, one act after another. */
export function howOf(engine: Engine, id: StepId): readonly string[] {
  const { how } = steps[id];
  if (id === 'polarity' && hasSharedCoil(engine)) return [...how, TWO_LEADS];
  if (id === 'leads' && hasSharedCoil(engine)) return [...how, SPARE_SPARK];
  if (id === 'timing' && (setsOf(engine) === 1 || sharesSets(engine) || isMagneto(engine))) {
    return timingHow(engine);
  }
  if (id === 'coil' && isMagneto(engine)) return [EARTHED_COIL, ...how];
  return how;
}
