import { Dimension } from '../../calculators/picture/dimension.tsx';
import { arrowHead, Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';
import { demoFloat } from '../../calculators/demo/float.ts';
import { fixed } from '../../calculators/frame/text/format.ts';
import { bed } from '../test-bed.ts';

/** User units for a millimetre. */
const SCALE = 0.25;
const GROUND = 322;
const RAIL = 298;
const FEET = [52, 52 + bed.long * SCALE] as const;
/** The level in the bottle stands so far above the float valve. */
const VALVE = 228;
const LEVEL = VALVE - demoFloat.head * SCALE;
const BOTTLE = { left: 256, right: 282, top: LEVEL - 20, bottom: LEVEL + 26 } as const;
const OUTLET = BOTTLE.left - bed.pipeToBottle * SCALE;

/** From the end the bed is drawn larger. */
const END = { scale: 0.36, middle: 150, ground: 640 } as const;
/** By so much the end view stands nearer to its name. */
const CLOSER = 26;
const HALF = (bed.wide / 2) * END.scale;
const LEVER = END.middle + HALF + bed.leverOutside * END.scale;

const metres = (mm: number): string => `${fixed(mm / 1000, 1)} m`;

function Engine() {
  return (
    <g>
      <path class="part" d="M146 298L160 262H206L220 298Z" />
      <circle class="part" cx={183} cy={250} r={26} />
      <circle class="edge edge-thin" cx={183} cy={250} r={4} />
      <path class="part" d="M168 228V200H198V228Z" />
      <path class="edge edge-thin" d="M162 206H204M162 212H204M162 218H204M162 224H204" />
      <path class="part" d="M166 200V190H200V200Z" />
      <path class="edge" d="M183 190V178" />
      <path class="part" d="M204 208H212V204H226L232 201V223L226 220H212V216H204Z" />
      <path class="part" d="M210 222H226V242H210Z" />
      <path class="edge" d={`M162 210H150L132 220L112 252L98 258H${OUTLET}`} />
      <path class="edge" d={`M162 218H152L140 225L120 258L104 266H${OUTLET}`} />
    </g>
  );
}

/** The bed from its end: three cylinders, and the lever that stands outside its feet. */
function FromTheEnd() {
  const { middle, ground } = END;
  const rail = ground - 30;
  const foot = middle + HALF;
  return (
    <g>
      <text class="axis-text" x={4} y={458}>
        From the end: what a kick does
      </text>
      <g transform={`translate(0 ${-CLOSER})`}>
        <path class="edge edge-thin" d={`M20 ${ground}H300`} />
        {[-1, 1].map((side) => (
          <path
            key={side}
            class="part"
            d={`M${middle + side * HALF} ${ground}V${rail}h${-side * 20}V${ground}Z`}
          />
        ))}
        <path
          class="part"
          d={`M${middle - HALF + 20} ${rail + 4}h${2 * HALF - 40}v12h${40 - 2 * HALF}Z`}
        />
        <path class="part" d={`M${middle - 62} ${rail + 4}V556H${middle + 62}V${rail + 4}Z`} />
        {[-40, 0, 40].map((x) => (
          <g key={x}>
            <path class="part" d={`M${middle + x - 14} 556V518H${middle + x + 14}V556Z`} />
            <path
              class="edge edge-thin"
              d={`M${middle + x - 17} 528h34M${middle + x - 17} 536h34M${middle + x - 17} 544h34`}
            />
          </g>
        ))}
        <path
          class="edge"
          d={`M${middle + 62} 582H${LEVER - 10}M${LEVER - 10} 582V566H${LEVER + 12}`}
        />
        <path class="motion" d={`M${LEVER} 510V556`} />
        <path class="motion-head" d={arrowHead([LEVER, 510], [LEVER, 563])} />
        <path class="motion" d={`M${middle} 570V596`} />
        <path class="motion-head" d={arrowHead([middle, 570], [middle, 604])} />
        <Label words="kick" at={[LEVER + 10, 520]} />
        <Label words="weight" at={[middle + 8, 582]} />
        <Dimension
          from={[middle, 604]}
          to={[foot, ground]}
          along="x"
          line={666}
          words={`${fixed(bed.wide / 2, 0)} mm`}
        />
        <Dimension from={[foot, ground]} to={[LEVER, 566]} along="x" line={666} words="" />
        <Label words={`${fixed(bed.leverOutside, 0)} mm`} at={[LEVER + 12, 666]} />
        <Label words="tips over" at={[LEVER + 12, 598]} to={[foot, ground]} ends="arrow" />
        <Label words="this foot" at={[LEVER + 12, 614]} />
      </g>
    </g>
  );
}

/** A test bed for the first fire, from the side and from its end, to scale. */
export default function TestBed() {
  return (
    <LineDrawing
      id="test-bed"
      title="A test bed for the first fire, from the side and from its end"
      description="From the side, to scale: the engine is bolted by plates to a bed of two rails with feet a metre apart, staked to the ground. The exhaust leads away to the left and ends more than a metre from the fuel bottle, which stands on a post to the right of the carburettor, its level 0.3 metres above the float valve, with a tap below it. From the end: the kick lever stands outside the feet. A kick down on it would tip the bed over the foot on that side, and the weight in the middle holds it down."
      height={680 - CLOSER}
    >
      <text class="axis-text" x={4} y={14}>
        From the side
      </text>
      <path class="edge edge-thin" d={`M4 ${GROUND}H352`} />
      <path class="part" d={`M36 ${RAIL}H320V${RAIL + 14}H36Z`} />
      {FEET.map((x, i) => (
        <path
          key={x}
          class="part"
          d={`M${x} ${GROUND}V${RAIL + 14}h${i === 0 ? 30 : -30}V${GROUND}Z`}
        />
      ))}
      <path class="edge" d="M30 290L42 346M326 290L314 346" />
      <Engine />
      <path class="part" d={`M288 ${RAIL}V${BOTTLE.top - 6}h8V${RAIL}Z`} />
      <path
        class="liquid"
        d={`M${BOTTLE.left} ${LEVEL}H${BOTTLE.right}V${BOTTLE.bottom}H${BOTTLE.left}Z`}
      />
      <path
        class="edge"
        d={`M${BOTTLE.left} ${BOTTLE.top}H${BOTTLE.right}V${BOTTLE.bottom}H${BOTTLE.left}ZM264 ${BOTTLE.top}v-8h10v8M${BOTTLE.right} ${LEVEL + 8}h6`}
      />
      <path class="edge" d={`M269 ${BOTTLE.bottom}V226L259 236H226`} />
      <path class="edge edge-filled" d="M262 190L276 204V190L262 204Z" />
      <path class="edge" d="M183 250L206 270M202 270H214" />
      <path class="motion" d="M218 252L214 282" />
      <path class="motion-head" d={arrowHead([218, 272], [212, 287])} />
      <Dimension
        from={[OUTLET, 258]}
        to={[BOTTLE.left, BOTTLE.top]}
        along="x"
        line={62}
        words={`${metres(bed.pipeToBottle)} or more`}
      />
      <Dimension
        from={[BOTTLE.right, LEVEL]}
        to={[226, VALVE]}
        along="y"
        line={308}
        words={metres(demoFloat.head)}
      />
      <Dimension
        from={[FEET[0], GROUND]}
        to={[FEET[1], GROUND]}
        along="x"
        line={372}
        words={metres(bed.long)}
      />
      <Label words="bottle, vented" at={[352, 90]} anchor="end" to={[276, LEVEL - 10]} />
      <Label words="tap" at={[226, 180]} anchor="end" to={[262, 197]} ends="arrow" />
      <Label words="exhaust" at={[36, 228]} to={[70, 262]} />
      <Label words="stake" at={[4, 396]} to={[40, 338]} ends="arrow" />
      <Label words="lever" at={[230, 268]} />
      <Label words="plug" at={[120, 176]} anchor="end" to={[182, 182]} ends="arrow" />
      <Label words="Extinguisher and helper: 2 m away, upwind" at={[4, 424]} />
      <FromTheEnd />
    </LineDrawing>
  );
}
