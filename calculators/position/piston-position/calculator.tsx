import { demoEngine } from '../../demo/engine.ts';
import { demoOther } from '../../demo/other.ts';
import { demoTiming } from '../../demo/timing.ts';
import { engineFields, engineInputs, sliderCrank, rotorInput } from '../engine-inputs.ts';
import { choice, defineCalculator } from '../../frame/define.ts';
import { fixed, withUnit } from '../../frame/text/format.ts';
import {
  absent,
  type AnyValues,
  type Inputs,
  type Results,
  type ResultValue,
} from '../../frame/types.ts';
import { EARLIEST_SPARK } from '../../maths/limits/earliest-spark.ts';
import { convert } from '../../maths/units/units.ts';
import { MathsError } from '../../maths/numeric/errors.ts';
import { readingOf } from '../../maths/crank/indicator-tilt.ts';
import { angleOf, arcOf } from '../../maths/crank/rim-arc.ts';
import {
  angleBefore,
  bdcAfter,
  degreesPerMillimetre,
  travelBefore,
  type SliderCrank,
} from '../../maths/crank/slider-crank.ts';
import { onOther, otherCrank, rotorKey, rotorOf, type Rotors } from './other-engine.ts';
import { Picture } from './Picture.tsx';
import { restsOn } from './rests-on.ts';
import { angleOtherwise, travelOtherwise } from './typed-otherwise.ts';

const figure = 'The figure you were given';

function angleFrom(
  geometry: SliderCrank,
  v: Rotors & {
    readonly from: string;
    readonly travel: number;
    readonly angle: number;
    readonly arc: number;
  },
): number {
  if (v.from === 'travel') return angleBefore(geometry, v.travel);
  const found = v.from === 'angle' ? v.angle : angleOf(rotorOf(v), v.arc);
  assertBefore(geometry, found, toldBy(v));
  return found;
}

/** The inputs that tell the place. */
const toldBy = (v: Rotors & { readonly from: string }): readonly string[] =>
  v.from === 'arc' ? ['arc', rotorKey(v)] : [v.from];

/** A timing lies between bottom and top dead centre. */
function assertBefore(geometry: SliderCrank, angle: number, told: readonly string[]): void {
  const bottom = 360 - bdcAfter(geometry);
  if (angle <= bottom) return;
  throw new MathsError(
    'beyond-bottom',
    told,
    `That is ${angle.toFixed(1)}° before the top, but bottom dead centre is only ${bottom.toFixed(1)}° before it; further back the piston is on its way down. Count from the top you are setting for.`,
  );
}

const otherGroup = 'The engine it was given for';
const forOther = (v: AnyValues): boolean => v['given'] === 'other';

/** Further from the top than this a place is asked about that a port has, crank degrees. */
const PORTS = 75;

/** A slip in a timing rather than a place that somebody asks about; nothing of any other. */
const beyondSparks = (angle: ResultValue): string | undefined =>
  typeof angle === 'number' && angle > EARLIEST_SPARK && angle < PORTS
    ? `${withUnit(fixed(angle, 1), 'deg')} before the top is earlier than any such engine fires: if it is a timing, check the figure and its unit. From 15° to 35° is common practice.`
    : undefined;

/** Whether an arc that was given for another engine counts on the rotor of this one. */
const isRotorUnsaid = (v: AnyValues): boolean =>
  forOther(v) && v['from'] === 'arc' && v['given-rotor'] === undefined;

const ARC_OF_THIS =
  'The arc is counted on the rotor of this engine. If it was measured on the other engine’s, give that rotor’s diameter: the same arc is other degrees there.';

