import { demoBarrel } from '../../demo/barrel.ts';
import { demoEngine } from '../../demo/engine.ts';
import { engineFields } from '../../position/engine-inputs.ts';
import { defineCalculator } from '../../frame/define.ts';
import { compute } from './compute.ts';
import { folded, inputs, portName } from './inputs.ts';
import { Picture } from './Picture.tsx';
import { remarks } from './remarks.ts';
import { restsOn } from './rests-on.ts';
import { results } from './results.ts';

const port = (_: unknown, index: number): string => portName(index);

export default defineCalculator({
  slug: 'port-timing',
  title: 'Port timing',
  purpose:
    'From the heights of the ports to when they open and for how long, and back from a duration to a height.',
  inHand: ['port', 'crank'],
  alsoCalled: [
    'exhaust duration',
    'transfer duration',
    'blowdown',
    'inlet timing',
    'raising the barrel',
    'base gasket',
    'disc valve',
    'exhaust port timing',
    'port heights',
  ],
  inputs,
  folded,
  results,
  restsOn,
  tables: {
    ports: { caption: 'Ports uncovered by the crown', rowHeading: 'Port', row: port },
    after: { caption: 'The same ports after the change', rowHeading: 'Port', row: port },
    cylinders: {
      caption: 'Durations side by side',
      rowHeading: 'Cylinder',
      row: (_, index) => String(index),
    },
  },
  fieldOf: {
    ...engineFields,
    deckClearance: 'deck',
    topEdge: 'port',
    transfers: 'port',
    bottomEdge: 'inlet-edge',
    skirtLength: 'skirt',
    discOpens: 'disc-opens',
    discCloses: 'disc-closes',
    duration: 'wanted-duration',
    crankAngle: 'crank',
  },
  compute,
  remarks,
  picture: Picture,
  ready: {
    caption: `Height of the exhaust’s top edge for a duration, invented demo engine: stroke ${demoEngine.stroke} mm, rod ${demoEngine.rod} mm, crown ${demoBarrel.deck} mm below the deck at the top`,
    vary: 'wanted-duration',
    over: [110, 115, 120, 125, 130, 140, 150, 155, 160, 165, 170, 175, 180, 185],
    show: ['edge-for'],
    set: { 'wanted-port': 'exhaust' },
  },
  care: 'Metal cut from a port cannot be put back.',
  cautions: [
    'Metal cut from a port cannot be put back. Change the base gasket first, in small steps, and measure again: the squish as well, since a thinner one brings the head down to the piston by as much.',
    'Swarf from porting wrecks bearings and rings: take the barrel off, wash it in hot soapy water until a white cloth stays white, dry and oil it at once. Wear eye protection.',
    'A port cut wider or squarer can let a ring spring out and break. Chamfer every edge, and keep to the width that the maker allows.',
  ],
  limits: [
    'It is exact geometry of edges. A chamfer, a worn crown edge or a ring land below the crown changes what really opens; take the edge at which light appears.',
    'Everything hangs on the edges: the ± of each result says what 0.1 mm there is worth in your engine.',
    'It says when ports open and not whether that suits the engine: compare with the maker’s figures or with a like engine that runs well.',
  ],
  articles: ['ports-by-the-degree', 'proving-a-mixed-engine'],
});
