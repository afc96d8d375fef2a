import { defineCalculator } from '../../frame/define.ts';
import { compute } from './compute.ts';
import { groups, inputs } from './inputs.ts';
import { Picture } from './Picture.tsx';
import { remarks } from './remarks.ts';
import { restsOn } from './rests-on.ts';
import { results } from './results.ts';

export default defineCalculator({
  slug: 'slide-balance',
  title: 'Balancing throttle slides',
  purpose:
    'The turns of each adjuster that bring several slides to one opening with the least work, and what becomes of idle and free play.',
  inHand: ['opening', 'vacuum'],
  alsoCalled: [
    'synchronising',
    'carburettor balance',
    'vacuum gauges',
    'throttle cables',
    'slides',
  ],
  inputs,
  folded: [groups.cable],
  results,
  restsOn,
  tables: {
    slides: {
      caption: 'What to turn at each slide',
      rowHeading: 'Slide',
      row: (_, index) => String(index),
    },
  },
  fieldOf: {
    slides: 'slides',
    thread: 'thread',
    perTurn: 'per-turn',
  },
  compute,
  remarks,
  picture: Picture,
  care: 'A slide held open runs the engine away.',
  cautions: [
    'Throttle open and slides off their stops: engine stopped, and the ignition off or the cut-out down, while drill shanks are under the slides. Take every shank out, and count them, before the engine is turned.',
    'By gauges the engine runs: only in the open air, since the exhaust holds carbon monoxide, which kills unseen; wear ear protection; keep hands, sleeves and hair off everything that turns; have a fan on the cylinders and stop before they are hot.',
    'Before the first start, see that every slide drops shut with a click when the grip is let go, with the bars at full lock to both sides, and prove the cut-out. A slide held open runs the engine away.',
  ],
  limits: [
    'A slide is taken to move as far as its adjuster. Cables stretch and outer cables settle: open and shut the grip ten times, and measure again.',
    'Equal openings give equal air only through equal bores, slides and cylinders. Gauges see the cylinder too: one with a leak or a worn piston shows less vacuum at the same opening.',
    'Readings of vacuum are taken to fall evenly with the turns, which holds for small changes. Go by halves and read again.',
  ],
  articles: ['opening-all-slides-together', 'which-circuit-at-which-throttle'],
});
