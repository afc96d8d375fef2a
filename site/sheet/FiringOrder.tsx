import { readList, type FieldSpec, type ListField } from '../../calculators/frame/fields.ts';
import { setUnread } from '../../calculators/sheet/edit.ts';
import { MOST_CYLINDERS } from '../../calculators/sheet/figures.ts';
import { cylindersOf } from '../../calculators/sheet/model.ts';
import { ListInput } from '../calculator/ListInput.tsx';
import type { BoxProps } from './FigureBox.tsx';
import { useTyped } from './typed.ts';

const PLACE = 'order:firing';

const spec: FieldSpec = {
  label: 'Firing order',
  help: 'Cylinder numbers in the order in which they fire, such as 1 3 2. Leave empty if not known.',
  unit: 'count',
  min: 1,
  max: MOST_CYLINDERS,
  why: 'cylinders are counted from 1',
  whole: true,
  step: 1,
  list: MOST_CYLINDERS,
};

export function FiringOrder({ engine, lengths, edit }: BoxProps) {
  const cylinders = cylindersOf(engine);
  const [text, keep] = useTyped(
    `${engine.id} ${PLACE}`,
    engine.firingOrder.join(' '),
    engine.unread[PLACE],
  );
  const read = (typed: string): ListField => {
    const field = readList('firing-order', spec, typed, [], engine.firingOrder, { lengths });
    const whole = [...field.value].sort((a, b) => a - b).every((member, i) => member === i + 1);
    if (field.problem !== undefined || field.value.length === 0) return field;
    if (whole && field.value.length === cylinders) return field;
    return {
      ...field,
      problem: `The firing order must name each cylinder from 1 to ${String(cylinders)} once, since the sheet has ${String(cylinders)}. Type them with spaces between, or change the number of cylinders.`,
    };
  };
  const field = read(text);

  const onText = (_: string, typed: string): void => {
    const next = read(typed);
    if (next.problem !== undefined) {
      edit((before) => setUnread(before, PLACE, typed));
      return;
    }
    keep(typed, next.value.join(' '));
    edit((before) => ({ ...setUnread(before, PLACE, undefined), firingOrder: next.value }));
  };

  return (
    <ListInput
      field={{ ...field, heldOver: false }}
      lengths={lengths}
      idPrefix="figure-"
      onText={onText}
      onCommit={() => undefined}
    />
  );
}
