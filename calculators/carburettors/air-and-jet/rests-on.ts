import type { RestsOn } from '../../frame/types.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';
import type { Values } from './compute.ts';

const byHeight = ['altitude', 'pressure'] as const;
const byReport = ['altitude', 'pressure', 'pressure-is'] as const;
const rightByHeight = ['right-altitude', 'right-pressure'] as const;
const rightByReport = ['right-altitude', 'right-pressure', 'right-pressure-is'] as const;
const onTheSpot = ['pressure', 'pressure-is'] as const;
const rightOnTheSpot = ['right-pressure', 'right-pressure-is'] as const;

/** What tells the pressure: with one read on the spot the height is not used. */
const pressure = (v: Values) =>
  v.pressure === undefined ? byHeight : v['pressure-is'] === 'here' ? onTheSpot : byReport;
const rightPressure = (v: Values) =>
  v['right-pressure'] === undefined
    ? rightByHeight
    : v['right-pressure-is'] === 'here'
      ? rightOnTheSpot
      : rightByReport;

const now = (v: Values) => ['temperature', 'humidity', ...pressure(v)] as const;
const right = (v: Values) => ['right-temperature', 'right-humidity', ...rightPressure(v)] as const;
const both = (v: Values) => [...now(v), ...right(v)] as const;

export const restsOn: RestsOn<typeof inputs, typeof results> = {
  'relative-density': both,
  'jet-area-ratio': both,
  mixture: both,
  jet: (v) => [...both(v), 'jet'],
  'size-mixture': (v) => [...both(v), 'jet', 'sizes'],
  'number-for': (v) => [...both(v), 'number'],
  density: now,
  'density-altitude': now,
  'right-density': right,
  'pressure-here': pressure,
};
