import type { Known } from './types.ts';

/** Whose a limit is, after its figure: “the 4.0 A you allow” only where the reader gave it. */
export const whoseLimit = ({ isAssumed }: Pick<Known, 'isAssumed'>, key: string): string =>
  isAssumed(key) ? 'assumed here' : 'you allow';

/** A word in brackets after a figure that nobody gave; nothing where it was given. */
export const orAssumed = ({ isAssumed }: Pick<Known, 'isAssumed'>, ...keys: string[]): string =>
  keys.some(isAssumed) ? ' (assumed here)' : '';
