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

function addressOf({ slug, query, from }: Onward, { fields }: Evaluation): string {
  const invented = fields.some((field) => among(from, field.key) && isExample(field));
  const texts = new URLSearchParams({ ...query, ...(invented ? { example: 'all' } : {}) });
  return pageAddress(slug, texts.toString());
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
