import { demoCam } from '../../demo/cam.ts';
import { defineCalculator } from '../../frame/define.ts';
import { compute, gapOf } from './compute.ts';
import { inputs } from './inputs.ts';
import { Picture } from './Picture.tsx';
import { remarks } from './remarks.ts';
import { restsOn } from './rests-on.ts';
import { results } from './results.ts';

export default defineCalculator({
  slug: 'breaker-cam',
  title: 'Points gap, dwell and timing',
  purpose:
    'From the breaker cam and the gap to the dwell, to where the points open, and to how far a change of gap moves the timing.',
  inHand: ['gap', 'dwell', 'from'],
  alsoCalled: [
    'contact breaker',
    'dwell angle',
    'points gap',
    'cam angle',
    'heel wear',
    'dwell per cent',
    'gap changed timing',
    'gap moves the timing',
  ],
  inputs,
  folded: ['For the picture', 'Wear of the heel', 'Trials at several gaps'],
  results,
  restsOn,
  fieldOf: {
    lobes: 'lobes',
    speedRatio: 'speed-ratio',
    lift: 'lift',
    rise: 'rise',
    top: 'top',
    gap: 'gap',
    dwell: 'dwell',
    leverRatio: 'lever',
  },
  compute,
  carry: (choice, option, v, found) => {
    if (choice !== 'from') return [];
    return option === 'gap'
      ? [{ from: 'dwell', to: { gap: gapOf(v) } }]
      : [{ from: 'gap', to: { dwell: found['dwell-angle'] as number } }];
  },
  remarks,
  picture: Picture,
  ready: {
    caption: `What the gap does on an invented cam: one lobe at crank speed, ${demoCam.lift} mm lift, harmonic rise of ${demoCam.rise}°, top ${demoCam.top}°`,
    vary: 'gap',
    over: [0.2, 0.25, 0.3, 0.35, 0.4, 0.45, 0.5, 0.6],
    show: ['dwell-angle', 'dwell-percent', 'opens', 'crank-degrees-per-gap'],
  },
  care: 'Ignition off, plug out: some ten thousand volts.',
  cautions: [
    'Ignition off and plug out while you set the points. With the ignition on and the points opening, the plug lead carries some ten thousand volts: hold nothing of it, and lay the plug on bare metal of the engine, away from petrol and its vapour.',
    'Do not leave the ignition on with the points shut: the coil carries full current and overheats.',
  ],
  limits: [
    'The lobe is taken as alike on both sides and the three flanks are ideal shapes. A real lobe, worn or filed, has its own: where it matters, measure it with the trials, which need no model.',
    'What 0.05 mm is worth is the slope at this very gap. Over a large change the curve bends; compare two gaps instead.',
    'At speed the points open a little late or bounce, and whether they shut at once depends on the spring. None of that is in these figures.',
    'Contacts that burn away widen the gap while the heel narrows it. The wear worked out here is the heel’s alone.',
  ],
  articles: ['gap-dwell-and-timing', 'how-the-points-make-the-spark'],
});
