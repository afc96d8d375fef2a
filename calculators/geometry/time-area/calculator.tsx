import { demoBarrel } from '../../demo/barrel.ts';
import { demoEngine } from '../../demo/engine.ts';
import { engineFields } from '../../position/engine-inputs.ts';
import { defineCalculator } from '../../frame/define.ts';
import { compute } from './compute.ts';
import { inputs } from './inputs.ts';
import { Picture } from './Picture.tsx';
import { restsOn } from './rests-on.ts';
import { results } from './results.ts';

export default defineCalculator({
  slug: 'time-area',
  title: 'Time-area of the ports',
  purpose:
    'How much port is open for how long at a speed, for each cubic centimetre: to compare an engine with a like one, not to predict what it makes.',
  inHand: ['rpm'],
  alsoCalled: ['specific time-area', 'angle-area', 'port area', 'blowdown time-area'],
  inputs,
  results,
  restsOn,
  fieldOf: {
    ...engineFields,
    bore: 'bore',
    deckClearance: 'deck',
    bottomEdge: 'inlet-edge',
    skirtLength: 'skirt',
    discOpens: 'disc-opens',
    discCloses: 'disc-closes',
    area: 'disc-area',
    edge: 'disc-edge',
    rpm: 'rpm',
  },
  compute,
  remarks: () => [
    'A comparison between like engines and not a prediction. Set it beside the figures of an engine of the same kind that runs well, worked out here in the same way.',
  ],
  picture: Picture,
  ready: {
    caption: `Specific time-areas against speed, invented demo engine: bore ${demoBarrel.bore} mm, stroke ${demoEngine.stroke} mm`,
    vary: 'rpm',
    over: [3000, 4000, 5000, 5500, 6000, 6500, 7000, 8000],
    show: ['exhaust-time-area', 'blowdown-time-area', 'transfer-time-area'],
  },
  care: 'Metal cut from a port cannot be put back.',
  limits: [
    'It sums the open area over the time, as G. P. Blair does (The Basic Design of Two-Stroke Engines, SAE R-104, 1990, chapter 6; method recalled from memory). How gas really flows goes by pressure, by the shape of the passages and by the exhaust pipe, none of which is in it.',
    'The window is taken as flat, with straight sides and rounded corners, seen square to the bore. A passage that meets the bore at a slant offers less; leave it out alike on both engines that you compare.',
    'It holds for one cylinder. A reed is not in it. The edge of a disc is taken to uncover its window evenly, which is near enough where both are cut along the radius.',
  ],
  articles: ['ports-by-the-degree'],
});
