import { blameFields } from '../../frame/attempt.ts';
import { assertGeometry, type SliderCrank } from '../../maths/crank/slider-crank.ts';

interface Values {
  readonly 'given-stroke': number;
  readonly 'given-rod': number;
  readonly 'given-offset': number;
}

export interface Rotors {
  readonly given: string;
  readonly rotor: number;
  readonly 'given-rotor'?: number | undefined;
}

/** The input of the rotor on which an arc was measured: the other engine's where it is said. */
export const rotorKey = (v: Omit<Rotors, 'rotor'>): 'rotor' | 'given-rotor' =>
  v.given === 'other' && v['given-rotor'] !== undefined ? 'given-rotor' : 'rotor';

/** That rotor, mm across. */
export const rotorOf = (v: Rotors): number => v[rotorKey(v)] ?? v.rotor;

const KEYS: Readonly<Record<string, string>> = {
  stroke: 'given-stroke',
  rodLength: 'given-rod',
  pinOffset: 'given-offset',
};

/** Runs what is worked out on the other engine: an error in that engine is laid to its own fields. */
export const onOther = <T>(run: () => T): T =>
  blameFields((names) => names.map((name) => KEYS[name] ?? name), run);

/** The engine for which the figure was given. */
export function otherCrank(v: Values): SliderCrank {
  const geometry = {
    stroke: v['given-stroke'],
    rodLength: v['given-rod'],
    pinOffset: v['given-offset'],
  };
  onOther(() => assertGeometry(geometry));
  return geometry;
}
