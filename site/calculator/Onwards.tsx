import type { Evaluation } from '../../calculators/frame/evaluate.ts';
import type { AnyCalculator, Onward } from '../../calculators/frame/types.ts';
import { isExample } from '../../calculators/frame/whose-field.ts';
import { pageAddress } from './page-address.ts';

interface Props {
  readonly calculator: AnyCalculator;
  readonly evaluation: Evaluation;
}

/** Whether a field is one of these inputs, or a member of one. */
const among = (keys: readonly string[], field: string): boolean =>
  keys.includes(field) || keys.includes(field.replace(/-\d+$/, ''));

/** Which of the figures that go on nobody gave: all where what they are worked out from is the example's. */
function nobodys({ query, from }: Onward, fields: Evaluation['fields']): string {
  if (fields.some((field) => among(from, field.key) && isExample(field))) return 'all';
  return fields
    .filter(({ key, origin }) => Object.hasOwn(query, key) && origin === 'example')
    .map(({ key }) => key)
    .join(',');
}

function addressOf(way: Onward, { fields }: Evaluation): string {
  const example = nobodys(way, fields);
  const texts = new URLSearchParams({ ...(example === '' ? {} : { example }), ...way.query });
  return pageAddress(way.slug, texts.toString());
}

/** Links to the calculators that take these figures on. */
export function Onwards({ calculator, evaluation }: Props) {
  if (!calculator.onwards || !evaluation.computed) return null;
  const ways = calculator.onwards(evaluation.values as never, evaluation.results as never);
  if (ways.length === 0) return null;
  return (
    <ul class="onwards">
      {ways.map((way) => (
        <li key={way.slug}>
          <a href={addressOf(way, evaluation)}>{way.words}</a>
        </li>
      ))}
    </ul>
  );
}
