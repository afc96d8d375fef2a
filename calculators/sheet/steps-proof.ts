import { barrelOff, CASE_OPENED } from './steps-reasons.ts';
import type { Step } from './steps.ts';

const anotherRod = {
  ...CASE_OPENED,
  'rod-play': 'Another rod may be longer or shorter, and the barrel goes back on its gasket.',
};

/** Clearances, squish, volume and ports: what a mixed engine has to prove before it is fired. */
export const proofSteps = {
  clearance: {
    stage: 'geometry',
    title: 'Measure the piston clearance',
    why: 'Too little and the piston seizes as it grows with the heat; too much and it slaps, rocks and breaks its skirt. Piston and barrel of mixed parts were never measured together.',
    how: [
      'Measure the piston where its skirt is widest, square to the pin. Measure the bore at three heights, two ways: the least counts. The difference is the clearance.',
      'Both at the same temperature, about 20 °C.',
    ],
    tool: 'Micrometer, bore gauge',
    reading: {
      label: 'Clearance on the diameter',
      per: 'Cylinder',
      unit: 'mm',
      min: 0,
      max: 2,
      why: 'no piston runs looser',
      step: 0.01,
      judging: 'figure',
      target: 'piston-clearance',
      tolerance: 'piston-clearance-tolerance',
      tooHigh: 'Fit a larger piston, and have the barrel bored to it: it is loose by',
      tooLow: 'Have the bore honed: it is tight by',
      moves:
        'Another bore or piston opens or closes the ring gap. Another piston may be higher at the crown or have another pin offset: the pin, ring gap and pegs, squish, ports and true top after it.',
    },
    after: {},
    waitsFor: ['oil'],
    calculators: ['piston-clearance'],
    articles: ['clearances', 'proving-a-mixed-engine'],
  },
  'ring-gap': {
    stage: 'geometry',
    title: 'Measure the ring gaps',
    why: 'Ends that meet as the ring grows with the heat jam it and score the bore; a wide gap lets the charge past.',
    how: [
      'Push the ring into the bore with the crown of the piston, so that it lies square, where the bore is least worn.',
      'Measure between its ends with a feeler. Of two rings write the narrower gap.',
    ],
    tool: 'Feeler blades, fine flat file',
    reading: {
      label: 'Ring gap',
      per: 'Cylinder',
      unit: 'mm',
      min: 0,
      max: 10,
      why: 'a ring with more is none for this bore',
      step: 0.05,
      judging: 'figure',
      target: 'ring-gap',
      tolerance: 'ring-gap-tolerance',
      tooHigh: 'Fit another ring, or have a worn bore seen to: the gap is wide by',
      tooLow: 'File one end, square and from the outside inwards, by',
      moves:
        'The barrel comes off for it: squish, ports and the leak test after it goes back on its gasket.',
    },
    after: {
      clearance:
        'A bore made wider opens the ring’s gap by about three times the change of diameter.',
    },
    calculators: ['piston-clearance'],
    articles: ['clearances', 'proving-a-mixed-engine'],
  },
  pegs: {
    stage: 'geometry',
    title: 'Hold the ring pegs against the ports',
    why: 'An end of a ring that runs over a window springs out into it, and the edge breaks it off. A piston from another engine has its pegs elsewhere.',
    how: [
      'Mark on the crown where each peg stands. Barrel on, and look through every port as the piston passes: the ends of the rings must run on metal over the whole stroke.',
      'If one runs over a window, that piston cannot be used in that barrel.',
      'Piston the right way round: the arrow on its crown towards the exhaust port (common practice), unless the maker says otherwise. Without one, as the old piston stood.',
      'Rings free: each sinks into its groove all round and springs out, and its ends close beside the peg, not on it.',
    ],
    tool: 'Torch, felt pen',
    caution:
      'Fingers out of the ports while the crank turns: a piston passing an edge cuts like shears.',
    after: { clearance: 'Another piston has its pegs elsewhere.' },
    calculators: [],
    articles: ['proving-a-mixed-engine'],
  },
  squish: {
    stage: 'geometry',
    title: 'Measure the squish',
    why: 'Squish is the least room between crown and head at the top. Too little and the piston strikes the head when the rod stretches; too much and the engine knocks and runs hot.',
    how: [
      'Head on with the gasket it will run with, tightened.',
      'Solder on both sides along the pin, over the top by hand, forwards. Write the smaller of the two.',
    ],
    tool: 'Soft solder, micrometer, torque wrench',
    caution:
      'Plug out, ignition off, kick lever folded away. Turn gently with a ring spanner and stop at any resistance: what meets at a hand’s push breaks at speed.',
    reading: {
      label: 'Squish',
      per: 'Cylinder',
      unit: 'mm',
      min: 0,
      max: 20,
      why: 'solder thicker than that does not reach the edge',
      step: 0.05,
      judging: 'squish',
      target: 'squish',
      tolerance: 'squish-tolerance',
      tooHigh: 'Use a thinner head gasket, or have the top of the barrel faced off, by',
      tooLow: 'Use a thicker head gasket, by',
      moves:
        'Compression changes with it, and a joint is new. Under the barrel instead of under the head it moves every port as well.',
    },
    after: {
      ...anotherRod,
      measure: 'Another stroke or rod moves the crown up or down at the top.',
      clearance:
        'Another piston may be higher or lower at the crown, and the barrel goes back on its gasket.',
      'ring-gap': barrelOff,
    },
    movedBy: {
      'head-volume':
        'A head that was skimmed comes nearer to the piston; one on a thicker gasket stands further off.',
      exhaust:
        'The barrel was raised or lowered, and the squish grows or shrinks with it by as much.',
      inlet: barrelOff,
      leak: 'A new head or base gasket squeezes to another thickness.',
      suction: 'A new head or base gasket squeezes to another thickness.',
    },
    readAnew: ['rod-play', 'clearance', 'head-volume', 'exhaust'],
    calculators: ['compression', 'squish-velocity'],
    articles: ['squish-and-compression'],
  },
  'head-volume': {
    stage: 'geometry',
    title: 'Measure the head volumes',
    why: 'Volume decides the compression. Heads that were skimmed at different times differ, and so do their cylinders.',
    how: [
      'Plug in, clear plate with a small hole greased on the face, level.',
      'Fill from a burette with light oil and paraffin until no bubble is left.',
    ],
    tool: 'Burette or syringe, clear plate',
    caution:
      'Paraffin burns and its vapour spreads: no flame or heater near, doors open, wipe up after.',
    reading: {
      label: 'Volume',
      per: 'Head',
      unit: 'cc',
      min: 0.1,
      max: 500,
      why: 'no head of such an engine holds less or more',
      step: 0.1,
      judging: 'volume',
      target: 'head-volume',
      tolerance: 'head-volume-tolerance',
      tooHigh: 'This head is too large by',
      tooLow: 'This head is too small by',
      moves:
        'Skimming takes as much off the squish, unless its band is level with the face, and the head joint is new: both after it.',
      movesIfHigh: true,
    },
    after: {
      squish:
        'A head cut for its squish holds less or more than before; and another gasket changes the compression.',
    },
    movedBy: {
      exhaust:
        'The head’s own volume stands. The deck does not: measure it again, and work out the compression anew.',
    },
    calculators: ['compression'],
    articles: ['squish-and-compression'],
    series: { compression: 'other-volume' },
  },
  exhaust: {
    stage: 'geometry',
    title: 'Prove where the exhaust opens',
    why: 'The port decides how long the charge is trapped and at what speed the engine pulls. A barrel from another engine, or another base gasket, moves it.',
    how: [
      'Disc set to true top. Turn forwards until a thin blade, or light, just passes at the port’s top edge.',
      'Write the degrees after the top.',
    ],
    tool: 'Degree disc, thin feeler, torch',
    caution:
      'Plugs out, ignition off, and fingers out of the ports while the crank turns: a piston passing an edge cuts like shears. A barrel that is lowered brings the head down to the piston: squish first, by solder and by hand, before anything is kicked over.',
    reading: {
      label: 'Opens after the top',
      per: 'Cylinder',
      unit: 'deg',
      min: 30,
      max: 180,
      why: 'the port opens on the way down, before the bottom',
      step: 0.5,
      judging: 'port',
      target: 'exhaust-opens',
      tolerance: 'exhaust-tolerance',
      tooHigh: 'It opens late: raise the barrel, which opens it earlier by',
      tooLow: 'It opens early: lower the barrel, which opens it later by',
      moves:
        'All ports of a barrel move together: the transfers, and an inlet that the piston opens. Squish, deck and compression move too, and the joint is new: prove them again. The timing stands, since it is read from the piston’s own top.',
    },
    after: {
      ...anotherRod,
      measure: 'Another stroke, rod or offset moves where the crown stands at each degree.',
      top: 'The degrees are counted from true top dead centre.',
      clearance:
        'Another piston may be higher or lower at the crown, and meets the edge elsewhere.',
      'ring-gap': barrelOff,
      squish: 'Another base gasket raises or lowers the ports with the barrel.',
    },
    movedBy: {
      inlet: barrelOff,
      leak: 'A new base gasket squeezes to another thickness, and the ports move with it.',
      suction: 'A new base gasket squeezes to another thickness, and the ports move with it.',
    },
    measuredBy: ['top'],
    calculators: ['port-timing', 'time-area'],
    articles: ['ports-by-the-degree'],
  },
  inlet: {
    stage: 'geometry',
    title: 'Prove where the inlet opens',
    why: 'Where the piston’s skirt opens the inlet, its length and the port’s lower edge decide how long the crankcase breathes. A piston from another engine has another skirt.',
    how: [
      'Disc set to true top. Turn forwards until a thin blade, or light, just passes between skirt and lower edge of the port as the piston rises.',
      'Write the degrees before the top.',
      'Inlet by reeds: enter their petals in the sheet, and another step stands in this one’s place. Inlet by a disc: write where the disc opens it.',
    ],
    tool: 'Degree disc, thin feeler, torch',
    caution:
      'Plugs out, ignition off, and fingers out of the ports while the crank turns: a skirt passing an edge cuts like shears.',
    reading: {
      label: 'Opens before the top',
      per: 'Cylinder',
      unit: 'deg',
      min: 10,
      max: 200,
      why: 'an inlet opens before the top, and the disc of one that opens earlier was set wrong',
      step: 0.5,
      judging: 'inlet',
      target: 'inlet-opens',
      tolerance: 'inlet-tolerance',
      tooHigh:
        'It opens early, by a short skirt or a port filed downwards; only another piston or barrel puts that back. It is early by',
      tooLow: 'It opens late: have the skirt shortened at the inlet, all pistons alike, for',
      moves:
        'The barrel comes off for it: squish, exhaust and the leak tests after it. Leave the height of the barrel alone: it belongs to the exhaust.',
    },
    after: {
      ...anotherRod,
      measure: 'Another stroke, rod or offset moves where the skirt stands at each degree.',
      top: 'The degrees are counted to true top dead centre.',
      clearance: 'Another piston has another skirt.',
      'ring-gap': barrelOff,
      squish: 'Another base gasket raises or lowers the ports with the barrel.',
      exhaust: 'The inlet moves with the barrel: raised, it opens later.',
    },
    movedBy: {
      leak: 'A new base gasket squeezes to another thickness, and the ports move with it.',
      suction: 'A new base gasket squeezes to another thickness, and the ports move with it.',
    },
    measuredBy: ['top'],
    fallsAway: {
      by: 'reeds',
      when: (petals = 0) => petals > 0,
      why: 'reeds open the inlet, by pressure and not by the crank',
    },
    calculators: ['port-timing', 'time-area'],
    articles: ['ports-by-the-degree'],
  },
} as const satisfies Record<string, Step>;
