import { demoBarrel } from '../../demo/barrel.ts';
import { demoEngine } from '../../demo/engine.ts';
import { engineFields } from '../../position/engine-inputs.ts';
import { defineCalculator } from '../../frame/define.ts';
import { compute } from './compute.ts';
import { folded, inputs } from './inputs.ts';
import { Picture } from './Picture.tsx';
import { remarks } from './remarks.ts';
import { restsOn } from './rests-on.ts';
import { results } from './results.ts';

export default defineCalculator({
  slug: 'compression',
  title: 'Squish and compression',
  purpose:
    'From a burette, a gasket and a depth gauge to both compression ratios and the squish clearance, and to the head or skim for a wanted ratio.',
  inHand: ['head-volume', 'whole-volume'],
  alsoCalled: [
    'compression ratio',
    'trapped ratio',
    'cc the head',
    'head volume',
    'displacement',
    'squish clearance',
    'solder',
    'skim',
  ],
  inputs,
  folded,
  results,
  restsOn,
  tables: {
    cylinders: {
      caption: 'Ratios side by side',
      rowHeading: 'Cylinder',
      row: (_, index) => String(index),
    },
  },
  fieldOf: {
    ...engineFields,
    bore: 'bore',
    exhaustOpens: 'exhaust-opens',
    headVolume: 'head-volume',
    liquid: 'head-volume',
    plugHole: 'plug-hole',
    threadDiameter: 'plug-thread',
    pitch: 'plug-pitch',
    depth: 'plug-reach',
    gasketThickness: 'gasket',
    gasketBore: 'gasket-bore',
    deckClearance: 'deck',
    domeVolume: 'dome',
    bandDepth: 'band-depth',
    wantedRatio: 'wanted-ratio',
    faceDiameter: 'bowl-mouth',
  },
  refusedBy: { 'plug-hole': ['plug-hole', 'plug-thread', 'plug-pitch', 'plug-reach'] },
  compute,
  remarks,
  picture: Picture,
  ready: {
    caption: `Ratios for the volume of the head, invented demo engine: bore ${demoBarrel.bore} mm, stroke ${demoEngine.stroke} mm, exhaust opening ${demoBarrel.exhaustOpens}° after the top`,
    vary: 'head-volume',
    over: [6, 7, 8, 8.5, 9, 9.5, 10, 11, 12, 14],
    show: ['ratio', 'trapped-ratio', 'clearance'],
  },
  care: 'Petrol and paraffin vapour burns: no flame or spark.',
  cautions: [
    'Petrol and paraffin used to wash or to measure burn, and their vapour spreads along the floor: work outdoors or with the doors open, no flame, no heater, no switch that sparks.',
    'Turn the engine by hand and gently for every check of clearance, plug out. What meets at a hand’s push breaks at speed.',
    'More compression than the fuel and the cooling bear brings knocking, a holed piston and a seized engine. Keep to the maker’s figure; where there is none, begin low.',
  ],
  limits: [
    'Volumes are exact for round bores and gaskets. Liquid clinging to the glass, a bubble under the plate and a gasket squeezed unevenly are your ±.',
    'The squish from heights takes the band and the crown’s edge as parallel and says nothing of the rod’s stretch or the play in the bearings, which close the gap at speed.',
    'Neither ratio says what pressure the engine makes: that goes by ports, exhaust and speed as well. A gauge at kicking speed compares cylinders and nothing more.',
  ],
  articles: ['squish-and-compression', 'proving-a-mixed-engine'],
});
