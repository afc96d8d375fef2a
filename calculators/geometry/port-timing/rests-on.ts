import type { RestsOn } from '../../frame/types.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

const piston = ['stroke', 'rod', 'offset', 'deck'] as const;
const port = [...piston, 'ports', 'port-N'] as const;
const ports = [...piston, 'ports', 'port'] as const;
const disc = ['disc-opens', 'disc-closes'] as const;
const skirt = [...piston, 'skirt', 'inlet', 'inlet-edge'] as const;
const change = ['change', 'by'] as const;
const wanted = ['wanted-port', 'wanted-duration', 'inlet', 'skirt'] as const;
const others = ['cylinders', 'other-deck', 'other-exhaust', 'other-transfer'] as const;

export const restsOn = {
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
  'edge-for': [...piston, ...wanted],
  'raise-for': [...ports, ...wanted, 'inlet-edge'],
  'after-opens': [...port, ...change],
  'after-duration': [...port, ...change],
  'duration-change': [...port, ...change],
  'after-blowdown': [...ports, ...change],
  'after-inlet': [...skirt, ...disc, ...change],
  'cylinder-exhaust': [...ports, ...others],
  'cylinder-transfer': [...ports, ...others],
  'cylinder-blowdown': [...ports, ...others],
  'cylinder-inlet': [...skirt, ...disc, 'cylinders', 'other-deck', 'other-inlet'],
  'exhaust-spread': [...ports, ...others],
  'transfer-spread': [...ports, ...others],
} as const satisfies RestsOn<typeof inputs, typeof results>;
