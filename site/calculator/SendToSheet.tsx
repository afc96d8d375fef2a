import type { ComponentChildren, ComponentType } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import { failureWords } from '../waiting/load-failure.ts';
import type { Now } from './state.ts';
import { steady } from '../../calculators/picture/steady.ts';

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
  const place = useRef<HTMLDivElement>(null);
  const opened = useRef(false);

  // What had the focus is gone when the form comes or goes: the focus goes to what took its place.
  useEffect(() => {
    if (form || opened.current) place.current?.querySelector<HTMLElement>('input, button')?.focus();
    opened.current = form !== undefined;
  }, [form]);

  const open = async (): Promise<void> => {
    try {
      const { SendForm } = await import('./SendForm.tsx');
      setForm({ Form: SendForm });
      say('');
    } catch (error) {
      say(`The sheet’s form was not opened. ${failureWords(error)}`);
    }
  };

  return (
    <div class="share" role="group" aria-label="Engine sheet" ref={place}>
      <span class="share-title">Engine sheet</span>
      {form === undefined ? (
        <button type="button" disabled={refused !== undefined} onClick={() => void open()}>
          Send figures to the sheet
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
export const SendToSheet = steady(Sending);
