import { fixed } from '../frame/format.ts';
import { displayUnit, toDisplay, units, type LengthDisplay } from '../frame/units.ts';
import { liftAt, openingAt, type BreakerCam } from '../maths/breaker-cam.ts';
import { hundredth } from '../picture/steps.ts';

interface Props {
  readonly cam: BreakerCam;
  readonly gap: number;
  /** Cam degrees the heel has to go to the middle of the lobe. */
  readonly at: number;
  /** Lift at the contacts there, mm. */
  readonly lift: number;
  readonly leverRatio: number;
  /** mm */
  readonly baseDiameter: number;
  readonly lengths: LengthDisplay;
}

const WIDTH = 340;
const HEIGHT = 340;
/** Points of the outline: chords of two degrees stay within a fiftieth of a unit of it. */
const STEPS = 180;
/** How many times the contacts are enlarged in the corner. */
const GLASS = 8;

/** Cam, heel and arm to scale, the cam turning clockwise, with the contacts enlarged in a corner. */
export function CamDrawing({ cam, gap, at, lift, leverRatio, baseDiameter, lengths }: Props) {
  const base = baseDiameter / 2;
  const heel = lift / leverRatio;
  const apart = openingAt(cam, gap, at);
  const block = base * 0.55;
  const scale = 78 / (base + cam.lift / leverRatio);
  const centre = { x: 180, y: 236 };
  const room = (WIDTH - 40 - centre.x) / scale;
  const armLength = Math.min(base * 1.9, room / Math.max(0.5, leverRatio - 1));
  const place = (x: number, up: number): string =>
    `${hundredth(centre.x + x * scale)} ${hundredth(centre.y - up * scale)}`;

  const outline = Array.from({ length: STEPS }, (_, i) => {
    const clockwise = (i * 360) / STEPS;
    const radius = base + liftAt(cam, clockwise + at) / leverRatio;
    const radians = (clockwise * Math.PI) / 180;
    return place(radius * Math.sin(radians), radius * Math.cos(radians));
  });
  const middle = (-at * Math.PI) / 180;
  const rim = base + cam.lift / leverRatio;

  const height = base + block;
  const contactX = (leverRatio - 1) * armLength;
  const contactUp = height + lift;
  const overhang = contactX + base * 0.25;
  const overhangUp = height + heel + (overhang / armLength) * heel;
  const thick = base * 0.12;
  const faceUp = height + lift - thick * 1.6;
  const fixedUp = faceUp - apart;

  const unit = displayUnit('mm', lengths);
  const said =
    apart > 0
      ? `open ${fixed(toDisplay(apart, 'mm', lengths), lengths === 'in' ? 4 : 2)} ${units[unit].label}`
      : 'shut';
  const glass = { x: 66, y: 60, radius: 52 };
  const enlarged = Math.min(46, (apart * scale * GLASS) / 2);

  return (
    <svg
      class="plot"
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      role="img"
      aria-label={`Cam, heel and arm to scale, ${fixed(at, 0)} degrees before the middle of the lobe: the points are ${said}`}
    >
      <path
        class="centre-line"
        d={`M${centre.x} ${centre.y - 140}V${HEIGHT - 24}M${centre.x - 110} ${centre.y}h220`}
      />
      <path class="part" d={`M${outline.join('L')}Z`} />
      <path
        class="dimension"
        d={`M${centre.x} ${centre.y}L${place(rim * Math.sin(middle), rim * Math.cos(middle))}`}
      />
      <circle class="part" cx={centre.x} cy={centre.y} r={hundredth(base * 0.3 * scale)} />
      <path
        class="part part-moving"
        d={`M${place(-block * 0.35, height + heel)}L${place(0, base + heel)}L${place(block * 0.35, height + heel)}Z`}
      />
      <path
        class="part-rod arm"
        d={`M${place(-armLength, height)}L${place(overhang, overhangUp)}`}
      />
      <circle
        class="part"
        cx={hundredth(centre.x - armLength * scale)}
        cy={hundredth(centre.y - height * scale)}
        r={6}
      />
      <path class="contact" d={`M${place(contactX, contactUp)}L${place(contactX, faceUp)}`} />
      <path
        class="contact contact-fixed"
        d={`M${place(contactX, fixedUp)}V${hundredth(centre.y - (fixedUp - thick * 1.6) * scale)}H${WIDTH - 20}`}
      />
      <path class="turning" d="M84 306A112 112 0 0 1 84 166M84 166l-10 5M84 166l-1 12" />
      <g>
        <circle class="glass" cx={glass.x} cy={glass.y} r={glass.radius} />
        <path class="contact" d={`M${glass.x} ${glass.y - 46}V${hundredth(glass.y - enlarged)}`} />
        <path
          class="contact contact-fixed"
          d={`M${glass.x} ${glass.y + 46}V${hundredth(glass.y + enlarged)}`}
        />
      </g>
      <text x={glass.x + glass.radius + 10} y={glass.y - 8}>
        {`contacts × ${String(GLASS)}`}
      </text>
      <text class="dimension-text" x={glass.x + glass.radius + 10} y={glass.y + 12}>
        {said}
      </text>
      <text x={8} y={HEIGHT - 8}>
        to scale, heel drawn as a point
      </text>
    </svg>
  );
}
