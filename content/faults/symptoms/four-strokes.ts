import * as engine from '../causes-engine.ts';
import * as fuel from '../causes-fuel.ts';
import * as spark from '../causes-ignition.ts';
import type { Symptom } from '../types.ts';

export const fourStrokes: Symptom = {
  id: 'four-strokes',
  title: 'It four-strokes: it fires at every other turn',
  also: ['four strokes', 'four-stroking', 'fires every other turn', 'runs rich', 'burbles'],
  first: {
    ask: 'Does it do so only at small openings or without load?',
    how: 'Tape marks on the twistgrip: note the opening at which it begins and ends, engine warm.',
    yes: {
      ask: 'Does it clear by a quarter of the opening under load?',
      how: 'Outdoors or on the road by its rules, in gear, a steady pull.',
      yes: engine.usual,
      no: {
        ask: 'Does turning the air screws out half a turn help?',
        how: 'Half a turn further out on each, counted. Out is leaner where the screw meters air.',
        yes: fuel.airScrew,
        no: fuel.float,
      },
    },
    no: {
      ask: 'Is the choke fully off at every carburettor?',
      how: 'Look and feel: flap open, plunger down on its seat, tickler up.',
      no: fuel.choke,
      yes: {
        ask: 'Is it the same on every cylinder?',
        how: 'Plugs side by side after a pull that is cut off cleanly: all sooty, or one.',
        no: {
          ask: 'Is the float height of that carburettor at its figure?',
          how: 'Tang just touching the needle, beside the others.',
          no: { ...fuel.float, id: 'float-one' },
          yes: { ...spark.plug, cause: 'Plug or spark of that cylinder drops every other charge' },
        },
        yes: {
          ask: 'Is it between a quarter and three quarters?',
          how: 'By the tape marks, under load.',
          yes: fuel.clip,
          no: {
            ask: 'Is the air filter clean?',
            how: 'Hold it to the light.',
            no: fuel.airFilter,
            yes: fuel.largeJet,
          },
        },
      },
    },
  },
};
