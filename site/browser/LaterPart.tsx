import { render, type ComponentChildren } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { AS_SERVED } from './as-served.ts';
import { hydrateInPlace } from './hydrate.ts';
import { TOUCHES } from './touches.ts';

interface Props {
  readonly class: string;
  readonly children: ComponentChildren;
}

const Served = (props: Props) => <div {...props} />;

function Later({ class: name, children }: Props) {
  const place = useRef<HTMLDivElement>(null);
  const first = useRef(children);
  const latest = useRef(children);
  const inUse = useRef(false);
  latest.current = children;
  useLayoutEffect(() => {
    const part = place.current!;
    const asServed = new AbortController();
    const { signal } = asServed;
    const use = (): void => {
      if (signal.aborted) return;
      asServed.abort();
      // As it was served, and then as it has become: what is taken into use is not looked through for
      // what differs.
      hydrateInPlace(first.current, part);
      if (latest.current !== first.current) render(latest.current, part);
      inUse.current = true;
    };
    for (const type of TOUCHES) part.addEventListener(type, use, { capture: true, signal });
    // After the paint and what the reader does next.
    requestAnimationFrame(() => setTimeout(() => setTimeout(use)));
  }, []);
  useLayoutEffect(() => {
    if (inUse.current) render(children, place.current!);
  }, [children]);
  return <div class={name} ref={place} dangerouslySetInnerHTML={AS_SERVED} />;
}

/**
 * A part that is taken into use after the paint that the reader waits for, and before a touch that is meant
 * for it: what the server rendered stands in it meanwhile.
 */
export const LaterPart = typeof document === 'undefined' ? Served : Later;
