import { useEffect } from 'preact/hooks';
import type { Sums } from '../../calculators/frame/field/sums.ts';
import { reenter } from '../../calculators/sheet/enter.ts';
import type { Engine } from '../../calculators/sheet/model.ts';
import { today } from '../browser/today.ts';

/**
 * Enters the texts that could not be read when they were typed and can be now: an older page knew
 * fewer units, or the reader of sums had not come. Only the tab that the reader is at does so: what is
 * typed in another is entered there, and storage that two tabs write to loses the one or the other.
 */
export function useReread(
  engine: Engine | undefined,
  edit: (edit: (engine: Engine) => Engine) => void,
  sums: Sums,
): void {
  const waiting = engine === undefined ? '' : JSON.stringify(engine.unread);
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const reread = (): void => {
      if (!document.hasFocus()) return;
      // A box that is being typed into enters its own text first, in the manner in which it was typed.
      timer = setTimeout(() => edit((now) => reenter(now, { lengths: 'mm', sums }, today())));
    };
    reread();
    window.addEventListener('focus', reread);
    return () => {
      clearTimeout(timer);
      window.removeEventListener('focus', reread);
    };
  }, [waiting, edit, sums]);
}
