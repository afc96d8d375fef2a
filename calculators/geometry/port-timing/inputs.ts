import { demoBarrel } from '../../demo/barrel.ts';
import { demoUnevenness } from '../../demo/unevenness.ts';
import { barrelInputs, edge, inletGivesWay, portGivesWay } from '../barrel-inputs.ts';
import { discInputs } from '../disc-inputs.ts';
import { engineInputs } from '../../position/engine-inputs.ts';
import { choice } from '../../frame/define.ts';
import type { AnyValues, Inputs } from '../../frame/types.ts';
import { cylindersInput, ofOthers, others, several } from '../cylinders-inputs.ts';

const ports = 'Exhaust and transfer ports';
const inlet = 'Inlet';
const barrel = 'The barrel';
const wanted = 'Height for a duration';
const change = 'What a change does';
const picture = 'The picture';

/** Side questions. */
export const folded = [wanted, change, others, picture] as const;

const atEdge =
  'Shine a lamp through the port and bring the edge of the crown level with the port’s edge; lock the crank and read a depth gauge from the deck to the crown. Or measure the edge itself with the tail of a caliper. Take the edge where the light is cut off, not the rim of its chamfer.';

const bySkirt = (values: AnyValues): boolean => values['inlet'] === 'piston';

/** Demo cylinders 2 and on: cylinder 1's figure with the unevenness of an invented casting. */
const near =
  (key: string, unevenness: readonly number[], member?: number) =>
  (index: number, values: AnyValues): number => {
    const own = values[key] as number | readonly number[];
    const first = typeof own === 'number' ? own : own[member!]!;
    return Number((first + unevenness[index - 1]!).toFixed(4));
  };

/** Further transfer ports of the demo barrel stand as much lower as a founder would leave them. */
const portDefault = (index: number): number =>
  index === 1 ? demoBarrel.exhaust : demoBarrel.transfer + 0.3 * (index - 2);

export const portName = (index: number): string =>
  index === 1 ? 'Exhaust' : index === 2 ? 'Transfer' : `Transfer ${String(index - 1)}`;

