import { demoBarrel } from '../../demo/barrel.ts';
import { demoHead } from '../../demo/head.ts';
import { demoUnevenness } from '../../demo/unevenness.ts';
import { barrelInputs } from '../barrel-inputs.ts';
import { engineInputs } from '../../position/engine-inputs.ts';
import { choice } from '../../frame/define.ts';
import type { AnyValues, Inputs } from '../../frame/types.ts';
import { cylindersInput, ofOthers, others, several } from '../cylinders-inputs.ts';
import { metric } from '../../frame/text/prose.ts';

const head = 'The volume measured';
const plug = 'Plug hole';
const joint = 'Gasket and piston';
const squish = 'Squish';
const wanted = 'Head for a wanted ratio';
const change = 'What a gasket or a skim does';

/** Side questions. */
export const folded = [wanted, change, others] as const;

const onBench = (values: AnyValues): boolean => values['measured'] === 'head';
const bySolder = (values: AnyValues): boolean => values['squish-from'] === 'solder';
const plugIs =
  (kind: string) =>
  (values: AnyValues): boolean =>
    values['plug-allowance'] === kind;

const smallVolume = { unit: 'cc', min: 0, max: 500, step: 0.1, error: 0.1 } as const;

/** Demo cylinders 2 and on: cylinder 1's figure with the unevenness of an invented set. */
const near =
  (keyOf: (values: AnyValues) => string, unevenness: readonly number[]) =>
  (index: number, values: AnyValues): number =>
    Number(((values[keyOf(values)] as number) + unevenness[index - 1]!).toFixed(4));

