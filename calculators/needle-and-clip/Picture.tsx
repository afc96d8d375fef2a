import type { PictureProps } from '../frame/types.ts';
import { AreaPlot } from './AreaPlot.tsx';
import { needleOf, riseAt, type Computed, type Values } from './compute.ts';
import { NeedleDrawing } from './NeedleDrawing.tsx';

/** The needle in its jet and the area against throttle, in the same state. */
export function Picture({ values, results, lengths, set, commit }: PictureProps) {
  const v = values as unknown as Values;
  const computed = results as unknown as Computed;
  return (
    <>
      <AreaPlot
        v={v}
        ring={computed.annulus as number}
        main={computed['main-area'] as number}
        lengths={lengths}
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
