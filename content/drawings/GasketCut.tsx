import { demoPlate } from '../../calculators/demo/plate.ts';
import { hundredth } from '../../calculators/maths/numeric/steps.ts';
import { Cut, Hatching } from '../../calculators/picture/cut.tsx';
import { arrowHead, Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';
import { gasket } from '../cover-gasket.ts';

const SCALE = 1.5;
const PLAN = [178, 322] as const;
const on = (radius: number, direction: number): string => {
  const angle = (direction * Math.PI) / 180;
  return `${hundredth(PLAN[0] + radius * SCALE * Math.cos(angle))} ${hundredth(PLAN[1] - radius * SCALE * Math.sin(angle))}`;
};
const holes = [90, 210, 330] as const;

/** The hollow punch on the sheet, the sheet on the end grain of a block. */
function OnEndGrain() {
  return (
    <g>
      <path class="part" d="M52 118H212V186H52Z" />
      <path
        class="edge edge-thin"
        d="M66 120V184M80 120V184M94 120V184M108 120V184M122 120V184M136 120V184M150 120V184M164 120V184M178 120V184M192 120V184"
      />
      <path class="edge" d="M40 115H224" />
      <Hatching id="gasket-punch" leans="left" />
      <Cut d="M124 114L118 92V54H132V92L128 114Z" hatching="gasket-punch" />
      <Cut d="M148 114L154 92V54H140V92L144 114Z" hatching="gasket-punch" />
      <path class="edge" d="M118 54V44H154V54" />
      <path class="motion" d="M136 18V32" />
      <path class="motion-head" d={arrowHead([136, 18], [136, 40])} />
      <Label words="hollow punch" at={[232, 62]} to={[152, 70]} />
      <Label words="sheet" at={[256, 100]} to={[216, 114]} ends="arrow" />
      <Label words="end grain" at={[232, 152]} to={[200, 146]} />
    </g>
  );
}

/** The gasket from above: holes first, then the inside, the outline last. */
function FromAbove() {
  const inside = (demoPlate.outside / 2) * SCALE;
  const outside = gasket.outside * (SCALE / 2);
  return (
    <g>
      <circle class="motion" stroke-dasharray="8 4" cx={PLAN[0]} cy={PLAN[1]} r={outside} />
      <circle class="edge edge-hidden" cx={PLAN[0]} cy={PLAN[1]} r={inside} />
      <circle class="centre-line" cx={PLAN[0]} cy={PLAN[1]} r={(gasket.circle / 2) * SCALE} />
      {holes.map((direction) => {
        const [x, y] = on(gasket.circle / 2, direction)
          .split(' ')
          .map(Number);
        return (
          <circle
            key={direction}
            class="edge edge-filled"
            cx={x}
            cy={y}
            r={(gasket.hole / 2) * SCALE}
          />
        );
      })}
      <path class="size-line" d={`M${on(gasket.circle / 2, 90)}L${on(gasket.circle / 2, 210)}`} />
      <Label
        words="1. holes"
        at={[4, 236]}
        to={[hundredth(PLAN[0] - 4), 322 - (gasket.circle / 2) * SCALE]}
        ends="arrow"
      />
      <Label
        words="2. inside"
        at={[352, 322]}
        anchor="end"
        to={[PLAN[0] + inside, 322]}
        ends="arrow"
      />
      <Label
        words="3. outline"
        at={[352, 236]}
        anchor="end"
        to={[hundredth(PLAN[0] + outside * 0.77), hundredth(322 - outside * 0.64)]}
        ends="arrow"
      />
      <Label words="chord" at={[4, 300]} to={[hundredth(PLAN[0] - 44), 322 - 22]} ends="arrow" />
    </g>
  );
}

/** What is never done: a gasket hammered through over the edges of the face that it is to seal. */
function Hammered() {
  return (
    <g>
      <Hatching id="gasket-face" />
      <Cut d="M60 480H150V540H60Z" hatching="gasket-face" />
      <Cut d="M210 480H270V540H210Z" hatching="gasket-face" />
      <path class="edge" d="M48 477H150L156 484M204 484L210 477H282" />
      <path class="part" d="M130 444H166V457A18 18 0 0 1 130 457Z" />
      <path class="edge" d="M166 450H250" />
      <path class="motion" d="M90 446L116 472M116 446L90 472" />
      <Label words="bruised edge" at={[352, 462]} anchor="end" to={[212, 480]} ends="arrow" />
      <Label words="face" at={[4, 510]} to={[66, 484]} />
    </g>
  );
}

/** How a gasket is cut: holes on end grain, then the inside, then the outline; never hammered on the face. */
export default function GasketCut() {
  return (
    <LineDrawing
      id="gasket-cut"
      title="How a gasket is cut, and how it is not"
      description="First, in section: the sheet lies on the end grain of a wooden block, and a hollow punch is struck down through it. Then the gasket from above: the three screw holes come first, placed by the chord from hole to hole; the inside second; the outline last. Last, what is never done: the sheet laid on the engine’s own face and hammered through over its edge, which bruises the edge of the face."
      height={552}
    >
      <text class="axis-text" x={4} y={14}>
        Holes first
      </text>
      <OnEndGrain />
      <text class="axis-text" x={4} y={212}>
        In this order
      </text>
      <FromAbove />
      <text class="axis-text" x={4} y={432}>
        Never: hammered on the face
      </text>
      <Hammered />
    </LineDrawing>
  );
}
