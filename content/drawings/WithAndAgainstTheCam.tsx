import { demoCam } from '../../calculators/demo/cam.ts';
import {
  liftAt,
  opensBefore,
  type BreakerCam,
} from '../../calculators/maths/ignition/breaker-cam.ts';
import { evenly } from '../../calculators/maths/numeric/steps.ts';
import { Dimension } from '../../calculators/picture/dimension.tsx';
import { Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';
import { Turn } from './parts/motion.tsx';
import { polar, through, type Place } from './parts/polar.ts';

const cam: BreakerCam = { ...demoCam, profile: 'harmonic' };
/** Lift at the contacts for one of lift at the heel. */
const LEVER = 1.25;
/** User units for a millimetre of lift: far larger than the cam itself. */
const PER_MM = 30;
const LOW = 38;
const CENTRE_Y = 168;
const PANEL = 178;
/** How far the heel is moved, degrees: far more than a slot allows. */
const MOVED = 18;

/** The middle of the lobe stands so far before the heel's old place: the contacts are about to part. */
const LOBE = -opensBefore(cam, demoCam.gap);
const radiusAt = (direction: number): number => {
  const fromLobe = ((direction - LOBE + 540) % 360) - 180;
  return LOW + (liftAt(cam, fromLobe) / LEVER) * PER_MM;
};
/** Where the heel's tip stands while the contacts touch. */
const SHUT = radiusAt(0);

interface Case {
  readonly words: readonly [which: string, therefore: string];
  readonly state: string;
  /** Degrees clockwise by which the heel was moved. */
  readonly moved: number;
}

const cases: readonly Case[] = [
  { words: ['Against the cam:', 'earlier'], state: 'already lifted', moved: -MOVED },
  { words: ['With the cam:', 'later'], state: 'not yet lifted', moved: MOVED },
];

/** The heel of a set: a wedge with its tip at a radius, pointing to the middle. */
function heel(at: (radius: number, direction: number) => Place, tip: number, direction: number) {
  const half = (at2: number, wide: number): number => (wide / at2) * (180 / Math.PI);
  return through(
    [
      at(tip + 30, direction - half(tip + 30, 9)),
      at(tip, direction - half(tip, 3)),
      at(tip, direction + half(tip, 3)),
      at(tip + 30, direction + half(tip + 30, 9)),
    ],
    true,
  );
}

function Panel({ each: { words, state, moved }, x }: { readonly each: Case; readonly x: number }) {
  const centre: Place = [PANEL / 2, CENTRE_Y];
  const at = polar(centre);
  const tip = Math.max(SHUT, radiusAt(moved));
  const clear = SHUT - radiusAt(moved);
  return (
    <g transform={`translate(${x} 0)`} class={moved < 0 ? 'against' : 'with'}>
      <text class="axis-text" x={6} y={16}>
        {words[0]}
      </text>
      <text class="axis-text" x={6} y={33}>
        {words[1]}
      </text>
      <path
        class="edge edge-filled cam"
        d={through(
          evenly(0, 360, 120).map((direction) => at(radiusAt(direction), direction)),
          true,
        )}
      />
      <path
        class="centre-line"
        d={`M${centre[0] - 72} ${CENTRE_Y}h144M${centre[0]} ${CENTRE_Y + 60}V${CENTRE_Y - 112}`}
      />
      <path class="edge edge-thin edge-hidden" d={heel(at, SHUT, 0)} />
      <path class="edge edge-filled heel" d={heel(at, tip, moved)} />
      <Turn centre={centre} radius={18} from={-70} to={70} />
      <Turn centre={centre} radius={SHUT + 44} from={0} to={moved} />
      {clear > 0 ? (
        <Dimension
          from={at(SHUT, moved)}
          to={at(radiusAt(moved), moved)}
          along="y"
          line={164}
          words=""
        />
      ) : null}
      <text class="heel-state" x={PANEL / 2} y={CENTRE_Y + 84} text-anchor="middle">
        {state}
      </text>
    </g>
  );
}

/** The same cam at the same moment, and a heel that was moved either way. */
export default function WithAndAgainstTheCam() {
  return (
    <LineDrawing
      id="with-against"
      title="A set moved against the cam, and one moved with it"
      description="Twice the same cam at the same moment, turning clockwise, its lobe coming up from the left. Broken lines show where the heel stood: there the contacts are just about to part. On the left the heel was moved anticlockwise, against the cam: the lobe has lifted it already, so that its contacts opened earlier. On the right it was moved clockwise, with the cam: the lobe has still to reach it, and its contacts open later."
      height={266}
    >
      {cases.map((each, i) => (
        <Panel key={each.state} each={each} x={i * PANEL} />
      ))}
      <Label words="lobe" at={[4, 232]} to={[48, 190]} />
      <Label words="clear" at={[PANEL + 178, 160]} anchor="end" />
      <Label words="old place" at={[PANEL + 4, 62]} to={[PANEL + 80, 90]} ends="arrow" />
    </LineDrawing>
  );
}
