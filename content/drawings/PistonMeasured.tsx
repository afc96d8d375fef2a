import { demoBarrel } from '../../calculators/demo/barrel.ts';
import { evenly, hundredth } from '../../calculators/maths/numeric/steps.ts';
import { arrowHead, Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';
import { Dimension } from '../../calculators/picture/dimension.tsx';
import { cold, taper } from '../clearances.ts';

/** User units for a millimetre, and how many times larger what is left out of round is drawn. */
const SCALE = 2.2;
const TIMES = 60;
const CX = 150;
const TOP = 40;
const BORE = (demoBarrel.bore / 2) * SCALE + 4;
const half = (less: number): number => hundredth(BORE - ((cold + less) / 2) * TIMES * SCALE);
const HIGH = demoBarrel.skirt * SCALE;
const FOOT = TOP + HIGH;
/** Where the skirt is widest, above its lower edge. */
const AT = FOOT - 14 * SCALE;
const SKIRT = half(0);
const CROWN = half(taper);
const PLAN = [150, 318] as const;
const OVAL = 0.15;

/** Half the outline, from the crown down: right side for 1, left for −1. */
const side = (way: 1 | -1): string =>
  [
    [CROWN, TOP],
    [CROWN + 3, TOP + 34],
    [SKIRT - 2, TOP + 62],
    [SKIRT, AT],
    [SKIRT - 2, FOOT],
  ]
    .map(([x = 0, y = 0]) => `L${hundredth(CX + way * x)} ${hundredth(y)}`)
    .join('');

/** From above: full square to the pin, less along it. */
const oval = evenly(0, 360, 72)
  .map((angle, i) => {
    const turn = (angle * Math.PI) / 180;
    const radius = half(OVAL * Math.sin(turn) ** 2);
    return `${i === 0 ? 'M' : 'L'}${hundredth(PLAN[0] + radius * Math.cos(turn))} ${hundredth(PLAN[1] - radius * Math.sin(turn))}`;
  })
  .join('');

/** Where a piston is measured, and why it is neither straight nor round. */
export default function PistonMeasured() {
  return (
    <LineDrawing
      id="piston-measured"
      title="Where a piston is measured, tapered and oval as it is"
      description="Above, the piston seen along its gudgeon pin, between the walls of its bore, its shape drawn 60 times as strong as it is: narrow at the crown, widest low on the skirt, a little in again at the lower edge. The jaws of a micrometer touch it at the widest place, a height h above the lower edge. Below, the piston from above: it fills the bore square to the pin, where it is measured, and is narrower along the pin."
      height={418}
    >
      <text class="axis-text" x={4} y={14}>
        Along the pin: tapered
      </text>
      <path
        class="edge edge-thin"
        d={`M${CX - BORE} ${TOP - 14}V${FOOT + 8}M${CX + BORE} ${TOP - 14}V${FOOT + 8}`}
      />
      <path
        class="part"
        d={`M${CX - CROWN} ${TOP}${side(1)}L${CX - SKIRT + 2} ${FOOT}${[
          [SKIRT, AT],
          [SKIRT - 2, TOP + 62],
          [CROWN + 3, TOP + 34],
        ]
          .map(([x = 0, y = 0]) => `L${hundredth(CX - x)} ${hundredth(y)}`)
          .join('')}Z`}
      />
      <path
        class="edge edge-thin"
        d={`M${CX - CROWN} ${TOP + 12}H${CX + CROWN}M${CX - CROWN} ${TOP + 16}H${CX + CROWN}M${CX - CROWN} ${TOP + 26}H${CX + CROWN}M${CX - CROWN} ${TOP + 30}H${CX + CROWN}`}
      />
      <circle class="edge edge-filled" cx={CX} cy={TOP + 66} r={16} />
      <path
        class="motion"
        d={`M${CX - BORE - 28} ${AT}H${CX - SKIRT - 6}M${CX + BORE + 28} ${AT}H${CX + SKIRT + 6}`}
      />
      <path
        class="motion-head"
        d={
          arrowHead([CX - BORE - 28, AT], [CX - SKIRT, AT]) +
          arrowHead([CX + BORE + 28, AT], [CX + SKIRT, AT])
        }
      />
      <Dimension
        from={[CX + SKIRT - 2, FOOT]}
        to={[CX + BORE + 30, AT]}
        along="y"
        line={264}
        words="h"
      />
      <Label words="bore" at={[4, 40]} to={[CX - BORE, 44]} ends="arrow" />
      <Label words="crown: hottest," at={[244, 36]} to={[CX + CROWN - 8, TOP + 6]} />
      <Label words="so made smaller" at={[244, 52]} />
      <Label words="pin" at={[250, 100]} to={[CX + 8, TOP + 66]} />
      <Label words="measure" at={[4, 106]} />
      <Label words="here" at={[4, 122]} />
      <text class="axis-text" x={4} y={212}>
        From above: oval
      </text>
      <circle class="edge edge-thin" cx={PLAN[0]} cy={PLAN[1]} r={BORE} />
      <path class="part" d={`${oval}Z`} />
      <path
        class="edge edge-thin edge-hidden"
        d={`M${PLAN[0] - 16} ${PLAN[1] - 46}V${PLAN[1] + 46}M${PLAN[0] + 16} ${PLAN[1] - 46}V${PLAN[1] + 46}`}
      />
      <path class="centre-line" d={`M${PLAN[0]} ${PLAN[1] - 78}V${PLAN[1] + 78}`} />
      <path
        class="motion"
        d={`M${CX - BORE - 28} ${PLAN[1]}H${CX - SKIRT - 6}M${CX + BORE + 28} ${PLAN[1]}H${CX + SKIRT + 6}`}
      />
      <path
        class="motion-head"
        d={
          arrowHead([CX - BORE - 28, PLAN[1]], [CX - SKIRT, PLAN[1]]) +
          arrowHead([CX + BORE + 28, PLAN[1]], [CX + SKIRT, PLAN[1]])
        }
      />
      <Label words="square to it:" at={[250, 340]} />
      <Label words="full" at={[250, 356]} />
      <Label
        words="along the pin:"
        at={[250, 250]}
        to={[PLAN[0] + 4, PLAN[1] - half(OVAL) + 2]}
        ends="arrow"
      />
      <Label words="narrower" at={[250, 266]} />
      <Label words={`Shape drawn ${TIMES} times as strong as it is`} at={[4, 410]} />
    </LineDrawing>
  );
}
