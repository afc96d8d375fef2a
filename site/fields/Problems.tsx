import type { Evaluation } from '../../calculators/frame/evaluate.ts';
import { Absent } from '../../calculators/frame/types.ts';
import { held } from '../browser/one-line.ts';
import { fieldId } from './FieldNotes.tsx';

/** What may stand in the way of a result. */
export type InTheWay = Pick<Evaluation, 'problems' | 'results'>;

interface Props {
  readonly evaluation: InTheWay;
  readonly idPrefix: string;
}

interface Entry {
  readonly sentence: string;
  readonly key?: string | undefined;
}

function entries(evaluation: InTheWay): Entry[] {
  const list: Entry[] = evaluation.problems.map(({ sentence, key }) => ({ sentence, key }));
  for (const value of Object.values(evaluation.results)) {
    if (value instanceof Absent) list.push({ sentence: value.why });
  }
  const seen = new Set<string>();
  return list.filter(({ sentence }) => {
    if (seen.has(sentence)) return false;
    seen.add(sentence);
    return true;
  });
}

/** The same as lines, to be heard after a pause: a figure half typed is not yet a fault. */
export const problemLines = (evaluation: InTheWay): string[] =>
  entries(evaluation).map(({ sentence }) => sentence);

/** Everything that stands in the way of a result, in words, each tied to its field. */
export function Problems({ evaluation, idPrefix }: Props) {
  const list = entries(evaluation);
  return (
    <div role="alert" aria-live="off" class="problems">
      {list.length === 0 ? null : (
        <ul>
          {list.map(({ sentence, key }) => (
            <li key={sentence}>
              {key === undefined ? (
                sentence
              ) : (
                <a href={`#${fieldId(idPrefix, key)}`}>{held(sentence)}</a>
              )}
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}
