import { Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';

/** The line along which the parts come out, and the body on it. */
const AXIS = 150;
const BODY = { top: 178, foot: 272, half: 50 } as const;
const BORE = { top: 196, foot: 240, reach: 84 } as const;
const PILOT = 116;
const PIVOT = 206;

const spring = Array.from({ length: 9 }, (_, i) => `L${AXIS + (i % 2 ? 14 : -14)} ${36 + 5 * i}`);

/** The parts of a slide carburettor, drawn apart, numbered in the order in which they come out. */
export default function StrippedInOrder() {
  return (
    <LineDrawing
      id="stripped"
      title="A slide carburettor taken apart, in order"
      description="The parts drawn apart along the lines on which they come out of the body. 1: the air screw, out of the side. 2: upwards, the cap, the spring and the slide with the needle hanging from it. 3: downwards, the chamber and its gasket. 4: the float’s pin, and with it the float. 5: the needle of the float valve. 6: the main jet, out of the foot of the needle jet. 7: the needle jet. 8: the pilot jet, out of a hole of its own."
      height={536}
    >
      <path class="centre-line" d={`M${AXIS} 6V${BODY.top}M${AXIS} ${BODY.foot}V526`} />
      <path
        class="centre-line"
        d={`M14 ${BODY.top + 72}H${AXIS - BODY.half}M${PILOT} ${BODY.foot}V330M186 ${BODY.foot}V306`}
      />
      <path class="edge edge-filled cap" d={`M${AXIS - 34} 16h68v12h-68z`} />
      <path class="edge edge-thin" d={`M${AXIS - 14} 31${spring.join('')}`} />
      <path class="edge edge-filled slide" d={`M${AXIS - 26} 84h52v46h-32l-20 -12z`} />
      <path
        class="edge edge-filled needle"
        d={`M${AXIS - 2} 130V160L${AXIS} 172L${AXIS + 2} 160V130Z`}
      />
      <path
        class="edge edge-filled body"
        d={`M${AXIS - BODY.half} ${BODY.top}h${2 * BODY.half}V${BORE.top}H${AXIS + BORE.reach}V${BORE.foot}H${AXIS + BODY.half}V${BODY.foot}h-${2 * BODY.half}V${BORE.foot}H${AXIS - BORE.reach}V${BORE.top}H${AXIS - BODY.half}Z`}
      />
      <path
        class="edge edge-filled air-screw"
        d={`M20 ${BODY.top + 67}h10v10h-10zM30 ${BODY.top + 69}h16l6 3l-6 3h-16z`}
      />
      <path
        class="edge edge-filled pilot"
        d={`M${PILOT - 5} 286h10v12h-10zM${PILOT - 3} 298h6v26h-6z`}
      />
      <path class="edge edge-filled needle-jet" d={`M${AXIS - 7} 286h14v50h-14z`} />
      <path
        class="edge edge-filled main-jet"
        d={`M${AXIS - 5} 350h10v10h-10zM${AXIS - 9} 360h18v8h-18z`}
      />
      <path class="edge edge-filled valve" d="M186 282l5 8v12h-10v-12z" />
      <path class="part float" d={`M${PIVOT + 22} 322h64v34h-64z`} />
      <path class="edge" d={`M178 316H${PIVOT}L${PIVOT + 22} 330`} />
      <circle class="edge edge-filled pin" cx={PIVOT} cy={316} r={5} />
      <path class="edge edge-thin gasket" d={`M${AXIS - 54} 414h108v4h-108z`} />
      <path class="edge edge-filled chamber" d={`M${AXIS - 54} 436h108v8h-6v66h-96v-66h-6z`} />
      <Label words="1 air screw" at={[4, 272]} />
      <Label words="2 cap" at={[212, 22]} to={[AXIS + 34, 22]} ends="arrow" />
      <Label words="spring" at={[212, 56]} to={[AXIS + 14, 56]} ends="arrow" />
      <Label words="slide" at={[212, 104]} to={[AXIS + 18, 104]} />
      <Label words="needle" at={[212, 148]} to={[AXIS + 2, 148]} ends="arrow" />
      <Label words="body" at={[286, 218]} to={[AXIS + 60, 218]} />
      <Label words="3 chamber" at={[230, 474]} to={[AXIS + 40, 474]} />
      <Label words="its gasket" at={[230, 416]} to={[AXIS + 54, 416]} ends="arrow" />
      <Label words="4 pin and float" at={[228, 376]} to={[PIVOT + 30, 350]} />
      <Label words="5 float valve" at={[220, 288]} to={[191, 294]} ends="arrow" />
      <Label words="6 main jet" at={[4, 364]} to={[AXIS - 9, 364]} ends="arrow" />
      <Label words="7 needle jet" at={[4, 336]} to={[AXIS - 7, 326]} ends="arrow" />
      <Label words="8 pilot jet" at={[4, 300]} to={[PILOT - 5, 294]} ends="arrow" />
    </LineDrawing>
  );
}
