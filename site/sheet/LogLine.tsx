import { dayWords } from '../../calculators/sheet/log.ts';
import { kindWords } from '../../calculators/sheet/log-words.ts';
import type { LogEntry } from '../../calculators/sheet/log-entry.ts';

interface Props {
  readonly words: string;
  readonly entry: LogEntry;
  readonly takeOut: () => void;
}

/** One entry of the log: what it says, its day and how it was read, and the way to take it out. */
export const LogLine = ({ words, entry: { on, kind }, takeOut }: Props) => (
  <li>
    <span>
      <b>{words}</b> {[dayWords(on), kindWords[kind]].filter(Boolean).join(', ')}
    </span>
    <button type="button" class="as-link" aria-label={`Take out ${words}`} onClick={takeOut}>
      Take out
    </button>
  </li>
);
