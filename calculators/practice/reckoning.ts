/** The truth, once the work is done: how far off it is, and what it was that cost the most. */
import { demoCoil } from '../demo/coil.ts';
import { DEMO_SPEED } from '../demo/engine.ts';
import { dwellAngle, dwellPercent, opensBefore } from '../maths/ignition/breaker-cam.ts';
import { chargeTime, currentAfter, finalCurrent } from '../maths/ignition/coil-charge.ts';
import { listed } from '../maths/numeric/listed.ts';
import { positionAt } from '../maths/plate/plate-setting.ts';
import { angleAfter, angleBefore, degreesPerMillimetre } from '../maths/crank/slider-crank.ts';
import { alike, gapOf, type Bench } from './bench.ts';
import { degreesAlong, targetAngle, type Engine } from './engine.ts';
import { discExactly, eccentric, wrapped } from './instruments.ts';
import { GAP_TOLERANCE, tasks, type Reading } from './tasks.ts';

export interface Line {
  readonly label: string;
  readonly unit: 'deg' | 'mm';
  readonly truth: number;
  readonly set: number;
  /** Set less true. */
  readonly error: number;
  readonly right: boolean;
}

/** One thing that went wrong, what it cost, and where to read of it. */
export interface Cost {
  readonly cost: number;
  readonly unit: 'deg' | 'mm';
  readonly say: string;
  readonly read: Reading;
}

export interface Reckoning {
  readonly lines: readonly Line[];
  readonly gaps: readonly Line[];
  /** The dearest first. */
  readonly costs: readonly Cost[];
  /** Things that did no harm and are worth knowing. */
  readonly remarks: readonly string[];
  readonly right: boolean;
  /** The largest error of `lines`. */
  readonly worst: number;
}

const LEAST = 0.08;
const top = 'finding-top-dead-centre';
const gapArticle = 'gap-dwell-and-timing';
const several = 'setting-several-cylinders';

const line = (
  label: string,
  unit: Line['unit'],
  truth: number,
  set: number,
  tolerance: number,
): Line => ({
  label,
  unit,
  truth,
  set,
  error: set - truth,
  right: Math.abs(set - truth) <= tolerance + 1e-9,
});

/** Crank degrees before its top at which a cylinder fires as it is now set, running. */
export function firesAt(engine: Engine, bench: Bench, set: number): number {
  const { cam, middles, camPlay } = engine.hidden;
  return (
    opensBefore(cam, gapOf(engine, bench, set)) -
    middles[set]! -
    camPlay / 2 +
    bench.plate * degreesAlong(engine.card.plateRadius) +
    bench.slots[set]! * degreesAlong(engine.card.slotRadius)
  );
}

/** Crank degrees before the top of cylinder 1 at which the crank stands. */
const standsAt = (bench: Bench): number => wrapped(-bench.crank);

const dearest = (costs: readonly Cost[]): Cost[] =>
  costs.filter(({ cost }) => cost >= LEAST).sort((a, b) => b.cost - a.cost);

const finish = (
  lines: readonly Line[],
  gaps: readonly Line[],
  costs: readonly Cost[],
  remarks: readonly string[] = [],
): Reckoning => ({
  lines,
  gaps,
  costs: dearest(costs),
  remarks,
  right: [...lines, ...gaps].every(({ right }) => right),
  worst: Math.max(0, ...lines.map(({ error }) => Math.abs(error))),
});

const STRUCK: string =
  'The piston was kicked onto the stop. A real crown is marked or holed by that: turn by hand, and gently.';