export const inputs = {
  from: choice({
    assumed: true,
    group: figure,
    label: 'You have',
    help: 'What the timing figure is given as.',
    options: { travel: 'Piston travel', angle: 'Crank angle', arc: 'Arc on the rotor' },
    default: 'travel',
  }),
  travel: {
    kind: 'number',
    group: figure,
    label: 'Piston travel',
    help: 'How far the piston is below top dead centre, measured along the bore.',
    measure:
      'Indicator in the plug hole, zeroed at top dead centre. Turn the crank back well past the figure, then forward up to it, so that play is always taken up the same way.',
    unit: 'mm',
    min: 0,
    max: 200,
    why: 'travel is counted down from the top, and no engine here has a longer stroke',
    default: demoTiming.travel,
    otherwise: travelOtherwise,
    alike: true,
    step: 0.05,
    error: 0.02,
    when: (v) => v.from === 'travel',
  },
  angle: {
    kind: 'number',
    group: figure,
    label: 'Crank angle',
    help: 'Degrees before true top dead centre.',
    measure:
      'Degree disc on the crank and a fixed pointer close to it, set to true top dead centre by a positive stop.',
    unit: 'deg',
    min: 0,
    max: 200,
    why: 'beyond bottom dead centre the count starts from the other side',
    default: demoTiming.angle,
    otherwise: angleOtherwise,
    step: 0.5,
    error: 0.25,
    when: (v) => v.from === 'angle',
  },
  arc: {
    kind: 'number',
    group: figure,
    label: 'Arc on the rotor',
    help: 'Length along the rim from the top dead centre mark to the firing mark.',
    measure: 'Lay a paper strip round the rim, prick both marks through it, and measure it flat.',
    unit: 'mm',
    min: 0,
    max: 700,
    why: 'half the rim of the largest rotor is no longer',
    default: demoTiming.arc,
    step: 0.5,
    error: 0.25,
    when: (v) => v.from === 'arc',
  },
  given: choice({
    assumed: true,
    group: figure,
    label: 'It was given for',
    help: 'Degrees mean the same on every engine. Millimetres of piston do not: they go with the stroke and the rod.',
    options: { same: 'This engine', other: 'Another engine' },
    default: 'same',
  }),
  'given-stroke': {
    ...engineInputs.stroke,
    label: 'Other stroke',
    group: otherGroup,
    measure:
      'From the same book or hand as the figure: it must be the engine that the figure was made for.',
    default: demoOther.stroke,
    when: forOther,
  },
  'given-rod': {
    ...engineInputs.rod,
    label: 'Other rod length',
    group: otherGroup,
    measure:
      'From the same book or hand as the figure. If it is not told, twice the stroke is a usual guess (common practice).',
    default: demoOther.rod,
    when: forOther,
  },
  'given-offset': {
    ...engineInputs.offset,
    label: 'Other pin offset',
    group: otherGroup,
    default: demoOther.offset,
    when: forOther,
  },
  'given-rotor': {
    ...rotorInput,
    kind: 'optional',
    group: otherGroup,
    label: 'Other rotor diameter',
    help: 'Only for an arc: the rotor on which it was measured, where the marks are. Left empty, the arc counts on the rotor of this engine.',
    measure: 'From the same book or hand as the figure: an arc means nothing on another rotor.',
    when: forOther,
  },
  ...engineInputs,
  rotor: {
    ...rotorInput,
    group: 'Rotor and indicator',
    help: 'Where the marks are. Only for figures along the rim.',
    measure: 'Caliper across the rim at the marks.',
  },
  tilt: {
    assumed: true,
    kind: 'number',
    group: 'Rotor and indicator',
    label: 'Lean of the indicator',
    help: 'Angle between the plunger of the indicator and the bore. 0 when it stands in line.',
    measure:
      'The angle of the plug hole against the bore, from the drawing of the head or with a protractor on a rod screwed into the hole.',
    unit: 'deg',
    min: 0,
    max: 60,
    why: 'beyond that a plunger slides off the crown or jams',
    default: 0,
    step: 1,
  },
} as const satisfies Inputs;

export const results = {
  angle: {
    label: 'Crank angle',
    unit: 'deg',
    help: 'Degrees before true top dead centre.',
    lead: true,
    decimals: 2,
    word: () => 'BTDC',
  },
  travel: {
    label: 'Piston travel',
    unit: 'mm',
    help: 'Below top dead centre, along the bore.',
    lead: true,
    decimals: 3,
  },
  'given-travel': {
    label: 'On the engine it was given for',
    unit: 'mm',
    help: 'Piston travel there at the same crank angle.',
    decimals: 3,
  },
  'degrees-per-tenth': {
    label: '0.1 mm is worth',
    unit: 'deg',
    help: 'Degrees of crank for 0.1 mm of piston travel at this place.',
    inInches: {
      label: '5 thou is worth',
      help: 'Degrees of crank for 5 thou of piston travel at this place.',
      times: convert(5, 'thou', 'mm') / 0.1,
    },
    lead: true,
    decimals: 2,
  },
  arc: {
    label: 'Arc on the rotor',
    unit: 'mm',
    help: 'Along the rim, from the top dead centre mark.',
    decimals: 2,
  },
  'dial-reading': {
    label: 'The leaning indicator shows',
    unit: 'mm',
    help: 'Set the dial to this; a leaning plunger moves further than the piston.',
    decimals: 3,
  },
} as const satisfies Results;

