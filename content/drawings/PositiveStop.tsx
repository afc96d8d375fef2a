import { demoEngine } from '../../calculators/demo/engine.ts';
import { demoTop } from '../../calculators/demo/top.ts';
import { fixed } from '../../calculators/frame/text/format.ts';
import { angleBefore } from '../../calculators/maths/crank/slider-crank.ts';
import { evenly, hundredth } from '../../calculators/maths/numeric/steps.ts';
import { Cut, Hatching } from '../../calculators/picture/cut.tsx';
import { arrowHead, Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';
import { polar, type Place } from './parts/polar.ts';

const { stroke, rod } = demoEngine;
const engine = { stroke, rodLength: rod, pinOffset: 0 };
/** User units for a millimetre of the engine. */
const SCALE = 1.62;
const HEIGHT = 470;
const CX = 150;
const CY = 352;
const DISC = 92;
const BORE = 26.5 * SCALE;
const WALL = 11;
/** From the pin up to the crown, and down to the edge of the skirt. */
const CROWN = 24 * SCALE;
const SKIRT = 22 * SCALE;

/** The tip of the pointer, just off the disc's edge. */
const TIP = CX + Math.sqrt(DISC ** 2 - 66 ** 2) + 4;

const stopped = angleBefore(engine, demoTop.height);
const topPin = CY - (stroke / 2 + rod) * SCALE;
const pin = topPin + demoTop.height * SCALE;
const crown = pin - CROWN;
const deck = topPin - CROWN - 1;
const crank = (stroke / 2) * SCALE;

/** Places round the crank's centre, so many degrees after the top; before it with a minus. */
const round = polar([CX, CY]);
const bigEnd = (angle: number): Place => round(crank, angle);
const rim = (angle: number, radius: number): string => round(radius, angle).join(' ');

const wall = (side: 1 | -1): string => {
  const [inner, outer] = [CX + side * BORE, CX + side * (BORE + WALL)];
  return `M${inner} ${deck}H${outer}V${CY - 96}H${inner}Z`;
};

/** The piston held by a stop on either side of the top, with the disc on the crank. */
export default function PositiveStop() {
  const [before, after] = [bigEnd(-stopped), bigEnd(stopped)];
  const head = `M${CX - BORE - WALL} ${deck}V${deck - 22}H${CX - 9}V${deck}ZM${CX + BORE + WALL} ${deck}V${deck - 22}H${CX + 9}V${deck}Z`;
  return (
    <LineDrawing
      id="positive-stop"
      title="A positive stop in the plug hole, and a disc on the crank"
      description={`A cylinder cut open. A stop screwed into the plug hole ends in the way of the piston, which touches it ${fixed(demoTop.height, 0)} millimetres below the top. The crank comes to rest there twice: ${fixed(stopped, 0)} degrees before the top, drawn full, and as many after it, drawn thin. The disc turns with the crank, the pointer is fixed to the case. The true top is halfway between the two places.`}
      height={HEIGHT}
    >
      <Hatching id="stop-barrel" />
      <Hatching id="stop-head" leans="left" />
      <path
        class="centre-line"
        d={`M${CX} 8V${CY + DISC + 14}M${CX - DISC - 14} ${CY}H${CX + DISC + 14}`}
      />
      <Cut d={`${wall(-1)}${wall(1)}`} hatching="stop-barrel" />
      <Cut d={head} hatching="stop-head" />
      <path class="edge edge-filled" d={`M${CX - 14} 40h28v${deck - 62}h-28z`} />
      <path
        class="edge edge-filled"
        d={`M${CX - 5} ${deck - 22}V${hundredth(crown - 4)}a5 4 0 0 0 10 0V${deck - 22}Z`}
      />
      <path
        class="part part-moving"
        d={`M${CX - BORE + 2} ${hundredth(pin + SKIRT)}V${hundredth(crown)}H${CX + BORE - 2}V${hundredth(pin + SKIRT)}Z`}
      />
      <circle class="edge edge-filled" cx={CX} cy={CY} r={DISC} />
      <path
        class="edge edge-thin"
        d={evenly(0, 350, 35)
          .map(
            (angle) =>
              `M${rim(angle - stopped, DISC)}L${rim(angle - stopped, angle % 30 === 0 ? DISC - 12 : DISC - 6)}`,
          )
          .join('')}
      />
      <path
        class="edge edge-thin edge-hidden"
        d={`M${CX} ${CY}L${after.join(' ')}L${CX} ${hundredth(pin)}`}
      />
      <circle class="edge edge-thin edge-hidden" cx={after[0]} cy={after[1]} r={9} />
      <path class="edge" d={`M${CX} ${CY}L${before.join(' ')}`} />
      <path class="part-rod" d={`M${before.join(' ')}L${CX} ${hundredth(pin)}`} />
      <circle class="edge edge-filled" cx={before[0]} cy={before[1]} r={9} />
      <circle class="edge edge-filled" cx={CX} cy={hundredth(pin)} r={7} />
      <circle class="edge edge-filled" cx={CX} cy={CY} r={6} />
      <path class="edge" d={`M${CX + DISC + 34} ${CY - 66}H${hundredth(TIP + 12)}`} />
      <path class="leader-end" d={arrowHead([CX + DISC + 34, CY - 66], [TIP, CY - 66], 14, 4)} />
      <Label words="stop" at={[220, 50]} to={[CX + 6, 66]} />
      <Label words="head" at={[220, 84]} to={[CX + BORE - 6, deck - 11]} />
      <Label words="barrel" at={[220, 116]} to={[CX + BORE + 6, deck + 26]} />
      <Label words="piston" at={[220, 148]} to={[CX + 22, crown + 14]} />
      <Label words="connecting rod" at={[220, 232]} to={[CX - 8, 244]} ends="arrow" />
      <Label words="pointer," at={[292, 292]} to={[CX + DISC + 30, CY - 66]} ends="arrow" />
      <Label words="on the case" at={[272, 310]} />
      <Label words="degree disc," at={[264, 400]} to={[CX + 64, CY + 34]} />
      <Label words="on the crank" at={[264, 416]} />
    </LineDrawing>
  );
}
