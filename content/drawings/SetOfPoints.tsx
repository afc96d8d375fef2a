import { demoCam } from '../../calculators/demo/cam.ts';
import { liftAt, type BreakerCam } from '../../calculators/maths/ignition/breaker-cam.ts';
import { evenly } from '../../calculators/maths/numeric/steps.ts';
import { Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';
import { Turn } from './parts/motion.tsx';
import { polar, through, type Place } from './parts/polar.ts';

const cam: BreakerCam = { ...demoCam, profile: 'harmonic' };
const PER_MM = 16;
const LOW = 34;
const MIDDLE: Place = [176, 276];
const PIVOT: Place = [80, 182];
const ARM = { top: 177, foot: 187, end: 292 } as const;
const CONTACT = 274;
const at = polar(MIDDLE);

/** A slot that runs round a centre, with its screw. */
function Screw(props: { centre: Place; radius: number; on: number; half: number; size: number }) {
  const { centre, radius, on, half, size } = props;
  const place = polar(centre);
  const [inner, outer, end] = [radius - size + 3, radius + size - 3, size - 3];
  const [a, b] = [place(outer, on - half), place(outer, on + half)];
  const [c, d] = [place(inner, on + half), place(inner, on - half)];
  const [x, y] = place(radius, on);
  return (
    <g>
      <path
        class="edge edge-thin edge-filled"
        d={`M${a.join(' ')}A${outer} ${outer} 0 0 1 ${b.join(' ')}A${end} ${end} 0 0 1 ${c.join(' ')}A${inner} ${inner} 0 0 0 ${d.join(' ')}A${end} ${end} 0 0 1 ${a.join(' ')}Z`}
      />
      <circle class="edge edge-filled" cx={x} cy={y} r={size} />
      <path class="edge edge-thin" d={`M${x - size + 2} ${y - 3}l${2 * size - 4} 6`} />
    </g>
  );
}

/** One set of points, seen as it lies on the plate, the contacts shut. */
export default function SetOfPoints() {
  const outline = evenly(0, 360, 120).map((turned): Place => {
    const fromLobe = ((turned + 180) % 360) - 180;
    return at(LOW + liftAt(cam, fromLobe) * PER_MM, turned + 140);
  });
  return (
    <LineDrawing
      id="set-of-points"
      title="One set of points and its parts"
      description="A set of points seen from outside, its contacts shut. The arm swings on a pivot at its left end. Its heel hangs just clear of the low part of the cam below it. At its right end the moving contact rests on the fixed contact, which lies on the side of the cam, so that the heel parts them as the cam lifts it. A spring presses the arm towards the cam and brings the current to it from the tag of the wire. Blue is insulation: round the pivot, at the terminal, and the heel. The gap screw holds the carrier of the fixed contact, which swings on the same pivot, the set’s screw in its slot holds the whole set on the plate."
      height={372}
    >
      <path class="edge edge-filled" d={`M36 134H344V300H252A76 76 0 0 0 100 300H36Z`} />
      <path class="edge edge-filled" d="M60 160H100L116 205H336V250H300V217H106L60 204Z" />
      <Screw centre={PIVOT} radius={242} on={102.5} half={1.8} size={9} />
      <Screw centre={MIDDLE} radius={116} on={268} half={5} size={11} />
      <path class="edge edge-filled" d="M56 98h6v36h-6z" />
      <path class="part" d="M49 102h7v26h-7zM62 102h7v26h-7z" />
      <path class="edge edge-filled" d="M40 107h6v16h-6zM72 107h9v16h-9z" />
      <path class="edge edge-filled" d="M46 105h3v26h-3z" />
      <path class="edge edge-thin" d="M47 131v14H16V342" />
      <path class="edge" d="M70.5 128V96A10 10 0 0 1 84 92L196 168A8 8 0 0 0 206 175" />
      <path
        class="edge edge-filled"
        d={`M${PIVOT[0]} ${ARM.top - 8}L${PIVOT[0] + 24} ${ARM.top}H${ARM.end}V${ARM.foot}H${PIVOT[0] + 24}L${PIVOT[0]} ${ARM.foot + 8}A13 13 0 0 1 ${PIVOT[0]} ${ARM.top - 8}Z`}
      />
      <circle class="part" cx={PIVOT[0]} cy={PIVOT[1]} r={9} />
      <circle class="edge edge-filled" cx={PIVOT[0]} cy={PIVOT[1]} r={5} />
      <path
        class="part"
        d={through(
          [
            [MIDDLE[0] - 12, ARM.foot],
            [MIDDLE[0] + 12, ARM.foot],
            [MIDDLE[0] + 5, 235],
            [MIDDLE[0] - 5, 235],
          ],
          true,
        )}
      />
      <path class="edge edge-filled" d={`M${CONTACT - 9} ${ARM.foot}h18v9h-18z`} />
      <path class="edge edge-filled" d={`M${CONTACT - 9} ${ARM.foot + 9}h18v9h-18z`} />
      <path class="edge edge-filled" d={through(outline, true)} />
      <path
        class="centre-line"
        d={`M${MIDDLE[0] - 44} ${MIDDLE[1]}h88M${MIDDLE[0]} ${MIDDLE[1] - 30}v78`}
      />
      <Turn centre={MIDDLE} radius={20} from={-50} to={50} />
      <Label words="insulation" at={[4, 14]} to={[52, 106]} />
      <Label words="tag" at={[4, 68]} to={[47, 106]} ends="arrow" />
      <Label words="to coil and condenser" at={[4, 356]} />
      <Label words="spring" at={[84, 64]} to={[118, 115]} ends="arrow" />
      <Label words="arm" at={[166, 92]} to={[228, 181]} />
      <Label words="moving contact" at={[250, 50]} anchor="end" to={[CONTACT - 5, 191]} />
      <Label words="fixed contact" at={[352, 84]} anchor="end" to={[CONTACT + 5, 201]} />
      <Label words="pivot" at={[42, 228]} to={[80, 183]} />
      <Label words="heel" at={[42, 248]} to={[174, 216]} />
      <Label words="set’s screw," at={[34, 320]} to={[62, 284]} />
      <Label words="in its slot" at={[34, 336]} />
      <Label words="cam" at={[258, 342]} to={[190, 306]} />
      <Label words="gap screw" at={[352, 320]} anchor="end" to={[317, 236]} />
    </LineDrawing>
  );
}
