import { useEffect, useMemo, useState } from 'preact/hooks';
import { fromQuery, originsIn, withOwn } from '../../calculators/frame/address.ts';
import type { Origins, Texts } from '../../calculators/frame/evaluate.ts';
import { KEY } from '../opening/keeps-last.ts';
import { ownHere } from './use-address.ts';

/** The reader's last figures of a calculator: the query, and whose figures are in it. */
interface Last {
  readonly query: string;
  readonly own: unknown;
}

function all(): Record<string, unknown> {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? '{}');
    return typeof kept === 'object' && kept !== null ? { ...kept } : {};
  } catch {
    return {};
  }
}

const isLast = (kept: unknown): kept is Last =>
  typeof kept === 'object' && kept !== null && 'query' in kept && typeof kept.query === 'string';

/** Keeps the figures of the address as the last of a calculator, where the reader gave any of them. */
function keepLast(slug: string): void {
  const own = ownHere();
  if (typeof own !== 'object' || own === null || !Object.values(own).includes('yours')) return;
  try {
    const last: Last = { query: location.search.slice(1), own };
    localStorage.setItem(KEY, JSON.stringify({ ...all(), [slug]: last }));
  } catch {
    // A browser that keeps nothing has the address still.
  }
}

interface Figures {
  readonly texts: Texts;
  readonly origins: Origins;
}

/** The last figures of a calculator and whose they are; nothing where none are kept. */
function lastOf(slug: string): Figures | undefined {
  const last = all()[slug];
  if (!isLast(last)) return undefined;
  return { texts: fromQuery(last.query), origins: withOwn(originsIn(last.query), last.own) };
}

/**
 * Keeps what the reader gave to a calculator when its page is left, since a menu leads back to an
 * address without figures. Returns the way to put the last figures in; nothing where there are none.
 */
export function useLast(slug: string, put: (last: Figures) => void): (() => void) | undefined {
  const [last, setLast] = useState<Figures>();
  useEffect(() => {
    setLast(lastOf(slug));
    const keep = (): void => keepLast(slug);
    window.addEventListener('pagehide', keep);
    // A tab put away may be ended without another word.
    document.addEventListener('visibilitychange', keep);
    return () => {
      window.removeEventListener('pagehide', keep);
      document.removeEventListener('visibilitychange', keep);
    };
  }, [slug]);
  return useMemo(() => last && (() => put(last)), [last, put]);
}
