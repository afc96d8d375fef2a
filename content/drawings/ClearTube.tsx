import { Cut, Hatching } from '../../calculators/picture/cut.tsx';
import { Dimension } from '../../calculators/picture/dimension.tsx';
import { Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';

const FACE = 66;
const FUEL = 104;
const FLOOR = 176;
const CHAMBER = { left: 40, right: 176 } as const;
const TUBE = { left: 232, right: 252 } as const;

/** The level of the fuel, seen in a clear tube on the drain of the chamber. */
export default function ClearTube() {
  const { left, right } = CHAMBER;
  return (
    <LineDrawing
      id="clear-tube"
      title="The fuel level, seen in a clear tube"
      description="A float chamber cut open, bolted to the body. From the drain at its floor a hose leads to a clear tube that stands upright beside it, open at the top. The fuel stands equally high in both. It is measured from the gasket face down to the flat middle of the surface in the tube, not to its edge, which climbs up the wall."
      height={244}
    >
      <Hatching id="clear-tube-body" />
      <Cut
        d={`M${left - 14} ${FACE - 26}H${right + 14}V${FACE}H${left - 14}Z`}
        hatching="clear-tube-body"
      />
      <path class="liquid" d={`M${left} ${FUEL}H${right}V${FLOOR}H${left}Z`} />
      <path
        class="liquid"
        d={`M${TUBE.left} ${FUEL - 4}A14 14 0 0 0 ${TUBE.right} ${FUEL - 4}V206H106V${FLOOR}h12V194H${TUBE.left}Z`}
      />
      <path class="edge" d={`M${left} ${FACE}V${FLOOR}H106M118 ${FLOOR}H${right}V${FACE}`} />
      <path
        class="edge"
        d={`M106 ${FLOOR}V206H${TUBE.right}V20M118 ${FLOOR}V194H${TUBE.left}V20`}
      />
      <path class="fuel-line" d={`M${left} ${FUEL}H${right}`} />
      <path class="centre-line" d={`M${right + 6} ${FUEL}H${TUBE.left - 6}`} />
      <path class="edge edge-thin" d={`M${right + 18} ${FACE}H330`} />
      <Dimension from={[330, FACE]} to={[TUBE.right, FUEL]} along="y" line={296} words="level" />
      <Label words="gasket face" at={[4, 20]} to={[left - 8, FACE]} ends="arrow" />
      <Label words="float chamber" at={[56, 146]} />
      <Label words="clear tube" at={[352, 30]} anchor="end" to={[TUBE.right, 40]} ends="arrow" />
      <Label words="hose" at={[170, 226]} to={[166, 202]} />
      <Label words="drain" at={[4, 214]} to={[106, 186]} ends="arrow" />
      <Label
        words="middle of the surface"
        at={[352, 232]}
        anchor="end"
        to={[TUBE.left + 10, FUEL + 1]}
      />
    </LineDrawing>
  );
}
