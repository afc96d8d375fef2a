import { useState } from 'preact/hooks';
import { withoutMarks } from '../../calculators/frame/field/parse.ts';
import { looksLikeSum } from '../../calculators/frame/field/sums.ts';
import { canKeep, placeOf, type Box } from '../../calculators/sheet/box-places.ts';
import { UNNAMED, type Engine } from '../../calculators/sheet/model.ts';
import { rememberedText, rememberText } from './typed-texts.ts';

/** How a box is written where nothing stands. */
const nothing = ({ kind }: Box): string => (kind === 'name' ? UNNAMED : '');

const isSum = (text: string): boolean => looksLikeSum(withoutMarks(text));

/** Remembers how a reading or a figure was typed; of a sum what it comes to. */
export const rememberTyped = (engine: Engine, box: Box, text: string, means: string): void =>
  rememberText(`${engine.id} ${placeOf(box)}`, isSum(text) ? means : text, means);

/** The text of a figure or a reading that stands: as it was typed here, else as it is written. */
export const standingText = (engine: Engine, box: Box, stands: string): string =>
  rememberedText(`${engine.id} ${placeOf(box)}`, stands) ?? stands;

/** Whether a text as typed (`2.20`, `18 thou`) is worth more than the value as it is written. */
const isFigure = ({ kind }: Box): boolean => kind !== 'name' && kind !== 'notes';

/**
 * The text of a box whose value is kept in the engine: as typed for as long as it means what
 * `stands` (`2.20`, `18 thou`), else as that is written; a text that was refused comes first.
 * `keep` is told of each text typed and what it means: nothing where it is refused. `settle` writes a
 * sum as what it comes to, for when it is left: only the figure is kept.
 */
export function useTyped(
  engine: Engine,
  box: Box,
  stands: string,
): readonly [
  text: string,
  keep: (text: string, means: string | undefined) => void,
  settle: () => void,
] {
  const place = placeOf(box);
  const [typed, setTyped] = useState<{ readonly text: string; readonly means: string } | undefined>(
    () => {
      return isFigure(box) ? { text: standingText(engine, box, stands), means: stands } : undefined;
    },
  );
  const keep = (text: string, means: string | undefined): void => {
    if (means !== undefined) {
      setTyped({ text, means });
      if (isFigure(box)) rememberTyped(engine, box, text, means);
      // Too long for the engine to keep, it stays here for as long as nothing else stands.
    } else if (!canKeep(place, text)) {
      setTyped({ text, means: box.kind === 'reading' ? stands : nothing(box) });
    }
  };
  const settle = (): void => setTyped((now) => (now && isSum(now.text) ? undefined : now));
  return [engine.unread[place] ?? (typed?.means === stands ? typed.text : stands), keep, settle];
}
