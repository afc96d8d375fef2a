import {
  airDensity,
  standardPressure,
  stationPressure,
} from '../../calculators/maths/carburettor/air.ts';
import { capillaryRise } from '../../calculators/maths/carburettor/capillary-rise.ts';
import {
  displacedMass,
  fuelLevel,
  heightForLevel,
  levelAtJet,
  needlePush,
  springRise,
} from '../../calculators/maths/carburettor/float-level.ts';
import {
  mixedRatio,
  oilFor,
  oilToReach,
  partsOf,
  ratioOfPercent,
} from '../../calculators/maths/fuel/fuel-and-oil.ts';
import {
  ethanolDensity,
  fuelDensity,
  petrolDensity,
} from '../../calculators/maths/fuel/fuel-density.ts';
import {
  jetAreaRatio,
  mixtureRatio,
  sizesAbout,
} from '../../calculators/maths/carburettor/jets.ts';
import { annulus, needleDiameterAt } from '../../calculators/maths/carburettor/needle.ts';
import {
  balanceSlides,
  openingsFromVacuum,
} from '../../calculators/maths/carburettor/slide-balance.ts';
import { holdsTo, range } from './limits.ts';

const air = { temperature: 15, pressure: 101, humidity: 50 };
const tube = { bore: 6, surfaceTension: 0.0216, density: 740 };
const mix = { petrolDensity: 745, ethanolPercent: 5, oilRatio: 25, oilDensity: 870 };
const lever = {
  pivotToNeedle: 10,
  pivotToFloat: 30,
  floatMass: 5,
  floatArea: 800,
  floatDepth: 20,
};
const feed = { seat: 2, head: 300, density: 740 };
const gauging = { height: 25, edge: 'far', springDrop: 1 } as const;
const needle = { diameter: 2.5, taper: 1.5, straight: 3 };

holdsTo([
  {
    of: ['temperature'],
    run: (temperature) => airDensity({ ...air, temperature }),
    takes: [-30, 55],
    refuses: [-30.01, 55.01, NaN, Infinity],
    says: range('The temperature of the air', 'from -30 to 55 °C'),
  },
  {
    of: ['pressure'],
    run: (pressure) => airDensity({ ...air, pressure }),
    takes: [5, 1e6],
    refuses: [0, -1, NaN, Infinity],
    says: range('The air pressure', 'more than 0 kPa'),
  },
  {
    of: ['humidity'],
    run: (humidity) => airDensity({ ...air, humidity }),
    takes: [0, 100],
    refuses: [-0.1, 100.1, NaN],
    says: range('The humidity', 'from 0 to 100%'),
  },
  {
    of: ['altitude'],
    run: standardPressure,
    takes: [-2000, 11_000],
    refuses: [-2001, 11_001, NaN],
    says: range('The height above sea level', 'from -2000 to 11000 m'),
  },
  {
    of: ['altitude'],
    run: (altitude) => stationPressure(101.325, altitude),
    takes: [-2000, 11_000],
    refuses: [-2001, 11_001, NaN],
    says: range('The height above sea level', 'from -2000 to 11000 m'),
  },
  {
    of: ['pressure'],
    run: (reported) => stationPressure(reported, 0),
    takes: [85, 200],
    refuses: [84.9, NaN, Infinity],
    says: range('A pressure reduced to sea level', '85 kPa or more'),
  },
]);

holdsTo([
  {
    of: ['bore'],
    run: (bore) => capillaryRise({ ...tube, bore }),
    takes: [0.1, 40],
    refuses: [0.09, 40.1, NaN],
    says: range('The bore of the tube', 'from 0.1 to 40 mm'),
  },
  {
    of: ['surfaceTension'],
    run: (surfaceTension) => capillaryRise({ ...tube, surfaceTension }),
    takes: [0.005, 0.1],
    refuses: [0.0049, 0.101, NaN],
    says: range('The surface tension', 'from 0.005 to 0.1 N/m'),
  },
  {
    of: ['density'],
    run: (density) => capillaryRise({ ...tube, density }),
    takes: [500, 2000],
    refuses: [499, 2001, NaN],
    says: range('The density of the liquid', 'from 500 to 2000 kg/m³'),
  },
  {
    of: ['contactAngle'],
    run: (contactAngle) => capillaryRise({ ...tube, contactAngle }),
    takes: [0, 85],
    refuses: [-0.1, 85.1, NaN],
    says: range('The contact angle', 'from 0 to 85 °'),
  },
]);

