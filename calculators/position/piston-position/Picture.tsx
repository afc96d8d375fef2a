import type { PictureProps } from '../../frame/types.ts';
import { Mechanism } from '../../picture/mechanism.tsx';
import { TravelPlot } from '../../picture/travel-plot.tsx';
import { sliderCrank } from '../engine-inputs.ts';
import { arcOf } from '../../maths/crank/rim-arc.ts';
import { bdcAfter, travelBefore } from '../../maths/crank/slider-crank.ts';
import { onStep } from '../../maths/numeric/steps.ts';
import type { inputs, results } from './calculator.tsx';
import { otherCrank } from './other-engine.ts';

/** Travel against angle, and the mechanism beside it in the same state. */
export function Picture(props: PictureProps<typeof inputs, typeof results>) {
  const { values: v, results, spreads, lengths, idPrefix, set, commit } = props;
  const geometry = sliderCrank(v);
  const given = v.given === 'other' ? otherCrank(v) : undefined;
  const angle = results.angle as number;
  const { angle: angleSpread = 0, travel: travelSpread = 0 } = spreads();

  const moveTo = (wanted: number): void => {
    const bottom = 360 - bdcAfter(geometry);
    const at = Math.min(bottom, Math.max(0, onStep(wanted, 0.1)));
    if (v.from === 'angle') set('angle', at);
    else if (v.from === 'travel') set('travel', onStep(travelBefore(given ?? geometry, at), 0.01));
    else set('arc', onStep(arcOf(v.rotor, at), 0.05));
  };

  return (
    <>
      <TravelPlot
        geometry={geometry}
        given={given}
        angle={angle}
        angleSpread={angleSpread}
        travelSpread={travelSpread}
        lengths={lengths}
        idPrefix={idPrefix}
        onAngle={moveTo}
        onEnd={commit}
      />
      <Mechanism geometry={geometry} angle={angle} lengths={lengths} />
    </>
  );
}
