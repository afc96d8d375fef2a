import { arrowHead, Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';
import { at, SlideCarburettor } from './parts/slide-carburettor.tsx';

/** Where in the carburettor the fuel is measured at each throttle. */
export default function FourThrottleZones() {
  return (
    <LineDrawing
      id="throttle-zones"
      title="Which part measures the fuel at which throttle"
      description="A slide carburettor cut open, air coming from the left, the slide a third lifted. Four numbers show what rules as the slide rises: 1, the pilot jet with its outlet behind the slide, from shut to an eighth; 2, the cutaway of the slide’s front edge, from an eighth to a quarter; 3, the needle in its jet, from a quarter to three quarters; 4, the main jet at the foot of the needle jet, from three quarters to full."
      height={412}
    >
      <SlideCarburettor id="throttle-zones" lifted={0.4} />
      <path class="motion" d="M6 152H32" />
      <path class="motion-head" d={arrowHead([6, 152], [38, 152])} />
      <Label words="air" at={[8, 136]} />
      <Label words="engine" at={[352, 152]} anchor="end" />
      <Label words="1 pilot jet" at={[350, 250]} anchor="end" to={[at.pilot + 2, at.face + 26]} />
      <Label
        words="outlet"
        at={[350, 204]}
        anchor="end"
        to={[at.outlet, at.floor + 3]}
        ends="arrow"
      />
      <Label words="2 cutaway" at={[4, 84]} to={[at.slideLeft + 8, 148]} ends="arrow" />
      <Label words="3 needle" at={[204, 60]} to={[at.needle + 1, 110]} />
      <Label
        words="4 main jet"
        at={[350, 290]}
        anchor="end"
        to={[at.needle + 4, 276]}
        ends="arrow"
      />
      <Label words="slide" at={[4, 30]} to={[at.slideLeft + 20, 84]} />
      <Label words="needle jet" at={[4, 322]} to={[at.needle - 5, 250]} />
      <Label words="fuel" at={[4, 276]} to={[84, 262]} />
      <text x={4} y={350}>
        1 shut to an eighth: pilot
      </text>
      <text x={4} y={368}>
        2 an eighth to a quarter: cutaway
      </text>
      <text x={4} y={386}>
        3 a quarter to three quarters: needle
      </text>
      <text x={4} y={404}>
        4 three quarters to full: main jet
      </text>
    </LineDrawing>
  );
}
