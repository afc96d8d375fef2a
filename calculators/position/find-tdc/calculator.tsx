import { demoTop } from '../../demo/top.ts';
import { engineFields, engineInputs, sliderCrank } from '../engine-inputs.ts';
import { fixed, showIn, shownUnit } from '../../frame/text/format.ts';
import { choice, defineCalculator } from '../../frame/define.ts';
import type { AnyValues, Inputs, Results, Uncertain } from '../../frame/types.ts';
import {
  discCorrection,
  discScale,
  dwellAtTop,
  halfArc,
  halfArcAt,
  isEitherScale,
  middleShift,
  offsetBias,
  tdcReading,
  tdcSpread,
} from '../../maths/crank/find-tdc.ts';
import { totalTravel } from '../../maths/crank/slider-crank.ts';
import { Picture } from './Picture.tsx';

const readings = 'The two readings';
const stopped = 'Where the piston was stopped';
const disc = {
  kind: 'number',
  group: readings,
  unit: 'deg',
  min: -360,
  max: 360,
  why: 'no disc shows more than a whole turn',
  step: 0.5,
  errorIn: 'reading-error',
} as const;

const scaleOf = (choiceMade: 'auto' | 'both-ways' | 'one-way', before: number, after: number) =>
  choiceMade === 'auto' ? discScale(before, after) : choiceMade;

/** Whether a disc of the other kind would have the top elsewhere, and nobody has said which it is. */
const isOpen = ({ scale, before, after }: AnyValues): boolean =>
  scale === 'auto' && isEitherScale(Number(before), Number(after));

/** Whether the disc stands right, as nearly as its readings tell. */
const standsTrue = (correction: number, { spreads }: Uncertain): boolean =>
  Math.abs(correction) <= (spreads['disc-correction'] ?? 0);

const height = ['height', 'height-error', 'stroke', 'rod', 'offset'] as const;

export const inputs = {
  method: choice({
    assumed: true,
    group: readings,
    label: 'Method',
    help: 'What told you that the piston stood equally high on both sides. The arithmetic is the same; how the second reading is taken is not.',
    options: { stop: 'Positive stop', equal: 'Equal heights by indicator' },
    default: 'stop',
  }),
  before: {
    ...disc,
    label: 'Reading before the top',
    help: 'What the disc shows with the piston stopped on its way up, counted from the disc’s zero.',
    measure:
      'Turn the crank forwards, gently by hand, until the piston meets the stop or the indicator shows the chosen height. Read without parallax: eye square to the disc. Take it three times.',
    default: demoTop.before,
  },
  after: {
    ...disc,
    label: 'Reading after the top',
    help: 'What the disc shows at the same height on the other side, counted from the disc’s zero.',
    measure:
      'Positive stop: turn the crank backwards until the piston meets the stop from the other side. Equal heights: go over the top and down well past the height, then come back up to it, so that play is taken up the same way as before.',
    default: demoTop.after,
  },
  scale: choice({
    assumed: true,
    group: readings,
    label: 'The disc counts',
    help: 'Both ways: 43 before and 39 after zero. One way: 0 to 360, growing as the crank turns.',
    options: { auto: 'Tell from the readings', 'both-ways': 'Both ways', 'one-way': 'One way' },
    default: 'auto',
  }),
  'reading-error': {
    assumed: true,
    kind: 'number',
    group: readings,
    label: '± of each reading',
    help: 'How far one reading of the disc may be out, either way.',
    measure:
      'Take each reading three times, turning away in between. Half the difference between the largest and the smallest is a fair figure.',
    unit: 'deg',
    min: 0,
    max: 20,
    why: 'a disc that cannot be read better than that is of no use',
    default: 0.5,
    step: 0.1,
  },
  height: {
    kind: 'number',
    group: stopped,
    label: 'Height stopped at',
    help: 'How far below the top the piston was on both sides. Roughly will do for a stop.',
    unit: 'mm',
    min: 0.01,
    max: 200,
    why: 'at the top itself both readings fall together, and no stroke here is longer',
    default: demoTop.height,
    step: 0.5,
  },
  'height-error': {
    assumed: true,
    kind: 'number',
    group: stopped,
    label: '± of the height',
    help: 'How far the heights on the two sides may differ: dial reading, a springy stop, play.',
    unit: 'mm',
    min: 0,
    max: 1,
    why: 'more than that is not the same height',
    default: 0.02,
    step: 0.01,
  },
  ...engineInputs,
} as const satisfies Inputs;

