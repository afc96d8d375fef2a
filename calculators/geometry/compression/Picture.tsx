import type { PictureProps } from '../../frame/types.ts';
import { intoRange, onStep } from '../../maths/numeric/steps.ts';
import { inputs } from './inputs.ts';
import { RatioPlot } from './RatioPlot.tsx';
import type { results } from './results.ts';
import { VolumeColumns } from './VolumeColumns.tsx';

/** Both ratios against the clearance volume, and the volumes they come from. */
export function Picture(props: PictureProps<typeof inputs, typeof results>) {
  const { values: v, results: r, lengths, idPrefix, set, commit } = props;
  const volumes = {
    swept: r.swept as number,
    trapped: r['swept-trapped'] as number,
    clearance: r.clearance as number,
  };
  const key = v.measured === 'whole' ? 'whole-volume' : 'head-volume';
  const moveTo = (clearance: number): void => {
    const liquid = v[key] + clearance - volumes.clearance;
    set(key, intoRange(inputs[key], onStep(liquid, 0.05)));
  };
  return (
    <>
      <RatioPlot
        {...volumes}
        lengths={lengths}
        idPrefix={idPrefix}
        onClearance={moveTo}
        onEnd={commit}
      />
      <VolumeColumns {...volumes} lengths={lengths} />
    </>
  );
}
