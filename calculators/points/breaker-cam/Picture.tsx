import type { PictureProps } from '../../frame/types.ts';
import { dwellAngle } from '../../maths/ignition/breaker-cam.ts';
import { intoRange, onStep } from '../../maths/numeric/steps.ts';
import { useTurning } from '../../picture/use-turning.ts';
import { CamDrawing } from './CamDrawing.tsx';
import { camOf, gapOf, gapsOf } from './compute.ts';
import type { inputs } from './inputs.ts';
import { LiftPlot } from './LiftPlot.tsx';
import type { results } from './results.ts';

/** Within half a turn of the middle of a lobe. */
const wrapped = (angle: number): number => angle - 360 * Math.round(angle / 360);

/** The lift curve and the cam in the same state: set the gap and turn the cam on the curve, or let it turn. */
export function Picture(props: PictureProps<typeof inputs, typeof results>) {
  const { values: v, lengths, idPrefix, set, commit } = props;
  const cam = camOf(v);
  const gap = gapOf(v);

  const setGap = (wanted: number): void => {
    const next = intoRange(gapsOf(cam), onStep(wanted, 0.01));
    if (v.from === 'gap') set('gap', next);
    else set('dwell', onStep(dwellAngle(cam, next), 0.1));
  };

  const turnTo = (angle: number): void => set('at', onStep(angle, 1));
  const { at, turning, toggle, stop } = useTurning({
    at: v.at,
    grows: false,
    wrapped,
    rest: (angle) => {
      turnTo(angle);
      commit();
    },
  });

  return (
    <>
      <LiftPlot
        cam={cam}
        gap={gap}
        at={at}
        leverRatio={v.lever}
        lengths={lengths}
        idPrefix={idPrefix}
        onGap={setGap}
        onTurn={(angle) => {
          stop();
          turnTo(angle);
        }}
        onEnd={commit}
      />
      <div class="picture-block">
        <CamDrawing
          cam={cam}
          gap={gap}
          at={at}
          leverRatio={v.lever}
          baseDiameter={v.base}
          lengths={lengths}
        />
        <button type="button" class="turn" onClick={toggle}>
          {turning ? 'Stop the cam' : 'Turn the cam'}
        </button>
      </div>
    </>
  );
}
