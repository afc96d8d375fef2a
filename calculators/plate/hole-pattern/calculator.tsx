import { defineCalculator } from '../../frame/define.ts';
import { compute, decide } from './compute.ts';
import { downloads } from './files.ts';
import { folded, inputs } from './inputs.ts';
import { Picture } from './Picture.tsx';
import { remarks } from './remarks.ts';
import { restsOn } from './rests-on.ts';
import { results } from './results.ts';
import { contradiction, suspects } from './suspects.ts';
import { onwards } from './to-plate.ts';

const numberIn = (list: unknown, index: number): string =>
  String((list as readonly number[])[index - 1]);

export default defineCalculator({
  slug: 'hole-pattern',
  title: 'Copying a hole pattern',
  purpose:
    'Where the holes of an old plate, cover or gasket lie, from caliper readings between them in any order, and which reading is wrong.',
  alsoCalled: [
    'gasket template',
    'cover gasket',
    'make a gasket',
    'copy a plate',
    'trilateration',
    'hole centres',
    'caliper',
    'bolt pattern',
    'pitch circle',
  ],
  inputs,
  folded,
  inHand: ['a', 'b', 'distance', 'distances'],
  results,
  restsOn,
  tables: {
    places: {
      caption: 'Holes from hole 1, X towards hole 2, Y to the side of hole 3',
      rowHeading: 'Hole',
      row: (_, index) => String(index),
    },
    polar: {
      caption: 'Holes from the centre, angles anticlockwise from the line to the first',
      rowHeading: 'Hole',
      row: (_, index) => String(index),
    },
    readings: {
      caption: 'Distances as measured and as fitted',
      rowHeading: 'Distance',
      row: (values, index) =>
        `${String(index)}: ${numberIn(values.a, index)} to ${numberIn(values.b, index)}`,
      verdict: {
        heading: 'Look again',
        say: (values, computed, index, _, known) => {
          const found = suspects(values as never, computed as never, known);
          return found?.contradict && found.which.includes(index - 1)
            ? 'it contradicts the others by more than its ±.'
            : '';
        },
      },
    },
  },
  fieldOf: { holes: 'holes', distances: 'distances', places: 'circle-holes' },
  refusedBy: {
    'no-metal': ['span', 'hole', 'distance', 'land', 'outside'],
    'no-distance': ['span', 'hole'],
    'no-triangle': ['span', 'hole', 'distance'],
    'in-line': ['span', 'hole', 'distance'],
    'either-side': ['span', 'hole', 'distance'],
    'bulge-too-large': ['span', 'hole', 'distance', 'land'],
    'edges-cross': ['span', 'hole', 'distance', 'land', 'bulge'],
    'no-opening': ['span', 'hole', 'distance', 'land', 'outside'],
    'loose-land': ['span', 'hole', 'distance', 'land', 'outside', 'band'],
    'not-in-opening': ['span', 'hole', 'distance', 'land', 'outside', 'band'],
    'places-in-line': ['span', 'hole', 'distance'],
  },
  decide,
  compute,
  widened: {
    by: contradiction,
    results: [
      'least-metal',
      'x',
      'y',
      'radius',
      'angle',
      'fitted',
      'centre-x',
      'centre-y',
      'pitch-radius',
      'off-circle',
      'across',
      'upright',
      'opening-across',
      'opening-upright',
    ],
  },
  remarks,
  onwards,
  picture: Picture,
  downloads,
  care: 'Old gaskets: asbestos. Never dry.',
  cautions: [
    'Old gaskets and their dust may hold asbestos. Never scrape, sand, wire-brush or blow one off dry: wet it, lift it off whole, bag it, and follow the rules of your country.',
    'A cover that seals fuel, oil or exhaust may leak by a hole that is only a little out. Offer the first copy up dry on the part before you trust it.',
  ],
  limits: [
    'All distances count alike, and holes are taken as round and square to the face. A hole that is drawn oval has no one centre: measure to it over the nearest and the furthest edge, and give both.',
    'Nearest and furthest edges together cancel the error of the diameters: give both as two distances, and name the odd ones under “Distances taken another way”.',
    'The pattern is seen from the side on which it was measured. For the other side turn the template over; the numbers run the other way round.',
    'The ± comes of the readings’ own ±, and where they contradict each other of how far they do. It says nothing of a part that is bent, or a gasket that has shrunk: steel rule readings over the longest distance show that.',
  ],
  articles: ['making-a-breaker-plate', 'gaskets-and-tags'],
});