/** Readings nearer than this to what the stop asks for are not told of, degrees. */
const LEAST_SLACK = 3;
const isNumber = (value: unknown): value is number => typeof value === 'number';

/** Ways of turning the disc on the crank, as the sheet says them. */
const WITH = 'the way the engine turns';
const AGAINST = 'against the way the engine turns';
const turnBy = (by: number): string => `${fixed(Math.abs(by), 1)}°, ${by > 0 ? WITH : AGAINST}`;

export const results = {
  'tdc-reading': {
    label: 'True top is at',
    unit: 'deg',
    help: 'What the disc shows when the piston is at true top dead centre.',
    lead: true,
    decimals: 2,
    spreadFrom: 'spread',
    word: (_, v) => (isOpen(v) ? 'counted one way' : 'on the disc'),
  },
  'disc-correction': {
    label: 'Correct the disc by',
    unjudged: 'Error of the disc, reversed',
    unit: 'deg',
    help: 'Add it, with its sign, to a reading past zero; take it, with its sign, off a reading before zero, such as a timing. Or turn the disc on the crank by it until it shows 0 at the true top: + the way the engine turns, − against it.',
    lead: true,
    decimals: 2,
    signed: true,
    spreadFrom: 'spread',
  },
  spread: {
    label: 'The top is known within',
    short: 'Known within',
    unit: 'deg',
    bare: true,
    help: 'From the ± of the two disc readings and of the height, taken as independent.',
    lead: true,
    decimals: 2,
  },
  'worst-spread': {
    label: 'If both readings err the same way',
    unit: 'deg',
    bare: true,
    help: 'As from a pointer looked at always from one side: nothing is gained by the middle of two.',
    decimals: 2,
  },
  'height-shift': {
    label: 'What the height is worth',
    unit: 'deg',
    bare: true,
    help: 'How far the top is misplaced if the two heights differ by their ±. The lower the stop, the less it matters.',
    decimals: 3,
  },
  'dwell-at-top': {
    label: 'Dwell at the top by dial alone',
    unit: 'deg',
    help: 'Degrees the crank turns while the piston moves less than 0.01 mm: why watching the dial for the highest point is a poor way to find the top.',
    decimals: 1,
  },
  'offset-shift': {
    label: 'Shift from a pin offset',
    unit: 'deg',
    help: 'With an offset pin the middle of two equal heights lies this far after the true top (− before); it is not included above.',
    decimals: 3,
    signed: true,
  },
} as const satisfies Results;

