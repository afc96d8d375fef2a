import { useEffect, useState } from 'preact/hooks';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import { whyNotShared } from '../../calculators/frame/whose.ts';
import { memo } from '../../calculators/picture/redraw/memo.ts';
import { copyText, type Copied } from '../browser/copy.ts';
import { CopyState } from '../browser/CopyState.tsx';
import { addressOf } from './address-of.ts';
import type { Now } from './state.ts';

interface Props {
  readonly calculator: AnyCalculator;
  readonly now: Now;
}

/** Long enough to be read, and then out of the way of the picture. */
const SAID_FOR_MS = 5000;

function Copying({ calculator, now }: Props) {
  const [copied, setCopied] = useState<Copied>();
  const byHand = copied !== undefined && !copied.done && copied.refused === undefined;
  useEffect(() => {
    if (copied === undefined || byHand) return undefined;
    const timer = setTimeout(() => setCopied(undefined), SAID_FOR_MS);
    return () => clearTimeout(timer);
  }, [copied, byHand]);

  const copy = async (): Promise<void> => {
    const { evaluation } = now();
    const refused = whyNotShared(evaluation);
    const what = 'Link';
    setCopied(
      refused === undefined
        ? await copyText(what, addressOf(calculator, evaluation))
        : { what, text: '', done: false, refused },
    );
  };

  return (
    <>
      <button
        type="button"
        class="copy-link"
        aria-label="Copy a link to this calculation"
        onClick={() => void copy()}
      >
        <svg width="24" height="24" viewBox="0 0 24 24" aria-hidden="true">
          <path d="M10 14a4 4 0 0 0 6 .4l3-3a4 4 0 0 0-5.7-5.7l-1.4 1.4M14 10a4 4 0 0 0-6-.4l-3 3a4 4 0 0 0 5.7 5.7l1.4-1.4" />
        </svg>
      </button>
      <div class="copy-said">
        <CopyState copied={copied} />
      </div>
    </>
  );
}

/** Copies the link of the calculation from wherever the reader is on the page. */
export const CopyLink = memo(Copying);
