import type { NumberBox } from './box-places.ts';
import { specOf } from './box-specs.ts';
import { entriesOf, type Engine } from './model.ts';
import { steps } from './steps.ts';

/** What a box is known to read about: what the sheet has it set to, or what was read there. */
export function knownAt(engine: Engine, box: NumberBox): number | undefined {
  if (box.kind === 'figure') return engine.figures[box.key];
  const { target, usual: commonly } = steps[box.step].reading!;
  const entries = entriesOf(engine, box.step).filter((value) => value !== null && value !== 0);
  return [
    target === undefined ? undefined : engine.figures[target],
    commonly,
    // The middle one: a slip among three is far from the other two, and not they from it.
    entries.sort((a, b) => a! - b!)[Math.floor(entries.length / 2)],
  ].find((value): value is number => value !== undefined && value !== null && value !== 0);
}

/** A figure is often some tens of the smallest step that is read of it: where nothing else is known of its size. */
const USUAL_STEPS = 30;

/** The same, or where nothing is known a guess by how fine it is read. */
export const usualAt = (engine: Engine, box: NumberBox): number =>
  knownAt(engine, box) ?? specOf(engine, box).step * USUAL_STEPS;
