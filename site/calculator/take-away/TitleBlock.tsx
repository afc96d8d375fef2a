import { useEffect, useRef } from 'preact/hooks';
import { leadParts } from '../../../calculators/frame/summary.ts';
import type { AnyCalculator } from '../../../calculators/frame/types.ts';
import { addressOf } from '../address-of.ts';
import type { Now, State } from '../state.ts';

interface Props extends State {
  readonly calculator: AnyCalculator;
  readonly now: Now;
}

/**
 * The block at the foot of a drawing: the figure, its ±, the day and the address. Day and address
 * are written down when the page goes to paper, where nothing else tells them.
 */
export function TitleBlock({ calculator, evaluation, lengths, now }: Props) {
  const day = useRef<HTMLElement>(null);
  const address = useRef<HTMLElement>(null);
  useEffect(() => {
    const write = (): void => {
      day.current!.textContent = new Date().toLocaleDateString('en-GB', { dateStyle: 'long' });
      address.current!.textContent = addressOf(calculator, now().evaluation);
    };
    addEventListener('beforeprint', write);
    return () => removeEventListener('beforeprint', write);
  }, [calculator, now]);
  const [main] = leadParts(calculator, evaluation, lengths);
  return (
    <dl class="title-block">
      <div>
        <dt>{main?.label ?? 'calculation'}</dt>
        <dd>{main?.figure ?? calculator.title}</dd>
      </div>
      <div>
        <dt>±</dt>
        <dd>{main?.spread ?? 'none stated'}</dd>
      </div>
      <div class="on-paper">
        <dt>date</dt>
        <dd ref={day} />
      </div>
      <div class="on-paper">
        <dt>address</dt>
        <dd ref={address} class="print-address" />
      </div>
    </dl>
  );
}
