import { useEffect, useState } from 'preact/hooks';
import type { LengthDisplay } from '../../calculators/frame/units.ts';
import { SheetError } from '../../calculators/sheet/errors.ts';
import { engineFragment } from '../../calculators/sheet/link.ts';
import type { Engine } from '../../calculators/sheet/model.ts';
import { sheetSummary } from '../../calculators/sheet/summary.ts';
import { copyText, type Copied } from '../browser/copy.ts';
import { CopyState } from '../browser/CopyState.tsx';

interface Props {
  readonly engine: Engine;
  readonly lengths: LengthDisplay;
}

interface Made {
  readonly engine?: Engine;
  readonly fragment: string;
  readonly problem?: string;
}

/** The whole engine as a link (with its size), as a text, and on paper. */
export function ShareSheet({ engine, lengths }: Props) {
  const [made, setMade] = useState<Made>({ fragment: '' });
  const [copied, setCopied] = useState<Copied>();
  const { fragment, problem } = made;

  useEffect(() => {
    let stale = false;
    const show = (next: Made): void => {
      if (!stale) setMade({ engine, ...next });
    };
    engineFragment(engine).then(
      (ready) => show({ fragment: ready }),
      (error: unknown) => {
        const why =
          error instanceof SheetError ? error.message : 'Save the sheet to a file instead.';
        show({ fragment: '', problem: `The link could not be made. ${why}` });
        if (!(error instanceof SheetError)) throw error;
      },
    );
    return () => {
      stale = true;
    };
  }, [engine]);

  /** What is copied is the engine as it is now, even where the link on the screen is a step behind. */
  const copy = async (what: 'Link' | 'Text'): Promise<void> => {
    const now = made.engine === engine ? fragment : await engineFragment(engine).catch(() => '');
    const link = now === '' ? '' : `${location.origin}${location.pathname}#${now}`;
    if (what === 'Link' && link === '') {
      setCopied({ what, text: '', done: false, refused: problem ?? 'The link could not be made.' });
      return;
    }
    setCopied(await copyText(what, what === 'Link' ? link : sheetSummary(engine, lengths, link)));
  };
  const refused = Object.keys(engine.unread).length;

  return (
    <section class="sheet-share" aria-labelledby="share-the-sheet">
      <h2 id="share-the-sheet">Print and share</h2>
      <p>
        The link holds the whole engine and nothing else is stored anywhere:{' '}
        <output name="link-size" aria-live="off">
          {fragment.length.toLocaleString('en-GB')}
        </output>{' '}
        characters after the #.{' '}
        {fragment.length > 2000 ? 'Some messengers cut links longer than 2000.' : ''}
      </p>
      {problem === undefined ? null : (
        <p class="field-problem" role="alert">
          {problem}
        </p>
      )}
      {refused === 0 ? null : (
        <p>
          {refused === 1 ? 'One field cannot' : `${String(refused)} fields cannot`} be read: what is
          typed there is left out of the print, the link and the text. A file keeps it.
        </p>
      )}
      <div class="bar-buttons">
        <button type="button" onClick={() => window.print()}>
          Print the sheet
        </button>
        <button type="button" disabled={fragment === ''} onClick={() => void copy('Link')}>
          Copy the link
        </button>
        <button
          type="button"
          disabled={fragment === '' && problem === undefined}
          onClick={() => void copy('Text')}
        >
          Copy as text
        </button>
      </div>
      <CopyState copied={copied} />
    </section>
  );
}
