import { useState } from 'preact/hooks';
import { inputLines } from '../../calculators/frame/summary.ts';
import type { Field } from '../../calculators/frame/field/fields.ts';
import { memo } from '../../calculators/picture/redraw/memo.ts';
import { Fields, type FieldHandlers } from './Fields.tsx';
import { useUnfolded } from './use-unfolded.ts';

interface Props extends FieldHandlers {
  readonly fields: readonly Field[];
}

function OfReadings({ fields, ...handlers }: Props) {
  const [asked, setAsked] = useState(false);
  const wrong = fields.some(({ problem }) => problem !== undefined);
  const [open, setOpen] = useUnfolded(wrong);
  const shown = asked || wrong || fields.some(({ given }) => given);
  const lines = inputLines(fields, handlers.lengths);
  return (
    <details
      class="fold errors"
      open={open}
      onToggle={({ currentTarget }) => {
        setOpen(currentTarget.open);
        if (currentTarget.open) setAsked(true);
      }}
    >
      <summary>
        <span class="fold-name">How exact are your readings?</span>
        <span class="fold-holds">
          {lines.map(({ label, text }) => `${label.replace('± of ', '')} ± ${text}`).join(' · ')}
        </span>
      </summary>
      <p>
        Each ± below is carried through to the results: readings are taken as independent and
        combined as the root of the sum of their squares.
      </p>
      <p>
        Read it more than once where you can. “again” in a box makes room for one more reading,
        after a semicolon: the mean of all counts, and their spread is joined to the ± given here.
      </p>
      {shown ? (
        <Fields fields={fields} {...handlers} />
      ) : (
        <p>{lines.map(({ label, text }) => `${label}: ${text}.`).join(' ')}</p>
      )}
    </details>
  );
}

/**
 * The ± of each reading, told in a line until somebody asks for the fields: they are as many as the
 * readings, and few readers change them.
 */
export const Errors = memo(OfReadings, 4);
