import { defineCalculator } from '../../frame/define.ts';
import { compute, decide, type Computed, type Values } from './compute.ts';
import { inputs } from './inputs.ts';
import { Picture } from './Picture.tsx';
import { isMisfit, ofJet, remarks } from './remarks.ts';
import { restsOn } from './rests-on.ts';
import { results } from './results.ts';

export default defineCalculator({
  slug: 'jet-set',
  title: 'A set of jets out of a bag',
  purpose:
    'From a bag of mixed jets, measured by pin, flow or number, to the set that differs least for your carburettors, and to those that belong in none.',
  inHand: ['bore', 'time', 'number', 'jets'],
  alsoCalled: [
    'matching jets',
    'jet flow',
    'jet sizes',
    'pin gauge',
    'orifice flow',
    'mixed jets',
    'unmarked jets',
    'main jets',
    'which jet',
    'which carburettor jet',
    'jet numbers',
  ],
  inputs,
  results,
  restsOn,
  tables: {
    set: {
      caption: 'The best set',
      rowHeading: 'Carburettor',
      row: (_, index) => String(index),
    },
    jets: {
      caption: 'Every jet',
      rowHeading: 'Jet',
      row: (_, index) => String(index),
      verdict: {
        heading: 'Verdict',
        say: (values, computed, index, _, known) =>
          ofJet(values as unknown as Values, computed as unknown as Computed, index, known),
      },
    },
  },
  fieldOf: {
    jets: 'jets',
    wanted: 'wanted',
    size: 'size',
    tolerance: 'tolerance',
    head: 'head',
    coefficient: 'coefficient',
    volume: 'volume',
    time: 'time',
  },
  decide,
  compute,
  noOrder: (name, v, computed) =>
    name === 'chosen' && isMisfit(v, computed) ? 'The least unlike: jet' : undefined,
  remarks,
  picture: Picture,
  care: 'Flow jets with water or paraffin, never petrol.',
  cautions: [
    'Flow jets with water or paraffin, never with petrol: its vapour creeps along the bench to any flame. Dry them before they go back.',
    'Glasses on when you blow a jet through: it spits back.',
    'Never push a drill, a needle or a steel wire through a jet: it opens the hole, and an engine that is weak on one cylinder seizes it.',
    'Too small a jet starves a two-stroke of fuel and of oil at once. Begin with the larger of two sets, and read the plugs.',
  ],
  limits: [
    'The set is the best of all sets there are, by area. Flow hangs on the edge and the cone of a jet as well: two of one bore may differ by some per cent, which only a flow shows.',
    'Flow is taken to go with the area and the root of the height, with one coefficient for all. In small jets and slow flows the liquid’s thickness counts too, so that sizes from flow are rougher than spreads.',
    'A number tells what the maker meant when it was new. Makers’ numbers differ: some count hundredths of a millimetre, some flow. So numbers of two makers are never compared: measure such jets all alike, by pin or by flow.',
    'The ± of the set is that of the jets chosen. Where another set comes as near, the page says so.',
  ],
  articles: ['needles-and-jets-by-area', 'stripping-and-cleaning'],
});
