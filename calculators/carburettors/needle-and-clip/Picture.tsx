import type { PictureProps } from '../../frame/types.ts';
import { AreaPlot } from './AreaPlot.tsx';
import { needleOf, riseAt } from './compute.ts';
import type { inputs } from './inputs.ts';
import { NeedleDrawing } from './NeedleDrawing.tsx';
import type { results } from './results.ts';

/** The needle in its jet and the area against throttle, in the same state. */
export function Picture(props: PictureProps<typeof inputs, typeof results>) {
  const { values: v, results: computed, lengths, idPrefix, set, commit } = props;
  return (
    <>
      <AreaPlot
        v={v}
        ring={computed.annulus as number}
        main={computed['main-area'] as number}
        lengths={lengths}
        idPrefix={idPrefix}
        onThrottle={(throttle) => set('throttle', throttle)}
        onEnd={commit}
      />
      <NeedleDrawing
        needle={needleOf(v)}
        jetBore={v['jet-bore']}
        rise={riseAt(v, v.throttle)}
        lift={(v['slide-travel'] * v.throttle) / 100}
        travel={v['slide-travel']}
        atMouth={computed['needle-at-mouth'] as number}
        lengths={lengths}
      />
    </>
  );
}
