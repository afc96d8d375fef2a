import { useEffect, useState } from 'preact/hooks';

/** Long enough that a hand that goes on working is not spoken to. */
const PAUSE_MS = 500;

/** A text once it has stood still for a moment; each is said anew even if it is the same. */
export function useSaid(text: string, again: number): string {
  const [said, say] = useState('');
  useEffect(() => {
    const timer = setTimeout(() => say(text), PAUSE_MS);
    return () => clearTimeout(timer);
  }, [text, again]);
  return said;
}
