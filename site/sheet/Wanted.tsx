import { useState } from 'preact/hooks';
import { judge } from '../../calculators/sheet/judge.ts';
import type { StepId } from '../../calculators/sheet/steps.ts';
import { FigureBox, type BoxProps } from './FigureBox.tsx';
import { Evenly } from './step-parts.tsx';

/** Figures that a reading cannot be judged without: their boxes stay while they are typed. */
export function Wanted({ id, engine, edit, lengths }: BoxProps & { readonly id: StepId }) {
  const { missing } = judge(engine, id, lengths);
  const [wanted] = useState(missing);
  if (wanted.length === 0) return null;
  return (
    <div class="one-missing">
      <p>To be judged it needs of the sheet (what is read has its own box, above):</p>
      {wanted.map((key) => (
        <FigureBox key={key} figure={key} {...{ engine, edit, lengths }} />
      ))}
      <Evenly missing={missing} {...{ engine, edit, lengths }} />
    </div>
  );
}
