import { useEffect, useRef } from 'preact/hooks';
import { withoutMarks } from '../../calculators/frame/field/parse.ts';
import { looksLikeSum, type Sums } from '../../calculators/frame/field/sums.ts';

/**
 * Types a text again that waited for the reader of sums, once that has come, in the manner in which
 * it was typed; a box that was left meanwhile is settled then. Gives back what is to be told of each text typed.
 */
export function useAgain(
  sums: Sums | undefined,
  type: (kept: string) => void,
  { id, settle }: { readonly id: string; readonly settle?: () => void },
): (kept: string) => void {
  const waits = useRef<string>();
  useEffect(() => {
    const text = waits.current;
    waits.current = undefined;
    if (typeof sums !== 'function' || text === undefined) return;
    type(text);
    if (document.activeElement?.id !== id) settle?.();
  }, [sums]);
  return (kept) => {
    const waiting = typeof sums !== 'function' && looksLikeSum(withoutMarks(kept));
    waits.current = waiting ? kept : undefined;
  };
}
