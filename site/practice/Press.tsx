import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

interface Props {
  readonly onPress: () => void;
  readonly label?: string;
  readonly repeats?: boolean;
  readonly pressed?: boolean;
  readonly class?: string;
  readonly children: ComponentChildren;
}

const WAIT_MS = 400;
const EVERY_MS = 70;

/** A button of the bench. One that repeats goes on for as long as it is held. */
export function Press({ onPress, label, repeats = false, pressed, children, ...rest }: Props) {
  const latest = useRef(onPress);
  latest.current = onPress;
  const timer = useRef<ReturnType<typeof setTimeout>>();
  const repeated = useRef(false);
  const stop = (): void => clearTimeout(timer.current);
  const again = (): void => {
    repeated.current = true;
    latest.current();
    timer.current = setTimeout(again, EVERY_MS);
  };
  const start = (): void => {
    repeated.current = false;
    stop();
    if (repeats) timer.current = setTimeout(again, WAIT_MS);
  };
  useEffect(() => stop, []);
  return (
    <button
      type="button"
      class={`press ${rest.class ?? ''}`}
      aria-label={label}
      aria-pressed={pressed}
      onPointerDown={start}
      onPointerUp={stop}
      onPointerLeave={stop}
      onPointerCancel={stop}
      onContextMenu={(event) => {
        if (repeats) event.preventDefault();
      }}
      onClick={() => {
        if (!repeated.current) onPress();
        repeated.current = false;
      }}
    >
      {children}
    </button>
  );
}
