import { demoCam } from '../../calculators/demo/cam.ts';
import { fixed } from '../../calculators/frame/text/format.ts';
import {
  liftAt,
  openingAt,
  opensBefore,
  type BreakerCam,
} from '../../calculators/maths/ignition/breaker-cam.ts';
import { evenly, hundredth } from '../../calculators/maths/numeric/steps.ts';
import { Line } from '../../calculators/picture/chart/curve.tsx';
import { Dimension } from '../../calculators/picture/dimension.tsx';
import { arrowHead, Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';

const cam: BreakerCam = { ...demoCam, profile: 'harmonic' };
const { gap } = demoCam;
/** Lift at the contacts for one of lift at the heel. */
const LEVER = 1.25;

/** User units for a millimetre of movement at the contacts: far larger than the parts themselves. */
const PER_MM = 22;
const PANEL = 200;
const PIVOT = [38, 62] as const;
const HEEL_X = 190;
const CONTACT_X = PIVOT[0] + (HEEL_X - PIVOT[0]) * LEVER;
/** The heel's tip while the contacts touch, and the radius of the cam's low part. */
const TIP = 92;
const LOW = 34;
/** The face of the fixed contact, which stands still. */
const FACE = 78;
const DOT = 5;

const spent = cam.lift - gap;
const CENTRE = TIP + LOW + (spent / LEVER) * PER_MM;

interface State {
  readonly words: string;
  /** Cam degrees that the heel has to go to the middle of the lobe. */
  readonly at: number;
}

const states: readonly State[] = [
  { words: '1  Shut: the heel is clear of the cam', at: 180 },
  { words: '2  Just opening: the spark', at: opensBefore(cam, gap) },
  { words: '3  Open: the gap', at: 0 },
];

/** The cam's outline, turned so that the heel has `at` degrees to go to the middle of the lobe. */
const outline = (at: number) =>
  evenly(0, 360, 120).map((turned): [number, number] => {
    const fromLobe = ((turned + 180) % 360) - 180;
    const radius = LOW + (liftAt(cam, fromLobe) / LEVER) * PER_MM;
    const angle = ((turned - at) * Math.PI) / 180;
    return [HEEL_X + radius * Math.sin(angle), CENTRE - radius * Math.cos(angle)];
  });

function Panel({ state: { words, at }, top }: { readonly state: State; readonly top: number }) {
  const apart = openingAt(cam, gap, at) * PER_MM;
  const rise = (x: number): number => (apart * (x - PIVOT[0])) / (CONTACT_X - PIVOT[0]);
  const tip = TIP - rise(HEEL_X);
  const low = FACE - apart;
  const arm = (x: number): number => hundredth(FACE - 2 * DOT - rise(x));
  const touch = CENTRE - LOW - (liftAt(cam, at) / LEVER) * PER_MM;
  return (
    <g transform={`translate(0 ${top})`} class={`state state-${words.slice(0, 1)}`}>
      <text class="axis-text" x={4} y={16}>
        {words}
      </text>
      <path
        class="centre-line"
        d={`M${HEEL_X} ${CENTRE - 62}V${hundredth(CENTRE + 62)}M${HEEL_X - 62} ${hundredth(CENTRE)}h124`}
      />
      <Line look="edge cam" points={outline(at)} />
      <path
        class="edge arm-line"
        d={`M${PIVOT[0]} ${arm(PIVOT[0])}L${CONTACT_X + 8} ${arm(CONTACT_X + 8)}`}
      />
      <circle class="edge edge-filled" cx={PIVOT[0]} cy={arm(PIVOT[0])} r={5} />
      <path
        class="edge edge-filled heel"
        d={`M${HEEL_X - 7} ${arm(HEEL_X - 7)}L${HEEL_X} ${hundredth(tip)}L${HEEL_X + 7} ${arm(HEEL_X + 7)}Z`}
      />
      <path
        class="edge contact-upper"
        d={`M${CONTACT_X - 8} ${hundredth(low - 2 * DOT)}h16v${2 * DOT}h-16z`}
      />
      <path
        class="edge contact-lower"
        d={`M${CONTACT_X - 8} ${FACE}h16v${2 * DOT}h-16zM${CONTACT_X + 8} ${FACE + 2 * DOT - 1}h52`}
      />
      {touch - tip > 1 ? (
        <Dimension
          from={[HEEL_X - 7, tip]}
          to={[HEEL_X - 7, touch]}
          along="y"
          line={HEEL_X - 52}
          words={`${fixed(spent / LEVER, 2)} mm`}
          side="left"
        />
      ) : null}
      {apart > 1 ? (
        <Dimension
          from={[CONTACT_X + 8, low]}
          to={[CONTACT_X + 8, FACE]}
          along="y"
          line={CONTACT_X + 26}
          words={`g ${fixed(gap, 2)}`}
          side="right"
        />
      ) : null}
      {at === 180 ? (
        <>
          <Label words="pivot" at={[4, 90]} to={[PIVOT[0], arm(PIVOT[0]) + 5]} ends="arrow" />
          <Label words="arm" at={[94, 30]} to={[112, arm(112)]} ends="arrow" />
          <Label words="heel" at={[206, 30]} to={[HEEL_X, arm(HEEL_X) + 9]} />
          <Label words="moving contact" at={[352, 42]} anchor="end" to={[CONTACT_X, low - DOT]} />
          <Label words="fixed contact," at={[352, 120]} anchor="end" to={[CONTACT_X, FACE + DOT]} />
          <Label words="stands still" at={[352, 135]} anchor="end" />
          <Label words="low part" at={[44, 132]} to={[HEEL_X - 26, CENTRE - 22]} ends="arrow" />
          <Label words="lobe" at={[72, 180]} to={[HEEL_X - 42, CENTRE + 27]} ends="arrow" />
        </>
      ) : (
        <g>
          {at === 0 ? (
            <Label words="lobe" at={[72, 128]} to={[HEEL_X - 34, CENTRE - 38]} ends="arrow" />
          ) : (
            <>
              <Label words="flank" at={[72, 118]} to={[HEEL_X - 5, tip + 1]} ends="arrow" />
              <Label words="lobe" at={[72, 158]} to={[HEEL_X - 47, CENTRE - 12]} ends="arrow" />
            </>
          )}
          <path
            class="motion"
            d={`M${HEEL_X + 60} ${hundredth(CENTRE - 22)}A64 64 0 0 1 ${HEEL_X + 60} ${hundredth(CENTRE + 22)}`}
          />
          <path
            class="motion-head"
            d={arrowHead([HEEL_X + 63, CENTRE + 14], [HEEL_X + 59, CENTRE + 24])}
          />
        </g>
      )}
    </g>
  );
}

/** What the gap leaves of the lift: cam, heel and contacts shut, just opening and open. */
export default function ContactsInThreeStates() {
  return (
    <LineDrawing
      id="three-states"
      title="Cam, heel and contacts in three states"
      description={`Three drawings of one set of points, its movements drawn large. 1: the contacts touch, the lobe points away, and the heel stands ${fixed(spent / LEVER, 2)} mm clear of the low part of the cam. 2: the cam has come up to the heel and is about to part the contacts. 3: the top of the lobe is under the heel, and the contacts stand the gap of ${fixed(gap, 2)} mm apart. The fixed contact is in the same place in all three.`}
      height={3 * PANEL}
    >
      {states.map((state, i) => (
        <Panel key={state.words} state={state} top={i * PANEL} />
      ))}
    </LineDrawing>
  );
}
