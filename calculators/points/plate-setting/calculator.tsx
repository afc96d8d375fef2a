import { engineFields } from '../../position/engine-inputs.ts';
import { defineCalculator } from '../../frame/define.ts';
import { toldAs } from './carry.ts';
import { compute, type Computed, type Values } from './compute.ts';
import { inputs } from './inputs.ts';
import { Picture } from './Picture.tsx';
import { leftAlone, remarks, verdict } from './remarks.ts';
import { restsOn } from './rests-on.ts';
import { results } from './results.ts';

export default defineCalculator({
  slug: 'plate-setting',
  title: 'Setting several cylinders from one plate',
  purpose:
    'From where each cylinder fires to the one turn of the plate that suits all best, and to what is left for each set to move in its slot.',
  inHand: ['fired', 'fired-angle'],
  alsoCalled: ['points plate', 'timing each cylinder', 'twin', 'triple', 'several sets of points'],
  inputs,
  results,
  restsOn,
  tables: {
    cylinders: {
      caption: 'Each cylinder before and after the turn of the plate',
      rowHeading: 'Cylinder',
      row: (_, index) => `Cylinder ${String(index)}`,
      verdict: {
        heading: 'Within tolerance',
        say: (values, computed, index, _, more) =>
          verdict(values as unknown as Values, computed as unknown as Computed, index, more),
      },
    },
  },
  fieldOf: { ...engineFields, speedRatio: 'speed-ratio', cylinders: 'cylinders' },
  refusedBy: { 'travel-beyond-stroke': ['stroke', 'rod', 'offset'] },
  compute,
  noOrder: (name, v, computed) => (name === 'plate-move' ? leftAlone(v, computed) : undefined),
  carry: (choice, option, v) => (choice === 'as' ? toldAs(option, v) : []),
  remarks,
  picture: Picture,
  ready: {
    caption:
      'How far a line scribed across plate and case parts for 1° of timing, cam on the crankshaft, by its distance from the middle of the shaft',
    vary: 'plate-radius',
    over: [20, 25, 30, 35, 40, 45, 50, 60],
    show: ['plate-turn', 'plate-edge'],
    set: { cylinders: '1', as: 'angle', 'target-angle': '24', 'fired-angle-1': '23' },
  },
  care: 'Plugs out and earthed, ignition and fuel off.',
  cautions: [
    'Ignition and fuel off, plugs out, while you turn the engine by hand. With the ignition on for a lamp at the points, a plug lead not earthed gives a shock: every plug in its cap, earthed on the engine away from the plug holes. Contacts see several hundred volts as they open: use a meter rated for 1000 V, and keep fingers off.',
    'An engine set too early kicks back on the starter hard enough to break a wrist or an ankle. Check every cylinder once more before the first kick.',
  ],
  limits: [
    'The turn is exact for the worst error (the middle between earliest and latest). It does not know whether one cylinder runs hotter than another; if you must err, err late.',
    'Every set is taken to keep its gap when it moves in its slot. In truth the slot is seldom quite round the shaft, so that the gap changes: measure again.',
    'It says how to reach the timing you ask for, not what timing the engine wants. That is the maker’s figure, or one proved on a like engine.',
  ],
  articles: ['setting-several-cylinders', 'gap-dwell-and-timing'],
});
