import { useState } from 'preact/hooks';
import { bbcodeLink, markdownLink, plainSummary } from '../../../calculators/frame/summary.ts';
import type { AnyCalculator } from '../../../calculators/frame/types.ts';
import { whyNotShared } from '../../../calculators/frame/whose.ts';
import { copyText, type Copied } from '../../browser/copy.ts';
import { CopyState } from '../../browser/CopyState.tsx';
import { addressOf } from '../address-of.ts';
import type { Now } from '../state.ts';
import { memo } from '../../../calculators/picture/memo.ts';

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

function Forms({ calculator, idPrefix, now }: Props) {
  const [copied, setCopied] = useState<Copied>();

  const textOf = (form: keyof typeof FORMS): string => {
    const { evaluation, lengths } = now();
    const address = addressOf(calculator, evaluation);
    if (form === 'link') return address;
    if (form === 'text') return plainSummary(calculator, evaluation, lengths, address);
    if (form === 'bbcode') return bbcodeLink(calculator, evaluation, lengths, address);
    return markdownLink(calculator, evaluation, lengths, address);
  };
  const copy = async (form: keyof typeof FORMS): Promise<void> => {
    const what = FORMS[form];
    const refused = whyNotShared(now().evaluation);
    setCopied(
      refused === undefined
        ? await copyText(what, textOf(form))
        : { what, text: '', done: false, refused },
    );
  };

  return (
    <details class="act">
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