export default defineCalculator({
  slug: 'piston-position',
  title: 'Piston position and crank angle',
  purpose:
    'Turns millimetres before top dead centre, degrees or an arc on the rotor into each other for your own stroke and rod, also from a figure given for another engine.',
  inHand: ['travel', 'angle', 'arc', 'from', 'given'],
  alsoCalled: [
    'timing',
    'BTDC',
    'advance',
    'mm before top dead centre',
    'mm before top',
    'before top',
    'inches before top',
    'advance in mm',
    'convert mm to degrees',
    'convert degrees to mm',
    'thou to mm',
    'thou to degrees',
    'degrees',
    'slider-crank',
    'another engine',
    'other rod',
  ],
  inputs,
  results,
  restsOn,
  fieldOf: {
    ...engineFields,
    'given-stroke': 'given-stroke',
    'given-rod': 'given-rod',
    'given-offset': 'given-offset',
    'given-rotor': 'given-rotor',
    pistonTravel: 'travel',
    travel: 'travel',
    diameter: 'rotor',
    tilt: 'tilt',
    angle: 'angle',
    arc: 'arc',
  },
  compute: (v) => {
    const geometry = sliderCrank(v);
    const there = v.given === 'other' ? otherCrank(v) : geometry;
    const angle = v.given === 'other' ? onOther(() => angleFrom(there, v)) : angleFrom(there, v);
    if (v.given === 'other') assertBefore(geometry, angle, toldBy(v));
    const givenTravel = v.from === 'travel' ? v.travel : travelBefore(there, angle);
    const travel = v.given === 'other' ? travelBefore(geometry, angle) : givenTravel;
    const standing = angle < 0.05 || angle > 360 - bdcAfter(geometry) - 0.05;
    return {
      angle,
      travel,
      'given-travel': givenTravel,
      'degrees-per-tenth': standing
        ? absent(
            'At dead centre the piston stands still: there 0.1 mm is worth no fixed number of degrees. Take a place a little away from it.',
          )
        : 0.1 * degreesPerMillimetre(geometry, -angle),
      arc: arcOf(v.rotor, angle),
      'dial-reading': readingOf(travel, v.tilt),
    };
  },
  carry: (choice, option, v, found) => {
    if (choice !== 'from') return [];
    const { from } = v;
    const { angle } = found;
    const figures: Readonly<Record<string, ResultValue>> = {
      travel: found['given-travel'],
      angle,
      arc: typeof angle === 'number' ? arcOf(rotorOf(v), angle) : angle,
    };
    const figure = figures[option];
    return typeof figure === 'number' ? [{ from, to: { [option]: figure } }] : [];
  },
  remarks: (v, { angle }) => [
    {
      about: 'on which rotor the arc was measured',
      quiet: true,
      leads: true,
      say: () => (isRotorUnsaid(v) ? ARC_OF_THIS : undefined),
    },
    {
      about: 'whether an engine fires there',
      quiet: true,
      leads: true,
      say: () => beyondSparks(angle),
    },
  ],
  main: ({ from, given }) => (given === 'other' || from === 'angle' ? 'travel' : 'angle'),
  picture: Picture,
  ready: {
    caption: `Crank angle for piston travel, invented demo engine: stroke ${demoEngine.stroke} mm, rod ${demoEngine.rod} mm, no offset`,
    vary: 'travel',
    over: [0.5, 1, 1.5, 1.8, 2, 2.2, 2.5, 2.8, 3, 3.5, 4, 5],
    show: ['angle', 'degrees-per-tenth'],
  },
  care: 'Plugs out and earthed, ignition and fuel off.',
  cautions: [
    'Plugs out, their leads earthed, ignition off and fuel shut before you turn an engine by hand: one that fires throws the spanner. Keep fingers out of the ports.',
    'An engine set too early kicks back and overheats. If two figures leave you in doubt, take the later one; the maker’s comes before any of them.',
  ],
  limits: [
    'It is exact geometry: stroke, rod and offset decide everything. Play in the bearings, which lets the piston come higher when it is pulled than when it is pushed, is not in it; take it up always the same way.',
    'A leaning indicator is taken to stand with its plunger on a flat crown square to the bore. On a domed crown a leaning plunger also wanders sideways over the dome, which this does not know of: use an adaptor that stands in line.',
    'Piston travel alone does not say where the engine should fire. That figure is the maker’s, or one proved on a like engine.',
  ],
  articles: ['where-the-piston-is', 'what-a-degree-is-worth', 'finding-top-dead-centre'],
});
