import { useEffect, useState } from 'preact/hooks';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import type { Filled } from '../sheet/for-calculator.ts';

/** Whether this browser keeps an engine sheet at all; only then is its code fetched. */
export function keepsSheet(): boolean {
  try {
    return localStorage.getItem('gudgeon.sheet') !== null;
  } catch {
    return false;
  }
}

const linked = (): boolean => location.search !== '';

/**
 * The reader's own engine, with its figures for a calculator opened without any in its address. A
 * link's missing keys take the defaults, so an address with a query gets no figure from the sheet.
 */
export function useOwnSheet(calculator: AnyCalculator, active: boolean): Filled | undefined {
  const [filled, setFilled] = useState<Filled>();
  useEffect(() => {
    if (!active || !keepsSheet()) return undefined;
    const byLink = linked();
    let stale = false;
    import('../sheet/for-calculator.ts').then(
      ({ filledFor }) => {
        if (stale) return;
        const found = filledFor(calculator);
        // Figures that the reader has typed meanwhile have made an address: it holds them.
        setFilled(found && (byLink || linked()) ? { ...found, texts: {}, origins: {} } : found);
      },
      () => {
        // Without the sheet's code the defaults stand; nothing typed is touched.
      },
    );
    return () => {
      stale = true;
    };
  }, [calculator, active]);
  return filled;
}