const fuelTemperature = {
  of: ['temperature'],
  takes: [-20, 60],
  refuses: [-20.1, 60.1, NaN],
  says: range('The temperature of the fuel', 'from -20 to 60 °C'),
};
holdsTo([
  { ...fuelTemperature, run: (t) => petrolDensity(745, t) },
  { ...fuelTemperature, run: ethanolDensity },
  { ...fuelTemperature, run: (t) => fuelDensity(mix, t) },
  {
    of: ['petrolDensity'],
    run: (density) => petrolDensity(density, 15),
    takes: [653, 770],
    refuses: [652.9, 770.1, NaN],
    says: range('The density of petrol at 15 °C', 'from 653 to 770 kg/m³'),
  },
  {
    of: ['ethanolPercent'],
    run: (ethanolPercent) => fuelDensity({ ...mix, ethanolPercent }, 15),
    takes: [0, 100],
    refuses: [-0.1, 100.1, NaN],
    says: range('The share of ethanol', 'from 0 to 100%'),
  },
  {
    of: ['oilRatio'],
    run: (oilRatio) => fuelDensity({ ...mix, oilRatio }, 15),
    takes: [0.001, 1e6, Infinity],
    refuses: [0, -1, NaN],
    says: range('The oil ratio', 'more than 0'),
  },
  {
    of: ['oilDensity'],
    run: (oilDensity) => fuelDensity({ ...mix, oilDensity }, 15),
    takes: [1, 1e6],
    refuses: [0, -1, NaN, Infinity],
    says: range('The density of oil at 15 °C', 'more than 0 kg/m³'),
  },
]);

const tank = { volume: 1, ratio: 25 };
holdsTo([
  {
    of: ['fuel'],
    run: (petrol) => oilFor(petrol, 25),
    takes: [0, 1e6],
    refuses: [-0.1, NaN, Infinity],
    says: range('The petrol', '0 litres or more'),
  },
  {
    of: ['fuel'],
    run: (petrol) => mixedRatio(petrol, 0.2, tank),
    takes: [0, 1e6],
    refuses: [-0.1, NaN, Infinity],
    says: range('The petrol', '0 litres or more'),
  },
  {
    of: ['oil'],
    run: (oil) => mixedRatio(5, oil, tank),
    takes: [0, 1e6],
    refuses: [-0.1, NaN, Infinity],
    says: range('The oil', '0 litres or more'),
  },
  {
    of: ['already'],
    run: (volume) => partsOf({ volume, ratio: 25 }),
    takes: [0, 1e6],
    refuses: [-0.1, NaN, Infinity],
    says: range('What is already in the tank', '0 litres or more'),
  },
  {
    of: ['ratio'],
    run: (ratio) => oilFor(5, ratio),
    takes: [0.001, 1e6],
    refuses: [0, -1, NaN, Infinity],
    says: range('The ratio of petrol to oil', 'more than 0 to 1'),
  },
  {
    of: ['alreadyRatio'],
    run: (ratio) => partsOf({ volume: 1, ratio }),
    takes: [0.001, 1e6],
    refuses: [0, -1, NaN],
    says: range('The ratio of petrol to oil', 'more than 0 to 1'),
  },
  {
    of: ['percent'],
    run: ratioOfPercent,
    takes: [0.001, 1e6],
    refuses: [0, -1, NaN, Infinity],
    says: range('The share of oil', 'more than 0%'),
  },
  {
    code: 'empty',
    of: ['fuel', 'already'],
    run: (petrol) => mixedRatio(petrol, 1),
    takes: [0.001],
    refuses: [0],
    says: /^There is no petrol/,
  },
  {
    code: 'no-oil',
    of: ['oil', 'fuel'],
    run: (oil) => mixedRatio(5, oil),
    takes: [0.001],
    refuses: [0],
    says: /seize/,
  },
  {
    // A litre of 25 to 1 holds 1/26 litre of oil, which at 50 to 1 wants 50/26 litres of petrol,
    // 25/26 of which are there: 25/26 litre more.
    code: 'too-much-oil',
    of: ['fuel', 'ratio'],
    run: (petrol) => oilToReach(petrol, 50, tank),
    takes: [25 / 26, 1],
    refuses: [0.961, 0],
    says: /at 50 to 1.*at least 0\.96154 litres/,
  },
]);

