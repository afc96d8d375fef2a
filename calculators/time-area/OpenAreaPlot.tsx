import type { PistonInBarrel } from '../maths/port-timing.ts';
import { uncoveredArea, type PortWindow } from '../maths/port-area.ts';
import { travelAt } from '../maths/slider-crank.ts';
import { displayUnit, toDisplay, units, type LengthDisplay } from '../frame/units.ts';
import { AxisBottom, AxisLeft } from '../picture/axis.tsx';
import { Band, Curve } from '../picture/curve.tsx';
import { Plot, usualMargin } from '../picture/plot.tsx';
import { scaleLinear } from '../picture/scale.ts';
import { evenly } from '../picture/steps.ts';

interface Props {
  readonly barrel: PistonInBarrel;
  readonly exhaust: PortWindow & { readonly topEdge: number };
  readonly transfer: PortWindow & { readonly topEdge: number };
  /** Open area of the inlet, mm², at an angle after the top, 0 to 360. */
  readonly inlet: ((angle: number) => number) | undefined;
  readonly blowdown: readonly [from: number, to: number];
  readonly lengths: LengthDisplay;
}

const WIDTH = 360;
const HEIGHT = 290;
const TOP = 54;
/** Degrees between the points of a curve. */
const STEP = 2;
const FLOOR = HEIGHT - usualMargin.bottom;

/** Open area of each port over one turn; what lies under the curve is its angle-area. */
export function OpenAreaPlot({ barrel, exhaust, transfer, inlet, blowdown, lengths }: Props) {
  const unit = units[displayUnit('mm2', lengths)].label;
  const shown = (mm2: number): number => toDisplay(mm2, 'mm2', lengths);
  const angles = evenly(0, 360, 360 / STEP);
  const depth = (angle: number): number => barrel.deckClearance + travelAt(barrel, angle);
  const ofExhaust = (angle: number) => uncoveredArea(exhaust, depth(angle) - exhaust.topEdge);
  const ofTransfer = (angle: number) => uncoveredArea(transfer, depth(angle) - transfer.topEdge);
  const ofInlet = inlet ?? (() => 0);
  const most = Math.max(
    ...angles.flatMap((angle) => [ofExhaust(angle), ofTransfer(angle), ofInlet(angle)]),
  );
  const x = scaleLinear([0, 360], [usualMargin.left, WIDTH - usualMargin.right]);
  const y = scaleLinear([0, shown(most) * 1.08], [FLOOR, TOP]);
  const openIn = (area: (angle: number) => number, start: number, end: number) =>
    angles
      .filter((angle) => angle >= start && angle <= end)
      .filter((angle) => [angle - STEP, angle, angle + STEP].some((near) => area(near) > 0))
      .map((angle) => [x(angle), y(shown(area(angle)))] as const);
  const [from, to] = blowdown;
  return (
    <Plot width={WIDTH} height={HEIGHT} label="Open area of each port over one turn of the crank">
      <AxisBottom scale={x} at={FLOOR} label="crank angle, degrees after top" />
      <AxisLeft
        scale={y}
        at={usualMargin.left}
        gridTo={WIDTH - usualMargin.right}
        label={`open area, ${unit}`}
      />
      {to > from ? (
        <Band
          edges={evenly(from, to, 20).map((angle) => [x(angle), FLOOR, y(shown(ofExhaust(angle)))])}
        />
      ) : null}
      <Curve kind="exhaust" points={openIn(ofExhaust, 0, 360)} />
      <Curve points={openIn(ofTransfer, 0, 360)} />
      {inlet ? (
        <>
          <Curve kind="other" points={openIn(ofInlet, 0, 180)} />
          <Curve kind="other" points={openIn(ofInlet, 180, 360)} />
        </>
      ) : null}
      <g class="key" transform="translate(6 16)" aria-hidden="true">
        <path class="curve curve-exhaust" d="M0 0h20" />
        <text x={25} dy="0.32em">
          exhaust
        </text>
        <path class="curve" d="M82 0h20" />
        <text x={107} dy="0.32em">
          transfers
        </text>
        <path class="band-error" d="M176 -5h20v9h-20z" />
        <text x={201} dy="0.32em">
          blowdown
        </text>
        {inlet ? (
          <>
            <path class="curve curve-other" d="M280 0h20" />
            <text x={305} dy="0.32em">
              inlet
            </text>
          </>
        ) : null}
      </g>
    </Plot>
  );
}
