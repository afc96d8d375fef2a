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

/** The insulated screw of a plate, put together, in section. */
function PutTogether() {
  return (
    <g>
      <Hatching id="tag-plate" />
      <Hatching id="tag-screw" leans="left" pitch={5} />
      <Cut d={`M24 ${TOP + 62}H${X - 22}V${TOP + 86}H24Z`} hatching="tag-plate" />
      <Cut d={`M${X + 22} ${TOP + 62}H256V${TOP + 86}H${X + 22}Z`} hatching="tag-plate" />
      <Cut
        d={`M${X - 10} ${TOP + 18}V${TOP + 142}H${X + 10}V${TOP + 18}H${X + 24}V${TOP}H${X - 24}V${TOP + 18}Z`}
        hatching="tag-screw"
      />
      {[-1, 1].map((side) => (
        <g key={side}>
          <path
            class="port-transfer edge"
            d={`M${X + side * 12} ${TOP + 48}H${X + side * 44}V${TOP + 60}H${X + side * 20}V${TOP + 88}H${X + side * 12}Z`}
          />
          <path
            class="port-transfer edge"
            d={`M${X + side * 12} ${TOP + 90}H${X + side * 44}V${TOP + 102}H${X + side * 12}Z`}
          />
          <path
            class="part"
            d={`M${X + side * 11} ${TOP + 104}H${X + side * 30}V${TOP + 124}H${X + side * 11}Z`}
          />
        </g>
      ))}
      <path class="part" d={`M${X - 34} ${TOP + 20}H${X - 11}V${TOP + 25}H${X - 34}Z`} />
      <path class="part" d={`M${X + 11} ${TOP + 20}H240V${TOP + 25}H${X + 11}Z`} />
      <path
        class="part"
        d={`M${X - 30} ${TOP + 27}H${X - 11}V${TOP + 46}H${X - 30}ZM${X + 11} ${TOP + 27}H${X + 30}V${TOP + 46}H${X + 11}Z`}
      />
      <Label words="tag" at={[352, 240]} anchor="end" to={[226, TOP + 21]} ends="arrow" />
      <Label words="metal collar" at={[352, 268]} anchor="end" to={[X + 24, TOP + 37]} />
      <Label words="plate" at={[352, 336]} anchor="end" to={[248, TOP + 74]} />
      <Label words="insulating bush" at={[4, 410]} to={[X - 16, TOP + 78]} />
      <Label words="insulating washer" at={[352, 390]} anchor="end" to={[X + 36, TOP + 96]} />
    </g>
  );
}

/** How a tag is soldered, apart from its insulation, and how it sits on its screw afterwards. */
export default function TagSoldered() {
  return (
    <LineDrawing
      id="tag-soldered"
      title="How a tag is soldered, and how it sits on its screw afterwards"
      description="Above: the tag lies in a wooden peg by itself, without its insulating washers. The wire is hooked through its hole. The iron heats tag and wire from below, and the solder is touched to the metal above, where it melts and flows. Below, in section: the screw through the plate, with an insulating bush in the hole and an insulating washer on the other side. The tag lies under the screw's head, on a metal collar, and touches the plate nowhere."
      height={424}
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