export const inputs = {
  ...engineInputs,
  deck: barrelInputs.deck,
  skirt: {
    kind: 'number',
    group: barrel,
    label: 'Length of the piston',
    help: 'From the edge of the crown to the bottom of the skirt, on the side of the inlet.',
    measure:
      'Caliper along the piston, beside any cut-out in the skirt. Where the skirt is cut away over the inlet, measure to the cut.',
    unit: 'mm',
    min: 5,
    max: 300,
    why: 'a shorter or longer piston is not one of such an engine',
    default: demoBarrel.skirt,
    step: 0.1,
    error: 0.05,
  },
  ports: {
    assumed: true,
    kind: 'number',
    group: ports,
    label: 'Ports to work out',
    help: 'The exhaust and at least one transfer. Pairs at the same height count once.',
    unit: 'count',
    min: 2,
    max: 6,
    why: 'blowdown needs an exhaust and a transfer, and more than five pairs are not built',
    default: 2,
    whole: true,
    step: 1,
  },
  port: {
    ...edge,
    kind: 'series',
    group: ports,
    label: 'Top edge of port',
    help: 'From the deck down to its top edge.',
    measure: atEdge,
    count: (values) => values['ports'] as number,
    most: 6,
    default: portDefault,
    givesWay: portGivesWay,
    member: (index) => `${portName(index)}, top edge`,
  },
  height: {
    ...edge,
    kind: 'series',
    group: ports,
    label: 'Height of port',
    help: 'From top edge to bottom edge. For the picture, and for what the crown leaves standing.',
    min: 1,
    max: 100,
    why: 'a port is cut at least 1 mm high and is shorter than the stroke',
    count: (values) => values['ports'] as number,
    most: 6,
    default: (index) => (index === 1 ? demoBarrel.exhaustHeight : demoBarrel.transferHeight),
    member: (index) => `${portName(index)}, height`,
  },
  inlet: choice({
    group: inlet,
    label: 'What opens the inlet',
    help: 'Piston, disc or reeds.',
    options: { piston: 'Piston skirt', disc: 'Disc valve', reed: 'Reed valve' },
    default: 'piston',
  }),
  'inlet-edge': {
    ...edge,
    kind: 'number',
    group: inlet,
    label: 'Inlet, bottom edge',
    help: 'From the deck down to the bottom edge, which the skirt uncovers on the way up.',
    measure: atEdge,
    default: demoBarrel.inlet,
    givesWay: inletGivesWay,
    when: bySkirt,
  },
  'inlet-height': {
    ...edge,
    kind: 'number',
    group: inlet,
    label: 'Inlet, height',
    help: 'From top edge to bottom edge. For the picture, and for what the skirt leaves covered.',
    min: 1,
    max: 100,
    why: 'a port is cut at least 1 mm high and is shorter than the stroke',
    default: demoBarrel.inletHeight,
    when: bySkirt,
  },
  ...discInputs((values) => values['inlet'] === 'disc'),
  'wanted-port': choice({
    assumed: true,
    group: wanted,
    label: 'Which port',
    help: 'The port whose height you want for a duration.',
    options: { exhaust: 'Exhaust', transfer: 'Transfer', inlet: 'Inlet by the skirt' },
    default: 'exhaust',
  }),
  'wanted-duration': {
    kind: 'number',
    group: wanted,
    label: 'Duration wanted',
    help: 'From opening to closing, degrees of crank.',
    unit: 'deg',
    min: 5,
    max: 350,
    why: 'a port open for less does nothing, and open for more never lets go',
    default: 168,
    step: 1,
  },
  change: choice({
    assumed: true,
    group: change,
    label: 'What is changed',
    help: 'Raising the barrel is what a thicker base gasket does.',
    options: {
      barrel: 'Barrel raised',
      exhaust: 'Exhaust cut higher',
      transfers: 'Transfers cut higher',
      inlet: 'Inlet cut lower',
    },
    default: 'barrel',
  }),
  by: {
    kind: 'number',
    group: change,
    label: 'Size of the change',
    help: 'Minus the other way round: a thinner gasket, or metal added.',
    unit: 'mm',
    min: -20,
    max: 20,
    why: 'more than that is another barrel',
    default: 0.5,
    step: 0.1,
  },
  cylinders: cylindersInput,
  'other-deck': {
    ...barrelInputs.deck,
    ...ofOthers,
    label: 'Crown to deck, other cylinders',
    default: near('deck', demoUnevenness.deck),
    member: (index) => `Cylinder ${String(index + 1)}, crown to deck`,
  },
  'other-exhaust': {
    ...edge,
    ...ofOthers,
    label: 'Exhaust, other cylinders',
    help: 'From the deck down, on that cylinder.',
    default: near('port', demoUnevenness.port, 0),
    member: (index) => `Cylinder ${String(index + 1)}, exhaust`,
  },
  'other-transfer': {
    ...edge,
    ...ofOthers,
    label: 'Transfer, other cylinders',
    help: 'From the deck down, on that cylinder.',
    default: near('port', demoUnevenness.port, 1),
    member: (index) => `Cylinder ${String(index + 1)}, transfer`,
  },
  'other-inlet': {
    ...edge,
    ...ofOthers,
    label: 'Inlet, other cylinders',
    help: 'From the deck down, on that cylinder.',
    default: near('inlet-edge', demoUnevenness.inlet),
    member: (index) => `Cylinder ${String(index + 1)}, inlet`,
    when: (values) => several(values) && bySkirt(values),
  },
  crank: {
    assumed: true,
    kind: 'number',
    group: picture,
    label: 'Crank turned to',
    help: 'Degrees after top dead centre at which the picture stands. It changes no timing.',
    unit: 'deg',
    min: 0,
    max: 360,
    why: 'a whole turn is 360 degrees',
    default: 110,
    step: 1,
  },
} as const satisfies Inputs;
