import { demoEngine } from '../../demo/engine.ts';
import { engineFields } from '../../position/engine-inputs.ts';
import { defineCalculator } from '../../frame/define.ts';
import { showInput } from '../../frame/text/format.ts';
import { compute, marksOf, type Values } from './compute.ts';
import { downloads } from './files.ts';
import { folded, inputs } from './inputs.ts';
import { Picture } from './Picture.tsx';
import { remarks } from './remarks.ts';
import { restsOn } from './rests-on.ts';
import { results } from './results.ts';

export default defineCalculator({
  slug: 'degree-disc',
  title: 'Degree disc and rim tape',
  purpose:
    'Prints a degree disc and a tape for your rotor’s rim at true scale, with your own piston positions marked on them.',
  inHand: ['marks', 'outside'],
  alsoCalled: [
    'degree wheel',
    'timing disc',
    'protractor',
    'timing tape',
    'flywheel marks',
    'set timing without a dial gauge',
    'timing without an indicator',
  ],
  inputs,
  folded,
  results,
  restsOn,
  tables: {
    marks: {
      caption: 'Where the marks stand',
      rowHeading: 'Piston',
      row: (values, index, _, { lengths }) => {
        const mark = marksOf(values as unknown as Values)[index - 1]!;
        return `${showInput(mark.travel, 'mm', lengths, 0.01)} ${mark.before ? 'before' : 'after'} the top`;
      },
    },
  },
  fieldOf: {
    ...engineFields,
    outsideDiameter: 'outside',
    insideDiameter: 'inside',
    offCentre: 'off-centre',
    diameter: 'rotor',
    thickness: 'thickness',
    barAcross: 'bar-across',
    barUp: 'bar-up',
    marks: 'marks',
  },
  refusedBy: { 'travel-beyond-stroke': ['stroke', 'rod', 'offset'] },
  compute,
  remarks,
  picture: Picture,
  ready: {
    caption: 'Length of a tape 0.2 mm thick once round a rotor, and of one degree on it',
    vary: 'rotor',
    over: [70, 80, 90, 95, 100, 110, 120, 140, 160, 180, 200],
    show: ['tape-length', 'tape-per-degree'],
  },
  downloads,
  care: 'Turn by hand only: plugs out, ignition off.',
  cautions: [
    'A paper disc is for turning by hand only. Plugs out, ignition and fuel off; take it off before the engine is started, or it comes off by itself.',
  ],
  limits: [
    'The marks are exact geometry for the stroke, rod and offset given. A mark is no better than the zero of the disc: half a degree of error there is half a degree everywhere.',
    'Paper grows and shrinks with damp, by up to a few parts in a thousand (common practice). A disc hardly minds; a tape shows it where its ends meet.',
    `The figures shown first are for the invented demo engine, stroke ${String(demoEngine.stroke)} mm and rod ${String(demoEngine.rod)} mm. Enter your own before you print.`,
  ],
  articles: ['finding-top-dead-centre', 'what-a-degree-is-worth', 'making-a-breaker-plate'],
});
