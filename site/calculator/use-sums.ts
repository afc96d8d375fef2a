import type { Evaluation } from '../../calculators/frame/evaluate.ts';
import { withoutMarks } from '../../calculators/frame/field/parse.ts';
import { looksLikeSum, type Sums } from '../../calculators/frame/field/sums.ts';
import { useSumReader } from '../fields/use-sum-reader.ts';

/** The texts that nothing has read yet and that look like sums. */
const sumsIn = ({ fields, errorFields }: Evaluation): string =>
  [...fields, ...errorFields]
    .filter(({ problem, text }) => problem !== undefined && looksLikeSum(withoutMarks(text)))
    .map(({ text }) => text)
    .join('\n');

/** What reads sums, and what is to be told of each evaluation: the first sum that is typed, or comes by a link, fetches it. */
export function useSums(): [Sums, (evaluation: Evaluation) => void] {
  const [sums, want] = useSumReader();
  return [sums, (evaluation) => want(sumsIn(evaluation))];
}
