import { DEMO_CYLINDERS } from '../../calculators/demo/engine.ts';
import { demoPlate } from '../../calculators/demo/plate.ts';
import { fixed } from '../../calculators/frame/text/format.ts';
import { chord } from '../../calculators/maths/plate/plate-layout.ts';
import { Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';
import { Turn } from './parts/motion.tsx';
import { polar, through, type Place } from './parts/polar.ts';

/** User units for a millimetre. */
const SCALE = 2.7;
const CENTRE: Place = [214, 196];
const HINGE: Place = [38, 92];
/** Directions run anticlockwise, as in the calculator of the plate: the other way is its mirror image. */
const at = (radius: number, direction: number): Place => polar(CENTRE)(radius, -direction);
const rim = (demoPlate.outside / 2) * SCALE;
const bore = (demoPlate.bore / 2) * SCALE;
const circle = demoPlate.slotRadius * SCALE;
const apart = 360 / DEMO_CYLINDERS;
const step = chord(demoPlate.slotRadius, apart);
const holes = Array.from({ length: DEMO_CYLINDERS }, (_, i) => i * apart);

/** A leg of the dividers: it tapers from the hinge to its point. */
function leg(to: Place): string {
  const long = Math.hypot(to[0] - HINGE[0], to[1] - HINGE[1]);
  const across: Place = [(HINGE[1] - to[1]) / long, (to[0] - HINGE[0]) / long];
  const beside = (side: 1 | -1): Place => [
    HINGE[0] + 5 * side * across[0],
    HINGE[1] + 5 * side * across[1],
  ];
  return through([beside(1), to, beside(-1)], true);
}

/** Marking out with dividers: dot, line, pitch circle and the step from set to set. */
export default function DividersOnThePlate() {
  return (
    <LineDrawing
      id="dividers-on-plate"
      title="Marking out a plate with dividers"
      description={`The face of the demo plate, to scale. A plug with a dot in its middle fills the bore. Through the dot goes a line across the face, the line of set 1, and round it the pitch circle of ${fixed(demoPlate.slotRadius, 1)} millimetres radius. The points of the dividers stand on the hole of set 1, where line and circle cross, and on that of set 2, ${fixed(step, 2)} millimetres away: the chord. From there they step on to set 3 and back to set 1.`}
      height={346}
    >
      <circle class="edge edge-filled" cx={CENTRE[0]} cy={CENTRE[1]} r={rim} />
      <circle class="edge" cx={CENTRE[0]} cy={CENTRE[1]} r={bore} />
      <path class="edge edge-thin" d={`M${CENTRE[0]} ${CENTRE[1] - rim}v${2 * rim}`} />
      <circle class="edge edge-thin" cx={CENTRE[0]} cy={CENTRE[1]} r={circle} />
      <circle class="joint" cx={CENTRE[0]} cy={CENTRE[1]} r={3} />
      {holes.slice(1).map((direction) => (
        <path
          key={direction}
          class="edge edge-thin"
          d={`M${at(circle - 8, direction).join(' ')}L${at(circle + 8, direction).join(' ')}`}
        />
      ))}
      <path
        class="edge edge-thin edge-hidden"
        d={`M${at(circle, 0).join(' ')}L${at(circle, apart).join(' ')}`}
      />
      <path class="edge edge-filled" d={leg(at(circle, 0)) + leg(at(circle, apart))} />
      <circle class="edge edge-filled" cx={HINGE[0]} cy={HINGE[1]} r={9} />
      <Turn centre={CENTRE} radius={rim - 16} from={-apart - 16} to={16 - 2 * apart} />
      <Turn centre={CENTRE} radius={rim - 16} from={-2 * apart - 16} to={16 - 3 * apart} />
      <Label
        words="dividers"
        at={[62, 62]}
        anchor="end"
        to={[HINGE[0] + 2, HINGE[1] - 9]}
        ends="arrow"
      />
      <Label words="set 1" at={[156, 72]} anchor="end" to={at(circle, 0)} />
      <Label words="set 2" at={[94, 288]} anchor="end" to={at(circle, apart)} />
      <Label words="set 3" at={[350, 324]} anchor="end" to={at(circle, 2 * apart)} />
      <Label
        words="line of set 1"
        at={[4, 14]}
        to={[CENTRE[0], CENTRE[1] - rim + 8]}
        ends="arrow"
      />
      <Label words="pitch circle" at={[352, 46]} anchor="end" to={at(circle, -62)} ends="arrow" />
      <Label
        words={`chord ${fixed(step, 2)} mm`}
        at={[130, 324]}
        anchor="end"
        to={[172, 176]}
        ends="arrow"
      />
      <Label
        words="dot on a plug"
        at={[352, 14]}
        anchor="end"
        to={[CENTRE[0] + 1, CENTRE[1] - 2]}
      />
    </LineDrawing>
  );
}
