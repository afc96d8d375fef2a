import * as fuel from '../causes-fuel.ts';
import * as spark from '../causes-ignition.ts';
import type { Symptom } from '../types.ts';

export const idle: Symptom = {
  id: 'will-not-idle',
  title: 'It will not idle',
  also: [
    'will not idle',
    'no idle',
    'stalls at idle',
    'dies when the throttle is shut',
    'wont tick over',
    'will not tick over',
    'tickover',
    'wont idle hot',
    'will not idle when hot',
  ],
  first: {
    ask: 'Do the revs hang, or rise by themselves, when the twistgrip is shut?',
    how: 'Listen as the slides fall. Stop at once if they rise: it begins to run away.',
    yes: {
      ask: 'Does every slide fall on its stop by itself?',
      how: 'Engine stopped: open and let go, bars turned to both sides, and feel each slide click down.',
      no: fuel.slide,
      yes: fuel.airLeak,
    },
    no: {
      ask: 'Does it idle cold, and stall once it is warm?',
      how: 'Let it cool for an hour and try again, with nothing else changed.',
      yes: {
        ask: 'Does the choke come off fully?',
        how: 'Look: flap open, plunger on its seat, tickler up.',
        no: fuel.choke,
        yes: {
          ask: 'Is the spark good while it is hot?',
          how: 'Gloves. Plug in its cap on bare metal, away from the plug holes, fuel shut. Look at once, not when it has cooled.',
          no: spark.hotCoil,
          yes: {
            ...fuel.airLeak,
            id: 'leak-hot',
            measured: undefined,
            cause: 'An air leak that opens as the engine warms',
          },
        },
      },
      no: {
        ask: 'Does it idle with the idle screws a turn further in?',
        how: 'Count the turn, all alike. Write what the slides stand open by: a drill shank under each.',
        yes: {
          ask: 'Do all slides stand open alike?',
          how: 'Drill shanks as gauges under the slides at idle, engine stopped. Count them out again.',
          yes: fuel.airScrew,
          no: fuel.slides,
        },
        no: {
          ask: 'Does turning an air screw half a turn change anything?',
          how: 'Engine warm, one cylinder after the other, half a turn each way, and back to where it was. Where nothing changes the pilot has no say.',
          no: fuel.pilot,
          yes: {
            ask: 'Is the fuel level what it should be in every bowl?',
            how: 'Float height with the tang just touching the needle.',
            no: fuel.float,
            yes: {
              ask: 'Are gap and timing of every cylinder at their figures?',
              how: 'Feeler blades, lamp and indicator. A late cylinder needs more slide.',
              no: spark.late,
              yes: {
                ...fuel.airLeak,
                id: 'leak-small',
                measured: undefined,
                cause: 'A small air leak, which counts most at idle',
              },
            },
          },
        },
      },
    },
  },
};
