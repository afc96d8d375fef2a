import { Cut, Hatching } from '../../calculators/picture/cut.tsx';
import { Dimension } from '../../calculators/picture/dimension.tsx';
import { arrowHead, Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';

const BORE = { left: 44, right: 300, roof: 150, floor: 226 } as const;
const SLIDE = { left: 136, right: 208, top: 96 } as const;
/** How far the slide stands over the floor: the thickness of the shank. */
const SHANK = 18;
const FOOT = BORE.floor - SHANK;
const CABLE = 172;

/** A drill's shank as a gauge below the slide, with the screw and the cable that hold it up. */
export default function ShankUnderTheSlide() {
  const { left, right, roof, floor } = BORE;
  return (
    <LineDrawing
      id="shank"
      title="A drill’s shank below the slide, the stop screw and the cable’s adjuster"
      description="A carburettor’s bore cut open, air coming from the left. The slide hangs on its cable, which goes up through the adjuster in the cap. The point of the stop screw comes through the wall of its way, bears on a ramp in the slide and keeps it off the floor of the bore. The shank of a drill lies across the bore at the engine’s side and just passes below the slide. Between the end of the outer cable and the adjuster is the free play."
      height={300}
    >
      <Hatching id="shank-body" />
      <Cut
        d={`M${left} ${roof - 12}H${SLIDE.left - 12}V70H${SLIDE.left - 2}V${roof}H${left}ZM${right} ${roof - 12}H${SLIDE.right + 12}V70H${SLIDE.right + 2}V${roof}H${right}ZM${left} ${floor}H${right}V${floor + 14}H${left}Z`}
        hatching="shank-body"
      />
      <path
        class="edge edge-filled"
        d={`M${SLIDE.left - 16} 58h${SLIDE.right - SLIDE.left + 32}v12h-${SLIDE.right - SLIDE.left + 32}z`}
      />
      <path class="edge edge-filled" d={`M${CABLE - 9} 34h18v24h-18z`} />
      <path class="edge edge-thin" d={`M${CABLE - 9} 41h18M${CABLE - 9} 48h18`} />
      <path class="edge edge-filled" d={`M${CABLE - 5} 6h10v20h-10z`} />
      <path class="edge edge-thin" d={`M${CABLE} 26V${SLIDE.top + 10}`} />
      <path
        class="part part-moving"
        d={`M${SLIDE.left} ${FOOT - 16}V${SLIDE.top}H${SLIDE.right}V104L${SLIDE.right - 8} 120H${SLIDE.right}V${FOOT}H${SLIDE.left + 30}Z`}
      />
      <path class="edge edge-filled" d={`M${SLIDE.right - 4} 112l6 -4H250v8H${SLIDE.right + 2}Z`} />
      <path class="edge edge-filled" d="M250 104h8v16h-8z" />
      <circle class="edge edge-filled" cx={SLIDE.right - 14} cy={floor - SHANK / 2} r={SHANK / 2} />
      <Dimension
        from={[CABLE + 5, 26]}
        to={[CABLE + 9, 34]}
        along="y"
        line={204}
        words="free play"
      />
      <path class="motion" d="M8 188H32" />
      <path class="motion-head" d={arrowHead([8, 188], [38, 188])} />
      <Label words="air" at={[10, 172]} />
      <Label words="cable" at={[60, 20]} anchor="end" to={[CABLE - 4, 16]} ends="arrow" />
      <Label words="adjuster" at={[84, 46]} anchor="end" to={[CABLE - 9, 46]} ends="arrow" />
      <Label words="slide" at={[60, 112]} anchor="end" to={[SLIDE.left + 16, 118]} />
      <Label words="stop screw" at={[352, 80]} anchor="end" to={[254, 104]} ends="arrow" />
      <Label
        words="drill’s shank"
        at={[300, 272]}
        anchor="end"
        to={[SLIDE.right - 12, floor - 7]}
      />
      <Label words="cutaway" at={[20, 272]} to={[SLIDE.left + 12, FOOT - 8]} ends="arrow" />
    </LineDrawing>
  );
}
