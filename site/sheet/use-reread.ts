import { useEffect } from 'preact/hooks';
import { readFigure } from '../../calculators/frame/fields.ts';
import { setEntry, setFigure, setUnread, type Moment } from '../../calculators/sheet/edit.ts';
import { figureSpec, isFigureKey } from '../../calculators/sheet/figures.ts';
import type { Engine } from '../../calculators/sheet/model.ts';
import { isStepId, steps } from '../../calculators/sheet/steps.ts';

/** The engine with one waiting text entered, where it can be read now. */
function reread(engine: Engine, place: string): Engine {
  const text = engine.unread[place]!;
  const [kind, key, number] = place.split(':') as [string, string, string?];
  const reading = { lengths: 'mm' } as const;
  if (kind === 'figure' && isFigureKey(key)) {
    const field = readFigure(key, figureSpec(key), text, undefined, undefined, reading);
    return field.problem === undefined
      ? setFigure(setUnread(engine, place, undefined), key, field.value)
      : engine;
  }
  const spec = isStepId(key) ? steps[key].reading : undefined;
  if (!spec || !isStepId(key) || (kind !== 'found' && kind !== 'left')) return engine;
  const field = readFigure(
    key,
    { ...spec, help: '', optional: true },
    text,
    undefined,
    undefined,
    reading,
  );
  const moment: Moment = kind;
  return field.problem === undefined
    ? setEntry(
        setUnread(engine, place, undefined),
        key,
        moment,
        Number(number) - 1,
        field.value ?? null,
      )
    : engine;
}

/** Enters the texts that could not be read when they were typed and can be now: an older page knew fewer units. */
export function useReread(
  engine: Engine | undefined,
  edit: (edit: (engine: Engine) => Engine) => void,
): void {
  const waiting = engine === undefined ? '' : JSON.stringify(engine.unread);
  useEffect(() => {
    edit((now) => Object.keys(now.unread).reduce((so, place) => reread(so, place), now));
  }, [waiting, edit]);
}