function reckonTop(engine: Engine, bench: Bench): Reckoning {
  const { hidden } = engine;
  const { discShift, pointer } = bench;
  const shows = discExactly(engine, { crank: 0, discShift, pointer });
  const result = line('Cylinder 1', 'deg', 0, shows, tasks[engine.task].tolerance);
  const { notes } = bench;
  const costs: Cost[] = [];
  const forwards = notes.filter(({ way }) => way > 0);
  const backwards = notes.filter(({ way }) => way < 0);
  const both = forwards.some((one) => backwards.some((other) => alike(one, other)));
  if (!both && forwards.length > 0 && backwards.length > 0) {
    costs.push({
      cost: Math.abs(shows),
      unit: 'deg',
      say: 'Disc or pointer was moved between the reading come to forwards and the one come to backwards. Half an arc is the top only where both were read with disc and pointer standing alike.',
      read: { article: top, heading: 'the-way-out-halve-an-arc' },
    });
  } else if (!both) {
    costs.push({
      cost: Math.abs(shows),
      unit: 'deg',
      say: 'The pad holds no pair of readings, one come to forwards and one come to backwards. At the top the piston hardly moves for several degrees, so a top that is looked for is a guess. Halve an arc instead.',
      read: { article: top, heading: 'the-way-out-halve-an-arc' },
    });
  }
  const now = { standing: pointer - discShift };
  const checked = [forwards, backwards].every((each) => each.some((note) => alike(note, now)));
  if (both && !checked) {
    costs.push({
      cost: Math.abs(shows),
      unit: 'deg',
      say: 'The disc was not checked after it was set. Come to the stop or the height once more from both sides: the two readings should now be equal.',
      read: { article: top, heading: 'the-way-out-halve-an-arc' },
    });
  }
  const sunk = notes.find(({ dial, rising }) => dial !== undefined && dial > 1 && !rising);
  if (engine.task === 'heights' && sunk?.dial !== undefined) {
    const slope = degreesPerMillimetre(hidden.geometry, angleAfter(hidden.geometry, sunk.dial));
    costs.push({
      cost: (hidden.rodPlay / 2) * slope,
      unit: 'deg',
      say: 'A reading was taken with the piston going down. The play in the rod then lies the other way, and the heights are not equal. Come up to both.',
      read: { article: top, heading: 'equal-heights' },
    });
  }
  if (engine.task === 'disc') {
    const zero = hidden.discZero - discShift + pointer;
    const at = (angle: number): number =>
      eccentric(angle - zero, hidden.discOff, hidden.discOffAt, 78);
    const half = angleAfter(hidden.geometry, hidden.stopHeight);
    const before = angleBefore(hidden.geometry, hidden.stopHeight);
    const byA = (at(-before) + at(half)) / 2 - at(0);
    if (both && Math.abs(shows) > LEAST && Math.abs(shows + byA) < Math.abs(shows - byA)) {
      costs.push({
        cost: Math.min(Math.abs(byA), Math.abs(shows)),
        unit: 'deg',
        say: 'The middle was taken from pointer A alone. On a disc that lies off centre only the mean of two opposite pointers tells how far the crank has turned.',
        read: { article: top, heading: 'how-wrong-each-is' },
      });
    }
  }
  if (both && notes.length < 4) {
    costs.push({
      cost: hidden.eye,
      unit: 'deg',
      say: 'Each reading was taken once. A second pair shows how far they scatter, and halves what the eye gets wrong.',
      read: { article: top, heading: 'how-wrong-each-is' },
    });
  }
  return finish([result], [], costs, bench.struck > 0 ? [STRUCK] : []);
}

/**
 * What the indicator did to a travel that was read by it.
 *
 * @param off How far what was set by it is off, degrees.
 */
function indicatorCosts(
  engine: Engine,
  set: number,
  travel: number,
  slope: number,
  off: number,
  { way, zeroError, upright }: { way: number; zeroError: number; upright: boolean },
  camToo: boolean,
): Cost[] {
  const { rodPlay, camPlay, lean } = engine.hidden;
  const who = engine.card.cylinders > 1 ? `Cylinder ${set + 1}: ` : '';
  const say = (words: string): string =>
    who ? who + words[0]!.toLowerCase() + words.slice(1) : words;
  const costs: Cost[] = [];
  if (way < 0) {
    costs.push({
      cost: rodPlay * slope + (camToo ? camPlay : 0),
      unit: 'deg',
      say: say(
        'The last reading was come to backwards. All play then lies on the other side from where it lies when the engine runs.',
      ),
      read: { article: several, heading: 'turn-one-way-only' },
    });
  }
  if (!upright) {
    costs.push({
      cost: travel * (1 / Math.cos((lean * Math.PI) / 180) - 1) * slope,
      unit: 'deg',
      say: say(
        'The indicator leaned, and a leaning indicator shows too much travel. Set it in line with the bore.',
      ),
      read: { article: 'where-the-piston-is' },
    });
  }
  const ofZero = Math.abs(zeroError) * slope;
  // Counted from what it shows at the top, a zero that is off costs nothing.
  if (ofZero <= 2 * Math.abs(off)) {
    costs.push({
      cost: ofZero,
      unit: 'deg',
      say: say(
        'The indicator was not at 0 at the top of this cylinder. Zero it at its highest reading, come to forwards.',
      ),
      read: { article: top, heading: 'by-dial-alone' },
    });
  }
  return costs;
}