export const inputs = {
  ...engineInputs,
  bore: barrelInputs.bore,
  'exhaust-opens': {
    kind: 'number',
    group: 'The barrel',
    label: 'Exhaust opens',
    help: 'Degrees after top dead centre. For the trapped ratio.',
    measure:
      'Degree disc set to true top dead centre and a lamp in the port: note where the crown first lets light through. Or work it out from the port’s height with Port timing.',
    unit: 'deg',
    min: 30,
    max: 200,
    why: 'no exhaust port is cut so that it opens outside that',
    default: demoBarrel.exhaustOpens,
    step: 1,
    error: 0.5,
  },
  measured: choice({
    assumed: true,
    group: head,
    label: 'How it was measured',
    help: 'The head alone under a flat plate, or all that is above the piston at top dead centre.',
    options: { head: 'Head on the bench', whole: 'Engine assembled' },
    default: 'head',
  }),
  'head-volume': {
    ...smallVolume,
    kind: 'number',
    group: head,
    label: 'Head volume',
    help: 'Liquid that filled the head to its joint face.',
    measure:
      'Head upside down and level, plug fitted. Grease the face, lay on a clear flat plate with a small hole, and fill from a burette until no bubble is left. Light oil thinned with paraffin runs well.',
    min: 0.1,
    why: 'a head holds something, and half a litre is more than any head here',
    default: demoHead.volume,
    alike: true,
    when: onBench,
  },
  'whole-volume': {
    ...smallVolume,
    kind: 'number',
    group: head,
    label: 'Volume above the piston',
    help: 'Liquid let in through the plug hole with the engine assembled and the piston at top dead centre.',
    measure:
      'Seal the ring with a smear of grease first, or the liquid runs away past it. Plug hole upright. Find top dead centre by disc, fill, rock the engine a little to free bubbles, fill again.',
    min: 0.1,
    why: 'something is left above every piston, and half a litre is more than any engine here leaves',
    default: demoHead.clearance,
    when: (values) => !onBench(values),
  },
  'plug-allowance': choice({
    group: plug,
    label: 'In the plug hole stood',
    help: 'Liquid above the end of the plug’s thread is not part of the head.',
    options: {
      none: 'Nothing: plug fitted',
      measured: 'A volume I know',
      thread: 'The whole thread',
    },
    default: 'none',
  }),
  'plug-hole': {
    ...smallVolume,
    kind: 'number',
    group: plug,
    label: 'Volume in the plug hole',
    help: 'Liquid between the end of the plug’s thread and the level you filled to.',
    measure:
      'Fill to where the thread ends, read the burette, then on to the top of the hole: the difference.',
    max: 30,
    why: 'no plug hole holds more',
    default: 1.7,
    when: plugIs('measured'),
  },
  'plug-thread': {
    kind: 'number',
    group: plug,
    label: 'Plug thread',
    help: 'Outside diameter.',
    unit: 'mm',
    min: 8,
    max: 22,
    why: 'no plug is made with a smaller or larger thread',
    default: 14,
    step: 1,
    when: plugIs('thread'),
  },
  'plug-pitch': {
    kind: 'number',
    group: plug,
    label: 'Pitch of the thread',
    help: `From one crest to the next. Plugs of ${metric(14)} have ${metric(1.25)}.`,
    unit: 'mm',
    min: 0.5,
    max: 2,
    why: 'no plug thread is cut finer or coarser',
    default: 1.25,
    step: 0.25,
    when: plugIs('thread'),
  },
  'plug-reach': {
    kind: 'number',
    group: plug,
    label: 'Reach of the plug',
    help: 'From its seat to the end of the thread.',
    unit: 'mm',
    min: 0,
    max: 50,
    why: 'no plug reaches further',
    default: 12.7,
    step: 0.1,
    error: 0.2,
    when: plugIs('thread'),
  },
  gasket: {
    kind: 'number',
    group: joint,
    label: 'Gasket thickness',
    help: 'Of the head gasket as squeezed. 0 for a ground joint.',
    measure:
      'Micrometer on a used gasket of the same kind, between the bolt holes, in four places.',
    unit: 'mm',
    min: 0,
    max: 10,
    why: 'no head gasket is thicker',
    default: demoHead.gasket,
    step: 0.1,
    error: 0.03,
  },
  'gasket-bore': {
    kind: 'number',
    group: joint,
    label: 'Gasket bore',
    help: 'Diameter of its hole. Not less than the cylinder’s bore.',
    unit: 'mm',
    min: 10,
    max: 250,
    why: 'it goes round the bore',
    default: demoHead.gasketBore,
    givesWay: (own, values) => {
      const bore = values['bore'] as number;
      return own < bore ? bore + demoHead.gasketBore - demoBarrel.bore : undefined;
    },
    step: 0.5,
    error: 0.1,
    when: (values) => (values['gasket'] as number) > 0,
  },
  deck: { ...barrelInputs.deck, group: joint },
  dome: {
    kind: 'number',
    group: joint,
    label: 'Volume of the dome',
    help: 'Above the edge of the crown. Minus for a dish. 0 for a flat crown.',
    measure:
      'Set the crown’s edge a known depth below the deck, seal the ring with grease, fill to the deck under a plate: the bore’s volume for that depth less the liquid is the dome.',
    unit: 'cc',
    min: -200,
    max: 200,
    why: 'no crown stands so far out of its own plane',
    default: 0,
    step: 0.1,
    error: 0.1,
  },
  'squish-from': choice({
    assumed: true,
    group: squish,
    label: 'Squish clearance from',
    help: 'The heights above, or solder crushed in the engine. Solder is the truer.',
    options: { sum: 'Heights added up', solder: 'Solder' },
    default: 'sum',
  }),
  'band-depth': {
    kind: 'number',
    group: squish,
    label: 'Squish band below the head’s face',
    help: 'How deep the band lies in the head. 0 where it is in one plane with the face; minus where it stands proud.',
    measure: 'Depth gauge from the joint face of the head to the band, at its outer edge.',
    unit: 'mm',
    min: -20,
    max: 20,
    why: 'a band further in or out is no squish band',
    default: 0,
    step: 0.1,
    error: 0.03,
    when: (values) => !bySolder(values),
  },
  solder: {
    kind: 'number',
    group: squish,
    label: 'Solder crushed to',
    help: 'Mean of both sides, over the gudgeon pin.',
    measure:
      'Soft solder half as thick again as the gap, out to the bore on both sides over the gudgeon pin, held with grease. Tighten the head, turn the engine once over the top by hand, measure the thinnest place of each end.',
    unit: 'mm',
    min: 0,
    max: 20,
    why: 'at 0 the parts have touched, and thicker solder is not used',
    default: demoHead.squish,
    step: 0.05,
    error: 0.05,
    when: bySolder,
  },
  'wanted-scheme': choice({
    assumed: true,
    group: wanted,
    label: 'Which ratio',
    help: 'The two are far apart; ask on which scheme a figure was given.',
    options: { geometric: 'Geometric', trapped: 'Trapped' },
    default: 'geometric',
  }),
  'wanted-ratio': {
    kind: 'number',
    group: wanted,
    label: 'Ratio wanted',
    help: 'Such as 9 for 9 to 1.',
    unit: 'ratio',
    min: 1.5,
    max: 25,
    why: 'less does not run, and more is no engine of this kind',
    default: 9,
    step: 0.1,
  },
  'skim-face': choice({
    assumed: true,
    group: change,
    label: 'Metal comes off',
    help: 'Where it comes off decides whether the squish changes.',
    options: {
      barrel: 'Top of the barrel, or rim of a recessed head',
      flat: 'Head’s face, squish band and all',
    },
    default: 'barrel',
  }),
  'bowl-mouth': {
    kind: 'number',
    group: change,
    label: 'Bowl at the face',
    help: 'Diameter of the bowl where the head’s face is skimmed.',
    unit: 'mm',
    min: 1,
    max: 250,
    why: 'the bowl lies within the head',
    default: demoHead.bowl,
    step: 0.5,
    when: (values) => values['skim-face'] === 'flat',
  },
  skim: {
    kind: 'number',
    group: change,
    label: 'Metal taken off',
    help: 'Minus for metal put on.',
    unit: 'mm',
    min: -10,
    max: 10,
    why: 'more than that is another head',
    default: 0.2,
    step: 0.05,
  },
  'gasket-change': {
    assumed: true,
    kind: 'number',
    group: change,
    label: 'Head gasket thicker by',
    help: 'Minus for a thinner one.',
    unit: 'mm',
    min: -10,
    max: 10,
    why: 'no gasket differs by more',
    default: 0,
    step: 0.1,
  },
  'base-gasket-change': {
    assumed: true,
    kind: 'number',
    group: change,
    label: 'Base gasket thicker by',
    help: 'It lifts barrel, ports and head together. Minus for a thinner one.',
    unit: 'mm',
    min: -10,
    max: 10,
    why: 'no gasket differs by more',
    default: 0,
    step: 0.1,
  },
  cylinders: cylindersInput,
  'other-volume': {
    ...smallVolume,
    ...ofOthers,
    label: 'Volume measured',
    help: 'In the same way as on cylinder 1.',
    min: 0.1,
    why: 'a head holds something, and half a litre is more than any head here',
    default: near(
      (values) => (onBench(values) ? 'head-volume' : 'whole-volume'),
      demoUnevenness.volume,
    ),
    member: (index) => `Cylinder ${String(index + 1)}, volume measured`,
  },
  'other-deck': {
    ...barrelInputs.deck,
    ...ofOthers,
    label: 'Crown to deck, other cylinders',
    default: near(() => 'deck', demoUnevenness.deck),
    member: (index) => `Cylinder ${String(index + 1)}, crown to deck`,
    when: (values) => several(values) && onBench(values),
  },
} as const satisfies Inputs;
