import type { PictureProps } from '../frame/types.ts';
import { dwellAngle, liftAt } from '../maths/breaker-cam.ts';
import { onStep } from '../picture/steps.ts';
import { CamDrawing } from './CamDrawing.tsx';
import { camOf, gapOf, type Values } from './compute.ts';
import { LiftPlot } from './LiftPlot.tsx';

/** The lift curve and the cam in the same state: turn the cam on either, set the gap on the curve. */
export function Picture({ values, lengths, set, commit }: PictureProps) {
  const v = values as unknown as Values;
  const cam = camOf(v);
  const gap = gapOf(v);

  const setGap = (wanted: number): void => {
    const least = 0.01;
    const next = Math.min(cam.lift - least, Math.max(least, onStep(wanted, 0.01)));
    if (v.from === 'gap') set('gap', onStep(next, 0.01));
    else set('dwell', onStep(dwellAngle(cam, next), 0.1));
  };

  return (
    <>
      <LiftPlot
        cam={cam}
        gap={gap}
        at={v.at}
        lengths={lengths}
        onGap={setGap}
        onTurn={(angle) => set('at', onStep(angle, 1))}
        onEnd={commit}
      />
      <CamDrawing
        cam={cam}
        gap={gap}
        at={v.at}
        lift={liftAt(cam, v.at)}
        leverRatio={v.lever}
        baseDiameter={v.base}
        lengths={lengths}
      />
    </>
  );
}