function reckonFigure(engine: Engine, bench: Bench): Reckoning {
  const { card, hidden } = engine;
  const aim = targetAngle(engine);
  const stands = standsAt(bench);
  const result = line('Cylinder 1', 'deg', aim, stands, tasks.figure.tolerance);
  const slope = degreesPerMillimetre(hidden.geometry, -aim);
  const costs = [
    ...indicatorCosts(
      engine,
      0,
      positionAt(hidden.geometry, aim),
      slope,
      result.error,
      {
        way: bench.way,
        upright: bench.upright || bench.inHole !== 'indicator',
        zeroError: bench.inHole === 'indicator' ? bench.zero - hidden.rodPlay / 2 : 0,
      },
      false,
    ),
  ];
  const unturned = angleBefore(hidden.geometry, card.given!.before);
  if (Math.abs(stands - unturned) < Math.min(0.5, Math.abs(stands - aim))) {
    costs.push({
      cost: Math.abs(unturned - aim),
      unit: 'deg',
      say: 'The travel of the other engine was taken over as it stands. With another stroke and rod the same degrees are another travel: carry the degrees across, not the millimetres.',
      read: {
        article: 'where-the-piston-is',
        heading: 'carry-the-angle-across-not-the-millimetres',
      },
    });
  }
  const { crank, discShift, pointer } = bench;
  const byDisc = -discExactly(engine, { crank, discShift, pointer });
  const discOff = Math.abs(discExactly(engine, { crank: 0, discShift, pointer }));
  if (Math.abs(byDisc - aim) < Math.min(1, Math.abs(stands - aim))) {
    costs.push({
      cost: discOff,
      unit: 'deg',
      say: 'The place was taken from the disc, and the disc was not set to the true top. Find the top first, by a stop or by equal heights; then the disc counts from it.',
      read: { article: top, heading: 'the-way-out-halve-an-arc' },
    });
  }
  const named = costs.reduce((sum, { cost }) => sum + Math.abs(cost), 0);
  if (!result.right && named < Math.abs(result.error) / 2) {
    costs.push({
      cost: Math.abs(result.error),
      unit: 'deg',
      say:
        bench.inHole === 'indicator'
          ? 'The crank stands at another travel than that which the figure comes to on this engine. Carry it across again, and come forwards to what it comes to.'
          : 'No indicator stood in the plug hole, so nothing showed how far the piston was below its top. Zero it there, go back past the travel, and come to it forwards.',
      read: { article: 'where-the-piston-is' },
    });
  }
  return finish([result], [], costs);
}

/** What a gap that is out does to the coil, which needs the dwell. */
function coilRemark({ hidden: { cam } }: Engine, set: number, gap: number): string {
  const primary = { ...demoCoil, ballast: 0 };
  const time = chargeTime(dwellAngle(cam, gap), cam.speedRatio, DEMO_SPEED);
  const share = (100 * currentAfter(primary, time)) / finalCurrent(primary);
  return `With its gap of ${gap.toFixed(2)} mm set ${set + 1} stays shut for ${dwellPercent(cam, gap).toFixed(0)}% of a turn: at ${DEMO_SPEED} rpm its coil comes to ${share.toFixed(0)}% of its full current.`;
}