export default defineCalculator({
  slug: 'find-tdc',
  title: 'Find true top dead centre',
  purpose:
    'From two readings of a degree disc, one on either side of the top, to where the top is and how far to move the disc.',
  inHand: ['before', 'after'],
  alsoCalled: ['TDC', 'positive stop', 'piston stop', 'degree wheel', 'equal heights'],
  inputs,
  results,
  restsOn: {
    'tdc-reading': ['before', 'after', 'scale'],
    'disc-correction': ['before', 'after', 'scale'],
    spread: ['reading-error', ...height],
    'worst-spread': ['reading-error', ...height],
    'height-shift': height,
    'dwell-at-top': ['stroke', 'rod', 'offset'],
    'offset-shift': ['height', 'stroke', 'rod', 'offset'],
  },
  fieldOf: {
    ...engineFields,
    before: 'before',
    after: 'after',
    pistonTravel: 'height',
    readingError: 'reading-error',
  },
  compute: (v) => {
    const geometry = sliderCrank(v);
    const tdc = tdcReading(v.before, v.after, scaleOf(v.scale, v.before, v.after));
    const fromHeight = Math.abs(middleShift(geometry, v.height, v['height-error']));
    const fromReadings = tdcSpread(v['reading-error']);
    return {
      'tdc-reading': tdc,
      'disc-correction': discCorrection(tdc),
      spread: Math.hypot(fromReadings.independent, fromHeight),
      'worst-spread': fromReadings.worst + fromHeight,
      'height-shift': fromHeight,
      'dwell-at-top': dwellAtTop(geometry, 0.01),
      'offset-shift': offsetBias(geometry, v.height),
    };
  },
  remarks: (v, computed, known) => [
    {
      about: 'whether the readings go with the stop',
      quiet: true,
      leads: true,
      say: () => {
        const scale = scaleOf(v.scale, v.before, v.after);
        if (!isNumber(computed['tdc-reading'])) return undefined;
        const read = halfArc(v.before, v.after, scale);
        const geometry = sliderCrank(v);
        const must = halfArcAt(geometry, v.height);
        // A stop is told roughly: a tenth of its height, and the reading of the disc beside it.
        const slack =
          halfArcAt(geometry, Math.min(v.height * 1.1, totalTravel(geometry))) -
          must +
          2 * v['reading-error'];
        if (Math.abs(read - must) <= Math.max(LEAST_SLACK, slack)) return undefined;
        return `These readings stand ${fixed(read, 1)}° from the top on either side, but a piston stopped ${showIn(v.height, shownUnit([v.height], 'mm', known.lengths))} below it on this crank and rod stands ${fixed(must, 1)}° from it. Check both readings, how the disc counts, and the height, before the disc is turned.`;
      },
    },
    {
      about: 'how the disc has to count',
      quiet: true,
      leads: true,
      say: () => {
        const by = computed['disc-correction'];
        if (typeof by !== 'number' || standsTrue(by, known) || !isOpen(v)) return undefined;
        const other = discCorrection(tdcReading(v.before, v.after, 'both-ways'));
        return `Do not turn the disc yet: these readings may come from either kind. If it counts one way round, it is to be turned by ${turnBy(by)}. If it counts both ways from its zero, by ${turnBy(other)}. Choose it under “The disc counts”.`;
      },
    },
    {
      about: 'which way to turn the disc',
      say: () => {
        const by = computed['disc-correction'];
        if (typeof by !== 'number') return undefined;
        if (standsTrue(by, known)) {
          return 'The disc stands at the true top as nearly as these readings can tell: leave it.';
        }
        if (isOpen(v)) return undefined;
        return `Turn the disc on the crank by ${turnBy(by)}: it then shows 0 at the true top. Stop the piston on both sides once more to prove it.`;
      },
    },
    {
      about: 'how the disc counts',
      say: () => {
        const scale = scaleOf(v.scale, v.before, v.after);
        const said =
          scale === 'both-ways'
            ? 'The readings are taken from a disc that counts both ways from zero: so many degrees before it, so many after it. Add the correction to a reading after the zero, and take it off a reading before the zero.'
            : 'The readings are taken from a disc that counts one way round; the top is the middle of the arc from the first reading on to the second. Add the correction to every reading.';
        return v.scale === 'auto' ? `${said} If yours counts otherwise, choose it above.` : said;
      },
    },
    {
      about: 'how to take the second reading',
      say: () =>
        v.method === 'stop'
          ? 'For the second reading of a positive stop turn the crank backwards, all the way round, until the crown rests on the stop again: the piston comes up to it both times, and play lies the same way.'
          : 'For the second reading at an equal height go over the top and down well past it, then turn backwards and come up to it: the piston rises both times, and play lies the same way. The lean of the indicator drops out.',
    },
  ],
  picture: Picture,
  ready: {
    caption: 'Where the true top is when the stop before it reads 40° on a disc counting both ways',
    vary: 'after',
    over: [34, 36, 38, 39, 40, 41, 42, 44, 46],
    show: ['tdc-reading', 'disc-correction'],
    set: { before: '40', scale: 'both-ways' },
  },
  care: 'Plugs out, ignition and fuel off; turn gently.',
  cautions: [
    'Take the spark plugs out, the ignition off and the fuel away before you turn the crank by hand: an engine that kicks back against a spanner breaks fingers.',
    'Never turn an engine backwards by the nut or bolt of its rotor: it may undo. Turn it back by another end of the crank, or by the wheel in gear.',
    'Turn gently against a positive stop, by hand and never with the starter: a stop hit hard marks or holes the crown.',
  ],
  limits: [
    'The middle of two equal heights is the true top only while the pin is in line with the crank centre; with an offset pin apply the shift shown.',
    'Bearing play moves the piston by more than a good dial can read. Come to both readings with the play taken up, and say so in your notes.',
  ],
  articles: ['finding-top-dead-centre', 'what-a-degree-is-worth'],
});
