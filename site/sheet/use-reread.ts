import { useEffect } from 'preact/hooks';
import { reenter } from '../../calculators/sheet/enter.ts';
import type { Engine } from '../../calculators/sheet/model.ts';

/** Enters the texts that could not be read when they were typed and can be now: an older page knew fewer units. */
export function useReread(
  engine: Engine | undefined,
  edit: (edit: (engine: Engine) => Engine) => void,
): void {
  const waiting = engine === undefined ? '' : JSON.stringify(engine.unread);
  useEffect(() => {
    edit((now) => reenter(now, { lengths: 'mm' }));
  }, [waiting, edit]);
}
