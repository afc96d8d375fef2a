/** What a reader does anywhere on a page who is about to use it. */
export const SIGNS = [
  'pointermove',
  'pointerdown',
  'touchstart',
  'keydown',
  'wheel',
  'scroll',
] as const;
