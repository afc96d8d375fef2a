import { useCallback, useLayoutEffect, useState } from 'preact/hooks';

const waiting = new Set<() => void>();
const atRest = new Set<() => void>();
let going = false;

/** A part may wait for a browser that never rests, but not long. */
const LONGEST_MS = 100;

function whenRested(work: () => void): void {
  const idle = globalThis.requestIdleCallback as typeof requestIdleCallback | undefined;
  if (idle) idle(work, { timeout: LONGEST_MS });
  else setTimeout(work);
}

function next(): void {
  const [draw] = waiting;
  going = draw !== undefined;
  if (!draw) {
    for (const tell of atRest) tell();
    atRest.clear();
    return;
  }
  waiting.delete(draw);
  draw();
  whenRested(next);
}

/**
 * Draws what is not on the screen after what is, one part after another, so that what the reader does
 * is let in between them. Gives back the way to leave it undrawn.
 */
export function inTurn(draw: () => void): () => void {
  waiting.add(draw);
  if (!going) {
    going = true;
    whenRested(next);
  }
  return () => {
    waiting.delete(draw);
  };
}

/** Tells once nothing waits to be drawn. Gives back the way to leave it untold. */
export function whenDrawn(tell: () => void): () => void {
  if (going) atRest.add(tell);
  else tell();
  return () => {
    atRest.delete(tell);
  };
}

/** Draws all that waits, for what looks for a part of it; it is there once this has come. */
export async function drawAll(): Promise<void> {
  while (waiting.size > 0) {
    const all = [...waiting];
    waiting.clear();
    for (const draw of all) draw();
    // The framework draws after the call, and what is drawn may have parts that wait.
    await new Promise((drawn) => {
      setTimeout(drawn);
    });
  }
}

/** Whether a part is drawn yet: at once, in its turn, or as soon as it is asked for. */
export function useTurn(atOnce: boolean): readonly [isDrawn: boolean, draw: () => void] {
  const [isDrawn, setDrawn] = useState(atOnce);
  const draw = useCallback(() => setDrawn(true), []);
  useLayoutEffect(() => (isDrawn ? undefined : inTurn(draw)), [isDrawn]);
  return [isDrawn, draw];
}
