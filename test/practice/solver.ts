import { positionAt, settlePlate, timingAt } from '../../calculators/maths/plate/plate-setting.ts';
import { Player } from './player.ts';
import type { CrankTask } from '../../calculators/practice/tasks.ts';

const each = (player: Player): number[] =>
  Array.from({ length: player.card.cylinders }, (_, set) => set);

/** What fires where, by indicator and lamp, in crank degrees before the top by the card's figures. */
function measure(player: Player): number[] {
  return each(player).map((set) => {
    player.take(set);
    player.zeroIndicator();
    return timingAt(player.card, player.opens());
  });
}

const gapAll = (player: Player): void => {
  for (const set of each(player)) {
    player.take(set);
    player.setGap(player.card.gap);
  }
};

/** The plate by the middle of the errors, then each set by what is left of its own. */
function timeAll(player: Player): void {
  const aim = timingAt(player.card, player.card.target);
  player.movePlate(settlePlate(measure(player), aim).move);
  measure(player).forEach((angle, set) => {
    player.take(set);
    player.moveSet(aim - angle);
  });
}

/** As the articles say it: gap, measure, plate, sets, gap again, and time what that has moved. */
export function inOrder(number: number, task: CrankTask): Player {
  const player = new Player(number, task);
  player.lampOn();
  gapAll(player);
  timeAll(player);
  gapAll(player);
  timeAll(player);
  return player;
}

/** The same hands, as careful, in the other order. */
export function timedFirst(number: number, task: CrankTask): Player {
  const player = new Player(number, task);
  player.lampOn();
  timeAll(player);
  timeAll(player);
  gapAll(player);
  measure(player);
  return player;
}

/** The top by a stop: readings on both sides, three times, by both pointers; then what shows 0 there. */
export function byStop(
  number: number,
  task: 'stop' | 'disc',
  last: 'disc-zero' | 'pointer-zero' = 'disc-zero',
): Player {
  const player = new Player(number, task);
  player.until(5, () => {
    player.do({ act: 'put', inHole: 'stop' });
    return player.bench.inHole === 'stop';
  });
  const middles: number[] = [];
  const angle = (): number => {
    const [a, b] = [player.disc('A'), player.disc('B')];
    const opposite = ((b + 180 - a + 540) % 360) - 180;
    return a + opposite / 2;
  };
  for (let pair = 0; pair < 3; pair += 1) {
    const sides = [1, -1].map((way) => {
      player.turn(way * 20);
      player.turn(way * 400);
      player.do({ act: 'note' });
      return angle();
    });
    const arc = ((sides[1]! - sides[0]! + 720) % 360) / 2;
    middles.push(sides[0]! + arc);
  }
  const middle = middles.sort((a, b) => a - b)[1]!;
  player.do({ act: 'put', inHole: 'nothing' });
  player.until(1, () => Math.abs(((angle() - middle + 540) % 360) - 180) < 1.5);
  player.turn(-5);
  player.until(0.1, () => ((angle() - middle + 540) % 360) - 180 >= -0.05);
  player.do({ act: last });
  return player;
}

/** The top by equal heights, the piston coming up to both. */
export function byHeights(number: number): Player {
  const player = new Player(number, 'heights');
  player.zeroIndicator();
  const height = 8;
  const middles = [0, 1, 2].map(() => {
    const sides = [1, -1].map((way) => {
      player.until(way * 5, () => player.dial() === undefined);
      player.until(way * 1, () => (player.dial() ?? Infinity) < height + 1);
      player.until(way * 0.1, () => player.dial()! <= height);
      player.do({ act: 'note' });
      const at = player.disc();
      player.turn(way * 40);
      return at;
    });
    return (sides[0]! + sides[1]!) / 2;
  });
  const middle = middles.sort((a, b) => a - b)[1]!;
  player.do({ act: 'disc', by: Math.round(-middle / 0.1) * 0.1 });
  return player;
}

/** Another engine's figure as degrees, those as this engine's travel, and the crank left there. */
export function carried(number: number): Player {
  const player = new Player(number, 'figure');
  const { given } = player.card;
  const travel = positionAt(player.card, timingAt(given!, given!.before));
  player.zeroIndicator();
  player.until(5, () => player.dial() === undefined);
  player.until(5, () => player.dial() !== undefined);
  player.until(1, () => player.dial()! < travel + 0.5);
  player.until(0.1, () => player.dial()! <= travel);
  return player;
}

/** The cylinder whose written reading is furthest from one's own. */
export function badReading(number: number): readonly [player: Player, cylinder: number] {
  const player = new Player(number, 'reading');
  player.lampOn();
  const off = each(player).map((set) => {
    player.take(set);
    player.zeroIndicator();
    return Math.abs(player.opens() - player.card.written![set]!);
  });
  return [player, off.indexOf(Math.max(...off))];
}

/** The gap put right, and nothing else. */
export function gapAlone(number: number): Player {
  const player = new Player(number, 'heel');
  player.lampOn();
  gapAll(player);
  return player;
}
