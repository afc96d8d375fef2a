import { useLayoutEffect, useRef } from 'preact/hooks';
import { AS_SERVED } from '../browser/as-served.ts';
import { Outline } from './Outline.tsx';

/** The one that the server rendered. */
let served: Element | null = null;

function Again() {
  const place = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const now = place.current!;
    served ??= now.firstElementChild;
    if (served && served.parentElement !== now) now.append(served);
  }, []);
  return <div ref={place} dangerouslySetInnerHTML={AS_SERVED} />;
}

/** The order of work before there is an engine: nothing in it needs a script, so none draws it. */
export const ServedOutline = import.meta.env.SSR
  ? () => (
      <div>
        <div class="outline">
          <Outline />
        </div>
      </div>
    )
  : Again;
