import { demoJets } from '../../demo/jets.ts';
import { defineCalculator } from '../../frame/define.ts';
import { fixed, showInput, withUnit } from '../../frame/text/format.ts';
import { compute, inOrder, sizeDecimals, type Computed, type Values } from './compute.ts';
import { groups, inputs } from './inputs.ts';
import { Picture } from './Picture.tsx';
import { remarks, verdict } from './remarks.ts';
import { restsOn } from './rests-on.ts';
import { results } from './results.ts';

export default defineCalculator({
  slug: 'air-and-jet',
  title: 'Air density and jet size',
  purpose:
    'From the weather and the height to the density of the air, and to the jet that keeps a mixture which was right elsewhere.',
  inHand: ['temperature'],
  alsoCalled: [
    'jetting for altitude',
    'relative air density',
    'density altitude',
    'main jet',
    'weather',
    'barometer',
  ],
  inputs,
  folded: [groups.flow],
  results,
  restsOn,
  tables: {
    sizes: {
      caption: 'The jets at hand in the air now',
      rowHeading: 'Jet',
      row: (values, index, _, { lengths }) => {
        const { sizes } = values as unknown as Values;
        const size = inOrder(sizes)[index - 1]!;
        return lengths === 'mm'
          ? withUnit(fixed(size, sizeDecimals(sizes)), 'mm')
          : showInput(size, 'mm', lengths, inputs.sizes.step, sizes);
      },
      verdict: {
        heading: 'Which',
        say: (values, computed, index) =>
          verdict(values as unknown as Values, computed as unknown as Computed, index),
      },
    },
  },
  fieldOf: {
    temperature: 'temperature',
    humidity: 'humidity',
    altitude: 'altitude',
    pressure: 'pressure',
    'right-temperature': 'right-temperature',
    'right-humidity': 'right-humidity',
    'right-altitude': 'right-altitude',
    'right-pressure': 'right-pressure',
    relativeDensity: 'temperature',
    sizes: 'sizes',
  },
  compute,
  remarks,
  picture: Picture,
  ready: {
    caption: `Jet for air at 900 m, humidity 60%, after ${demoJets.main} mm was right at 12 °C, 100 m and 70% (invented engine)`,
    vary: 'temperature',
    over: [-10, -5, 0, 5, 10, 15, 20, 25, 30, 35, 40],
    show: ['density', 'relative-density', 'jet-area-ratio', 'jet', 'mixture'],
  },
  care: 'Too small a jet seizes the engine: the larger one first.',
  cautions: [
    'A two-stroke gets its oil with its fuel. Too small a jet starves it of both, and the engine seizes at full throttle, without warning: hand on the clutch, and the larger jet first.',
    'Petrol runs out when a main jet is changed. Engine off and cool, tap shut, no flame or spark, a tin below.',
  ],
  limits: [
    'It holds for a jet that is in charge by itself, fed by the drop of pressure in a venturi: the main jet near full throttle. Needle and pilot want the same change in proportion, and seldom get it.',
    'The same engine speed and throttle are meant. Air jets, power jets and the pulses of a tuned exhaust are not in it.',
    'A hot engine bay makes the air at the mouth warmer than the shade: both days alike, or the difference counts.',
    'Jets differ among themselves, and a stamp is not a measurement: ± 2 per cent of flow between two of the same number is usual (common practice).',
  ],
  articles: ['air-weather-and-altitude', 'which-circuit-at-which-throttle'],
});
