import { proseIn } from '../../calculators/frame/text/prose.ts';
import type { LengthDisplay } from '../../calculators/frame/text/units.ts';

interface Props {
  readonly id: string;
  /** What it is about, in lower case, for those who hear the button. */
  readonly about: string;
  readonly help: string;
  readonly measure?: string | undefined;
  readonly lengths: LengthDisplay;
}

/** What a figure is and how to measure it, behind one button at the end of its row. */
export function Help({ id, about, help, measure, lengths }: Props) {
  return (
    <details class="help">
      <summary aria-label={`About ${about}`}>?</summary>
      <p id={`${id}-help`}>{proseIn(help, lengths)}</p>
      {measure === undefined ? null : (
        <p class="help-measure">
          <b>To measure it:</b> {proseIn(measure, lengths)}
        </p>
      )}
    </details>
  );
}
