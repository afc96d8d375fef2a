import { useEffect, useRef } from 'preact/hooks';
import { copiedWords, type Copied } from './copy.ts';

interface Props {
  readonly copied: Copied | undefined;
  readonly id?: string;
}

/** How a copy went, and the text to be copied by hand where the browser refused. */
export function CopyState({ copied, id }: Props) {
  const box = useRef<HTMLTextAreaElement>(null);
  const byHand = copied !== undefined && !copied.done && copied.refused === undefined;
  useEffect(() => {
    if (byHand) box.current?.select();
  }, [copied, byHand]);
  return (
    <>
      <p class="share-state" role="status">
        {copiedWords(copied)}
      </p>
      {byHand ? (
        <textarea
          ref={box}
          id={id}
          aria-label={`${copied.what} to copy`}
          readOnly
          rows={4}
          value={copied.text}
        />
      ) : null}
    </>
  );
}
