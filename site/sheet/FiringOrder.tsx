import { orderWords } from '../../calculators/sheet/firing-order.ts';
import { isRefused } from '../../calculators/sheet/read-number.ts';
import { readOrder } from '../../calculators/sheet/read-order.ts';
import { enter } from '../../calculators/sheet/enter.ts';
import { ListInput } from '../fields/ListInput.tsx';
import type { BoxProps } from './FigureBox.tsx';
import { useTyped } from './typed.ts';

const box = { kind: 'order' } as const;

/** The order in which the cylinders fire, each named once. */
export function FiringOrder({ engine, lengths, edit }: BoxProps) {
  const how = { lengths };
  const [text, keep] = useTyped(engine, box, orderWords(engine));

  return (
    <ListInput
      field={readOrder(engine, text, how)}
      lengths={lengths}
      idPrefix="figure-"
      onText={(_, typed) => {
        const field = readOrder(engine, typed, how);
        keep(typed, isRefused(field) ? undefined : orderWords(engine, field.value));
        edit((now) => enter(now, box, typed, how));
      }}
      onCommit={() => undefined}
    />
  );
}
