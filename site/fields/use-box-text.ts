import { useLayoutEffect, useRef, useState } from 'preact/hooks';

/**
 * What ties a box to its text. A browser lays the whole page out at once when the box in use is
 * written to, so that one is written last, when all else that a key changes stands.
 */
export function useBoxText(text: string) {
  const ref = useRef<HTMLInputElement>(null);
  const [defaultValue] = useState(text);
  useLayoutEffect(() => {
    const box = ref.current!;
    if (box.value === text) return;
    const write = (): void => {
      box.value = text;
    };
    if (box === document.activeElement) queueMicrotask(write);
    else write();
  });
  return { ref, defaultValue };
}
