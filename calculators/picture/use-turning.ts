import { useEffect, useRef, useState } from 'preact/hooks';

/** One turn takes eight seconds: slow enough to see what happens. */
const DEGREES_PER_SECOND = 45;
/** Where the reader wants no movement, each press turns it on by so much. */
const STEP = 10;

const wantsNoMovement = (): boolean => matchMedia('(prefers-reduced-motion: reduce)').matches;

interface Turning {
  /** Where it stands at rest, degrees. */
  readonly at: number;
  /** Whether the angle grows as it turns. */
  readonly grows: boolean;
  /** Brings an angle into the turn that is written. */
  readonly wrapped: (angle: number) => number;
  /** Takes the place where it comes to rest. */
  readonly rest: (at: number) => void;
}

/**
 * A shaft turning by itself in the picture. Where it stands while it turns is kept here; where it
 * comes to rest is given to `rest`, so that the address takes one step and nothing is announced
 * sixty times a second.
 */
export function useTurning({ at, grows, wrapped, rest }: Turning) {
  const [turning, setTurning] = useState(false);
  const [seen, setSeen] = useState(at);
  const last = useRef(at);
  const way = grows ? 1 : -1;

  useEffect(() => {
    if (!turning) return undefined;
    let before: number | undefined;
    let frame = requestAnimationFrame(function next(now) {
      const seconds = (now - (before ?? now)) / 1000;
      last.current = wrapped(last.current + way * seconds * DEGREES_PER_SECOND);
      before = now;
      setSeen(last.current);
      frame = requestAnimationFrame(next);
    });
    return () => cancelAnimationFrame(frame);
  }, [turning, way, wrapped]);

  const stop = (): void => setTurning(false);
  const toggle = (): void => {
    if (turning) {
      stop();
      rest(seen);
    } else if (wantsNoMovement()) {
      rest(wrapped(at + way * STEP));
    } else {
      last.current = wrapped(at);
      setSeen(last.current);
      setTurning(true);
    }
  };
  return { at: turning ? seen : at, turning, toggle, stop };
}
