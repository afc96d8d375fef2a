import type { Evaluation } from '../../calculators/frame/evaluate.ts';
import { labelOf } from '../../calculators/frame/rests-on.ts';
import { inSentence } from '../../calculators/frame/text/sentence.ts';
import { fieldId } from '../fields/FieldNotes.tsx';

interface Props {
  readonly evaluation: Evaluation;
  readonly idPrefix: string;
  /** Whether the page holds the field of a key, to jump to. */
  readonly holds: (key: string) => boolean;
}

/** Names that are put one by one: with more, the list under the answer says it better. */
const NAMED = 3;

/** What stands in place of a picture: which figures keep it from being drawn, with a way to each. */
export function NothingDrawn({ evaluation, idPrefix, holds }: Props) {
  const { fields, errorFields, problems } = evaluation;
  const keys = new Set(problems.map(({ key }) => key));
  const refused = [...fields, ...errorFields].filter(({ key }) => keys.has(key)).slice(0, NAMED);
  return (
    <p class="no-picture">
      There is nothing to draw until {refused.length === 0 ? 'the figures are' : 'this is'} put
      right{refused.length === 0 ? '.' : ': '}
      {refused.map((field, index) => {
        const name = inSentence(labelOf(field));
        const end = index === refused.length - 1 ? '.' : ', ';
        return (
          <span key={field.key}>
            {holds(field.key) ? <a href={`#${fieldId(idPrefix, field.key)}`}>{name}</a> : name}
            {end}
          </span>
        );
      })}
    </p>
  );
}
