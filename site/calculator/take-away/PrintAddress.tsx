import { useEffect, useRef } from 'preact/hooks';
import { toQuery } from '../../../calculators/frame/address.ts';
import type { AnyCalculator } from '../../../calculators/frame/types.ts';
import { siteAddress } from '../../browser/site-address.ts';
import type { Now } from '../state.ts';

interface Props {
  readonly calculator: AnyCalculator;
  readonly now: Now;
}

/** The address of the calculation, written down when the page goes to paper. */
export function PrintAddress({ calculator, now }: Props) {
  const line = useRef<HTMLParagraphElement>(null);
  useEffect(() => {
    const write = (): void => {
      const page = new URL(siteAddress(`calculators/${calculator.slug}/`), location.href);
      line.current!.textContent = `${page.href}?${toQuery(now().evaluation)}`;
    };
    addEventListener('beforeprint', write);
    return () => removeEventListener('beforeprint', write);
  }, [calculator, now]);
  return <p class="print-address" ref={line} />;
}
