import { useState } from 'preact/hooks';
import { isUntouched, putBack } from '../../calculators/sheet/edit-log.ts';
import { exchange, exchangedWith, type Pair } from '../../calculators/sheet/exchange.ts';
import { boxTitle } from '../../calculators/sheet/firing-order.ts';
import { boxName, boxesOf, perOf, type Engine } from '../../calculators/sheet/model.ts';
import { steps, type StepId } from '../../calculators/sheet/steps.ts';
import { today } from '../browser/today.ts';
import type { BoxProps } from './FigureBox.tsx';

interface Done {
  readonly was: Engine;
  readonly now: Engine;
  readonly words: string;
}

/** Exchanges what was written under two numbers of a step, or of every step that counts alike. */
export function Exchange({ id, engine, edit }: BoxProps & { readonly id: StepId }) {
  const reading = steps[id].reading!;
  const [pair, setPair] = useState<Pair>([0, 1]);
  const [done, setDone] = useState<Done>();
  const boxes = Array.from({ length: boxesOf(engine, id) }, (_, i) => i);
  const every = exchangedWith(engine, id, pair);
  const per = perOf(reading, engine).toLowerCase();
  const words = pair.map((i) => boxName(reading, i, engine).toLowerCase()).join(' and ');
  const act = (ids: readonly StepId[]): void =>
    edit((now) => {
      const after = exchange(now, ids, pair, today());
      const said =
        after === now
          ? `There are no readings of ${words} to exchange.`
          : `The readings of ${words} are exchanged, and the log says so.`;
      setDone({ was: now, now: after, words: said });
      return after;
    });
  const isOpen = done !== undefined && done.was !== done.now && isUntouched(engine, done.now);
  return (
    <div class="exchange">
      <p>
        All that was read at the one goes to the other, as found and since, with its days. Nothing
        has to be typed again.
      </p>
      {boxes.length === 2 ? null : (
        <p class="exchange-pair">
          {([0, 1] as const).map((side) => (
            <label key={side}>
              {side === 0 ? 'Exchange' : 'with'}{' '}
              <select
                value={String(pair[side])}
                onChange={({ currentTarget: { value } }) =>
                  setPair(side === 0 ? [Number(value), pair[1]] : [pair[0], Number(value)])
                }
              >
                {boxes.map((i) => (
                  <option key={i} value={String(i)}>
                    {boxTitle(reading, i, engine)}
                  </option>
                ))}
              </select>
            </label>
          ))}
        </p>
      )}
      <div class="bar-buttons">
        <button type="button" disabled={pair[0] === pair[1]} onClick={() => act([id])}>
          Exchange {words} in this step
        </button>
        {every.length > 1 ? (
          <button type="button" disabled={pair[0] === pair[1]} onClick={() => act(every)}>
            In every step by {per}
          </button>
        ) : null}
      </div>
      <p role="status">
        {done ? `${done.words} ` : ''}
        {isOpen ? (
          <button
            type="button"
            class="plain"
            onClick={() => {
              edit((now) => putBack(now, done.was, done.now));
              setDone(undefined);
            }}
          >
            Put back
          </button>
        ) : null}
      </p>
    </div>
  );
}
