import { createContext } from 'preact';
import { useEffect } from 'preact/hooks';
import { waitingSums } from '../../calculators/sheet/read-number.ts';
import type { Engine } from '../../calculators/sheet/model.ts';
import type { Sums } from '../../calculators/frame/field/sums.ts';
import { useSumReader } from '../fields/use-sum-reader.ts';

/** What reads the sums in the boxes of the sheet. */
export const SheetSums = createContext<Sums | undefined>(undefined);

/** The same for whoever offers it: fetched when the first sum of an engine waits for it. */
export function useSheetSums(engine: Engine | undefined): Sums {
  const [sums, want] = useSumReader();
  const waiting = engine ? waitingSums(engine) : '';
  useEffect(() => want(waiting), [waiting]);
  return sums;
}
