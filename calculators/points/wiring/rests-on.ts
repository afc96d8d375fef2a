import type { RestsOn } from '../../frame/types.ts';
import type { Inputs, Values } from './compute.ts';
import type { results } from './results.ts';

const coils = ['volts', 'coils', 'resistance', 'ballast'] as const;
/** A current that was measured tells all that the coils would. */
const most = (v: Values) =>
  v.current === undefined ? ([...coils, 'others'] as const) : (['current'] as const);
const path = ['length', 'temperature', 'contacts'] as const;
const way = (v: Values) => [...most(v), 'current', 'volts', ...path, 'area'] as const;
const charge = ['resistance', 'ballast', 'inductance', 'lobes', 'speed-ratio'] as const;
const running = [...coils, ...charge, 'dwell-percent'] as const;
const battery = ['capacity', 'rated-hours', 'peukert'] as const;

export const restsOn: RestsOn<Inputs, typeof results> = {
  drop: way,
  'drop-percent': way,
  'at-load': way,
  load: way,
  'energy-left': way,
  energy: (v) => [...way(v), ...charge, 'dwell-percent', 'rpm'],
  fuse: (v) => [...most(v), 'current', 'fuse-load'],
  wire: (v) => [...most(v), 'current', 'volts', ...path, 'fuse-load', 'loss'],
  'shut-current': coils,
  'idle-current': [...running, 'idle'],
  'coil-current': [...running, 'rpm'],
  hours: [...running, 'rpm', 'others', 'capacity', 'share'],
  'hours-by-rule': [...running, 'rpm', 'others', 'share', ...battery],
  'left-on': [...coils, 'others', ...battery],
  'ballast-for': ['volts', 'resistance', 'current-limit'],
  'ballast-heat': ['volts', 'resistance', 'ballast'],
  'size-drop': (v) => [...most(v), 'current', 'volts', ...path],
  'size-percent': (v) => [...most(v), 'current', 'volts', ...path],
  'size-bears': [],
  'side-current': way,
  'side-drop': way,
  'side-percent': way,
  'side-energy': way,
};
