import { useEffect, useRef, useState } from 'preact/hooks';

/** One turn of the cam takes eight seconds: slow enough to see the points open and shut. */
const DEGREES_PER_SECOND = 45;
/** Where the reader wants no movement, each press turns the cam on by so much. */
const STEP = 10;

const wantsNoMovement = (): boolean => matchMedia('(prefers-reduced-motion: reduce)').matches;

/** Within half a turn of the middle of a lobe. */
const wrapped = (angle: number): number => angle - 360 * Math.round(angle / 360);

/**
 * The cam turning by itself in the picture. Where it stands while it turns is kept here; where it
 * comes to rest is given to `rest`, so that the address takes one step and nothing is announced
 * sixty times a second.
 */
export function useTurning(at: number, rest: (at: number) => void) {
  const [turning, setTurning] = useState(false);
  const [seen, setSeen] = useState(at);
  const last = useRef(at);

  useEffect(() => {
    if (!turning) return undefined;
    let before: number | undefined;
    let frame = requestAnimationFrame(function next(now) {
      const seconds = (now - (before ?? now)) / 1000;
      last.current = wrapped(last.current - seconds * DEGREES_PER_SECOND);
      before = now;
      setSeen(last.current);
      frame = requestAnimationFrame(next);
    });
    return () => cancelAnimationFrame(frame);
  }, [turning]);

  const stop = (): void => setTurning(false);
  const toggle = (): void => {
    if (turning) {
      stop();
      rest(seen);
    } else if (wantsNoMovement()) {
      rest(wrapped(at - STEP));
    } else {
      last.current = wrapped(at);
      setSeen(last.current);
      setTurning(true);
    }
  };
  return { at: turning ? seen : at, turning, toggle, stop };
}
