import { Cut, Hatching } from '../../calculators/picture/cut.tsx';
import { arrowHead, Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';

const MIDDLE = 150;
/** The pin lies along the middle line, which is drawn upright: it is pressed straight down. */
const POST = { upper: 78, lower: 162, thick: 26, half: 24 } as const;
const PIN = 5;

/** The float's pin pressed out, the post from which it leaves lying on a block with a hole. */
export default function PressingTheFloatPin() {
  const { upper, lower, thick, half } = POST;
  const post = (top: number): string =>
    `M${MIDDLE - 84} ${top}H${MIDDLE - PIN}V${top + thick}H${MIDDLE - 84}ZM${MIDDLE + PIN} ${top}H${MIDDLE + half}V${top + thick}H${MIDDLE + PIN}Z`;
  const block = lower + thick;
  return (
    <LineDrawing
      id="float-pin"
      title="Pressing out the pin of a float"
      description="Section along the pin, laid upright. The pin goes through two thin posts of the casting with the arm of the float between them. Its knurled end is below, in the lower post, and leaves there. That lower post lies flat on a block with a hole, so that it carries the load. A punch thinner than the pin presses from above."
      height={296}
    >
      <Hatching id="pin-casting" />
      <Hatching id="pin-block" leans="left" />
      <Cut d={post(upper)} hatching="pin-casting" />
      <Cut d={post(lower)} hatching="pin-casting" />
      <Cut d={`M${MIDDLE - 84} ${upper}V${lower + thick}h-20V${upper}Z`} hatching="pin-casting" />
      <path class="part" d={`M${MIDDLE - 20} ${upper + thick + 6}h40V${lower - 6}h-40z`} />
      <Cut
        d={`M${MIDDLE - 110} ${block}H${MIDDLE - 13}V${block + 64}H${MIDDLE - 110}ZM${MIDDLE + 13} ${block}H${MIDDLE + 66}V${block + 64}H${MIDDLE + 13}Z`}
        hatching="pin-block"
      />
      <path
        class="edge edge-filled"
        d={`M${MIDDLE - PIN} ${upper - 2}h${2 * PIN}V${block - 8}h2V${block + 6}h-${2 * PIN + 4}V${block - 8}h2Z`}
      />
      <path
        class="edge edge-filled"
        d={`M${MIDDLE - 3} ${upper - 2}V44h-6V20h18V44h-6V${upper - 2}Z`}
      />
      <path class="centre-line" d={`M${MIDDLE} 6V284`} />
      <path class="motion" d={`M${MIDDLE + 22} 22V48`} />
      <path class="motion-head" d={arrowHead([MIDDLE + 22, 22], [MIDDLE + 22, 54])} />
      <Label words="press, do not strike" at={[MIDDLE + 34, 34]} />
      <Label words="punch, thinner" at={[MIDDLE + 34, 66]} to={[MIDDLE + 3, 60]} ends="arrow" />
      <Label words="post" at={[230, 92]} to={[MIDDLE + 16, upper + 12]} />
      <Label words="float’s arm" at={[230, 132]} to={[MIDDLE + 12, 130]} />
      <Label words="post under load" at={[198, 176]} to={[MIDDLE + 18, lower + 14]} />
      <Label words="block with a hole" at={[232, 226]} to={[MIDDLE + 40, block + 34]} />
      <Label words="pin" at={[232, 272]} to={[MIDDLE + 2, block + 2]} />
    </LineDrawing>
  );
}
