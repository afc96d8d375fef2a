/**
 * What to do when it revs by itself: on the page in the open, before the list, since nobody looks for
 * it then. In the order in which it is tried.
 */
export const runaway: readonly string[] = [
  'Switch off, and shut the throttle (the twistgrip).',
  'If it runs on: a flat rigid board over every inlet. Without air it stops.',
  'Or stall it: pull the clutch lever (the drive is free), top gear, the brake of the driven wheel hard on, and let the clutch lever out at once (the drive takes hold). Without a clutch there is only the board.',
  'Fuel tap shut. By itself it comes too late: the engine runs on with what is in the bowls, and leaner and faster as they empty.',
  'Stand clear of wheel, chain and flywheel, and do not reach across the engine. If none of it helps, get everybody away, and let it run itself out.',
];
