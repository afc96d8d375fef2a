import { useRef } from 'preact/hooks';
import type { Box } from '../../calculators/sheet/box-places.ts';
import type { HowToRead } from '../../calculators/sheet/read-number.ts';
import {
  beforeTyping,
  writtenLast,
  type Before,
  type Manner,
  type WrittenLast,
} from '../../calculators/sheet/set-entry.ts';
import { enter } from '../../calculators/sheet/enter.ts';
import type { Engine } from '../../calculators/sheet/model.ts';
import { today } from '../browser/today.ts';
import type { BoxProps } from './FigureBox.tsx';

const standing = (engine: Engine, { step, moment, index }: Box & { kind: 'reading' }): Before =>
  beforeTyping(engine, step, moment, index);

/**
 * A run of typing in a reading box, which makes one line of the log. `begin` begins another; `put`
 * enters what was typed, as `kind` of reading, and `anew` where it is a reading of its own.
 */
export function useRun(
  { engine, edit }: Pick<BoxProps, 'engine' | 'edit'>,
  box: Box & { kind: 'reading' },
  how: HowToRead,
) {
  const before = useRef<Before>();
  const written = useRef<WrittenLast>();
  const begin = (): void => {
    before.current = standing(engine, box);
    written.current = undefined;
  };
  if (!before.current) begin();
  const put = (typed: string, manner: Pick<Manner, 'kind' | 'anew'>): void =>
    edit((now) => {
      const typing = { before: before.current!, written: written.current, ...manner };
      const after = enter(now, box, typed, how, typing, today());
      written.current = writtenLast(after, box.step);
      // What was found and taken out is not what a refused text leaves.
      if (typed === '') before.current = standing(after, box);
      return after;
    });
  return { begin, put };
}
