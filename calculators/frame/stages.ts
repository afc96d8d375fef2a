/** The order of the job. Articles and calculators each belong to one stage. */
export const stages = {
  position: {
    title: 'Know where the piston is',
    text: 'Oil what is dry before the first turn, find true top dead centre, and turn any timing figure into a piston position for your own stroke and rod.',
  },
  geometry: {
    title: 'Prove the clearances, squish, ports and compression',
    text: 'Geometry comes before the ignition: a barrel or head that has to come off again takes every reading with it.',
  },
  plate: {
    title: 'Make or check the breaker plate',
    text: 'Mark out, drill and prove the plate, and print a disc or a tape to read the crank by.',
  },
  points: {
    title: 'Gap the points, then set the timing',
    text: 'Gap first, since it moves the timing; then the plate; then each set in its own slot.',
  },
  carburettors: {
    title: 'Clean and set the carburettors',
    text: 'Float levels, needles, jets, and all slides opening together.',
  },
  start: {
    title: 'Mix the fuel and make a safe first start',
    text: 'The right oil in the tank, a sure way to stop, and what to read from the result.',
  },
} as const;

export type Stage = keyof typeof stages;
