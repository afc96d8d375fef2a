import {
  airDensity,
  standardDensity,
  standardPressure,
  standardTemperature,
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
    says: range('The humidity', 'from 0 to 100 %'),
  },
  ...[standardTemperature, standardPressure, standardDensity].map((run) => ({
    of: ['altitude'],
    run,
    takes: [-2000, 11_000],
    refuses: [-2001, 11_001, NaN],
    says: range('The height above sea level', 'from -2000 to 11000 m'),
  })),
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
    says: range('The share of ethanol', 'from 0 to 100 %'),
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
    says: range('The share of oil', 'more than 0 %'),
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
      ['pivotToNeedle', 'The distance from pivot to needle', 'more than 0 and at most 200 mm', 200],
      ['pivotToFloat', 'The distance from pivot to float', 'more than 0 and at most 500 mm', 500],
      ['floatArea', 'The area of the float', 'more than 0 and at most 50000 mm²', 50_000],
      ['floatDepth', 'The depth of the float', 'more than 0 and at most 200 mm', 200],
    ] as const
  ).map(([name, words, span, most]) => ({
    of: [name],
    run: (figure: number) => displacedMass({ ...lever, [name]: figure }, feed),
    takes: [0.001, most],
    refuses: [0, -1, most + 0.1, NaN],
    says: range(words, span),
  })),
  {
    of: ['floatMass'],
    run: (floatMass) => displacedMass({ ...lever, floatMass }, feed),
    takes: [0, 1000],
    refuses: [-0.1, 1000.1, NaN],
    says: range('The mass of the float', 'from 0 to 1000 g'),
  },
  {
    of: ['seat'],
    run: (seat) => needlePush({ ...feed, seat }),
    takes: [0, 20],
    refuses: [-0.1, 20.1, NaN],
    says: range('The diameter of the seat', 'from 0 to 20 mm'),
  },
  {
    of: ['head'],
    run: (head) => needlePush({ ...feed, head }),
    takes: [0, 10_000],
    refuses: [-0.1, 10_001, NaN],
    says: range('The head of fuel', 'from 0 to 10000 mm'),
  },
  {
    of: ['density'],
    run: (density) => needlePush({ ...feed, density }),
    takes: [600, 1100],
    refuses: [599, 1101, NaN],
    says: range('The density of the fuel', 'from 600 to 1100 kg/m³'),
  },
  {
    of: ['tilt'],
    run: (tilt) => displacedMass(lever, feed, { tilt }),
    takes: [-45, 45],
    refuses: [-45.1, 45.1, NaN],
    says: range('The tilt of the carburettor', 'from -45 to 45 °'),
  },
  {
    of: ['tilt'],
    run: (tilt) => levelAtJet(20, 10, { tilt }),
    takes: [-45, 45],
    refuses: [-45.1, 45.1, NaN],
    says: range('The tilt of the carburettor', 'from -45 to 45 °'),
  },
  {
    of: ['springDrop'],
    run: (drop) => springRise(lever, feed, drop),
    takes: [0, 50],
    refuses: [-0.1, 50.1, NaN],
    says: range('The drop on the needle’s spring', 'from 0 to 50 mm'),
  },
  {
    of: ['floatMass'],
    run: (floatMass) => springRise({ ...lever, floatMass }, feed, 0),
    takes: [0],
    refuses: [-1],
    says: range('The mass of the float', 'from 0 to 1000 g'),
  },
  {
    of: ['height'],
    run: (height) => fuelLevel(lever, feed, { ...gauging, height }),
    takes: [-50, 200],
    refuses: [-50.1, 200.1, NaN],
    says: range('The gauge reading', 'from -50 to 200 mm'),
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
    takes: [-49.999, 199.999],
    refuses: [-50.1, 200.1, NaN],
    says: /^A fuel level of .* would need a gauge reading of .*from -50 to 200 mm/,
  },
]);

holdsTo([
  ...[jetAreaRatio, (density: number) => mixtureRatio(density)].map((run) => ({
    of: ['relativeDensity'],
    run,
    takes: [0.3, 3],
    refuses: [0.29, 3.01, NaN],
    says: range('The relative density of the air', 'from 0.3 to 3'),
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
    takes: [0.001, 20],
    refuses: [0, 20.1, NaN],
    says: range('The diameter of the needle', 'more than 0 and at most 20 mm'),
  },
  {
    of: ['taper'],
    run: (taper) => needleDiameterAt({ ...needle, taper }, 0),
    takes: [0, 30],
    refuses: [-0.1, 30.1, NaN],
    says: range('The taper', 'from 0 to 30 °'),
  },
  {
    of: ['straight'],
    run: (straight) => needleDiameterAt({ ...needle, taper: 0, straight }, 0),
    takes: [-100, 200],
    refuses: [-100.1, 200.1, NaN],
    says: range('The rise to the start of the taper', 'from -100 to 200 mm'),
  },
  {
    of: ['jetBore'],
    run: (bore) => annulus(bore, { ...needle, diameter: 0.0001, taper: 0 }, 0),
    takes: [0.001, 20],
    refuses: [0, 20.1, NaN],
    says: range('The bore of the needle jet', 'more than 0 and at most 20 mm'),
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
    takes: [0.001, 1000],
    refuses: [0, 1001, NaN],
    says: range('The fall of the gauge for one turn', 'more than 0 and at most 1000'),
  },
]);
