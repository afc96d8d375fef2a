import type { RestsOn } from '../../frame/types.ts';
import type { Values } from './compute.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

const piston = ['stroke', 'rod', 'offset', 'deck'] as const;
const port = [...piston, 'ports', 'port-N'] as const;
const ports = [...piston, 'ports', 'port'] as const;
const disc = ['disc-opens', 'disc-closes'] as const;
const skirt = [...piston, 'skirt', 'inlet', 'inlet-edge'] as const;
const change = ['change', 'by'] as const;
const asked = ['wanted-port', 'wanted-duration'] as const;
/** Only the inlet is cut for the skirt. */
const wanted = (v: Values) =>
  v['wanted-port'] === 'inlet' ? ([...asked, 'inlet', 'skirt'] as const) : asked;
/** The edge that is there now, of the port that is asked about. */
const edgeNow = (v: Values) =>
  (({ exhaust: 'port-1', transfer: 'port-2', inlet: 'inlet-edge' }) as const)[v['wanted-port']];
const others = ['cylinders', 'other-deck', 'other-exhaust', 'other-transfer'] as const;

export const restsOn: RestsOn<typeof inputs, typeof results> = {
  opens: port,
  closes: port,
  duration: port,
  clears: [...port, 'height-N'],
  blowdown: ports,
  'exhaust-duration': [...piston, 'port-1'],
  'exhaust-lag': ports,
  'inlet-duration': [...skirt, ...disc],
  'inlet-opens': [...skirt, ...disc],
  'inlet-closes': [...skirt, ...disc],
  'skirt-cover': ['deck', 'skirt', 'port-1', 'height-1'],
  'inlet-clears': ['inlet', 'deck', 'skirt', 'inlet-edge', 'inlet-height'],
  'crown-depth': [...piston, 'crank'],
  'edge-for': (v) => [...piston, ...wanted(v)],
  'raise-for': (v) => [...piston, ...wanted(v), edgeNow(v)],
  'after-opens': [...port, ...change],
  'after-duration': [...port, ...change],
  'duration-change': [...port, ...change],
  'after-blowdown': [...ports, ...change],
  'after-inlet': [...skirt, ...disc, ...change],
  'cylinder-exhaust': [...piston, 'port-1', ...others],
  'cylinder-transfer': [...piston, 'port-2', ...others],
  'cylinder-blowdown': [...ports, ...others],
  'cylinder-inlet': [...skirt, ...disc, 'cylinders', 'other-deck', 'other-inlet'],
  'exhaust-spread': [...piston, 'port-1', ...others],
  'transfer-spread': [...piston, 'port-2', ...others],
};
