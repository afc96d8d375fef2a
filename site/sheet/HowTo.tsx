import { proseIn } from '../../calculators/frame/text/prose.ts';
import type { LengthDisplay } from '../../calculators/frame/text/units.ts';

interface Props {
  readonly how: readonly string[];
  readonly lengths: LengthDisplay;
}

/** What to do at a step, one act after another. */
export function HowTo({ how, lengths }: Props) {
  if (how.length === 1) return <p>{proseIn(how[0]!, lengths)}</p>;
  return (
    <ol class="task-how">
      {how.map((act) => (
        <li key={act}>{proseIn(act, lengths)}</li>
      ))}
    </ol>
  );
}
