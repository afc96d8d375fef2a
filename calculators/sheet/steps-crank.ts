import type { Step } from './steps.ts';

/** Crank, rod and pin: what is measured while the case is open. */
export const crankSteps = {
  'run-out': {
    stage: 'geometry',
    title: 'Measure the run-out of the crank',
    why: 'A crank that is bent or twisted shakes and wears its bearings. Cam and rotor go round with it, so the timing scatters.',
    how: [
      'Crank between centres, or on its own main bearings in blocks.',
      'Indicator on each mainshaft, close to the web. Turn it slowly: the highest less the lowest reading is the run-out of that shaft.',
      'Write the larger of the two shafts beside each cylinder. Case not opened: measure at the ends of the shaft that can be reached, and write the larger.',
    ],
    tool: 'Dial indicator, centres or two vee blocks',
    caution:
      'A crank is heavy and rolls: block it, and keep fingers from between rod and web, the disc or arm that carries its pin.',
    reading: {
      label: 'Run-out of the mainshaft',
      per: 'Cylinder',
      unit: 'mm',
      min: 0,
      max: 5,
      why: 'a crank that is further out does not turn in its case',
      step: 0.01,
      judging: 'at-most',
      target: 'shaft-run-out',
      tooHigh: 'Have the crank pressed true by somebody who does it often: it runs out by',
      tooLow: '',
      moves:
        'The case is opened for it: end float, the play of the rod, the true top, and all that is bolted to the case, after it.',
    },
    after: {},
    waitsFor: ['oil'],
    movedBy: {
      'rod-play': 'A crank that was pressed apart for a rod goes together a little different.',
    },
    calculators: [],
    articles: ['proving-a-mixed-engine'],
  },
  'end-float': {
    stage: 'geometry',
    title: 'Measure the end float of the crank',
    why: 'With none the bearings are loaded from the side, most while the crank is warm and the case is not. With too much the rod wanders.',
    how: [
      'Case bolted up. Indicator in line with the shaft, on its end.',
      'Push the crank one way and set the indicator to 0, pull it the other way and read. Three times.',
      'Where a bearing holds the shaft by itself there is next to nothing to feel: write what you read.',
    ],
    tool: 'Dial indicator, shims, torque wrench',
    reading: {
      label: 'End float',
      per: 'Crank',
      once: true,
      unit: 'mm',
      min: 0,
      max: 5,
      why: 'a crank that slides further has lost its shims or its bearings',
      step: 0.01,
      judging: 'figure',
      target: 'end-float',
      tolerance: 'end-float-tolerance',
      tooHigh: 'Fit thicker shims, in all by',
      tooLow: 'Fit thinner shims, in all by',
      moves:
        'The case is opened for it: the true top, and all that is bolted to the case, after it.',
    },
    after: {
      'run-out': 'A crank that was pressed true may be wider or narrower than before.',
    },
    movedBy: {
      'rod-play': 'A crank that was pressed apart may be wider or narrower than before.',
    },
    calculators: [],
    articles: ['proving-a-mixed-engine', 'clearances'],
  },
  'rod-play': {
    stage: 'geometry',
    title: 'Try the big end and its side play',
    why: 'Play along the rod hammers the bearing until it breaks. Sideways the rod needs room by design, or it runs hot.',
    how: [
      'Rod upright: push and pull it along its length, with the pin at the top and at the bottom. There must be nothing to feel. If there is, the crank is rebuilt before you go on.',
      'Sideways: rod to one side, and the thickest feeler that passes between rod and web.',
    ],
    tool: 'Feeler blades',
    reading: {
      label: 'Side play at the big end',
      per: 'Cylinder',
      unit: 'mm',
      min: 0,
      max: 10,
      why: 'a rod with more has lost its washers',
      step: 0.05,
      judging: 'figure',
      target: 'side-play',
      tolerance: 'side-play-tolerance',
      tooHigh:
        'Have the crank rebuilt with thicker washers at the big end: the play is too wide by',
      tooLow: 'Have the webs pressed further apart: the play is too narrow by',
      moves:
        'The crank is pressed apart for it, and another rod may have another length: measure the rod, run-out and end float, and all that is bolted to the case, after it.',
    },
    after: {
      'run-out': 'Webs that were pressed stand nearer to each other or further apart.',
    },
    waitsFor: ['oil'],
    calculators: [],
    articles: ['proving-a-mixed-engine'],
  },
  'pin-play': {
    stage: 'geometry',
    title: 'Try the gudgeon pin and the rod',
    why: 'A pin that rocks knocks and breaks its bearing. A rod that leans holds the piston crooked, and it wears on one side.',
    how: [
      'Pin in the small end, oiled: it slides and turns by the thumb and does not rock. If it rocks, change pin and bearing.',
      'Pin in the piston: a push fit by the thumb, or with the piston warmed in hot water. A pin that falls through wants another piston.',
      'Sight along the rod: a pin pushed half out on either side stands square to the case.',
      'New circlips, each deep in its groove all round, their open ends at the top or the bottom (common practice).',
    ],
    tool: 'Thumbs, good light, new circlips',
    caution:
      'Circlips fly: eye protection. Cloth in the mouth of the crankcase first, and count it out again: a clip that falls in wrecks the engine.',
    after: { 'rod-play': 'Another rod has another small end.' },
    movedBy: { clearance: 'Another piston has another pin.' },
    calculators: [],
    articles: ['proving-a-mixed-engine'],
  },
} as const satisfies Record<string, Step>;
