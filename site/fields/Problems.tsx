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

/** What is wrong with the figures, and why there is none of a result though nothing is wrong, once each. */
function entries({ problems, results }: InTheWay): { wrong: Entry[]; none: string[] } {
  const missing = Object.values(results).filter((value) => value instanceof Absent);
  const wrong = new Map<string, Entry>();
  for (const entry of [
    ...problems,
    ...missing.flatMap(({ why, at }): Entry[] => (at === undefined ? [] : [{ sentence: why }])),
  ]) {
    if (!wrong.has(entry.sentence)) wrong.set(entry.sentence, entry);
  }
  const none = missing.flatMap(({ why, at }) => (at === undefined ? [why] : []));
  return { wrong: [...wrong.values()], none: [...new Set(none)] };
}

/** The same as lines, to be heard after a pause: a figure half typed is not yet a fault. */
export function problemLines(evaluation: InTheWay): string[] {
  const { wrong, none } = entries(evaluation);
  return [...wrong.map(({ sentence }) => sentence), ...none];
}

/** Why there is none of a result, where nothing is wrong with the figures. */
export function ReasonsForNone({ evaluation }: Pick<Props, 'evaluation'>) {
  return entries(evaluation).none.map((why) => (
    <p class="why-none" key={why}>
      {why}
    </p>
  ));
}

/** Everything that is wrong and stands in the way of a result, in words, each tied to its field. */
export function Problems({ evaluation, idPrefix }: Props) {
  const list = entries(evaluation).wrong;
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
