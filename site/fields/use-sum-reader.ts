import { useEffect, useState } from 'preact/hooks';
import type { SumReader, Sums } from '../../calculators/frame/field/sums.ts';

/** A fraction whose unit is still being typed looks like a sum for a moment. */
const PAUSE_MS = 400;

/**
 * What reads sums, and what is to be told of the texts that wait for it (none where it is empty):
 * the reader is fetched with the first, and tried again with the next where it did not come.
 */
export function useSumReader(): [Sums, (waiting: string) => void] {
  const [sums, setSums] = useState<{ readonly read: SumReader } | 'coming' | 'failed'>('coming');
  const [wanted, want] = useState('');
  useEffect(() => {
    if (wanted === '' || typeof sums === 'object') return undefined;
    let stale = false;
    const timer = setTimeout(() => {
      import('../../calculators/frame/field/sum-reader.ts').then(
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
  return [typeof sums === 'object' ? sums.read : sums, want];
}
