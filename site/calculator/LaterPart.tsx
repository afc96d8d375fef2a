import { render, type ComponentChildren } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { AS_SERVED } from '../browser/as-served.ts';
import { hydrateInPlace } from '../browser/hydrate.ts';
import { TOUCHES } from '../browser/touches.ts';

interface Props {
  readonly class: string;
  readonly 'data-part'?: string;
  readonly children: ComponentChildren;
}

const Served = (props: Props) => <div {...props} />;

function Later({ children, ...marks }: Props) {
  const place = useRef<HTMLDivElement>(null);
  const shown = useRef(children);
  const latest = useRef(children);
  const show = useRef<() => void>();
  latest.current = children;
  useLayoutEffect(() => {
    const part = place.current!;
    const asServed = new AbortController();
    const { signal } = asServed;
    const use = (): void => {
      if (!signal.aborted) {
        asServed.abort();
        // As it was served, and then as it has become: what is taken into use is not looked through
        // for what differs.
        hydrateInPlace(shown.current, part);
      }
      if (latest.current === shown.current) return;
      shown.current = latest.current;
      render(latest.current, part);
    };
    show.current = use;
    for (const type of TOUCHES) part.addEventListener(type, use, { capture: true, signal });
    // After the paint and what the reader does next.
    requestAnimationFrame(() => setTimeout(() => setTimeout(use)));
  }, []);
  useLayoutEffect(() => {
    if (children !== shown.current) show.current!();
  }, [children]);
  return <div {...marks} ref={place} dangerouslySetInnerHTML={AS_SERVED} />;
}

/**
 * A part that is taken into use after the paint that the reader waits for, and before a touch that is
 * meant for it or as soon as it changes: what the server rendered stands in it meanwhile. What its
 * children work out is worked out no sooner.
 */
export const LaterPart = typeof document === 'undefined' ? Served : Later;
