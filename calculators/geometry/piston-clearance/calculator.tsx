import { defineCalculator } from '../../frame/define.ts';
import type { LengthDisplay } from '../../frame/text/units.ts';
import { showFixed } from '../../frame/text/format.ts';
import { compute } from './compute.ts';
import { folded, inputs } from './inputs.ts';
import { Picture } from './Picture.tsx';
import { remarks } from './remarks.ts';
import { restsOn } from './rests-on.ts';
import { results } from './results.ts';

const down = (height: number, lengths: LengthDisplay): string =>
  `${showFixed(height, 'mm', 0, lengths)} down`;

export default defineCalculator({
  slug: 'piston-clearance',
  title: 'Piston and ring clearance, cold and hot',
  purpose:
    'From bore and piston as measured to the clearance cold and hot, the ring gap, how round and straight the bore is, and the next oversize.',
  inHand: ['piston', 'piston-temperature'],
  alsoCalled: [
    'running clearance',
    'piston fit',
    'skirt clearance',
    'ring end gap',
    'rebore',
    'oversize',
    'taper',
    'ovality',
    'out of round',
    'seizure',
    'how tight is the piston',
  ],
  inputs,
  folded,
  results,
  restsOn,
  tables: {
    levels: {
      caption: 'The bore height by height',
      rowHeading: 'Below the deck',
      row: (values, index, _, { lengths }) =>
        down((values.height as readonly number[])[index - 1]!, lengths),
    },
  },
  fieldOf: {
    bore: 'bore',
    piston: 'piston',
    ringGap: 'ring-gap',
    temperature: 'piston-temperature',
    expansion: 'piston-expansion',
    standard: 'standard',
    step: 'oversize-step',
    cleanUp: 'clean-up',
  },
  compute,
  remarks,
  picture: Picture,
  ready: {
    caption:
      'Clearance left hot, aluminium piston in an iron bore of 52 mm with 0.065 mm cold, by the temperature of the piston; bore at 110 °C',
    vary: 'piston-temperature',
    over: [20, 80, 100, 110, 120, 130, 140, 160, 180],
    show: ['hot'],
  },
  care: 'A piston that seizes locks the wheel.',
  cautions: [
    'A piston that seizes locks the wheel without warning. After any new fit run in gently, hand on the clutch, and stop at the first loss of power or change of note.',
    'Barrel, piston and exhaust stay hot enough to burn for half an hour. Heat a piston for its gudgeon pin with warm oil or a heat gun, never with a flame beside petrol.',
    'Honing and ring ends throw sharp grit: eye protection, no loose sleeves, and wash the barrel with hot soapy water until a white cloth stays white.',
  ],
  limits: [
    'A piston is barrel-shaped, oval, and hotter at the crown. One temperature and one diameter stand for the skirt only; land and crown need several times the room, which the maker has turned off them.',
    'Running temperatures are seldom known within 10 °C, and that alone is worth a fifth of a usual clearance. Take the hot figure to compare metals and fits, not as a promise.',
    'A liner in an aluminium barrel grows by something between the two metals. A barrel that is pulled out of round by its studs is measured with a plate bolted on as tight as the head.',
    'Expansions of iron and aluminium from a handbook (Callister and Rethwisch, 3rd edition, table B.6), of piston alloy from a piston maker’s data, of other pistons and all limits common practice. The maker’s figure rules.',
  ],
  articles: ['clearances', 'proving-a-mixed-engine'],
});
