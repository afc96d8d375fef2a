import { Cut, Hatching } from '../../calculators/picture/cut.tsx';
import { arrowHead, Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';

const X = 140;
const TOP = 236;

/** The tag in a wooden peg, iron below, solder above: what is heated is the metal. */
function Heated() {
  return (
    <g>
      <path class="part" d="M60 92H146V98H60ZM154 92H206V98H154Z" />
      <path class="part" d="M20 72H78V90H20ZM20 100H78V118H20Z" />
      <path class="liquid edge" d="M138 91L148 80H166L178 91Z" />
      <path class="edge" d="M250 86H156A6 6 0 0 0 150 92V98A6 6 0 0 0 156 104H182" />
      <path class="part" d="M246 80H300V92H246Z" />
      <path class="part" d="M100 100H126L108 160H82Z" />
      <path class="edge" d="M196 42L158 79" />
      <path class="motion" d="M104 84H126" />
      <path class="motion-head" d={arrowHead([104, 84], [135, 84])} />
      <Label words="heat" at={[96, 66]} />
      <Label words="solder, to the metal" at={[352, 34]} anchor="end" to={[194, 42]} ends="arrow" />
      <Label words="wire" at={[352, 64]} anchor="end" to={[282, 84]} />
      <Label words="tag" at={[352, 120]} anchor="end" to={[206, 96]} ends="arrow" />
      <Label words="iron, from below" at={[140, 150]} to={[108, 136]} />
      <Label words="wooden peg" at={[4, 48]} to={[40, 78]} />
    </g>
  );
}

/** The live screw of a set, put together, in section; what is tinted is insulation. */
function PutTogether() {
  const both = [-1, 1] as const;
  return (
    <g>
      <Hatching id="tag-set" />
      <Hatching id="tag-screw" leans="left" pitch={5} />
      {both.map((side) => (
        <Cut
          key={side}
          d={`M${X + side * 22} ${TOP + 41}H${X + side * 104}V${TOP + 65}H${X + side * 22}Z`}
          hatching="tag-set"
        />
      ))}
      <Cut
        d={`M${X - 10} ${TOP + 18}V${TOP + 122}H${X + 10}V${TOP + 18}H${X + 24}V${TOP}H${X - 24}V${TOP + 18}Z`}
        hatching="tag-screw"
      />
      {both.map((side) => (
        <g key={side}>
          <path
            class="part"
            d={`M${X + side * 11} ${TOP + 27}H${X + side * 44}V${TOP + 39}H${X + side * 11}Z`}
          />
          <path
            class="part"
            d={`M${X + side * 11} ${TOP + 41}H${X + side * 20}V${TOP + 65}H${X + side * 11}Z`}
          />
          <path
            class="part"
            d={`M${X + side * 11} ${TOP + 67}H${X + side * 44}V${TOP + 79}H${X + side * 11}Z`}
          />
          <path
            class="edge edge-filled"
            d={`M${X + side * 11} ${TOP + 88}H${X + side * 28}V${TOP + 106}H${X + side * 11}Z`}
          />
        </g>
      ))}
      <path
        class="edge edge-filled"
        d={`M20 ${TOP + 20}H${X - 11}V${TOP + 25}H20ZM${X + 11} ${TOP + 20}H${X + 24}V${TOP + 25}H${X + 11}Z`}
      />
      <path
        class="edge edge-filled"
        d={`M${X - 28} ${TOP + 81}H${X - 11}V${TOP + 86}H${X - 28}ZM${X + 11} ${TOP + 81}H${X + 110}V${TOP + 86}H${X + 11}Z`}
      />
      <Label words="arm’s spring" at={[4, TOP]} to={[40, TOP + 20]} ends="arrow" />
      <Label words="insulating washers" at={[352, TOP + 4]} anchor="end" to={[X + 40, TOP + 32]} />
      <Label words="set" at={[352, TOP + 52]} anchor="end" to={[X + 98, TOP + 52]} />
      <Label words="tag" at={[352, TOP + 104]} anchor="end" to={[X + 106, TOP + 86]} ends="arrow" />
      <Label words="insulating bush" at={[4, TOP + 140]} to={[X - 15, TOP + 58]} />
      <Label words="nut" at={[X + 50, TOP + 132]} to={[X + 22, TOP + 98]} />
    </g>
  );
}

/** How a tag is soldered, apart from its insulation, and how it sits on its screw afterwards. */
export default function TagSoldered() {
  return (
    <LineDrawing
      id="tag-soldered"
      title="How a tag is soldered, and how it sits on its screw afterwards"
      description="Above: the tag lies in a wooden peg by itself, without its insulating washers. The wire is hooked through its hole. The iron heats tag and wire from below, and the solder is touched to the metal above, where it melts and flows. Below, in section: the live screw through the set, with an insulating bush in the hole and an insulating washer on either side. The arm’s spring lies under the screw’s head, the tag under its nut, and both touch the set nowhere."
      height={392}
    >
      <text class="axis-text" x={4} y={14}>
        Soldered: washers off
      </text>
      <Heated />
      <text class="axis-text" x={4} y={206}>
        Put together, in section
      </text>
      <PutTogether />
    </LineDrawing>
  );
}
