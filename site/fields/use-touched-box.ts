import type { RefObject } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';

/** Whether the reader has fingers and no mouse: then a pad of digits covers the screen's foot. */
const touched = (): boolean => matchMedia('(pointer: coarse)').matches;

const boxOf = (target: EventTarget | null): HTMLInputElement | undefined =>
  target instanceof HTMLInputElement && target.type === 'text' ? target : undefined;

interface Watch<Holder> {
  readonly ref: RefObject<Holder>;
  readonly onFocusIn: (event: FocusEvent) => void;
  readonly onFocusOut: () => void;
}

/** The box that is typed into by touch, for the keys that its pad lacks; `watch` goes to what holds the boxes. */
export function useTouchedBox<Holder extends HTMLElement>(): [
  box: HTMLInputElement | undefined,
  watch: Watch<Holder>,
] {
  const [box, setBox] = useState<HTMLInputElement>();
  const holder = useRef<Holder>(null);
  // The touch that woke the page came before anybody watched.
  useLayoutEffect(() => {
    const { activeElement } = document;
    if (touched() && holder.current?.contains(activeElement)) setBox(boxOf(activeElement));
  }, []);
  return [
    box,
    {
      ref: holder,
      onFocusIn: ({ target }) => setBox(touched() ? boxOf(target) : undefined),
      onFocusOut: () => setBox(undefined),
    },
  ];
}
