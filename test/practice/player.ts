import { work } from '../../calculators/practice/work.ts';
import { setUp, type Act, type Bench } from '../../calculators/practice/bench.ts';
import { degreesAlong, inventEngine, type Engine } from '../../calculators/practice/engine.ts';
import {
  dialShows,
  discShows,
  fitOf,
  LEAVES,
  lampWord,
  type Fit,
} from '../../calculators/practice/instruments.ts';
import type { CrankTask } from '../../calculators/practice/tasks.ts';

/**
 * A pair of hands at the bench. It turns, sets and reads as a reader does, knows the card, and has
 * no other way to the engine.
 */
export class Player {
  readonly engine: Engine;
  bench: Bench;

  constructor(number: number, task: CrankTask) {
    this.engine = inventEngine(number, task);
    this.bench = setUp(this.engine);
  }

  get card() {
    return this.engine.card;
  }
  do(act: Act): void {
    this.bench = work(this.engine, this.bench, act);
  }
  turn(by: number): void {
    this.do({ act: 'turn', by });
  }
  dial(): number | undefined {
    return dialShows(this.engine, this.bench);
  }
  disc(pointer: 'A' | 'B' = 'A'): number {
    return discShows(this.engine, this.bench, pointer);
  }
  lamp(): string {
    return lampWord(this.engine, this.bench);
  }
  try(leaf: number): Fit {
    return fitOf(this.engine, this.bench, leaf);
  }

  /** Turns in steps until something is seen, within a turn and a half. */
  until(step: number, seen: () => boolean): void {
    for (let turned = 0; turned < 540; turned += Math.abs(step)) {
      if (seen()) return;
      this.turn(step);
    }
    throw new Error('not seen in a turn and a half');
  }

  /** The indicator into the plug hole, upright, zeroed at its highest reading come to forwards. */
  zeroIndicator(): void {
    this.do({ act: 'put', inHole: 'indicator' });
    if (!this.bench.upright) this.do({ act: 'straighten' });
    if (this.dial() !== undefined) this.until(12, () => this.dial() === undefined);
    this.until(12, () => this.dial() !== undefined);
    let last = Infinity;
    this.until(2, () => {
      const now = this.dial() ?? Infinity;
      const passed = now > last;
      last = now;
      return passed;
    });
    this.turn(-14);
    this.turn(7);
    last = Infinity;
    let still = 0;
    this.until(0.25, () => {
      const now = this.dial()!;
      still = now < last ? 0 : still + 1;
      last = now;
      return still > 5;
    });
    this.do({ act: 'zero' });
  }

  /**
   * Forwards to where the lamp comes to show a word: in great steps, then back past the play and on
   * in smaller ones, as far as a hand feels for it.
   */
  comeTo(word: 'lit' | 'out', ...steps: readonly number[]): void {
    if (this.lamp() === word) this.until(15, () => this.lamp() !== word);
    this.until(15, () => this.lamp() === word);
    let last = 15;
    for (const step of steps) {
      this.turn(-last - 6);
      this.turn(5.5);
      this.until(step, () => this.lamp() === word);
      last = step;
    }
  }

  /** Come to forwards: the reading at which the lamp goes out. */
  opens(): number {
    const readings = [0, 1].map(() => {
      this.comeTo('out', 1, 0.1);
      return this.dial()!;
    });
    return (readings[0]! + readings[1]!) / 2;
  }

  /** The heel on the top of the lobe: half-way through what the lamp is out for. */
  ontoLobe(): void {
    this.comeTo('out', 2);
    const from = this.disc();
    this.comeTo('lit', 2);
    const open = (((this.disc() - from) % 360) + 360) % 360;
    this.comeTo('out', 2);
    this.turn(open / 2);
  }

  /** The gap screw turned until the leaf drags. */
  setGap(gap: number): void {
    this.ontoLobe();
    const leaf = LEAVES.find((each) => Math.abs(each - gap) < 1e-9)!;
    for (let i = 0; i < 200 && this.try(leaf) !== 'drags'; i += 1) {
      this.do({ act: 'screw', by: this.try(leaf) === 'no-go' ? 5 : -5 });
    }
  }

  lampOn(): void {
    this.do({ act: 'coil', on: false });
  }
  take(cylinder: number): void {
    this.do({ act: 'cylinder', cylinder });
  }

  /** Degrees of timing into mm along the scribed line or a slot, to the nearest step of the screw. */
  movePlate(degrees: number): void {
    this.do({
      act: 'plate',
      by: Math.round(degrees / degreesAlong(this.card.plateRadius) / 0.05) * 0.05,
    });
  }
  moveSet(degrees: number): void {
    this.do({
      act: 'slot',
      by: Math.round(degrees / degreesAlong(this.card.slotRadius) / 0.05) * 0.05,
    });
  }
}
