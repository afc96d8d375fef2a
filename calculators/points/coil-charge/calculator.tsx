import { demoCam } from '../../demo/cam.ts';
import { demoCoil } from '../../demo/coil.ts';
import { camInputs } from '../cam-inputs.ts';
import { defineCalculator } from '../../frame/define.ts';
import { fixed } from '../../frame/text/format.ts';
import { whoseLimit } from '../../frame/whose-limit.ts';
import { assertSpeedRatio } from '../../maths/ignition/breaker-cam.ts';
import {
  assertDwell,
  assertPrimary,
  assertSpeed,
  ballastForCurrent,
  chargeTime,
  currentAfter,
  finalCurrent,
  meanHeat,
  sparksPerMinute,
  speedAtShare,
  stoppedHeat,
  storedEnergy,
  timeConstant,
} from '../../maths/ignition/coil-charge.ts';
import { Picture } from './Picture.tsx';
import { primaryOf, type Values } from './values.ts';
import { inputs } from './inputs.ts';
import { restsOn } from './rests-on.ts';
import { results } from './results.ts';

export default defineCalculator({
  slug: 'coil-charge',
  title: 'Coil current and spark energy',
  purpose:
    'For a coil fed from a battery, not by a magneto: the current the points break at each speed, the energy stored for the spark, and the speed at which it runs short.',
  inHand: ['rpm'],
  alsoCalled: [
    'dwell time',
    'primary current',
    'ballast resistor',
    'spark energy',
    'coil saturation',
    'magneto',
    'coil gets hot',
    'hot coil',
  ],
  forBattery: true,
  inputs: { ...inputs, ...camInputs },
  results,
  restsOn,
  tables: {
    speeds: {
      caption: 'The same coil at each of the speeds',
      rowHeading: 'Speed',
      row: (values, index) => `${String((values.speeds as readonly number[])[index - 1])} rpm`,
    },
  },
  fieldOf: {
    volts: 'volts',
    resistance: 'resistance',
    ballast: 'ballast',
    inductance: 'inductance',
    dwellAngle: 'dwell-angle',
    lobes: 'lobes',
    speedRatio: 'speed-ratio',
    rpm: 'rpm',
    share: 'share',
    limit: 'current-limit',
  },
  compute: (v) => {
    const primary = primaryOf(v);
    const dwell = v['dwell-angle'];
    const ratio = v['speed-ratio'];
    assertPrimary(primary);
    assertSpeedRatio(ratio);
    assertDwell(dwell, v.lobes);
    [v.rpm, ...v.speeds].forEach(assertSpeed);
    const time = chargeTime(dwell, ratio, v.rpm);
    const current = currentAfter(primary, time);
    const full = finalCurrent(primary);
    const times = v.speeds.map((rpm) => chargeTime(dwell, ratio, rpm));
    const currents = times.map((each) => currentAfter(primary, each));
    return {
      'charge-time': time,
      current,
      energy: storedEnergy(primary, current),
      'current-percent': (100 * current) / full,
      'speed-at-share': speedAtShare(primary, dwell, ratio, v.share / 100),
      'final-current': full,
      'time-constant': timeConstant(primary),
      'ballast-for': ballastForCurrent(primary, v['current-limit']),
      sparks: sparksPerMinute(v.lobes, ratio, v.rpm),
      heat: meanHeat(primary, time, chargeTime(360 / v.lobes, ratio, v.rpm)),
      'stopped-heat': stoppedHeat(primary),
      'time-at': times,
      'current-at': currents,
      'energy-at': currents.map((each) => storedEnergy(primary, each)),
    };
  },
  remarks: (v: Values, computed, known) => [
    {
      about: 'up to what speed the current holds',
      say: () => {
        const speed = computed['speed-at-share'] as number;
        const full = computed['final-current'] as number;
        return `Up to about ${fixed(Number(speed.toPrecision(2)), 0)} rpm the current still reaches ${fixed(v.share, 0)} per cent${known.isAssumed('share') ? ', the share assumed here,' : ''} of the ${fixed(full, 1)} A it would settle at; above that it falls short.`;
      },
    },
    {
      about: 'whether the standing current is too large',
      say: () => {
        const full = computed['final-current'] as number;
        const ballast = computed['ballast-for'] as number;
        return full > v['current-limit']
          ? `Standing with the points shut it would draw ${fixed(full, 1)} A, more than the ${fixed(v['current-limit'], 1)} A ${whoseLimit(known, 'current-limit')}. A resistor of ${fixed(ballast, 1)} Ω in series would hold it to that.`
          : undefined;
      },
    },
  ],
  picture: Picture,
  ready: {
    caption: `An invented ${demoCoil.volts} V coil of ${demoCoil.resistance} Ω and ${demoCoil.inductance} mH, ${demoCam.dwell}° dwell of a single lobe on the crankshaft`,
    vary: 'rpm',
    over: [500, 1000, 2000, 3000, 4000, 5000, 6000, 7000, 8000, 10000],
    show: ['charge-time', 'current', 'energy', 'current-percent'],
  },
  care: 'Ignition off: some ten thousand volts at the lead.',
  cautions: [
    'The plug lead carries some ten thousand volts and the wire to the points a few hundred as they open. Work with the ignition off; people with a pacemaker keep away from a running ignition.',
    'A ballast resistor and a coil left on with the points shut get hot enough to burn skin and wiring. Mount the resistor on metal in the open, away from petrol.',
  ],
  limits: [
    'The inductance is taken as constant. An iron core near its limit has less, so that the last of the current comes sooner and brings less energy than is worked out here.',
    'It holds for a coil fed from a battery. A flywheel magneto makes its own current from a passing magnet: its coils are judged by their resistance and their spark.',
    'The voltage is that at the coil while current flows. A generator at idle, a weak battery and old wiring leave less than the label.',
    'Not all of the stored energy reaches the plug: the condenser, the windings and the rotor gap or lead take a good part.',
  ],
  articles: ['coils-and-condensers', 'how-the-points-make-the-spark', 'battery-to-plug'],
});
