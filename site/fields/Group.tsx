import type { ComponentChildren } from 'preact';
import type { Field } from '../../calculators/frame/field/fields.ts';
import { labelOf } from '../../calculators/frame/rests-on.ts';
import { inputLines } from '../../calculators/frame/summary.ts';
import type { LengthDisplay } from '../../calculators/frame/text/units.ts';
import { inSentence } from '../../calculators/frame/text/sentence.ts';
import { useUnfolded } from './use-unfolded.ts';
import { marksOf } from './whose-mark.ts';

interface Props {
  readonly heading: string;
  readonly fields: readonly Field[];
  readonly lengths: LengthDisplay;
  readonly marked: boolean;
  /** Whether it is a side question. */
  readonly side: boolean;
  readonly children: ComponentChildren;
}

/** What a group holds, on one line. */
const contents = (fields: readonly Field[], lengths: LengthDisplay): string =>
  fields
    .flatMap((field) =>
      // What stands for a text that is refused is nobody's: neither the link's nor the reader's.
      field.problem === undefined
        ? inputLines([field], lengths)
        : [{ label: labelOf(field), text: 'refused' }],
    )
    .map(({ label, text }) => `${inSentence(label)}: ${text}`)
    .join(' · ');

/**
 * A group of fields, folded to a line that says what it holds and whose it is. It opens by itself
 * where a field inside needs attention; what has been opened is never shut again.
 */
export function Group({ heading, fields, lengths, marked, side, children }: Props) {
  const [open, setOpen] = useUnfolded(fields.some(({ problem }) => problem !== undefined));
  return (
    <details
      class={side ? 'fold side' : 'fold'}
      open={open}
      onToggle={(event) => setOpen(event.currentTarget.open)}
    >
      <summary>
        <span class="fold-name">{heading}</span>
        {marked
          ? marksOf(fields).map((mark) => (
              <span class={`whose-figure whose-${mark}`} key={mark}>
                {mark}
              </span>
            ))
          : null}
        <span class="fold-holds">{contents(fields, lengths)}</span>
      </summary>
      {children}
    </details>
  );
}
