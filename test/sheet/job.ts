import { demoSheet } from '../../calculators/sheet/demo.ts';
import { newEngine, type Engine } from '../../calculators/sheet/model.ts';
import { steps, type StepId } from '../../calculators/sheet/steps.ts';

/** An engine with every figure that a step is judged by, and an empty log. */
export const figured = (figures: Engine['figures'] = {}): Engine => ({
  ...newEngine('e-1', 'Bench engine'),
  figures: {
    ...demoSheet().figures,
    gap: 0.4,
    'exhaust-opens': 95,
    'exhaust-tolerance': 1,
    'piston-clearance': 0.06,
    'piston-clearance-tolerance': 0.01,
    'ring-gap': 0.2,
    'ring-gap-tolerance': 0.05,
    reeds: 0,
    ...figures,
  },
});

/** A reading that passes a step; sets stand `apart`, degrees. */
export function passing(engine: Engine, id: StepId, apart: number): number {
  const { judging, target } = steps[id].reading!;
  if (judging === 'zero') return 0;
  if (judging === 'spacing') return apart;
  if (judging === 'together' || judging === 'noted') return 3;
  return judging === 'alike' ? 900 : engine.figures[target!]!;
}
