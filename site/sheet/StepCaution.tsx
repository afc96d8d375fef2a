import { proseIn } from '../../calculators/frame/text/prose.ts';
import { steps, type StepId } from '../../calculators/sheet/steps.ts';
import type { BoxProps } from './FigureBox.tsx';

/** What can hurt at a step, before what is to be done. */
export function StepCaution({ id, lengths }: { readonly id: StepId } & Pick<BoxProps, 'lengths'>) {
  const { caution } = steps[id];
  return caution === undefined ? null : (
    <div class="caution">
      <p class="caution-title">Take care</p>
      <p>{proseIn(caution, lengths)}</p>
    </div>
  );
}
