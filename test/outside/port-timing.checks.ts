import {
  crownPort,
  skirtPort,
  topEdgeForDuration,
  type PistonInBarrel,
} from '../../calculators/maths/cylinder/port-timing.ts';
import { layoutTiming } from '../../calculators/maths/cylinder/port-layout.ts';
import { SOLVER, solvedAngle } from './constraint-solver.ts';
import type { OutsideCheck } from './types.ts';

const topic = 'port-timing';

/** An invented cylinder, its pin in the middle and offset to either side. */
const club: PistonInBarrel = { stroke: 51, rodLength: 104, pinOffset: 0, deckClearance: 0.4 };
const barrels: readonly PistonInBarrel[] = [
  club,
  { ...club, pinOffset: 1.5 },
  { stroke: 58, rodLength: 110, pinOffset: -2, deckClearance: -0.8 },
];

const solved = barrels.flatMap((barrel): OutsideCheck[] => {
  const { stroke, rodLength, pinOffset, deckClearance } = barrel;
  const engine = `stroke ${String(stroke)}, rod ${String(rodLength)}, pin offset ${String(pinOffset)}, deck ${String(deckClearance)} mm`;
  return [31, 37.5].flatMap((edge): OutsideCheck[] => [
    {
      topic,
      what: `opening after top dead centre of a port ${String(edge)} mm below the deck (${engine})`,
      source: SOLVER,
      kind: 'library',
      unit: '°',
      expected: () => solvedAngle(barrel, edge, 'down'),
      ours: () => crownPort(barrel, edge).opens,
      tolerance: 1e-6,
    },
    {
      topic,
      what: `closing after top dead centre of a port ${String(edge)} mm below the deck (${engine})`,
      source: SOLVER,
      kind: 'library',
      unit: '°',
      expected: () => solvedAngle(barrel, edge, 'up'),
      ours: () => crownPort(barrel, edge).closes,
      tolerance: 1e-6,
    },
  ]);
});

const inlet: readonly OutsideCheck[] = [
  {
    topic,
    what: 'duration of an inlet with its bottom edge 78 mm below the deck, skirt 62 mm (stroke 51, rod 104, pin offset 1.5, deck 0.4 mm)',
    source: SOLVER,
    kind: 'library',
    unit: '°',
    expected: () => {
      const edge = 78 - 62;
      return solvedAngle(barrels[1]!, edge, 'down') + 360 - solvedAngle(barrels[1]!, edge, 'up');
    },
    ours: () => skirtPort(barrels[1]!, 78, 62).duration,
    tolerance: 1e-6,
  },
];

/** Throw 3, rod 5: at 90° they make the triangle 3-4-5 and the piston is 3 + 5 − 4 = 4 down. */
const triangle: PistonInBarrel = { stroke: 60, rodLength: 50, pinOffset: 0, deckClearance: 0 };

const byHand: readonly OutsideCheck[] = [
  {
    topic,
    what: 'duration of a port 40 mm below the deck, throw 30 and rod 50 mm: open from 90° to 270°',
    source: 'Worked by hand: the right-angled triangle 3-4-5 of throw, rod and bore',
    kind: 'hand-worked',
    unit: '°',
    expected: 180,
    ours: () => crownPort(triangle, 40).duration,
    tolerance: 1e-9,
  },
  {
    topic,
    what: 'height of a port for 120° of duration, throw 30 and rod 50 mm: the piston at 120°, where the rod has the height √(50² − (30·sin 120°)²)',
    source: 'Worked by hand with Pythagoras: 30 + 50 + 15 − √(2500 − 675)',
    kind: 'hand-worked',
    unit: 'mm',
    expected: 95 - Math.sqrt(1825),
    ours: () => topEdgeForDuration(triangle, 120),
    tolerance: 1e-9,
  },
  {
    topic,
    what: 'blowdown between ports at 40 mm and at 52.28 mm (throw 30, rod 50 mm): from 90° to 120°',
    source: 'Worked by hand, as the two checks above',
    kind: 'hand-worked',
    unit: '°',
    expected: 30,
    ours: () =>
      layoutTiming({
        barrel: triangle,
        exhaust: 40,
        transfers: [95 - Math.sqrt(1825)],
        inlet: { kind: 'reed' },
      }).blowdown,
    tolerance: 1e-9,
  },
];

export const checks: readonly OutsideCheck[] = [...solved, ...inlet, ...byHand];
