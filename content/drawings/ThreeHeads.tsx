import { demoBarrel } from '../../calculators/demo/barrel.ts';
import { demoHead } from '../../calculators/demo/head.ts';
import { evenly, hundredth } from '../../calculators/maths/numeric/steps.ts';
import { Cut, Hatching } from '../../calculators/picture/cut.tsx';
import { Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';
import { through, type Place } from './parts/polar.ts';

/** User units for a millimetre. */
const SCALE = 3.6;
const CX = 150;
const FACE = 112;
const PANEL = 178;
const PLUG = 7 * SCALE;
const bore = (demoBarrel.bore / 2) * SCALE;
const rim = bore + 30;
const gasket = demoHead.gasket * SCALE;
const crown = demoHead.squish * SCALE;

interface Head {
  readonly id: string;
  readonly words: string;
  /** Half the width of the hollow and its depth, and how deep the band lies in the face, mm. */
  readonly half: number;
  readonly deep: number;
  readonly recess: number;
}

const heads: readonly Head[] = [
  { id: 'level', words: 'Bowl, band level with the face', half: 18, deep: 15, recess: 0 },
  { id: 'recessed', words: 'Bowl, band lies recessed', half: 18, deep: 12.5, recess: 1.2 },
  { id: 'dome', words: 'Plain dome, no band', half: 26, deep: 8.4, recess: 0 },
];

/** The arch of the hollow from the rim of the plug hole on one side down to its edge. */
function arch({ half, deep, recess }: Head, side: 1 | -1): Place[] {
  const radius = (half ** 2 + deep ** 2) / (2 * deep);
  return evenly(PLUG / SCALE, half, 24).map((x): Place => [
    CX + side * x * SCALE,
    FACE - (recess + deep - radius + Math.sqrt(radius ** 2 - x ** 2)) * SCALE,
  ]);
}

function Section({ head, top }: { readonly head: Head; readonly top: number }) {
  const { id, words, half, recess } = head;
  const band = FACE - recess * SCALE;
  const wall = (side: 1 | -1): string =>
    `M${CX + side * bore} ${FACE + gasket}H${CX + side * rim}V${PANEL - 14}H${CX + side * bore}Z`;
  const metal = (side: 1 | -1): string => {
    const hollow = arch(head, side);
    return through(
      [
        [CX + side * PLUG, 30],
        ...hollow,
        [CX + side * bore, band],
        [CX + side * bore, FACE],
        [CX + side * rim, FACE],
        [CX + side * rim, 30],
      ],
      true,
    );
  };
  return (
    <g transform={`translate(0 ${top})`}>
      <text class="axis-text" x={4} y={16}>
        {words}
      </text>
      <Hatching id={`head-${id}`} />
      <Hatching id={`barrel-${id}`} leans="left" />
      <Cut d={`${metal(-1)}${metal(1)}`} hatching={`head-${id}`} />
      <Cut d={`${wall(-1)}${wall(1)}`} hatching={`barrel-${id}`} />
      <path
        class="joint"
        d={`M${CX - rim} ${FACE}h${rim - bore - gasket}v${gasket}h${gasket + bore - rim}zM${CX + rim} ${FACE}h${bore + gasket - rim}v${gasket}h${rim - bore - gasket}z`}
      />
      <path
        class="edge edge-filled"
        d={`M${CX - bore + 2} ${PANEL - 14}V${FACE + crown}H${CX + bore - 2}V${PANEL - 14}Z`}
      />
      <path
        class="edge edge-thin"
        d={`M${CX - PLUG} 30h${2 * PLUG}M${CX - PLUG} ${hundredth(arch(head, 1)[0]![1])}h${2 * PLUG}M${CX - bore} ${band}h${2 * bore}`}
      />
      <path class="centre-line" d={`M${CX} 26V${PANEL - 8}`} />
      {half * SCALE < bore ? (
        <Label
          words="band"
          at={[288, 96]}
          to={[CX + (bore + half * SCALE) / 2, band]}
          ends="arrow"
        />
      ) : null}
      {recess > 0 ? (
        <Label words="face" at={[288, 132]} to={[CX + rim - 8, FACE]} ends="arrow" />
      ) : null}
      <Label
        words={half * SCALE < bore ? 'bowl' : 'dome'}
        at={[288, 60]}
        to={[CX + 8, FACE - 14]}
      />
    </g>
  );
}

/** Three heads cut through the plug hole, each on its barrel with the piston at the top. */
export default function ThreeHeads() {
  return (
    <LineDrawing
      id="three-heads"
      title="Three heads, cut through the plug hole"
      description="Each head stands on its gasket and barrel, the piston at the top. First: a bowl in the middle, and round it a flat band in one plane with the head’s face. Second: the same with the band a little way up in the head, so that the rim stands below it. Third: a plain dome as wide as the bore, with no band: crown and head come near each other at the very edge only."
      height={3 * PANEL}
    >
      {heads.map((head, i) => (
        <Section key={head.id} head={head} top={i * PANEL} />
      ))}
    </LineDrawing>
  );
}
