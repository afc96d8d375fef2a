import { useState } from 'preact/hooks';

/** Whether the reader has fingers and no mouse: then a pad of digits covers the screen's foot. */
const touched = (): boolean => matchMedia('(pointer: coarse)').matches;

const boxOf = (target: EventTarget | null): HTMLInputElement | undefined =>
  target instanceof HTMLInputElement && target.type === 'text' ? target : undefined;

interface Watch {
  readonly onFocusIn: (event: FocusEvent) => void;
  readonly onFocusOut: () => void;
}

/** The box that is typed into by touch, for the keys that its pad lacks; `watch` goes to what holds the boxes. */
export function useTouchedBox(): [box: HTMLInputElement | undefined, watch: Watch] {
  const [box, setBox] = useState<HTMLInputElement>();
  return [
    box,
    {
      onFocusIn: ({ target }) => setBox(touched() ? boxOf(target) : undefined),
      onFocusOut: () => setBox(undefined),
    },
  ];
}
