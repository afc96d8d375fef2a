import { useState } from 'preact/hooks';

/**
 * The text of a box whose figure is kept elsewhere: as typed for as long as it means the figure
 * that stands (`2.20`, `2 in`), else as the figure is written; a text not read yet comes first.
 */
export function useTyped(
  stands: string,
  unread: string | undefined,
): readonly [text: string, keep: (text: string, means: string) => void] {
  const [typed, setTyped] = useState<{ readonly text: string; readonly means: string }>();
  const text = unread ?? (typed?.means === stands ? typed.text : stands);
  return [text, (next, means) => setTyped({ text: next, means })];
}
