import { evenly, hundredth } from '../../calculators/maths/numeric/steps.ts';
import { arrowHead, Label } from '../../calculators/picture/label.tsx';
import { DRAWING_WIDTH, LineDrawing } from '../../calculators/picture/line-drawing.tsx';
import { polar, type Place } from './parts/polar.ts';

const HEIGHT = 372;
const CX = DRAWING_WIDTH / 2;
const CY = 186;
const PLATE = 138;
const BORE = 26;
/** The cam's top and its low part, which leaves the heels clear. */
const CAM = 22;
const CAM_LOW = 15;
/** Where the lobe stands, and how far it reaches either way, degrees. */
const LOBE = 140;
const LOBE_HALF = 50;

/** A place on the plate, by its distance from the middle and its direction, degrees up from the right. */
const on = (radius: number, direction: number): Place => polar([CX, CY])(radius, 90 - direction);

/** A slot that runs round the middle, `half` degrees either way of its own direction. */
function slot(radius: number, direction: number, half: number, wide: number): string {
  const [inner, outer] = [radius - wide / 2, radius + wide / 2];
  const [a, b] = [on(outer, direction + half), on(outer, direction - half)];
  const [c, d] = [on(inner, direction - half), on(inner, direction + half)];
  const end = wide / 2;
  return `M${a.join(' ')}A${outer} ${outer} 0 0 1 ${b.join(' ')}A${end} ${end} 0 0 1 ${c.join(' ')}A${inner} ${inner} 0 0 0 ${d.join(' ')}A${end} ${end} 0 0 1 ${a.join(' ')}Z`;
}

/** A screw with its slot across, seen from above. */
function Screw({ at: [x, y], radius, turned }: { at: Place; radius: number; turned: number }) {
  const [dx, dy] = [radius * Math.cos(turned), radius * Math.sin(turned)].map(hundredth) as [
    number,
    number,
  ];
  return (
    <g>
      <circle class="edge edge-filled" cx={x} cy={y} r={radius} />
      <path class="edge edge-thin" d={`M${x - dx} ${y - dy}l${2 * dx} ${2 * dy}`} />
    </g>
  );
}

/** Where a set's own parts stand: contacts, its screw in its slot, its gap screw. */
const CONTACTS = { radius: 58, on: 16 };
const SET_SCREW = { radius: 92, on: -10 };
const GAP_SCREW = { radius: 84, on: 20 };
const sets = [90, 210, 330] as const;
const plateSlots = [150, 270, 30] as const;

/** The base of a set: a piece of the ring between two radii, so many degrees either way. */
function base(direction: number): string {
  const [inner, outer] = [38, 106];
  const [a, b] = [on(outer, direction + 34), on(outer, direction - 26)];
  const [c, d] = [on(inner, direction - 26), on(inner, direction + 34)];
  return `M${a.join(' ')}A${outer} ${outer} 0 0 1 ${b.join(' ')}L${c.join(' ')}A${inner} ${inner} 0 0 0 ${d.join(' ')}Z`;
}

/** One set of points on its line. Its heel lies on the cam. */
function PointsSet({ direction }: { readonly direction: number }) {
  const heel = on(CAM + 3, direction);
  const arm = on(58, direction + 26);
  const tip = on(CONTACTS.radius, direction - 16);
  return (
    <g>
      <path class="part set-base" d={base(direction)} />
      <path
        class="edge edge-thin edge-filled"
        d={slot(SET_SCREW.radius, direction + SET_SCREW.on, 11, 12)}
      />
      <path class="edge" d={`M${arm.join(' ')}L${heel.join(' ')}L${tip.join(' ')}`} />
      <circle class="edge edge-filled" cx={arm[0]} cy={arm[1]} r={4} />
      <circle class="leader-end" cx={tip[0]} cy={tip[1]} r={4.5} />
      <Screw at={on(SET_SCREW.radius, direction + SET_SCREW.on)} radius={7} turned={0.7} />
      <Screw at={on(GAP_SCREW.radius, direction + GAP_SCREW.on)} radius={4.5} turned={2} />
    </g>
  );
}

/** The cam's outline: one lobe, on its way to the first set. */
const camOutline = evenly(0, 354, 59).map((direction) => {
  const fromLobe = Math.abs(((direction - LOBE + 540) % 360) - 180);
  const lift = fromLobe > LOBE_HALF ? 0 : (1 + Math.cos((Math.PI * fromLobe) / LOBE_HALF)) / 2;
  return on(CAM_LOW + (CAM - CAM_LOW) * lift, direction)
    .map(hundredth)
    .join(' ');
});

/** An arrow round the middle, from one direction to another, degrees. */
function Round({ radius, from, to }: { radius: number; from: number; to: number }) {
  const clockwise = to < from ? 1 : 0;
  const [start, end] = [on(radius, from), on(radius, to)];
  const before = on(radius, to + (clockwise ? 8 : -8));
  return (
    <>
      <path
        class="motion"
        d={`M${start.join(' ')}A${radius} ${radius} 0 0 ${clockwise} ${end.join(' ')}`}
      />
      <path class="motion-head" d={arrowHead(before, end)} />
    </>
  );
}

/** A breaker plate with three sets: which screw moves what, and which way is earlier. */
export default function PlateWithThreeSets() {
  return (
    <LineDrawing
      id="three-sets"
      title="A breaker plate with three sets of points"
      description="A round plate seen from outside, the cam in its middle turning clockwise, its lobe on the way to the first set. Three sets of points stand 120 degrees apart. Three screws in long slots at the rim hold the plate: it turns all sets together. Each set has a screw in a short slot of its own, which moves that set alone, and a small gap screw. Turning the plate or moving a set against the cam, anticlockwise here, makes the spark earlier."
      height={HEIGHT}
    >
      <circle class="edge edge-filled" cx={CX} cy={CY} r={PLATE} />
      <circle class="edge" cx={CX} cy={CY} r={BORE + 4} />
      <path
        class="centre-line"
        d={`M${CX - PLATE - 8} ${CY}H${CX + PLATE + 8}M${CX} ${CY - PLATE - 8}V${CY + PLATE + 8}`}
      />
      <path class="edge edge-filled cam" d={`M${camOutline.join('L')}Z`} />
      <Round radius={9} from={150} to={30} />
      {plateSlots.map((direction) => (
        <g key={direction}>
          <path class="edge edge-thin" d={slot(122, direction, 9, 12)} />
          <Screw at={on(122, direction)} radius={7} turned={direction} />
        </g>
      ))}
      {sets.map((direction) => (
        <PointsSet key={direction} direction={direction} />
      ))}
      <Round radius={150} from={100} to={140} />
      <Label words="earlier" at={[52, 88]} anchor="end" />
      <Label words="set’s screw" at={[352, 20]} anchor="end" to={on(SET_SCREW.radius, 80)} />
      <Label words="gap screw" at={[4, 12]} to={on(GAP_SCREW.radius, 110)} />
      <Label words="plate screw" at={[352, 62]} anchor="end" to={on(122, 30)} />
      <Label words="heel" at={[352, 330]} anchor="end" to={on(CAM + 3, 330)} />
      <Label words="cam" at={[352, 356]} anchor="end" to={on(11, 300)} />
      <Label words="contacts" at={[4, 356]} to={on(CONTACTS.radius, 194)} />
    </LineDrawing>
  );
}
