import { useEffect, useState } from 'preact/hooks';
import type { LengthDisplay } from '../../calculators/frame/text/units.ts';
import { SheetError } from '../../calculators/sheet/errors.ts';
import { fileName } from '../../calculators/sheet/file-name.ts';
import { engineFragment, type LinkHolds } from '../../calculators/sheet/link.ts';
import type { Engine } from '../../calculators/sheet/model.ts';
import { sheetSummary } from '../../calculators/sheet/summary.ts';
import { copyText, type Copied } from '../browser/copy.ts';
import { CopyState } from '../browser/CopyState.tsx';
import { failureWords } from '../opening/load-failure.ts';
import { save } from '../browser/save.ts';
import { today } from '../browser/today.ts';

interface Props {
  readonly engine: Engine;
  readonly lengths: LengthDisplay;
  /** Whether the log is printed after the sheet. */
  readonly withLog: boolean;
  readonly printLog: (withLog: boolean) => void;
}

interface Made {
  readonly engine?: Engine;
  readonly fragments: Readonly<Record<LinkHolds, string>>;
  readonly problem?: string;
}

const none = { last: '', all: '' };

const holdsWords: Readonly<Record<LinkHolds, string>> = {
  last: 'The last readings, with their dates',
  all: 'The whole log',
};

const FORMS = { text: 'Text', markdown: 'Markdown', bbcode: 'BBCode' } as const;
type Form = keyof typeof FORMS;

const sizeWords = (fragment: string): string => fragment.length.toLocaleString('en-GB');

/** Both links of an engine; the shorter alone where the log is more than a link can carry. */
async function fragmentsOf(engine: Engine): Promise<Made['fragments']> {
  const last = await engineFragment(engine, 'last');
  const all = await engineFragment(engine, 'all').catch((error: unknown) => {
    if (error instanceof SheetError) return '';
    throw error;
  });
  return { last, all };
}

/** The engine as a link (with its size), as a text, as a picture, and on paper. */
export function ShareSheet({ engine, lengths, withLog, printLog }: Props) {
  const [made, setMade] = useState<Made>({ fragments: none });
  const [holds, setHolds] = useState<LinkHolds>('last');
  const [copied, setCopied] = useState<Copied>();
  const [said, say] = useState('');
  const { fragments, problem } = made;
  // Days box by box may take more letters than a short log: then the log goes along in any case.
  const isShort = fragments.all !== '' && fragments.all.length <= fragments.last.length;
  const held = isShort ? 'all' : holds;
  const fragment = fragments[held];

  useEffect(() => {
    let stale = false;
    const show = (next: Made): void => {
      if (!stale) setMade({ engine, ...next });
    };
    fragmentsOf(engine).then(
      (ready) => show({ fragments: ready }),
      (error: unknown) => {
        const why =
          error instanceof SheetError ? error.message : 'Save the sheet to a file instead.';
        show({ fragments: none, problem: `The link could not be made. ${why}` });
        if (!(error instanceof SheetError)) throw error;
      },
    );
    return () => {
      stale = true;
    };
  }, [engine]);

  /** The link of the engine as it is now, even where the one on the screen is a step behind. */
  const linkNow = async (): Promise<string> => {
    const now =
      made.engine === engine ? fragment : await engineFragment(engine, held).catch(() => '');
    return now === '' ? '' : `${location.origin}${location.pathname}#${now}`;
  };
  const copyLink = async (): Promise<void> => {
    const link = await linkNow();
    const what = 'Link';
    setCopied(
      link === ''
        ? { what, text: '', done: false, refused: problem ?? 'The link could not be made.' }
        : await copyText(what, link),
    );
  };
  const copyForm = async (form: Form): Promise<void> => {
    const what = FORMS[form];
    const link = await linkNow();
    try {
      if (form === 'text') {
        setCopied(await copyText(what, sheetSummary(engine, lengths, link)));
        return;
      }
      const { sheetMarkdown, sheetBbcode } =
        await import('../../calculators/sheet/summary-forms.ts');
      const write = form === 'markdown' ? sheetMarkdown : sheetBbcode;
      setCopied(await copyText(what, write(engine, lengths, link)));
    } catch (error) {
      setCopied({ what, text: '', done: false, refused: failureWords(error) });
    }
  };
  const savePicture = async (): Promise<void> => {
    try {
      const { summaryPicture } = await import('./summary-picture.ts');
      const name = fileName('engine-sheet', engine.name, today(), 'png');
      save(name, await summaryPicture(engine, lengths));
      say(`${name} saved.`);
    } catch (error) {
      say(`The picture was not made. ${failureWords(error)}`);
    }
  };
  const refused = Object.keys(engine.unread).length;

  return (
    <section class="sheet-share" aria-labelledby="share-the-sheet">
      <h2 id="share-the-sheet">Print and share</h2>
      <fieldset class="link-holds">
        <legend>The link holds the engine, and nothing else is stored anywhere</legend>
        {isShort ? <p>With its whole log, which is short.</p> : null}
        {(isShort ? [] : (Object.keys(holdsWords) as LinkHolds[])).map((each) => (
          <label class="option" key={each}>
            <input
              type="radio"
              name="link-holds"
              checked={holds === each}
              disabled={fragments[each] === '' && fragments.last !== ''}
              onChange={() => setHolds(each)}
            />
            <span>
              {holdsWords[each]}: {sizeWords(fragments[each])} characters
            </span>
          </label>
        ))}
      </fieldset>
      <p>
        It has{' '}
        <output name="link-size" aria-live="off">
          {sizeWords(fragment)}
        </output>{' '}
        characters after the #.{' '}
        {fragment.length > 2000 ? 'Some messengers cut links longer than 2000.' : ''}
        {fragments.all === '' && fragments.last !== ''
          ? ' The whole log is more than a link can carry: send a file.'
          : ''}
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
        <button type="button" disabled={fragment === ''} onClick={() => void copyLink()}>
          Copy the link
        </button>
        {(Object.keys(FORMS) as Form[]).map((form) => (
          <button
            key={form}
            type="button"
            disabled={fragment === '' && problem === undefined}
            onClick={() => void copyForm(form)}
          >
            Copy as {form === 'text' ? 'text' : FORMS[form]}
          </button>
        ))}
        <button type="button" onClick={() => void savePicture()}>
          Save as a picture
        </button>
      </div>
      <CopyState copied={copied} />
      <p class="picture-state" role="status">
        {said}
      </p>
      <label class="option">
        <input
          type="checkbox"
          checked={withLog}
          onChange={(event) => printLog(event.currentTarget.checked)}
        />
        <span>Print the log after it, on pages of its own.</span>
      </label>
      <div class="bar-buttons">
        <button type="button" onClick={() => window.print()}>
          Print the sheet
        </button>
      </div>
    </section>
  );
}
