import { defineCalculator } from '../../frame/define.ts';
import { inputDigits } from '../../frame/text/format.ts';
import { metric } from '../../frame/text/prose.ts';
import { STANDARD_WIRES } from '../../maths/wiring/wire.ts';
import { camInputs } from '../cam-inputs.ts';
import { compute, SIDES, type Values } from './compute.ts';
import { groups, inputs } from './inputs.ts';
import { Picture } from './Picture.tsx';
import { ofSide, ofSize, remarks } from './remarks.ts';
import { restsOn } from './rests-on.ts';
import { results } from './results.ts';

export default defineCalculator({
  slug: 'wiring',
  title: 'Wiring, fuse and battery',
  purpose:
    'For coils fed from a battery, not by a magneto: volts lost on the way, fuse, smallest wire, current of all coils, and how long a battery lasts.',
  alsoCalled: [
    'voltage drop',
    'wire size',
    'cable size',
    'fuse rating',
    'battery life',
    'total loss ignition',
    'six volts',
    'wiring diagram',
    'Peukert',
    'magneto',
    'battery goes flat',
    'battery drains',
    'fuse size',
    'how long a battery lasts',
  ],
  forBattery: true,
  inputs: { ...inputs, ...camInputs },
  folded: [groups.battery, groups.limits],
  results,
  restsOn,
  tables: {
    sizes: {
      caption: 'Standard wires at their greatest resistance (pure copper has less)',
      rowHeading: 'Wire',
      row: (_, index) => `${inputDigits(STANDARD_WIRES[index - 1]!.area, 'wire')} mm²`,
      verdict: {
        heading: 'Verdict',
        say: (values, _, index) => ofSize(values as unknown as Values, index),
      },
    },
    sides: {
      caption: 'The same machine with 6 V and with 12 V coils of the same spark',
      rowHeading: 'Battery',
      row: (_, index) => `${String(SIDES[index - 1])} V`,
      verdict: {
        heading: 'Fit',
        say: (values, _, index) => ofSide(values as unknown as Values, index),
      },
    },
  },
  fieldOf: {
    volts: 'volts',
    resistance: 'resistance',
    ballast: 'ballast',
    inductance: 'inductance',
    speedRatio: 'speed-ratio',
    rpm: 'rpm',
    limit: 'current-limit',
    length: 'length',
    area: 'area',
    temperature: 'temperature',
    contacts: 'contacts',
    current: 'current',
    others: 'others',
    coils: 'coils',
    loss: 'loss',
    capacity: 'capacity',
    ratedHours: 'rated-hours',
    exponent: 'peukert',
    load: 'fuse-load',
  },
  compute,
  remarks,
  picture: Picture,
  ready: {
    caption:
      'Volts lost in 3.2 m of wire by its copper, with three coils of 4 Ω at 12 V and 30 mΩ of contacts (invented engine)',
    vary: 'area',
    over: STANDARD_WIRES.map(({ area }) => area),
    show: ['drop', 'drop-percent', 'at-load', 'energy-left'],
  },
  care: 'Fuse at the battery; no spark near it.',
  cautions: [
    'Never leave the ignition on with the engine still: a coil whose points are shut takes its full current, cooks, and can burst or start a fire. Its points burn as well.',
    'Fuse beside the battery, within a hand’s breadth of its live post. Whatever wire lies before the fuse has no guard: a short there sets fire to it, and to the petrol above it. Never fit a larger fuse, or foil, to cure one that blows.',
    'A battery on charge gives off hydrogen, which any spark explodes; it throws acid about. No flame, ventilate, glasses on. Undo the earth lead first and do it up last, rings and watch off, spanner clear of the frame. Acid in the eye: rinse with water for many minutes, then a doctor.',
    'High tension when the points open: some tens of kilovolts at plug, lead and coil, and some hundreds at the points. Ignition off before you touch them. Whoever wears a pacemaker keeps away.',
    'No work on wires with petrol open nearby: a spark at a terminal is enough.',
  ],
  limits: [
    'Steady currents and sound parts. The loss is that of the moment when all points are shut together; running, fewer are shut at once and less is lost, so that the energy shown is the least.',
    'A battery that sags, or is charged to 14 V, gives other figures.',
    'Currents at idle and at the speed are at full voltage and let the iron of the coil be what it is at small currents; near its limit the iron makes the current rise faster.',
    `Wires bear the current of the tables in free air at 30 °C. In a tight loom beside a hot engine they bear less: one size more is common practice there. Wires of ${metric(0.5)}² break by shaking: common practice is ${metric(1)}² and more outside of a loom.`,
    'Peukert’s rule is a rule: it holds for a whole discharge at one current, at about 20 °C, of a sound lead battery. A cold or old one gives less.',
    'The maker’s diagram and the law of the road come first where there are any.',
  ],
  articles: ['battery-to-plug', 'coils-and-condensers', 'how-the-points-make-the-spark'],
});
