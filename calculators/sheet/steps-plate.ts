import { PLATE_OFF, sealBehind } from './steps-reasons.ts';
import type { Step } from './steps.ts';

/** The breaker plate: its places, its insulation, and how it sits. */
export const plateSteps = {
  plate: {
    stage: 'plate',
    title: 'Prove the breaker plate',
    why: 'Each set must stand where its cylinder fires. What the holes are off, the slots have to take up, and a slot reaches only a few degrees.',
    how: [
      'Say in the sheet where each set belongs, counted from set 1 the way the cam turns. Only an engine whose pistons come to the top one after another, evenly, has them evenly round the plate; pistons that come up together are fired by one set.',
      'A vee, or crank pins at odd angles: set the disc, turn forwards from the top of cylinder 1 to the top of each other one, and take those degrees; half of them on a half-speed shaft.',
      'Measure from one point of each set (its fixing hole, or the tip of its heel) to the same point of the next, the way the cam turns, round the whole plate.',
    ],
    tool: 'Dividing head or rotary table, or dividers and the chord from the drawing',
    caution:
      'Drilling sheet throws sharp swarf and can snatch the plate round: clamp it, wear eye protection, no gloves at the drill, and take off the burrs.',
    reading: {
      label: 'From the set before, the way the cam turns',
      per: 'Set',
      unit: 'deg',
      min: 0,
      max: 360,
      why: 'sets share one turn of the plate',
      step: 0.1,
      judging: 'spacing',
      tolerance: 'plate-tolerance',
      tooHigh: 'Move this set in its slot, against the way the cam turns (earlier), by',
      tooLow: 'Move this set in its slot, the way the cam turns (later), by',
      moves:
        'A set that is moved meets the lobe elsewhere: its insulation, its gap, and then its timing, are to be seen to after it. Where the slot does not reach, drill the hole anew.',
    },
    after: {},
    waitsFor: ['leak', 'suction'],
    fallsAway: {
      by: 'cylinders',
      when: (n, { sets }) => n === 1 || sets === 1,
      why: 'one set has no other to stand to',
    },
    calculators: ['firing-order', 'plate-layout', 'degree-disc'],
    articles: ['making-a-breaker-plate', 'gaskets-and-tags'],
  },
  insulation: {
    stage: 'plate',
    title: 'Prove the insulation of each set',
    why: 'In use the contacts see several hundred volts as they open. What an ohmmeter calls open leaks at that voltage, and takes the spark with it.',
    how: [
      'Before the plate goes in: coil, condenser and every lead off the set.',
      'Ohmmeter first: contacts shut, nothing to be seen from terminal to plate; card between the contacts, no connection. It finds only a dead short.',
      'Then the insulation tester, card still between: terminal to plate at 500 V, or at 1000 V where you have it.',
      'Shows it more than its scale holds, write the end of the scale.',
    ],
    tool: 'Insulation tester of 500 V, ohmmeter, dry card',
    caution:
      'The tester gives a shock. Both clips on, hands away, and only then press. A condenser left on would stay charged.',
    reading: {
      label: 'Insulation',
      per: 'Set',
      unit: 'Mohm',
      min: 0,
      max: 100_000,
      why: 'no tester of this kind reads higher',
      step: 1,
      judging: 'at-least',
      target: 'insulation',
      tooHigh: '',
      tooLow:
        'Dry and clean the set, look for a bent tag, a wire that chafes, a cracked bush or a washer left out, and test again. It shows only',
      moves:
        'A set that was apart goes back a little different, and the plate with it: how it sits, its gap and its timing after it.',
    },
    after: {
      plate: 'A set that was moved has had its washers, tag and wire off.',
    },
    calculators: [],
    articles: ['making-a-breaker-plate'],
  },
  'plate-fit': {
    stage: 'plate',
    title: 'Prove that the plate sits true',
    why: 'A plate that stands off the middle, or rocks in its seat, opens each set at another place every time it is taken out.',
    how: [
      'Plate in, its screws tight. Indicator held by the shaft or rotor, so that it goes round; its plunger on the plate’s rim or in its bore. Highest less lowest is the run-out.',
      'Take the plate out, put it back, measure again, and write the larger.',
      'It turns from stop to stop, clears cam, rotor and arms, and its wires have slack to follow it.',
      'Ohmmeter from plate to crankcase, its own leads taken off: nothing to be seen. Paint or a gasket below it insulates.',
    ],
    tool: 'Dial indicator on the shaft, ohmmeter',
    caution: 'Ignition off, plugs out, turned by hand, forwards.',
    reading: {
      label: 'Run-out of the plate',
      per: 'Plate',
      once: true,
      unit: 'mm',
      min: 0,
      max: 5,
      why: 'a plate that is further out does not lie in its seat',
      step: 0.01,
      judging: 'at-most',
      target: 'plate-run-out',
      tooHigh: 'Build up its rim, pin it in its place, or make another: it runs out by',
      tooLow: '',
      moves: 'A plate that sits elsewhere moves every set: gap and timing after it.',
    },
    after: {
      ...PLATE_OFF,
      leak: sealBehind,
      suction: sealBehind,
      plate: 'The plate has been out for it.',
      insulation: 'The plate has been out for it.',
    },
    calculators: ['plate-layout'],
    articles: ['making-a-breaker-plate'],
  },
} as const satisfies Record<string, Step>;