holdsTo([
  ...(
    [
      ['pivotToNeedle', 'The distance from pivot to needle', 'more than 0 mm'],
      ['pivotToFloat', 'The distance from pivot to float', 'more than 0 mm'],
      ['floatArea', 'The area of the float', 'more than 0 mm²'],
      ['floatDepth', 'The depth of the float', 'more than 0 mm'],
    ] as const
  ).map(([name, words, span]) => ({
    of: [name],
    run: (figure: number) => displacedMass({ ...lever, [name]: figure }, feed),
    takes: [0.001, 1e6],
    refuses: [0, -1, NaN, Infinity],
    says: range(words, span),
  })),
  {
    of: ['floatMass'],
    run: (floatMass) => displacedMass({ ...lever, floatMass }, feed),
    takes: [0, 1e6],
    refuses: [-0.1, NaN, Infinity],
    says: range('The mass of the float', '0 g or more'),
  },
  {
    of: ['seat'],
    run: (seat) => needlePush({ ...feed, seat }),
    takes: [0, 1e6],
    refuses: [-0.1, NaN, Infinity],
    says: range('The diameter of the seat', '0 mm or more'),
  },
  {
    of: ['head'],
    run: (head) => needlePush({ ...feed, head }),
    takes: [0, 1e6],
    refuses: [-0.1, NaN, Infinity],
    says: range('The head of fuel', '0 mm or more'),
  },
  {
    of: ['density'],
    run: (density) => needlePush({ ...feed, density }),
    takes: [0.001, 1e6],
    refuses: [0, -1, NaN, Infinity],
    says: range('The density of the fuel', 'more than 0 kg/m³'),
  },
  {
    of: ['tilt'],
    run: (tilt) => displacedMass(lever, feed, { tilt }),
    takes: [-89.9, 89.9],
    refuses: [-90, 90, NaN],
    says: range('The tilt of the carburettor', 'more than -90 and less than 90 °'),
  },
  {
    of: ['tilt'],
    run: (tilt) => levelAtJet(20, 10, { tilt }),
    takes: [-89.9, 89.9],
    refuses: [-90, 90, NaN],
    says: range('The tilt of the carburettor', 'more than -90 and less than 90 °'),
  },
  {
    of: ['springDrop'],
    run: (drop) => springRise(lever, feed, drop),
    takes: [0, 1e6],
    refuses: [-0.1, NaN, Infinity],
    says: range('The drop on the needle’s spring', '0 mm or more'),
  },
  {
    of: ['floatMass'],
    run: (floatMass) => springRise({ ...lever, floatMass }, feed, 0),
    takes: [0],
    refuses: [-1],
    says: range('The mass of the float', '0 g or more'),
  },
  {
    code: 'not-a-number',
    of: ['height'],
    run: (height) => fuelLevel(lever, feed, { ...gauging, height }),
    takes: [-1e6, 0, 1e6],
    refuses: [NaN, Infinity],
    says: /^The gauge reading is not a number\. It is the distance/,
  },
  {
    code: 'height-out-of-reach',
    of: ['level'],
    run: (height) =>
      heightForLevel(
        lever,
        feed,
        gauging,
        fuelLevel(lever, feed, { ...gauging, height: 0 }) + height,
      ),
    takes: [-49.999, 99.999],
    refuses: [-50.1, 100.1, NaN],
    says: /^A fuel level of .* would need a gauge reading of .*from -50 to 100 mm/,
  },
]);

