import { useEffect, useState } from 'preact/hooks';
import type { Evaluation } from '../../calculators/frame/evaluate.ts';
import { withoutMarks } from '../../calculators/frame/parse.ts';
import { looksLikeSum, type SumReader, type Sums } from '../../calculators/frame/sums.ts';

/** The texts that nothing has read yet and that look like sums. */
const sumsIn = ({ fields, errorFields }: Evaluation): string =>
  [...fields, ...errorFields]
    .filter(({ problem, text }) => problem !== undefined && looksLikeSum(withoutMarks(text)))
    .map(({ text }) => text)
    .join('\n');

/**
 * What reads sums, and what is to be told of each evaluation: the reader is fetched when the first
 * sum is typed or comes by a link, and tried again with the next where it did not come.
 */
export function useSums(): [Sums, (evaluation: Evaluation) => void] {
  const [sums, setSums] = useState<{ readonly read: SumReader } | 'coming' | 'failed'>('coming');
  const [wanted, want] = useState('');
  useEffect(() => {
    if (wanted === '' || typeof sums === 'object') return undefined;
    let stale = false;
    import('../../calculators/frame/sum-reader.ts').then(
      ({ readSum }) => stale || setSums({ read: readSum }),
      () => stale || setSums('failed'),
    );
    return () => {
      stale = true;
    };
    // Not asked for again at once where it failed, only with what is typed next.
  }, [wanted]);
  return [typeof sums === 'object' ? sums.read : sums, (evaluation) => want(sumsIn(evaluation))];
}
