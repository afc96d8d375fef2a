import { useState } from 'preact/hooks';
import { toQuery } from '../../calculators/frame/address.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import type { Offers } from '../sheet/for-calculator.ts';
import { siteAddress } from './site-address.ts';
import type { Now } from './state.ts';
import { alike, steady } from './steady.ts';

interface Props {
  readonly calculator: AnyCalculator;
  /** Whether there are figures to send. */
  readonly ready: boolean;
  readonly now: Now;
}

function Sending({ calculator, ready, now }: Props) {
  const [offers, setOffers] = useState<Offers>();
  const [said, setSaid] = useState('');

  const open = async (): Promise<void> => {
    try {
      const { offersOf } = await import('../sheet/for-calculator.ts');
      const { evaluation, lengths } = now();
      setOffers(offersOf(calculator, evaluation, lengths, toQuery(evaluation)));
      setSaid('');
    } catch {
      setSaid('The engine sheet could not be fetched. Check the connection and try again.');
    }
  };
  const submit = async (form: HTMLFormElement): Promise<void> => {
    if (!offers) return;
    const chosen = [...offers.places, ...offers.results].filter((_, i) =>
      new FormData(form).has(String(i)),
    );
    if (chosen.length === 0) {
      setSaid('Nothing is ticked. Tick what the sheet is to have.');
      return;
    }
    const { send } = await import('../sheet/for-calculator.ts');
    setSaid(send(chosen));
    setOffers(undefined);
  };

  const boxes = (list: Offers['places'], from: number) =>
    list.map(({ label }, i) => (
      <label class="option" key={label}>
        <input type="checkbox" name={String(from + i)} />
        <span>{label}</span>
      </label>
    ));

  return (
    <div class="share" role="group" aria-label="Engine sheet">
      <span class="share-title">Engine sheet</span>
      {offers === undefined ? (
        <button type="button" disabled={!ready} onClick={() => void open()}>
          Send figures to the sheet
        </button>
      ) : (
        <form
          class="send"
          aria-label="Send to the sheet"
          onSubmit={(event) => {
            event.preventDefault();
            void submit(event.currentTarget);
          }}
        >
          {offers.places.length === 0 ? null : (
            <fieldset>
              <legend>Into the sheet’s own fields</legend>
              {boxes(offers.places, 0)}
            </fieldset>
          )}
          <fieldset>
            <legend>Into its list of results, with a link back</legend>
            {boxes(offers.results, offers.places.length)}
          </fieldset>
          <button type="submit">Send to {offers.engine ?? 'a new sheet'}</button>
          <button type="button" onClick={() => setOffers(undefined)}>
            Leave it
          </button>
        </form>
      )}
      <p class="share-state" role="status">
        {said} {said.startsWith('Sent') ? <a href={siteAddress('sheet/')}>Open the sheet</a> : null}
      </p>
    </div>
  );
}

/** Offers the figures of this calculation to the reader's engine sheet. */
export const SendToSheet = steady(Sending, (before: Props, now) => alike(before, now, 1));
