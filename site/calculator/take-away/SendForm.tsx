import type { ComponentChildren } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { toQuery } from '../../../calculators/frame/address.ts';
import type { AnyCalculator } from '../../../calculators/frame/types.ts';
import { whyNotShared } from '../../../calculators/frame/whose.ts';
import { offersOf, send, type Offers } from '../../sheet/for-calculator.ts';
import { siteAddress } from '../../browser/site-address.ts';
import type { Now } from '../state.ts';

interface Props {
  readonly calculator: AnyCalculator;
  readonly now: Now;
  readonly say: (words: ComponentChildren) => void;
  readonly close: () => void;
}

/** What of a calculation the sheet is to have: fetched when it is asked for. */
export function SendForm({ calculator, now, say, close }: Props) {
  const [offers] = useState((): Offers => {
    const { evaluation, lengths } = now();
    return offersOf(calculator, evaluation, lengths, toQuery(evaluation));
  });
  const sending = useRef(false);
  const submit = async (form: HTMLFormElement): Promise<void> => {
    const refused = whyNotShared(now().evaluation);
    if (refused !== undefined) {
      say(`Nothing was sent. ${refused}`);
      return;
    }
    const chosen = [...offers.places, ...offers.results].filter((_, i) =>
      new FormData(form).has(String(i)),
    );
    if (chosen.length === 0) {
      say('Nothing is ticked. Tick what the sheet is to have.');
      return;
    }
    if (sending.current) return;
    sending.current = true;
    const said = await send(chosen);
    say(
      <>
        {said} {said.startsWith('Sent') ? <a href={siteAddress('sheet/')}>Open the sheet</a> : null}
      </>,
    );
    close();
  };
  const boxes = (list: Offers['places'], from: number) =>
    list.map(({ label }, i) => (
      <label class="option" key={label}>
        <input type="checkbox" name={String(from + i)} />
        <span>{label}</span>
      </label>
    ));

  return (
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
        {offers.results.length > 0 ? null : (
          <p>The link of this calculation is too long for the list. Shorten what is typed.</p>
        )}
      </fieldset>
      <button type="submit">Send to {offers.engine ?? 'a new sheet'}</button>
      <button type="button" onClick={close}>
        Leave it
      </button>
    </form>
  );
}
