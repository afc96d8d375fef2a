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

/** Degrees, and an arc on its rotor, are the same on every engine; a travel is told by its own. */
const angle: Keys = (v) => {
  if (v.given === 'same') return [...told(v), ...own];
  return v.from === 'travel' ? [...told(v), ...other] : told(v);
};
const onOwn: Keys = (v) => [...angle(v), ...own];

export const restsOn = {
  angle,
  travel: onOwn,
  'given-travel': (v) => {
    if (v.given === 'same') return angle(v);
    return v.from === 'travel' ? told(v) : [...told(v), ...other];
  },
  'degrees-per-tenth': onOwn,
  arc: (v) => [...angle(v), 'rotor'],
  'dial-reading': (v) => [...onOwn(v), 'tilt'],
} satisfies Record<string, Keys>;
