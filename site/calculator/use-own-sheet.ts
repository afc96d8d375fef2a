import { useEffect, useState } from 'preact/hooks';
import { fromQuery } from '../../calculators/frame/address.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import { sheetRead } from '../opening/answering.ts';
import { keepsSheet } from '../opening/keeps-sheet.ts';
import type { Filled } from '../sheet/for-calculator.ts';

/** What the engine in use fills into a calculator, or nothing; its code is fetched when it is asked for. */
export const takeOwnSheet = async (calculator: AnyCalculator): Promise<Filled | undefined> =>
  (await import('../sheet/for-calculator.ts')).filledFor(calculator);

/** Whether an address holds figures, and not only choices of what is to be shown. */
export const givesFigures = ({ inputs }: AnyCalculator, query: string): boolean =>
  Object.keys(fromQuery(query)).some((key) => inputs[key]?.kind !== 'choice');

/**
 * The reader's own engine, with its figures for a calculator opened without any in its address. A
 * link's missing keys take the defaults, so an address with a figure gets none from the sheet until
 * the reader asks for it.
 */
export function useOwnSheet(
  calculator: AnyCalculator,
): [Filled | undefined, (filled: Filled) => void] {
  const [filled, setFilled] = useState<Filled>();
  useEffect(() => {
    if (!keepsSheet()) return undefined;
    const linked = (): boolean => givesFigures(calculator, location.search);
    const byLink = linked();
    let stale = false;
    void takeOwnSheet(calculator)
      .then(
        (own) => {
          if (stale) return;
          // Figures that the reader has typed meanwhile have made an address: it holds them.
          setFilled(own && (byLink || linked()) ? { ...own, texts: {}, origins: {} } : own);
        },
        () => {
          // Without the sheet's code the defaults stand; nothing typed is touched.
        },
      )
      .then(sheetRead);
    return () => {
      stale = true;
    };
  }, [calculator]);
  return [filled, setFilled];
}
