/** What is done to a part of a page itself. */
export const TOUCHES = [
  'pointerdown',
  'focusin',
  'keydown',
  'click',
  'input',
  'change',
  'toggle',
] as const;
