import { useEffect, useRef, useState } from 'preact/hooks';
import { toQuery } from '../../calculators/frame/address.ts';
import { bbcodeLink, markdownLink, plainSummary } from '../../calculators/frame/summary.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import { whyNotShared } from '../../calculators/frame/whose.ts';
import { siteAddress } from './site-address.ts';
import type { Now } from './state.ts';
import { steady } from '../../calculators/picture/steady.ts';

interface Props {
  readonly calculator: AnyCalculator;
  readonly idPrefix: string;
  readonly ownsAddress: boolean;
  readonly now: Now;
}

interface Copied {
  readonly what: string;
  readonly text: string;
  readonly done: boolean;
  /** Why nothing was copied. */
  readonly refused?: string;
}

const FORMS = {
  link: 'Link',
  text: 'Text',
  markdown: 'Markdown',
  bbcode: 'BBCode',
} as const;

function Forms({ calculator, idPrefix, ownsAddress, now }: Props) {
  const [copied, setCopied] = useState<Copied>();
  const box = useRef<HTMLTextAreaElement>(null);

  useEffect(() => {
    if (copied && !copied.done) box.current?.select();
  }, [copied]);

  const textOf = (form: keyof typeof FORMS): string => {
    const { evaluation, lengths } = now();
    const page = new URL(
      ownsAddress ? '.' : siteAddress(`calculators/${calculator.slug}/`),
      location.href.split(/[?#]/)[0],
    );
    const address = `${page.href}?${toQuery(evaluation)}`;
    if (form === 'link') return address;
    if (form === 'text') return plainSummary(calculator, evaluation, lengths, address);
    if (form === 'bbcode') return bbcodeLink(calculator, evaluation, lengths, address);
    return markdownLink(calculator, evaluation, lengths, address);
  };
  const copy = async (form: keyof typeof FORMS): Promise<void> => {
    const refused = whyNotShared(now().evaluation);
    if (refused !== undefined) {
      setCopied({ what: FORMS[form], text: '', done: true, refused });
      return;
    }
    const text = textOf(form);
    try {
      await navigator.clipboard.writeText(text);
      setCopied({ what: FORMS[form], text, done: true });
    } catch {
      setCopied({ what: FORMS[form], text, done: false });
    }
  };

  return (
    <div class="share" role="group" aria-label="Copy this calculation">
      <span class="share-title">Copy this calculation as</span>
      {(Object.keys(FORMS) as (keyof typeof FORMS)[]).map((form) => (
        <button key={form} type="button" onClick={() => void copy(form)}>
          {FORMS[form]}
        </button>
      ))}
      <p class="share-state" role="status">
        {copied === undefined
          ? ''
          : copied.refused !== undefined
            ? `Nothing was copied. ${copied.refused}`
            : copied.done
              ? `${copied.what} copied.`
              : `Copy the ${copied.what.toLowerCase()} below.`}
      </p>
      {copied && !copied.done ? (
        <textarea
          ref={box}
          id={`${idPrefix}copy`}
          aria-label={`${copied.what} to copy`}
          readOnly
          rows={4}
          value={copied.text}
        />
      ) : null}
    </div>
  );
}

/** Copies the state as a link, as text or as Markdown or BBCode; shows the text where copying is barred. */
export const Share = steady(Forms);
