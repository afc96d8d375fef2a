import { useEffect, useRef, useState } from 'preact/hooks';
import type { LengthDisplay } from '../../calculators/frame/units.ts';
import { engineFragment } from '../../calculators/sheet/link.ts';
import type { Engine } from '../../calculators/sheet/model.ts';
import { sheetSummary } from '../../calculators/sheet/summary.ts';

export interface Copied {
  readonly what: string;
  readonly text: string;
  readonly done: boolean;
}

/** Copies a text, or says that it has to be copied by hand. */
export async function copyText(what: string, text: string): Promise<Copied> {
  try {
    await navigator.clipboard.writeText(text);
    return { what, text, done: true };
  } catch {
    return { what, text, done: false };
  }
}

interface Props {
  readonly engine: Engine;
  readonly lengths: LengthDisplay;
  readonly copied: Copied | undefined;
  readonly setCopied: (copied: Copied) => void;
}

/** The whole engine as a link (with its size), as a text, and on paper. */
export function ShareSheet({ engine, lengths, copied, setCopied }: Props) {
  const [fragment, setFragment] = useState('');
  const box = useRef<HTMLTextAreaElement>(null);

  useEffect(() => {
    let stale = false;
    void engineFragment(engine).then((made) => {
      if (!stale) setFragment(made);
    });
    return () => {
      stale = true;
    };
  }, [engine]);
  useEffect(() => {
    if (copied && !copied.done) box.current?.select();
  }, [copied]);

  const link = (): string => `${location.origin}${location.pathname}#${fragment}`;
  const copy = async (what: string, text: string): Promise<void> =>
    setCopied(await copyText(what, text));

  return (
    <section class="sheet-share" aria-labelledby="share-the-sheet">
      <h2 id="share-the-sheet">Print and share</h2>
      <p>
        The link holds the whole engine and nothing else is stored anywhere:{' '}
        <output name="link-size">{fragment.length.toLocaleString('en-GB')}</output> characters after
        the #. {fragment.length > 2000 ? 'Some messengers cut links longer than 2000.' : ''}
      </p>
      <div class="bar-buttons">
        <button type="button" onClick={() => window.print()}>
          Print the sheet
        </button>
        <button type="button" disabled={fragment === ''} onClick={() => void copy('Link', link())}>
          Copy the link
        </button>
        <button
          type="button"
          disabled={fragment === ''}
          onClick={() => void copy('Text', sheetSummary(engine, lengths, link()))}
        >
          Copy as text
        </button>
      </div>
      <p class="share-state" role="status">
        {copied === undefined
          ? ''
          : copied.done
            ? `${copied.what} copied.`
            : `Copy the ${copied.what.toLowerCase()} below.`}
      </p>
      {copied && !copied.done ? (
        <textarea
          ref={box}
          aria-label={`${copied.what} to copy`}
          readOnly
          rows={6}
          value={copied.text}
        />
      ) : null}
    </section>
  );
}
