import type { ComponentChildren, ComponentType } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { AnyCalculator } from '../../../calculators/frame/types.ts';
import { failureWords } from '../../opening/load-failure.ts';
import type { Now } from '../state.ts';
import { memo } from '../../../calculators/picture/redraw/memo.ts';

interface Props {
  readonly calculator: AnyCalculator;
  /** Why nothing may be sent as it stands; nothing where it may. */
  readonly refused: string | undefined;
  readonly now: Now;
}

type Form = typeof import('./SendForm.tsx').SendForm;

function Sending({ calculator, refused, now }: Props) {
  const [form, setForm] = useState<{ readonly Form: ComponentType<Parameters<Form>[0]> }>();
  const [said, say] = useState<ComponentChildren>('');
  const group = useRef<HTMLDivElement>(null);
  const open = form !== undefined;
  const was = useRef(open);

  // The button goes as the form comes, and the form as it is sent: the focus goes with what comes.
  useLayoutEffect(() => {
    if (was.current === open) return;
    was.current = open;
    group.current?.querySelector<HTMLElement>('input, button')?.focus({ preventScroll: true });
  }, [open]);

  const fetchForm = async (): Promise<void> => {
    try {
      const { SendForm } = await import('./SendForm.tsx');
      setForm({ Form: SendForm });
      say('');
    } catch (error) {
      say(`The sheet’s form was not opened. ${failureWords(error)}`);
    }
  };

  return (
    <div class="share" role="group" aria-label="Engine sheet" ref={group}>
      {form === undefined ? (
        <button
          type="button"
          aria-label="Send figures to the sheet"
          disabled={refused !== undefined}
          onClick={() => void fetchForm()}
        >
          To the sheet
        </button>
      ) : (
        <form.Form calculator={calculator} now={now} say={say} close={() => setForm(undefined)} />
      )}
      {refused === undefined ? null : <p class="share-state">{refused}</p>}
      <p class="share-state" role="status">
        {said}
      </p>
    </div>
  );
}

/** Offers the figures of this calculation to the reader's engine sheet. */
export const SendToSheet = memo(Sending);
