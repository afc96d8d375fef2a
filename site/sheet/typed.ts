import { useState } from 'preact/hooks';
import { rememberedText, rememberText } from './typed-texts.ts';

/**
 * The text of a box whose figure is kept elsewhere: as typed for as long as it means the figure
 * that stands (`2.20`, `18 thou`), else as the figure is written; a text not read yet comes first.
 *
 * @param place The box, of all boxes of all engines.
 */
export function useTyped(
  place: string,
  stands: string,
  unread: string | undefined,
): readonly [text: string, keep: (text: string, means: string) => void] {
  const [typed, setTyped] = useState<{ readonly text: string; readonly means: string } | undefined>(
    () => {
      const text = rememberedText(place, stands);
      return text === undefined ? undefined : { text, means: stands };
    },
  );
  const text = unread ?? (typed?.means === stands ? typed.text : stands);
  const keep = (next: string, means: string): void => {
    setTyped({ text: next, means });
    rememberText(place, next, means);
  };
  return [text, keep];
}
