import { Cut, Hatching } from '../../calculators/picture/cut.tsx';
import { arrowHead, Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';

const CX = 130;
const CY = 112;
const OUTER = 86;
const BORE = 66;
const THICK = 8;
/** Half the gap, degrees: far more than it is. */
const GAP = 6;

const on = (radius: number, angle: number): string => {
  const turn = (angle * Math.PI) / 180;
  return `${(CX + radius * Math.sin(turn)).toFixed(2)} ${(CY - radius * Math.cos(turn)).toFixed(2)}`;
};

const wall =
  `M${CX} ${CY - OUTER}A${OUTER} ${OUTER} 0 0 1 ${CX} ${CY + OUTER}A${OUTER} ${OUTER} 0 0 1 ${CX} ${CY - OUTER}Z` +
  `M${CX} ${CY - BORE}A${BORE} ${BORE} 0 0 0 ${CX} ${CY + BORE}A${BORE} ${BORE} 0 0 0 ${CX} ${CY - BORE}Z`;

const ring =
  `M${on(BORE - 1, GAP)}A${BORE - 1} ${BORE - 1} 0 1 1 ${on(BORE - 1, -GAP)}L${on(BORE - THICK, -GAP)}` +
  `A${BORE - THICK} ${BORE - THICK} 0 1 0 ${on(BORE - THICK, GAP)}Z`;

/** The bore cut open, a ring in it: square, pushed by the crown, or tilted. */
function Bore({ x, tilted }: { readonly x: number; readonly tilted: boolean }) {
  const id = tilted ? 'ring-tilted' : 'ring-square';
  const [left, right] = tilted ? [310, 336] : [322, 322];
  return (
    <g transform={`translate(${x} 0)`}>
      <text x={4} y={236}>
        {tilted ? 'tilted: reads too wide' : 'square: as it is'}
      </text>
      <Hatching id={id} />
      <Cut d="M14 256H30V386H14Z" hatching={id} />
      <Cut d="M122 256H138V386H122Z" hatching={id} />
      <path class="part" d={`M31 ${left}L121 ${right}V${right + 6}L31 ${left + 6}Z`} />
      {tilted ? null : (
        <>
          <path class="part" d="M33 250V320H119V250Z" />
          <path class="motion" d="M76 262V296" />
          <path class="motion-head" d={arrowHead([76, 262], [76, 304])} />
        </>
      )}
    </g>
  );
}

/** The gap of a ring in the bore: where it is read, and how the ring is laid square. */
export default function RingGapInBore() {
  return (
    <LineDrawing
      id="ring-gap-in-bore"
      title="The gap of a piston ring, read in the bore"
      description="Above, the bore from above with a bare ring in it: a feeler gauge stands in the gap between the ring’s ends, which is drawn far wider than it is. Below, the bore cut open. On the left the ring is pushed down square by the crown of the piston. On the right it lies tilted, its way round is longer, and the gap reads too wide."
      height={412}
    >
      <text class="axis-text" x={4} y={14}>
        From above
      </text>
      <Hatching id="ring-wall" />
      <Cut d={wall} hatching="ring-wall" />
      <path class="part" d={ring} />
      <path class="motion" d={`M${CX - 5} ${CY - BORE + 4}H${CX + 5}`} />
      <Label words="gap, with feeler" at={[226, 30]} to={[CX + 5, CY - BORE + 5]} ends="arrow" />
      <Label words="barrel" at={[250, 92]} to={[CX + 76, 108]} />
      <Label words="ring" at={[4, 194]} to={[CX - 44, CY + 44]} />
      <text class="axis-text" x={4} y={218}>
        In section
      </text>
      <Bore x={0} tilted={false} />
      <Bore x={178} tilted />
      <Label words="crown pushes" at={[30, 404]} to={[60, 312]} />
      <Label words="ring" at={[178 + 62, 372]} to={[178 + 70, 326]} />
    </LineDrawing>
  );
}
