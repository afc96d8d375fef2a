/** Why the work of one step moves many others, where the same holds for each. */
export const barrelOff = 'The barrel has been off: its base gasket is new, or squeezed anew.';

/** What lies inside the case, and is reached with barrel, plate and disc off. */
export const CASE_OPENED = {
  'run-out': barrelOff,
  'end-float': barrelOff,
  'rod-play': barrelOff,
  'pin-play': barrelOff,
} as const;

const plateOff = 'The plate comes off before the case is opened, and goes back a little different.';

export const PLATE_OFF = {
  'run-out': 'Cam and rotor run out with the crank that carries them.',
  'end-float': plateOff,
  'rod-play': plateOff,
} as const;

export const sealBehind =
  'A seal behind the plate is reached with the plate off, and the plate goes back a little different.';
