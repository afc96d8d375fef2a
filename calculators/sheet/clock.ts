import type { Engine, Reading } from './model.ts';
import type { StepId } from './steps.ts';

const momentsOf = ({ checked, changed, again = [] }: Reading): number[] => [
  checked,
  changed,
  ...again,
];

/** The engine's moments in their order, counted anew from the first. */
export function recounted(engine: Engine): Engine {
  const readings = Object.entries(engine.readings) as [StepId, Reading][];
  const moments = [
    ...readings.flatMap(([, reading]) => momentsOf(reading)),
    ...engine.log.map(({ clock }) => clock),
  ];
  const ranks = new Map(
    [...new Set([0, ...moments])].sort((a, b) => a - b).map((moment, rank) => [moment, rank]),
  );
  return {
    ...engine,
    readings: Object.fromEntries(
      readings.map(([id, reading]) => [
        id,
        {
          ...reading,
          checked: ranks.get(reading.checked)!,
          changed: ranks.get(reading.changed)!,
          ...(reading.again === undefined
            ? {}
            : { again: reading.again.map((moment) => ranks.get(moment)!) }),
        },
      ]),
    ),
    log: engine.log.map((entry) => ({ ...entry, clock: ranks.get(entry.clock)! })),
    clock: ranks.size,
  };
}

/** The latest moment of anything in the engine. */
export const momentNow = (engine: Engine): number =>
  Math.max(
    engine.clock,
    engine.log.at(-1)?.clock ?? 0,
    ...Object.values(engine.readings).flatMap(momentsOf),
  );

/**
 * The engine with its clock no earlier than a moment of the wall clock, in whole seconds: what two
 * tabs write apart from each other falls into the order in which it was written.
 */
export const wound = (engine: Engine, moment: number): Engine =>
  engine.clock < moment ? { ...engine, clock: moment } : engine;

/** The engine one change later than anything in it; a clock that has run out is set back. */
export function tick(engine: Engine): Engine {
  const clock = momentNow(engine) + 1;
  return clock > Number.MAX_SAFE_INTEGER ? recounted(engine) : { ...engine, clock };
}
