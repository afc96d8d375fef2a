import { rotorKey } from './other-engine.ts';

interface Given {
  readonly from: 'travel' | 'angle' | 'arc';
  readonly given: 'same' | 'other';
  readonly 'given-rotor'?: number | undefined;
}
type Key =
  | 'from'
  | 'given'
  | 'travel'
  | 'angle'
  | 'arc'
  | 'rotor'
  | 'tilt'
  | 'stroke'
  | 'rod'
  | 'offset'
  | 'given-stroke'
  | 'given-rod'
  | 'given-offset'
  | 'given-rotor';
type Keys = (v: Given) => readonly Key[];

const own = ['stroke', 'rod', 'offset'] as const;
const other = ['given-stroke', 'given-rod', 'given-offset'] as const;

/** The rotor that an arc was measured on: the other engine's counts once it is said. */
const rotors: Keys = (v) => {
  if (v.from !== 'arc') return [];
  const counts = rotorKey(v);
  return v.given === 'other' && counts === 'rotor' ? ['given-rotor', counts] : [counts];
};

/** The figure as it was told. An arc is told with its rotor. */
const told: Keys = (v) => ['from', 'given', v.from, ...rotors(v)];

/** The engine that the figure was given for. */
const givenEngine = ({ given }: Given): readonly Key[] => (given === 'same' ? own : other);

/** Degrees, and an arc on its rotor, are the same on every engine; a travel is told by its own. */
const angle: Keys = (v) => (v.from === 'travel' ? [...told(v), ...givenEngine(v)] : told(v));
const onOwn: Keys = (v) => [...angle(v), ...own];

export const restsOn = {
  angle,
  travel: onOwn,
  'given-travel': (v) =>
    v.given === 'other' && v.from === 'travel' ? told(v) : [...told(v), ...givenEngine(v)],
  'degrees-per-tenth': onOwn,
  arc: (v) => [...angle(v), 'rotor'],
  'dial-reading': (v) => [...onOwn(v), 'tilt'],
} satisfies Record<string, Keys>;
