import { capital } from '../numeric/capital.ts';
/**
 * What metal is left between the holes of a plate, its slots, its bore and its rim. Everything that
 * is cut is either round or an arc slot about the plate's centre, so that the least distance between
 * two of them has a closed form.
 */
import { MathsError } from '../numeric/errors.ts';
import { holePlaces, type Place, type PlateHole } from './plate-layout.ts';
import { sayNumber } from '../numeric/rounding.ts';
import { assertNumber } from '../numeric/within.ts';

const RADIANS_PER_DEGREE = Math.PI / 180;
/** Degrees to either side of its middle beyond which a slot all but cuts the plate in two. */
export const MOST_SWEEP = 90;

/** An arc slot about the plate's centre with round ends, such as the plate is turned in. */
export interface PlateSlot {
  /** Radius of its middle line, mm, more than 0. */
  readonly slotRadius: number;
  /** mm across, more than 0. */
  readonly slotWidth: number;
  /** Direction of its middle, degrees anticlockwise from X. */
  readonly slotAngle: number;
  /** How far a screw that fills it can go to either side of the middle, degrees, 0 to `MOST_SWEEP`. */
  readonly slotSweep: number;
}

export interface Plate {
  /** mm, more than 0. */
  readonly outsideDiameter: number;
  /** mm, 0 for none, less than the outside. */
  readonly boreDiameter: number;
  /** Direction of each set, degrees. */
  readonly angles: readonly number[];
  readonly holes: readonly PlateHole[];
  readonly slots: readonly PlateSlot[];
}

/** The least metal between two things that are cut, or between one and the rim or the bore. */
export interface Wall {
  /** mm; 0 or less where they run into each other. */
  readonly wall: number;
  /** Which two, in words: "hole 1 of set 2", "slot 1", "the rim", "the bore". */
  readonly between: readonly [string, string];
  /** Names of the quantities that decide it. */
  readonly quantities: readonly string[];
}

interface Cut {
  readonly name: string;
  readonly quantities: readonly string[];
  /** Names of what turns it against holes of other sets; none for set 1 and for slots. */
  readonly turnedBy: readonly string[];
  /** Half of what is cut away across, mm. */
  readonly half: number;
  /** From the plate's centre to the middle line, mm. */
  readonly radius: number;
  /** Ends of the middle line; the same twice for a round hole. */
  readonly ends: readonly [Place, Place];
  /** Middle and half of the arc, degrees. */
  readonly angle: number;
  readonly sweep: number;
}

function cuts(plate: Plate): readonly Cut[] {
  const places = holePlaces(plate.angles, plate.holes);
  const holes = places.flatMap((set, s) =>
    set.map((place, h): Cut => {
      const hole = plate.holes[h]!;
      return {
        name: `hole ${h + 1} of set ${s + 1}`,
        quantities: [`pitchRadius-${h + 1}`, `holeAngle-${h + 1}`, `drill-${h + 1}`],
        turnedBy: s === 0 ? [] : [`spacing-${s + 1}`],
        half: hole.drill / 2,
        radius: hole.pitchRadius,
        ends: [place, place],
        angle: plate.angles[s]! + hole.holeAngle,
        sweep: 0,
      };
    }),
  );
  const slots = plate.slots.map((slot, i): Cut => ({
    name: `slot ${i + 1}`,
    quantities: ['slotRadius', 'slotWidth', 'slotSweep', 'slotStart'],
    turnedBy: [],
    half: slot.slotWidth / 2,
    radius: slot.slotRadius,
    ends: [
      onCircle(slot.slotRadius, slot.slotAngle - slot.slotSweep),
      onCircle(slot.slotRadius, slot.slotAngle + slot.slotSweep),
    ],
    angle: slot.slotAngle,
    sweep: slot.slotSweep,
  }));
  return [...holes, ...slots];
}

/**
 * Every wall of the plate, thinnest first. Those to the rim and the bore come with each hole and
 * slot; a plate without a bore has none to it.
 *
 * @throws MathsError `not-a-number`, `outside-not-positive`, `bore-out-of-range`,
 *   `slot-out-of-range`, and as `assertHole`. Not where a wall is 0 or less: see `assertWalls`.
 */
export function walls(plate: Plate): readonly Wall[] {
  assertPlate(plate);
  const all = cuts(plate);
  const rim = plate.outsideDiameter / 2;
  const bore = plate.boreDiameter / 2;
  const found: Wall[] = [];
  all.forEach((cut, i) => {
    found.push({
      wall: rim - cut.radius - cut.half,
      between: [cut.name, 'the rim'],
      quantities: [...cut.quantities, 'outsideDiameter'],
    });
    if (bore > 0) {
      found.push({
        wall: cut.radius - cut.half - bore,
        between: [cut.name, 'the bore'],
        quantities: [...cut.quantities, 'boreDiameter'],
      });
    }
    for (const other of all.slice(i + 1)) {
      found.push({
        wall: middleDistance(cut, other) - cut.half - other.half,
        between: [cut.name, other.name],
        quantities: [
          ...new Set([
            ...cut.quantities,
            ...other.quantities,
            ...(other.turnedBy[0] === cut.turnedBy[0] ? [] : [...cut.turnedBy, ...other.turnedBy]),
          ]),
        ],
      });
    }
  });
  return found.sort((a, b) => a.wall - b.wall);
}

