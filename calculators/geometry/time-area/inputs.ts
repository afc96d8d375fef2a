import { demoBarrel } from '../../demo/barrel.ts';
import {
  barrelInputs,
  edge as portEdge,
  inletGivesWay,
  portGivesWay,
  speedInput,
} from '../barrel-inputs.ts';
import { discInputs } from '../disc-inputs.ts';
import { engineInputs } from '../../position/engine-inputs.ts';
import { widestPort } from '../../maths/cylinder/port-area.ts';
import { choice } from '../../frame/define.ts';
import type { AnyValues, Inputs, NumberInput } from '../../frame/types.ts';

const edge = { ...portEdge, kind: 'number' } as const;

const side = {
  ...edge,
  min: 1,
  max: 150,
  why: 'a port is cut at least 1 mm wide and stays within the barrel',
} as const;

interface Defaults {
  readonly width: number;
  readonly height: number;
  readonly corner: number;
  readonly count: number;
}

/** Width, height, corners and number of one kind of port, all under its own heading. */
const windowInputs = <K extends string>(
  key: K,
  group: string,
  { width, height, corner, count }: Defaults,
  when?: (values: AnyValues) => boolean,
) => {
  const shown = when === undefined ? {} : { when };
  const fields = {
    [`${key}-width`]: {
      ...side,
      ...shown,
      group,
      label: `${group}, width`,
      help: 'Straight across the opening, of one port.',
      measure: 'Caliper across the opening in the bore, in a straight line and not round the wall.',
      default: width,
      givesWay: (own: number, values: AnyValues) => {
        const { bore } = values as { bore: number };
        const widest = widestPort(bore, values[`${key}-count`] as number);
        return own <= widest ? undefined : (width * bore) / demoBarrel.bore;
      },
    },
    [`${key}-height`]: {
      ...side,
      ...shown,
      group,
      label: `${group}, height`,
      help: 'From top edge to bottom edge.',
      max: 100,
      why: 'a port is cut at least 1 mm high and is shorter than the stroke',
      default: height,
    },
    [`${key}-corner`]: {
      ...edge,
      ...shown,
      group,
      label: `${group}, corner radius`,
      help: 'Radius of its corners; at most half of the smaller side.',
      measure: 'Radius gauge, or lay drills of known size into the corner.',
      max: 75,
      why: 'a corner is no rounder than half the port',
      default: corner,
      step: 0.5,
      error: 0.3,
    },
    [`${key}-count`]: {
      ...shown,
      kind: 'number',
      group,
      label: `${group}, how many`,
      help: 'Equal ports at this height; a bridged port is two.',
      unit: 'count',
      min: 1,
      max: 12,
      why: 'more than a dozen ports of one kind are not cut',
      default: count,
      whole: true,
      step: 1,
    },
  };
  return fields as Record<`${K}-width` | `${K}-height` | `${K}-corner` | `${K}-count`, NumberInput>;
};

const bySkirt = (values: AnyValues): boolean => values['inlet'] === 'piston';
const byDisc = (values: AnyValues): boolean => values['inlet'] === 'disc';

export const inputs = {
  rpm: { ...speedInput, group: 'Speed' },
  ...engineInputs,
  ...barrelInputs,
  'exhaust-edge': {
    ...edge,
    group: 'Exhaust',
    label: 'Exhaust, top edge',
    help: 'From the deck down.',
    default: demoBarrel.exhaust,
    givesWay: portGivesWay,
  },
  ...windowInputs('exhaust', 'Exhaust', {
    width: 34,
    height: demoBarrel.exhaustHeight,
    corner: 5,
    count: 1,
  }),
  'transfer-edge': {
    ...edge,
    group: 'Transfers',
    label: 'Transfers, top edge',
    help: 'From the deck down.',
    default: demoBarrel.transfer,
    givesWay: portGivesWay,
  },
  ...windowInputs('transfer', 'Transfers', {
    width: 22,
    height: demoBarrel.transferHeight,
    corner: 2,
    count: 2,
  }),
  inlet: choice({
    group: 'Inlet',
    label: 'Inlet',
    help: 'What opens it. A reed has no timing, and so no time-area.',
    options: { piston: 'Piston skirt', disc: 'Disc valve', none: 'Reed: leave it out' },
    default: 'piston',
  }),
  'inlet-edge': {
    ...edge,
    group: 'Inlet',
    label: 'Inlet, bottom edge',
    help: 'From the deck down.',
    default: demoBarrel.inlet,
    givesWay: inletGivesWay,
    when: bySkirt,
  },
  skirt: {
    ...edge,
    group: 'Inlet',
    label: 'Length of the piston',
    help: 'From the edge of the crown to the bottom of the skirt, on the side of the inlet.',
    min: 5,
    why: 'a shorter or longer piston is not one of such an engine',
    default: demoBarrel.skirt,
    error: 0.05,
    when: bySkirt,
  },
  ...windowInputs(
    'inlet',
    'Inlet',
    { width: 30, height: demoBarrel.inletHeight, corner: 4, count: 1 },
    bySkirt,
  ),
  ...discInputs(byDisc),
  'disc-area': {
    kind: 'number',
    group: 'Inlet',
    label: 'Window of the disc, area',
    help: 'Of the hole in the case that the disc covers.',
    measure: 'Press paper on the window, rub round its edge with a pencil, and count squares.',
    unit: 'mm2',
    min: 10,
    max: 10_000,
    why: 'no such window is smaller or larger',
    default: 450,
    step: 10,
    error: 10,
    when: byDisc,
  },
  'disc-edge': {
    kind: 'number',
    group: 'Inlet',
    label: 'Edge passes the window in',
    help: 'Degrees of crank from where the disc begins to uncover the window to where it is wholly open; the same for closing.',
    measure: 'Degree disc on the crank; watch the edge enter the window and leave it.',
    unit: 'deg',
    min: 0,
    max: 150,
    why: 'the window has to stand wholly open for some of the time',
    default: 40,
    step: 1,
    error: 1,
    when: byDisc,
  },
} as const satisfies Inputs;
