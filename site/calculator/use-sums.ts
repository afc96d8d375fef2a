import { useEffect, useState } from 'preact/hooks';
import type { Evaluation } from '../../calculators/frame/evaluate.ts';
import { withoutMarks } from '../../calculators/frame/parse.ts';
import { looksLikeSum, type SumReader, type Sums } from '../../calculators/frame/sums.ts';

/** A fraction whose unit is still being typed looks like a sum for a moment. */
const PAUSE_MS = 400;

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
    const timer = setTimeout(() => {
      import('../../calculators/frame/sum-reader.ts').then(
        ({ readSum }) => stale || setSums({ read: readSum }),
        () => stale || setSums('failed'),
      );
    }, PAUSE_MS);
    return () => {
      clearTimeout(timer);
      stale = true;
    };
    // Not asked for again at once where it failed, only with what is typed next.
  }, [wanted]);
  return [typeof sums === 'object' ? sums.read : sums, (evaluation) => want(sumsIn(evaluation))];
}
