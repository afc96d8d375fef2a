import type { KeyEntry } from '../picture/common/key.tsx';

/** The kinds of port, and the blowdown between two of them: one look each, in every picture. */
export type PortKind = 'exhaust' | 'transfer' | 'inlet' | 'blowdown';

/** The line of its curve. */
export const portCurve = (kind: PortKind): string => `curve-port port-line-${kind}`;

/** The patch of its area while it is open. */
export const portArea = (kind: PortKind): string => `port port-${kind} port-line-${kind}`;

const names: Readonly<Record<PortKind, string>> = {
  exhaust: 'exhaust',
  transfer: 'transfers',
  inlet: 'inlet',
  blowdown: 'blowdown',
};

export const portKey = (as: 'line' | 'area', kind: PortKind, words = names[kind]): KeyEntry => ({
  as,
  look: as === 'line' ? portCurve(kind) : portArea(kind),
  words,
});
