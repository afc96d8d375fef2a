import { offeredIn } from '../../calculators/frame/field/offered.ts';
import { leaveFocus } from './leave-focus.ts';

interface Props {
  /** A sentence about the field that may say what to type. */
  readonly sentence: string | undefined;
  /** Types it; nothing is offered where nothing can be. */
  readonly onType: ((text: string) => void) | undefined;
}

/** A button for each text that a sentence tells the reader to type: one thumb puts it in. */
export function Offers({ sentence, onType }: Props) {
  if (sentence === undefined || onType === undefined) return null;
  const texts = offeredIn(sentence);
  if (texts.length === 0) return null;
  return (
    <p class="offers">
      {texts.map((text) => (
        <button key={text} type="button" onMouseDown={leaveFocus} onClick={() => onType(text)}>
          <span class="spoken">Put in </span>
          {text}
        </button>
      ))}
    </p>
  );
}
