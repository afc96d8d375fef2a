import { useEffect, useRef, useState } from 'preact/hooks';

interface Props {
  /** What stands on the page, a line each. */
  readonly lines: readonly string[];
  /** How often they were asked for again: all of them are read then, at once. */
  readonly asked?: number;
}

/** Long enough that somebody who types is not spoken to between two keys. */
const PAUSE_MS = 900;
/** Long enough that a page is seen without the words that come back. */
const SOON_MS = 100;

/** Lines one after another, each ended once. */
const joined = (lines: readonly string[]): string =>
  lines.reduce((before, line) => `${before}${/[.!?:]$/.test(before) ? ' ' : '. '}${line}`);

/**
 * Reads the lines that have changed to those who hear the page: once, after a pause, while the
 * figures themselves change in silence.
 */
export function Spoken({ lines, asked = 0 }: Props) {
  const heard = useRef(lines);
  const [said, say] = useState('');
  const text = lines.join('\n');
  useEffect(() => {
    const timer = setTimeout(() => {
      const fresh = lines.filter((line) => !heard.current.includes(line));
      heard.current = lines;
      // What stands no more is not left behind for who reads line by line.
      say(fresh.length === 0 ? '' : joined(fresh));
    }, PAUSE_MS);
    return () => clearTimeout(timer);
  }, [text]);
  useEffect(() => {
    if (asked === 0) return undefined;
    heard.current = lines;
    // The same words over again are no change, and a change is what is read.
    say('');
    const timer = setTimeout(() => say(lines.length === 0 ? '' : joined(lines)), SOON_MS);
    return () => clearTimeout(timer);
  }, [asked]);
  return (
    <p class="spoken" role="status">
      {said}
    </p>
  );
}
