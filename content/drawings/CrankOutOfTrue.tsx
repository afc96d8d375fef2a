import { Label } from '../../calculators/picture/label.tsx';
import { DRAWING_WIDTH, LineDrawing } from '../../calculators/picture/line-drawing.tsx';
import { Move } from './parts/motion.tsx';
import { through, type Place } from './parts/polar.ts';

const PANEL = 232;
const LINE = 140;
/** Where the points of the centres stand, in from either end of the sheet. */
const IN = 30;
const MIDDLE = DRAWING_WIDTH / 2;
/** Along a shaft from its centre: where the web begins and ends; half widths of shaft and web. */
const [WEB, END, SHAFT, TALL] = [104, 128, 11, 58] as const;
/** Lean of the shafts, degrees, drawn many times larger than it is. */
const LEAN = 4;

/** From along a shaft and away from it, upwards, to the sheet: `lean` lifts the end at the web. */
const shaft =
  (side: 1 | -1, lean: number) =>
  (along: number, up: number): Place => {
    const [cos, sin] = [Math.cos((lean * Math.PI) / 180), Math.sin((lean * Math.PI) / 180)];
    const x = along * cos - up * sin;
    return [MIDDLE + side * (MIDDLE - IN - x), LINE - along * sin - up * cos];
  };

interface HalfProps {
  readonly side: 1 | -1;
  readonly lean: number;
  readonly tall: readonly [below: number, above: number];
}

/** Half a crankshaft on its centre, with an indicator on the shaft close to the web. */
function Half({ side, lean, tall: [below, above] }: HalfProps) {
  const at = shaft(side, lean);
  const [x, y] = at(WEB - 16, SHAFT);
  return (
    <g>
      <path
        class="edge edge-filled"
        d={through(
          [at(0, 0), at(10, SHAFT), at(WEB, SHAFT), at(WEB, -SHAFT), at(10, -SHAFT)],
          true,
        )}
      />
      <path
        class="edge edge-filled"
        d={through([at(WEB, above), at(END, above), at(END, -below), at(WEB, -below)], true)}
      />
      <path
        class="edge edge-filled"
        d={`M${MIDDLE + side * (MIDDLE - IN)} ${LINE}l${side * 18} -9v18z`}
      />
      <path
        class="edge edge-thin"
        d={through([
          [x, y],
          [x, 74],
        ])}
      />
      <circle class="edge edge-filled" cx={x} cy={58} r={16} />
    </g>
  );
}

/** A hand on each indicator: the way it goes, up for high. */
const Hand = ({ side, high }: { readonly side: 1 | -1; readonly high: boolean }) => {
  const x = MIDDLE + side * (MIDDLE - IN - 88);
  return <Move from={[x, high ? 66 : 50]} to={[x, high ? 48 : 68]} />;
};

/** Two ways in which a built-up crankshaft is out of true, on centres, and what the indicators show. */
export default function CrankOutOfTrue() {
  const inner = END - 2;
  const [left, right] = [shaft(-1, -LEAN), shaft(1, -LEAN)];
  // Twisted, the pin stays parallel to both shafts, midway between them.
  const rise = 20 * Math.tan((LEAN * Math.PI) / 180);
  const pin = [-9, 9].flatMap((up): Place[] => {
    const ends: Place[] = [
      [MIDDLE - 20, LINE + rise + up],
      [MIDDLE + 20, LINE - rise + up],
    ];
    return up < 0 ? ends : ends.reverse();
  });
  return (
    <LineDrawing
      id="crank-out-of-true"
      title="A crankshaft out of true: pinched and twisted"
      description="Two drawings of a crankshaft between centres, an indicator on each mainshaft close to the web, the lean drawn many times too large. First, seen from the side with the crank pin on top: the webs are pinched together at the pin, and both mainshafts lie low at the webs. Were they spread, both would lie high. Then, seen from the side of the pin: the webs are twisted against each other, and one shaft lies high where the other lies low."
      height={2 * PANEL - 36}
    >
      <text class="axis-text" x={4} y={16}>
        Pinched: both low, in line with the pin
      </text>
      <path
        class="edge edge-filled"
        d={through([left(inner, 42), right(inner, 42), right(inner, 24), left(inner, 24)], true)}
      />
      <Half side={-1} lean={-LEAN} tall={[30, TALL]} />
      <Half side={1} lean={-LEAN} tall={[30, TALL]} />
      <path class="centre-line" d={`M8 ${LINE}H${DRAWING_WIDTH - 8}`} />
      <Hand side={-1} high={false} />
      <Hand side={1} high={false} />
      <Label words="indicator" at={[352, 44]} anchor="end" to={[246, 56]} ends="arrow" />
      <Label words="centre" at={[4, 204]} to={[20, LINE + 3]} />
      <Label words="mainshaft" at={[58, 204]} to={[92, LINE + 6]} />
      <Label words="web" at={[MIDDLE, 204]} anchor="middle" to={[148, LINE + 30]} />
      <Label words="crank pin" at={[250, 204]} to={[182, LINE - 24]} />
      <g transform={`translate(0 ${PANEL})`}>
        <text class="axis-text" x={4} y={16}>
          Twisted: one high, one low, a quarter turn on
        </text>
        <path class="edge edge-filled" d={through(pin, true)} />
        <Half side={-1} lean={LEAN} tall={[40, 40]} />
        <Half side={1} lean={-LEAN} tall={[40, 40]} />
        <path class="centre-line" d={`M8 ${LINE}H${DRAWING_WIDTH - 8}`} />
        <Hand side={-1} high />
        <Hand side={1} high={false} />
      </g>
    </LineDrawing>
  );
}