/**
 * Throws a MathsError for the worst wall that is not there: `hole-off-plate`, `hole-in-bore` or
 * `holes-collide`.
 */
export function assertWalls(found: readonly Wall[]): void {
  const worst = found[0];
  if (worst === undefined || worst.wall > 0) return;
  const [first, second] = worst.between;
  const over = sayNumber(-worst.wall);
  if (second === 'the rim') {
    throw new MathsError(
      'hole-off-plate',
      worst.quantities,
      `${capital(first)} reaches ${over} mm past the rim of the plate. Its distance from the centre plus half its width must be less than half the outside diameter. Bring it in, drill smaller, or make the plate larger.`,
    );
  }
  if (second === 'the bore') {
    throw new MathsError(
      'hole-in-bore',
      worst.quantities,
      `${capital(first)} cuts ${over} mm into the bore. Its distance from the centre less half its width must be more than half the bore. Move it out, drill smaller, or make the bore smaller.`,
    );
  }
  throw new MathsError(
    'holes-collide',
    worst.quantities,
    `${capital(first)} and ${second} run into each other by ${over} mm. Between their centres there must be more than half the width of both together. Move one of them, drill smaller, or spread the sets.`,
  );
}

/**
 * Least distance between the middle lines of two cuts, mm. Two arcs about one centre that share a
 * direction are as far apart as their radii; otherwise their ends are nearest.
 */
function middleDistance(a: Cut, b: Cut): number {
  const apart = Math.abs(wrap180(a.angle - b.angle));
  if (apart <= a.sweep + b.sweep) return Math.abs(a.radius - b.radius);
  return Math.min(...a.ends.flatMap((p) => b.ends.map((q) => Math.hypot(p.x - q.x, p.y - q.y))));
}

function onCircle(radius: number, angle: number): Place {
  const direction = (angle % 360) * RADIANS_PER_DEGREE;
  return { x: radius * Math.cos(direction), y: radius * Math.sin(direction) };
}

function wrap180(angle: number): number {
  const turned = ((angle % 360) + 360) % 360;
  return turned > 180 ? turned - 360 : turned;
}

function assertPlate(plate: Plate): void {
  const { outsideDiameter, boreDiameter } = plate;
  assertSize('outsideDiameter', 'outside diameter', outsideDiameter);
  if (!(outsideDiameter > 0)) {
    throw new MathsError(
      'outside-not-positive',
      ['outsideDiameter'],
      `A plate of ${sayNumber(outsideDiameter)} mm across is none. Its outside diameter must be more than 0 mm: measure the recess it sits in.`,
    );
  }
  assertSize('boreDiameter', 'bore', boreDiameter);
  if (!(boreDiameter >= 0 && boreDiameter < outsideDiameter)) {
    throw new MathsError(
      'bore-out-of-range',
      ['boreDiameter', 'outsideDiameter'],
      `The bore must be from 0 mm (none) to less than the outside diameter of ${sayNumber(outsideDiameter)} mm, not ${sayNumber(boreDiameter)} mm, or no plate is left. Measure the boss or the cam that goes through it.`,
    );
  }
  plate.slots.forEach(assertSlot);
}

function assertSlot(slot: PlateSlot): void {
  assertSize('slotRadius', 'radius of the slots', slot.slotRadius);
  assertSize('slotWidth', 'width of the slots', slot.slotWidth);
  assertSize('slotSweep', 'reach of the slots', slot.slotSweep);
  assertSize('slotStart', 'direction of the slots', slot.slotAngle);
  if (!(slot.slotRadius > 0 && slot.slotWidth > 0)) {
    throw new MathsError(
      'slot-out-of-range',
      ['slotRadius', 'slotWidth'],
      `A slot needs a radius and a width of more than 0 mm; they are ${sayNumber(slot.slotRadius)} mm and ${sayNumber(slot.slotWidth)} mm. The radius goes from the centre of the plate to the middle of the slot.`,
    );
  }
  if (!(slot.slotSweep >= 0 && slot.slotSweep <= MOST_SWEEP)) {
    throw new MathsError(
      'slot-out-of-range',
      ['slotSweep'],
      `A slot reaches from 0° to ${MOST_SWEEP}° to either side of its middle, not ${sayNumber(slot.slotSweep)}°: more would all but cut the plate in two. 5° to 15° gives room enough to set the timing.`,
    );
  }
}

function assertSize(name: string, words: string, value: number): void {
  assertNumber(name, words, value, 'Enter a figure.');
}
