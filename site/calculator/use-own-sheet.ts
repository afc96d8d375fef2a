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

/**
 * The figures of the reader's own engine for a calculator opened without any in its address. A
 * link's missing keys take the defaults, so an address with a query gets nothing from the sheet.
 */
export function useOwnSheet(calculator: AnyCalculator, active: boolean): Filled | undefined {
  const [filled, setFilled] = useState<Filled>();
  useEffect(() => {
    if (!active || location.search !== '' || !keepsSheet()) return undefined;
    let stale = false;
    import('../sheet/for-calculator.ts').then(
      ({ filledFor }) => {
        if (!stale && location.search === '') setFilled(filledFor(calculator));
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