function reckonTiming(engine: Engine, bench: Bench): Reckoning {
  const { card, hidden, task } = engine;
  const aim = targetAngle(engine);
  const sets = hidden.tops.map((_, set) => set);
  const lines = sets.map((set) =>
    line(`Cylinder ${set + 1}`, 'deg', aim, firesAt(engine, bench, set), tasks[task].tolerance),
  );
  const gaps = sets.map((set) =>
    line(`Gap of set ${set + 1}`, 'mm', card.gap, gapOf(engine, bench, set), GAP_TOLERANCE),
  );
  const slope = degreesPerMillimetre(hidden.geometry, -aim);
  const costs = sets.flatMap((set): Cost[] => {
    const who = card.cylinders > 1 ? `Set ${set + 1}: the` : 'The';
    const now = gapOf(engine, bench, set);
    const then = bench.timedAtGap[set];
    const found = bench.found[set];
    const own: Cost[] = [];
    if (then !== undefined) {
      own.push({
        cost: Math.abs(opensBefore(hidden.cam, now) - opensBefore(hidden.cam, then)),
        unit: 'deg',
        say: `${who} gap was changed after the timing was set, and the gap moves the timing. Gap first, then timing; any change of gap sends you back to the timing.`,
        read: { article: gapArticle, heading: 'gap-first-then-timing' },
      });
    }
    if (found !== undefined) {
      own.push(...indicatorCosts(engine, set, card.target, slope, lines[set]!.error, found, true));
      if (found.times < 2) {
        own.push({
          cost: (hidden.stick + 0.005) * slope,
          unit: 'deg',
          say: `${who} opening was read once. A second reading shows how far the first can be trusted.`,
          read: { article: several, heading: 'turn-one-way-only' },
        });
      }
    }
    return own;
  });
  const unfound = sets.filter((set) => bench.found[set] === undefined);
  if (unfound.length > 0) {
    const many = unfound.length > 1;
    const names = listed(unfound.map((set) => set + 1));
    const which = `of ${many ? 'sets' : 'set'} ${names} `;
    costs.push({
      cost: Math.max(...unfound.map((set) => Math.abs(lines[set]!.error))),
      unit: 'deg',
      say: `The ${many ? 'openings' : 'opening'} ${card.cylinders > 1 ? which : ''}${many ? 'were' : 'was'} never found with the indicator in the plug hole and the lamp on it. What is not measured is as it was.`,
      read: { article: several, heading: 'the-order-of-work' },
    });
  }
  const remarks = gaps.flatMap(({ right, set: gap }, set) =>
    right ? [] : [coilRemark(engine, set, gap)],
  );
  if (task === 'heel' && bench.timedAtGap.some((gap) => gap !== undefined)) {
    remarks.push(
      'Plate and set needed no move: the worn heel had closed the gap, and with the gap put right the timing is back where it was.',
    );
  }
  if (task === 'spacing') {
    remarks.push(
      `It is set ${hidden.odd + 1} that was drilled 1° out. No turn of the plate mends that: the set has to move in its slot.`,
    );
  }
  return finish(lines, gaps, costs, remarks);
}

function reckonReading(engine: Engine, bench: Bench, answer: number | undefined): Reckoning {
  const { card, hidden } = engine;
  const lines = card.written!.map((written, set) =>
    line(
      `Cylinder ${set + 1}`,
      'mm',
      positionAt(
        hidden.geometry,
        firesAt(
          engine,
          {
            ...bench,
            plate: 0,
            slots: bench.slots.map(() => 0),
            screws: bench.screws.map(() => 0),
          },
          set,
        ),
      ),
      written,
      0.06,
    ),
  );
  const right = answer === hidden.odd;
  const costs: Cost[] = right
    ? []
    : [
        {
          cost: Math.abs(lines[hidden.odd]!.error),
          unit: 'mm',
          say: `The bad one is that of cylinder ${hidden.odd + 1}. Measure each cylinder again, come to forwards from a zero at its own top: three that agree with the card are sound.`,
          read: { article: several, heading: 'turn-one-way-only' },
        },
      ];
  return { ...finish(lines, [], costs), right };
}

/**
 * The truth beside what was set.
 *
 * @param answer The cylinder named, counted from 0, where the task asks for one.
 */
export function reckon(engine: Engine, bench: Bench, answer?: number): Reckoning {
  switch (engine.task) {
    case 'stop':
    case 'heights':
    case 'disc':
      return reckonTop(engine, bench);
    case 'figure':
      return reckonFigure(engine, bench);
    case 'reading':
      return reckonReading(engine, bench, answer);
    case 'gap':
    case 'heel':
    case 'plate':
    case 'spacing':
      return reckonTiming(engine, bench);
  }
}
