import type { ValuesOf } from '../../frame/types.ts';
import type { camInputs } from '../cam-inputs.ts';
import type { Primary } from '../../maths/ignition/coil-charge.ts';
import type { inputs } from './inputs.ts';

export type Inputs = typeof inputs & typeof camInputs;
export type Values = ValuesOf<Inputs>;

export function primaryOf({ volts, resistance, ballast, inductance }: Values): Primary {
  return { volts, resistance, ballast, inductance };
}
