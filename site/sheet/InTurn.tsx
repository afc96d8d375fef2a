import type { ComponentChildren } from 'preact';
import { useTurn } from './in-turn.ts';

interface Props {
  /** Whether it is not to wait for its turn. */
  readonly atOnce: boolean;
  readonly children: ComponentChildren;
}

/** A part below the first screen. */
export function InTurn({ atOnce, children }: Props) {
  const [isDrawn] = useTurn(atOnce);
  return isDrawn ? <>{children}</> : null;
}
