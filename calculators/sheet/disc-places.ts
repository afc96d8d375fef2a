import { fromFirst, groupsOf, sameBox } from './firing-order.ts';
import { fixed, withUnit } from '../frame/text/format.ts';
import { cylindersOf, setsOf, sharesSets, turnsOf, type Engine } from './model.ts';

/** A reading of a disc is of the mark within so many degrees of it. */
const DISC_REACH = 30;

/** Turned by whole turns to lie from −180 to 180 degrees. */
const nearest = (angle: number): number => angle - 360 * Math.round(angle / 360);

const say = (angle: number, places = 2): string =>
  withUnit(String(Number(fixed(angle, places))), 'deg');

const directionOf = ({ figures }: Engine, set: number): number | undefined =>
  set === 1 ? 0 : figures[`set-${String(set)}` as keyof Engine['figures']];

/** Where a cylinder that shares its set comes after cylinder 1, degrees of the cam: by its lobe, or by its set. */
function sharedPlace(engine: Engine, index: number): number | undefined {
  const times = turnsOf(engine);
  if (times === 1) {
    const known = groupsOf(engine) !== undefined;
    return known ? directionOf(engine, sameBox(engine, 'top', index, 'gap') + 1) : undefined;
  }
  if (setsOf(engine) !== 1 || times !== cylindersOf(engine)) return undefined;
  const order = times === 2 ? [1, 2] : fromFirst(engine.firingOrder);
  const turn = order.indexOf(index + 1);
  return turn < 0 ? undefined : (turn * 360) / (engine.figures.lobes ?? 1);
}

/**
 * Where a cylinder's top stands on a disc that is zeroed on cylinder 1, crank degrees from 0 to 360;
 * nothing for cylinder 1 itself, and while the sheet does not say where its set of points belongs.
 */
function placeOnDisc(engine: Engine, index: number): number | undefined {
  if (index === 0) return undefined;
  const direction = sharesSets(engine)
    ? sharedPlace(engine, index)
    : directionOf(engine, index + 1);
  if (direction === undefined) return undefined;
  const turned = (direction / (engine.figures['speed-ratio'] ?? 1)) % 360;
  return Number(turned.toFixed(6));
}

/** What a disc shows at a cylinder's top, told from its own place; with what is to be said of it. */
export interface DiscReading {
  readonly value?: number;
  readonly words: string;
}

/**
 * What a figure too far from 0 for a disc zeroed on the cylinder itself comes to on one that is zeroed
 * on cylinder 1; nothing where it is read as it stands.
 */
export function readDisc(engine: Engine, index: number, shown: number): DiscReading | undefined {
  if (index === 0 || Math.abs(shown) > 360) return undefined;
  const cylinder = String(index + 1);
  const place = placeOnDisc(engine, index);
  const isFar = Math.abs(shown) > DISC_REACH;
  if (place === undefined) {
    return isFar
      ? {
          words: `Read on the disc zeroed on cylinder 1? ${sharesSets(engine) ? 'Take off the degrees by which its top comes after that of cylinder 1' : `Enter “Set ${cylinder}, from set 1” in the sheet first, and it is read so`}.`,
        }
      : undefined;
  }
  const off = Number(nearest(shown - place).toFixed(6));
  const way = off < 0 ? 'short of' : 'past';
  const at = `By the sheet its top stands at ${say(place)} of a disc zeroed on cylinder 1`;
  if (Math.abs(off) > DISC_REACH) {
    return isFar ? { words: `${at}, and this is ${say(Math.abs(off))} ${way} that.` } : undefined;
  }
  const is = `${say(shown)} there is ${say(Math.abs(off))} ${way} it`;
  if (isFar) return { value: off, words: `${at}: ${is}, which is what is written down.` };
  // Places so near to 0 cannot be told from a disc that is zeroed on this cylinder.
  return Math.abs(off) < Math.abs(shown)
    ? {
        words: `${at}: if that is how it was read, ${is}: write ${String(off).replace('-', '−')} then.`,
      }
    : undefined;
}

/** What a cylinder's true top is set to beside the 0° of its own place. */
export function placeWords(engine: Engine, index: number): string {
  if (index === 0) return ', the disc zeroed on this cylinder';
  const place = placeOnDisc(engine, index);
  return place === undefined
    ? ' from its own top'
    : ` from its own top, at ${say(place)} of the disc zeroed on cylinder 1`;
}

/** The figure of the sheet that a top so far from its place asks for. */
export function placeFor(engine: Engine, index: number, off: number): string | undefined {
  const place = placeOnDisc(engine, index);
  if (place === undefined) return undefined;
  const set = ((((place + off) % 360) + 360) % 360) * (engine.figures['speed-ratio'] ?? 1);
  return `${say(place + off)} after that of cylinder 1 and not ${say(place)}. If it stays so, ${sharesSets(engine) ? 'its lobe or its crank pin stands so far off' : `enter ${say(set)} at “Set ${String(index + 1)}, from set 1” and read this one again`}`;
}
