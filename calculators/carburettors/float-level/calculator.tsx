import { demoFloat } from '../../demo/float.ts';
import { defineCalculator } from '../../frame/define.ts';
import { compute, type Computed, type Values } from './compute.ts';
import { groups, inputs } from './inputs.ts';
import { Picture } from './Picture.tsx';
import { remarks, verdict } from './remarks.ts';
import { restsOn } from './rests-on.ts';
import { results } from './results.ts';

export default defineCalculator({
  slug: 'float-level',
  title: 'Float height and fuel level',
  purpose:
    'From the float height gauged on the bench to the fuel level when running, and back, with the bend of the tang that sets it.',
  inHand: ['height'],
  alsoCalled: [
    'float height',
    'fuel level',
    'float bowl',
    'flooding',
    'needle valve',
    'clear tube test',
  ],
  inputs,
  folded: [groups.fuel, groups.tilt],
  results,
  restsOn,
  tables: {
    side: {
      caption: 'Carburettors side by side, against the gauge reading above',
      rowHeading: 'Carburettor',
      row: (_, index) => String(index),
      verdict: {
        heading: 'What to do',
        say: (values, computed, index, _, known) =>
          verdict(values as unknown as Values, computed as unknown as Computed, index, known),
      },
    },
  },
  fieldOf: {
    pivotToNeedle: 'pivot-to-needle',
    pivotToFloat: 'pivot-to-float',
    floatMass: 'float-mass',
    floatArea: 'float-area',
    floatDepth: 'float-depth',
    seat: 'seat',
    head: 'head',
    density: 'density',
    height: 'height',
    springDrop: 'spring-drop',
    level: 'wanted',
    tilt: 'tilt',
    petrolDensity: 'petrol',
    ethanolPercent: 'ethanol',
    oilRatio: 'oil-ratio',
    oilDensity: 'oil-density',
    temperature: 'warmth',
  },
  compute,
  remarks,
  picture: Picture,
  ready: {
    caption: `Fuel level of an invented carburettor: float of ${demoFloat.mass} g and ${demoFloat.area} mm², arms ${demoFloat.pivotToNeedle} and ${demoFloat.pivotToFloat} mm, seat ${demoFloat.seat} mm, head ${demoFloat.head} mm, petrol of ${demoFloat.density} kg/m³`,
    vary: 'height',
    over: [22, 22.5, 23, 23.5, 24, 24.5, 25, 25.5, 26],
    show: ['level', 'tang-for'],
  },
  care: 'Petrol: tap shut, doors open, no flame or spark.',
  cautions: [
    'Petrol: tap shut, work in the open or with the doors open, no flame, heater, cigarette or spark, a lidded metal tin for what runs out, an extinguisher for fuel at hand. Its vapour is heavier than air and finds a pilot light across the floor.',
    'Wear gloves and glasses: petrol takes the fat out of skin and, with what is in it, harms by long contact.',
    'A float that does not shut the valve fills the cylinder and the floor. Watch the overflow for some minutes with the tap open before the engine is started.',
  ],
  limits: [
    'The float is taken as a prism with straight walls, standing upright when the valve shuts. A round or slanting float displaces a little differently; what is measured with a clear tube then counts for more than this figure.',
    'The needle’s own weight is left out. So is the suction on the chamber of an engine that runs; where the vent is blocked the level is anything.',
    'The needle’s spring is taken to give in proportion. A pin that lies on its stop under the float’s weight makes the rise look smaller than worked out.',
    'With a tilt, the surface leans and the arm shortens; that the float’s own centre of buoyancy wanders sideways is not in it. Good to 0.3 mm or so up to 20°.',
    'The maker’s height, where there is one, comes first. It was found by trial on an engine, which no hydrostatics can replace.',
  ],
  articles: ['float-height-and-fuel-level', 'stripping-and-cleaning'],
});
