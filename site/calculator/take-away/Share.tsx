import { useState } from 'preact/hooks';
import type { AnyCalculator } from '../../../calculators/frame/types.ts';
import { whyNotShared } from '../../../calculators/frame/whose.ts';
import { copyText, type Copied } from '../../browser/copy.ts';
import { CopyState } from '../../browser/CopyState.tsx';
import { failureWords } from '../../opening/load-failure.ts';
import { addressOf } from '../address-of.ts';
import type { Now } from '../state.ts';
import { memo } from '../../../calculators/picture/redraw/memo.ts';

interface Props {
  readonly calculator: AnyCalculator;
  readonly idPrefix: string;
  readonly now: Now;
}

const FORMS = {
  link: 'Link',
  text: 'Text',
  markdown: 'Markdown',
  bbcode: 'BBCode',
} as const;

const fetchCopies = () => import('../../../calculators/frame/copies.ts');

function Forms({ calculator, idPrefix, now }: Props) {
  const [copied, setCopied] = useState<Copied>();

  const textOf = async (form: keyof typeof FORMS): Promise<string> => {
    const { evaluation, lengths } = now();
    const address = addressOf(calculator, evaluation);
    if (form === 'link') return address;
    const { bbcodeLink, markdownLink, plainSummary } = await fetchCopies();
    if (form === 'text') return plainSummary(calculator, evaluation, lengths, address);
    if (form === 'bbcode') return bbcodeLink(calculator, evaluation, lengths, address);
    return markdownLink(calculator, evaluation, lengths, address);
  };
  const copy = async (form: keyof typeof FORMS): Promise<void> => {
    const what = FORMS[form];
    const refuse = (refused: string): void => setCopied({ what, text: '', done: false, refused });
    const refused = whyNotShared(now().evaluation);
    if (refused !== undefined) {
      refuse(refused);
      return;
    }
    try {
      setCopied(await copyText(what, await textOf(form)));
    } catch (error) {
      refuse(failureWords(error));
    }
  };

  return (
    <details
      class="act"
      onToggle={(event) => {
        // A browser lets a page copy only soon after a press: the words are there by then.
        if (event.currentTarget.open) void fetchCopies().catch(() => undefined);
      }}
    >
      <summary>Copy as …</summary>
      <div class="share" role="group" aria-label="Copy this calculation">
        {(Object.keys(FORMS) as (keyof typeof FORMS)[]).map((form) => (
          <button key={form} type="button" onClick={() => void copy(form)}>
            {FORMS[form]}
          </button>
        ))}
        <p class="share-for">
          Text for a message, Markdown or BBCode for a forum: each with its link.
        </p>
        <CopyState copied={copied} id={`${idPrefix}copy`} />
      </div>
    </details>
  );
}

/** Copies the state as a link, as text or as Markdown or BBCode; shows the text where copying is barred. */
export const Share = memo(Forms);
