import * as engine from '../causes-engine.ts';
import * as fuel from '../causes-fuel.ts';
import * as spark from '../causes-ignition.ts';
import type { Symptom } from '../types.ts';

export const overheats: Symptom = {
  id: 'overheats',
  title: 'It overheats, or one cylinder runs hotter than the others',
  also: [
    'overheats',
    'runs hot',
    'one cylinder hot',
    'seizes',
    'tightens',
    'nips up',
    'red exhaust pipe',
    'too hot',
    'runs too hot',
    'gets too hot',
  ],
  atOnce:
    'Stop before it seizes. If it tightens, pull the clutch lever (the drive is free) and switch off.',
  first: {
    ask: 'Is it one cylinder only?',
    how: 'Thermometer at the same place of each head, under the plug, a minute after the start. Write the readings side by side.',
    yes: {
      ask: 'Does its slide open before the others?',
      how: 'Drill shanks under the slides at a small opening, engine stopped.',
      yes: fuel.slides,
      no: {
        ask: 'Is its timing at the figure?',
        how: 'Gap, then lamp and indicator, beside the others.',
        no: {
          ...spark.late,
          id: 'timing',
          cause: 'This cylinder fires too early or too late',
          measured: 'out',
        },
        yes: {
          ask: 'Are its main jet and its needle clip like the others’?',
          how: 'Pin in the jet by its own weight; count the grooves from the top.',
          no: fuel.smallJet,
          yes: {
            ask: 'Do its seals and joints hold in the leak test?',
            how: 'Pressure and suction, five minutes each, this cylinder alone.',
            no: fuel.airLeak,
            yes: engine.clearance,
          },
        },
      },
    },
    no: {
      ask: 'Is there oil in the fuel, of the right ratio?',
      how: 'Ask what was mixed. A drop on white paper leaves an oil ring as the petrol goes.',
      no: { ...fuel.oldFuel, cause: 'Too little oil in the fuel, or none' },
      yes: {
        ask: 'Are fins and cowls clean and in place?',
        how: 'Look with a torch between the fins.',
        no: engine.cooling,
        yes: {
          ask: 'Is the timing at its figure at every cylinder?',
          how: 'Late timing burns in the exhaust pipe; early timing heats the crown.',
          no: {
            ...spark.early,
            id: 'timing-all',
            cause: 'The timing of all is off its figure',
            measured: 'out',
          },
          yes: { ...fuel.smallJet, id: 'jets-all' },
        },
      },
    },
  },
};
