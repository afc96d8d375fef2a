interface Given {
  readonly from: 'travel' | 'angle' | 'arc';
  readonly given: 'same' | 'other';
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
  | 'given-offset';
type Keys = (v: Given) => readonly Key[];

const own = ['stroke', 'rod', 'offset'] as const;
const other = ['given-stroke', 'given-rod', 'given-offset'] as const;

/** The figure as it was told. An arc is told with its rotor. */
const told: Keys = ({ from }) => [
  'from',
  'given',
  from,
  ...(from === 'arc' ? ['rotor' as const] : []),
];

/** The same with the engine that it was given for, where that has a part in it. */
const givenTravel = (v: Given, withEngine: boolean): readonly Key[] =>
  withEngine ? [...told(v), ...(v.given === 'same' ? own : other)] : told(v);

/** Degrees, and an arc on its rotor, are the same on every engine; a travel is told by its own. */
const angle: Keys = (v) => (v.from === 'travel' ? givenTravel(v, true) : told(v));
const onOwn: Keys = (v) => [...angle(v), ...own];

export const restsOn = {
  angle,
  travel: onOwn,
  'given-travel': (v) => givenTravel(v, v.given === 'same' || v.from !== 'travel'),
  'degrees-per-tenth': onOwn,
  arc: (v) => [...angle(v), 'rotor'],
  'dial-reading': (v) => [...onOwn(v), 'tilt'],
} satisfies Record<string, Keys>;
