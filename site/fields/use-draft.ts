import { useState } from 'preact/hooks';
import type { FigureField } from '../../calculators/frame/field/fields.ts';
import type { LengthDisplay } from '../../calculators/frame/text/units.ts';
import { textInField } from './field-text.ts';

interface Draft {
  readonly typed: string;
  readonly kept: string;
  readonly lengths: LengthDisplay;
}

/**
 * The text of a field: as it was typed for as long as that is what is kept, else as what is kept is
 * written, so that nothing is rewritten under the reader's hand. `keep` is told of each text typed
 * and what is kept of it.
 */
export function useDraft(
  field: FigureField,
  lengths: LengthDisplay,
): readonly [text: string, keep: (typed: string, kept: string) => void] {
  const [draft, setDraft] = useState<Draft>();
  const live = draft?.kept === field.text && draft.lengths === lengths;
  return [
    live ? draft.typed : textInField(field, lengths),
    (typed, kept) => setDraft({ typed, kept, lengths }),
  ];
}
