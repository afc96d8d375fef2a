import { fixed, showFixed } from '../../frame/text/format.ts';
import type { LengthDisplay } from '../../frame/text/units.ts';
import { liftAt, openingAt, type BreakerCam } from '../../maths/ignition/breaker-cam.ts';
import { hundredth } from '../../maths/numeric/steps.ts';
import { Enlarged } from './Enlarged.tsx';

interface Props {
  readonly cam: BreakerCam;
  readonly gap: number;
  /** Cam degrees the heel has to go to the middle of the lobe. */
  readonly at: number;
  readonly leverRatio: number;
  /** mm */
  readonly baseDiameter: number;
  readonly lengths: LengthDisplay;
}

const WIDTH = 340;
const HEIGHT = 350;
const CENTRE = { x: 180, y: 255 };
/** User units that the cam may reach from its centre, and the arm above it. */
const CAM = 68;
const ARM = 118;
/** Points of the outline: chords of two degrees stay within a fiftieth of a unit of it. */
const STEPS = 180;

/**
 * Cam, heel and arm to scale, the cam turning clockwise. The fixed contact stands still and the arm
 * rests on it until the lobe has come up to the heel; what goes on there is enlarged above.
 */
export function CamDrawing({ cam, gap, at, leverRatio, baseDiameter, lengths }: Props) {
  const base = baseDiameter / 2;
  const lobe = cam.lift / leverRatio;
  const shutLift = cam.lift - gap;
  const apart = openingAt(cam, gap, at);
  const clear = Math.max(0, shutLift - liftAt(cam, at)) / leverRatio;
  const lift = shutLift + apart;
  const heel = lift / leverRatio;
  const block = base * 0.55;
  const thick = base * 0.12;
  const height = base + block;
  const scale = Math.min(CAM / (base + lobe), ARM / (height + 1.25 * Math.max(cam.lift, lobe)));
  const room = (WIDTH - 40 - CENTRE.x) / scale;
  const armLength = Math.min(base * 1.9, room / Math.max(0.5, leverRatio - 1));
  const across = (mm: number): number => hundredth(CENTRE.x + mm * scale);
  const up = (mm: number): number => hundredth(CENTRE.y - mm * scale);
  const place = (x: number, y: number): string => `${across(x)} ${up(y)}`;

  const outline = Array.from({ length: STEPS }, (_, i) => {
    const clockwise = (i * 360) / STEPS;
    const radius = base + liftAt(cam, clockwise + at) / leverRatio;
    const radians = (clockwise * Math.PI) / 180;
    return place(radius * Math.sin(radians), radius * Math.cos(radians));
  });
  const middle = (-at * Math.PI) / 180;
  const rim = base + lobe;

  const contactX = (leverRatio - 1) * armLength;
  const overhang = contactX + base * 0.25;
  /** The arm is straight, and turns about its pivot. */
  const armUp = (x: number): number => height + heel * (1 + x / armLength);
  const faceUp = height + lift - thick * 1.6;
  const fixedUp = height + shutLift - thick * 1.6;
  const footUp = fixedUp - thick * 1.6;
  /** To the side where the heel is not in the way. */
  const toRight = contactX > block * 0.6;

  const say = (mm: number): string => showFixed(mm, 'mm', 2, lengths);
  const said = apart > 0 ? `open ${say(apart)}` : 'shut';
  const heelSaid = clear > 0 ? `heel clear ${say(clear)}` : 'heel on the cam';

  return (
    <svg
      class="plot"
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      role="img"
      aria-label={`Cam, heel and arm to scale, ${fixed(at, 0)} degrees before the middle of the lobe: the points are ${said}, ${heelSaid}`}
    >
      <Enlarged
        apart={apart}
        clear={clear}
        heelRise={apart / leverRatio}
        shutHeel={shutLift / leverRatio}
        most={Math.max(cam.lift, lobe)}
        scale={scale}
        middle={WIDTH / 2}
        heelSaid={heelSaid}
        contactsSaid={said}
      />
      <path
        class="centre-line"
        d={`M${CENTRE.x} ${CENTRE.y - CAM - 10}V${HEIGHT - 24}M${CENTRE.x - 110} ${CENTRE.y}h220`}
      />
      <path class="part cam" d={`M${outline.join('L')}Z`} />
      <path
        class="dimension"
        d={`M${CENTRE.x} ${CENTRE.y}L${place(rim * Math.sin(middle), rim * Math.cos(middle))}`}
      />
      <circle class="part" cx={CENTRE.x} cy={CENTRE.y} r={hundredth(base * 0.3 * scale)} />
      <path
        class="contact contact-fixed"
        d={`M${place(contactX, fixedUp)}V${up(footUp)}H${toRight ? WIDTH - 20 : 20}`}
      />
      <path
        class="part part-moving heel"
        d={`M${place(-block * 0.35, armUp(-block * 0.35))}L${place(0, base + heel)}L${place(block * 0.35, armUp(block * 0.35))}Z`}
      />
      <path
        class="part-rod arm"
        d={`M${place(-armLength, height)}L${place(overhang, armUp(overhang))}`}
      />
      <circle class="part pivot" cx={across(-armLength)} cy={up(height)} r={6} />
      <path class="contact" d={`M${place(contactX, height + lift)}L${place(contactX, faceUp)}`} />
      <path class="turning" d="M93 325A112 112 0 0 1 69 247m0 0l-6 8M69 247l2.6 9.6" />
      <g class="names">
        <text
          x={Math.max(22, across(-armLength))}
          y={up(height) + (toRight ? 22 : -12)}
          text-anchor="middle"
        >
          pivot
        </text>
        {['fixed contact,', 'stands still'].map((line, row) => (
          <text
            key={line}
            x={toRight ? WIDTH - 6 : 6}
            y={up(footUp) + 18 + 15 * row}
            text-anchor={toRight ? 'end' : 'start'}
          >
            {line}
          </text>
        ))}
      </g>
      <text x={8} y={HEIGHT - 8}>
        to scale, heel drawn as a point
      </text>
    </svg>
  );
}
