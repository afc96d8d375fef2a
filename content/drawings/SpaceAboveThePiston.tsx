import { demoBarrel } from '../../calculators/demo/barrel.ts';
import { demoHead } from '../../calculators/demo/head.ts';
import { findRoot } from '../../calculators/maths/numeric/find-root.ts';
import { evenly } from '../../calculators/maths/numeric/steps.ts';
import { Cut, Hatching } from '../../calculators/picture/cut.tsx';
import { Label } from '../../calculators/picture/label.tsx';
import { DRAWING_WIDTH, LineDrawing } from '../../calculators/picture/line-drawing.tsx';
import { through, type Place } from './parts/polar.ts';

/** User units for a millimetre; the two slices are thin, so that they are drawn so much thicker. */
const SCALE = 3.4;
const THICKER = 6;
const CX = 128;
const FACE = 128;
const bore = (demoBarrel.bore / 2) * SCALE;
const rim = bore + 22;
const opening = (demoHead.gasketBore / 2) * SCALE;
const gasket = demoHead.gasket * SCALE * THICKER;
const deck = demoBarrel.deck * SCALE * THICKER;
const PLUG = 7 * SCALE;
const FOOT = FACE + gasket + deck + 58;
const half = demoHead.bowl / 2;
/** Volume of a bowl of that depth, the cap of a sphere, cubic mm. */
const cap = (deep: number): number => (Math.PI * deep * (3 * half ** 2 + deep ** 2)) / 6;
/** Depth of the bowl, mm, at which it holds what the demo head holds. */
const DEEP = findRoot((deep) => cap(deep) - 1000 * demoHead.volume, 1, 40);

/** The arch of the bowl from the rim of the plug's hole on one side down to its edge. */
function arch(side: 1 | -1): Place[] {
  const radius = (half ** 2 + DEEP ** 2) / (2 * DEEP);
  return evenly(PLUG / SCALE, half, 20).map((x): Place => [
    CX + side * x * SCALE,
    FACE - (DEEP - radius + Math.sqrt(radius ** 2 - x ** 2)) * SCALE,
  ]);
}

/** The space that is left above the piston at the top, in the parts in which it is measured. */
export default function SpaceAboveThePiston() {
  const [left, right] = [arch(-1), arch(1)];
  const metal = (side: 1 | -1): string =>
    through(
      [
        [CX + side * PLUG, 40],
        ...(side === 1 ? right : left),
        [CX + side * rim, FACE],
        [CX + side * rim, 40],
      ],
      true,
    );
  const barrel = (side: 1 | -1): string =>
    `M${CX + side * bore} ${FACE + gasket}H${CX + side * rim}V${FOOT}H${CX + side * bore}Z`;
  const sheet = (side: 1 | -1): string =>
    `M${CX + side * opening} ${FACE}H${CX + side * rim}V${FACE + gasket}H${CX + side * opening}Z`;
  return (
    <LineDrawing
      id="space-above"
      title="The space above the piston at the top"
      description={`Head, gasket and barrel cut through the plug’s hole, the piston at the top. The space above the crown is made of three: the hollow of the head, with the plug fitted; a round slice as thick as the squeezed gasket and as wide as its hole; and a slice of the bore between the crown and the deck, the barrel’s top face. Gasket and deck are drawn ${THICKER} times as thick as they are.`}
      height={FOOT + 26}
    >
      <Hatching id="space-head" />
      <Hatching id="space-barrel" leans="left" />
      <path
        class="liquid"
        d={`${through([[CX - PLUG, left[0]![1]], ...left, ...right.toReversed(), [CX + PLUG, right[0]![1]]], true)}M${CX - opening} ${FACE}H${CX + opening}V${FACE + gasket}H${CX - opening}ZM${CX - bore} ${FACE + gasket}H${CX + bore}V${FACE + gasket + deck}H${CX - bore}Z`}
      />
      <Cut d={`${metal(-1)}${metal(1)}`} hatching="space-head" />
      <path class="joint" d={`${sheet(-1)}${sheet(1)}`} />
      <Cut d={`${barrel(-1)}${barrel(1)}`} hatching="space-barrel" />
      <path
        class="edge edge-filled"
        d={`M${CX - bore + 2} ${FOOT}V${FACE + gasket + deck}H${CX + bore - 2}V${FOOT}Z`}
      />
      <path
        class="edge edge-filled plug"
        d={`M${CX - PLUG} 40V${left[0]![1]}H${CX + PLUG}V40M${CX - PLUG - 8} 40V24H${CX + PLUG + 8}V40Z`}
      />
      <path
        class="edge edge-thin"
        d={`M${CX - opening} ${FACE}H${CX + opening}M${CX - bore} ${FACE + gasket}H${CX + bore}`}
      />
      <path class="centre-line" d={`M${CX} 14V${FOOT + 8}`} />
      <Label words="head" at={[DRAWING_WIDTH - 86, 62]} to={[CX + 30, FACE - 18]} />
      <Label
        words="gasket"
        at={[DRAWING_WIDTH - 86, FACE - 4]}
        to={[CX + bore - 10, FACE + gasket / 2]}
      />
      <Label
        words="deck"
        at={[DRAWING_WIDTH - 86, FACE + 42]}
        to={[CX + bore - 10, FACE + gasket + deck / 2]}
      />
      <Label
        words="crown"
        at={[DRAWING_WIDTH - 86, FOOT - 8]}
        to={[CX + 50, FACE + gasket + deck]}
        ends="arrow"
      />
      <Label
        words="plug fitted"
        at={[DRAWING_WIDTH - 86, 22]}
        to={[CX + PLUG + 8, 30]}
        ends="arrow"
      />
    </LineDrawing>
  );
}
