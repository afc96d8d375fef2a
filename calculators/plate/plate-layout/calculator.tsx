import { defineCalculator } from '../../frame/define.ts';
import { compute } from './compute.ts';
import { downloads } from './files.ts';
import { folded, inputs } from './inputs.ts';
import { Picture } from './Picture.tsx';
import { remarks } from './remarks.ts';
import { restsOn } from './rests-on.ts';
import { results } from './results.ts';

export default defineCalculator({
  slug: 'plate-layout',
  title: 'Laying out a breaker plate',
  purpose:
    'Where every hole of a plate with several sets of points goes, what blank to saw out for it, and a template at true scale.',
  inHand: ['radius-1', 'angle-1'],
  alsoCalled: [
    'points plate',
    'backplate',
    'bolt circle',
    'pitch circle',
    'dividing',
    'tapping drill',
    'template',
  ],
  inputs,
  folded,
  results,
  restsOn,
  tables: {
    holes: {
      caption: 'Holes from the centre of the plate, X to the right, Y up',
      rowHeading: 'Set-hole',
      row: (_, set, hole) => `${String(set)}-${String(hole)}`,
    },
    chords: {
      caption: 'Dividers: from set 1 to set 2, and from a set’s own line',
      rowHeading: 'Hole',
      row: (_, hole) => `Hole ${String(hole)}`,
    },
    dividing: {
      caption: 'From set to set with a dividing head or a gear on the spindle',
      rowHeading: 'Set',
      row: (_, set) => `Set ${String(set)}`,
    },
  },
  fieldOf: {
    sets: 'sets',
    start: 'start',
    outsideDiameter: 'outside',
    boreDiameter: 'bore',
    allowance: 'allowance',
    slotRadius: 'slot-radius',
    slotWidth: 'slot-width',
    slotSweep: 'slot-sweep',
    slotStart: 'slot-start',
    runOut: 'run-out',
    clearance: 'clearance',
    heelRadius: 'heel-radius',
    wormRatio: 'worm',
    circles: 'circles',
    teeth: 'teeth',
    thread: 'thread',
  },
  refusedBy: { 'sets-on-one-line': ['spacing'] },
  compute,
  remarks,
  picture: Picture,
  ready: {
    caption: 'Blank for a plate, with 3 mm left on the diameter for turning',
    vary: 'outside',
    over: [92, 96, 100, 105, 110, 120, 130, 140, 150],
    show: ['square', 'corner', 'octagon-swing', 'most-depth'],
  },
  downloads,
  care: 'Swarf and corners cut: stop the spindle first.',
  cautions: [
    'Swarf cuts: stop the spindle, then clear it with a brush or hook, never with fingers or an air line. Wear eye protection, no gloves, no loose sleeves.',
    'The corners of a square or octagon swing unseen in the chuck. Turn the work round by hand before you start, take the chuck key out, and stand clear of its plane.',
    'Clamp thin plate on wood before you drill it. A drill that breaks through lifts and spins a plate held by hand.',
  ],
  limits: [
    'It is exact geometry; how near the plate comes to it is up to the marking out. A scribed cross and a punch put a hole within 0.1 to 0.2 mm, a readout within 0.02 mm (common practice).',
    'Metal is measured between drilled edges. A countersink, a washer or the body of a set needs more room than its hole: draw it on the template.',
    'A set that is not quite in its place is mended in its slot. The plate only has to bring every set within the reach of that slot.',
  ],
  articles: ['making-a-breaker-plate', 'gaskets-and-tags'],
});