holdsTo([
  ...[jetAreaRatio, (density: number) => mixtureRatio(density)].map((run) => ({
    of: ['relativeDensity'],
    run,
    takes: [0.001, 1e6],
    refuses: [0, -1, NaN, Infinity],
    says: range('The relative density of the air', 'more than 0'),
  })),
  {
    code: 'size-not-positive',
    of: ['sizes'],
    run: (size) => sizesAbout(1, [100, size]),
    takes: [0.001],
    refuses: [0, -1, NaN],
    says: /Take the faulty one out/,
  },
  {
    code: 'no-sizes',
    of: ['sizes'],
    run: (count) => sizesAbout(1, Array<number>(count).fill(100)),
    takes: [1],
    refuses: [0],
    says: /no sizes to choose from/,
  },
  {
    of: ['needleDiameter'],
    run: (diameter) => needleDiameterAt({ ...needle, diameter }, 0),
    takes: [0.001, 1e6],
    refuses: [0, NaN, Infinity],
    says: range('The diameter of the needle', 'more than 0 mm'),
  },
  {
    of: ['taper'],
    run: (taper) => needleDiameterAt({ ...needle, taper }, 0),
    takes: [0, 179],
    refuses: [-0.1, 180, NaN],
    says: range('The taper', 'at least 0 and less than 180 °'),
  },
  {
    code: 'not-a-number',
    of: ['straight'],
    run: (straight) => needleDiameterAt({ ...needle, taper: 0, straight }, 0),
    takes: [-1e6, 1e6],
    refuses: [NaN, Infinity],
    says: /^The rise to the start of the taper is not a number\. It is counted/,
  },
  {
    of: ['jetBore'],
    run: (bore) => annulus(bore, { ...needle, diameter: 0.0001, taper: 0 }, 0),
    takes: [0.001, 1e6],
    refuses: [0, NaN, Infinity],
    says: range('The bore of the needle jet', 'more than 0 mm'),
  },
  {
    code: 'needle-too-thick',
    of: ['needleDiameter', 'jetBore'],
    run: (bore) => annulus(bore, needle, 0),
    takes: [2.501],
    refuses: [2.5, 2.4],
    says: /^A needle of 2\.5 mm does not go into a jet of 2\.[45] mm/,
  },
  {
    code: 'not-a-number',
    of: ['rise'],
    run: (rise) => needleDiameterAt(needle, rise),
    takes: [-100, 0, 10],
    refuses: [NaN, Infinity],
    says: /^The rise of the needle is not a number/,
  },
]);

holdsTo([
  {
    of: ['opening-2'],
    run: (opening) => balanceSlides([1, opening], 1),
    takes: [0, 1e6],
    refuses: [-0.1, NaN, Infinity],
    says: range('The opening of slide 2', '0 mm or more'),
  },
  {
    of: ['thread'],
    run: (thread) => balanceSlides([1, 2], thread),
    takes: [0.001, 1e6],
    refuses: [0, NaN, Infinity],
    says: range('The pitch of the adjuster’s thread', 'more than 0 mm'),
  },
  {
    code: 'slides',
    of: ['slides'],
    run: (count) => balanceSlides(Array<number>(count).fill(1), 1),
    takes: [1, 8],
    refuses: [0, 9],
    says: /from 1 to 8 slides, and [09] were given/,
  },
  {
    of: ['perTurn'],
    run: (perTurn) => openingsFromVacuum([1, 2], perTurn, 1),
    takes: [0.001, 1e6],
    refuses: [0, NaN, Infinity],
    says: range('The fall of the gauge for one turn', 'more than 0'),
  },
]);
