import type { PistonInBarrel } from '../../maths/cylinder/port-timing.ts';
import { uncoveredArea, type PortWindow } from '../../maths/cylinder/port-area.ts';
import { travelAt } from '../../maths/crank/slider-crank.ts';
import { displayUnit, toDisplay, units, type LengthDisplay } from '../../frame/text/units.ts';
import { Chart, type ChartFrame } from '../../picture/chart/chart.tsx';
import { Line, Patch } from '../../picture/chart/curve.tsx';
import { portArea, portCurve, portKey } from '../port-looks.ts';
import { evenly } from '../../maths/numeric/steps.ts';

interface Props {
  readonly barrel: PistonInBarrel;
  readonly exhaust: PortWindow & { readonly topEdge: number };
  readonly transfer: PortWindow & { readonly topEdge: number };
  /** Open area of the inlet, mm², at an angle after the top, 0 to 360. */
  readonly inlet: ((angle: number) => number) | undefined;
  readonly blowdown: readonly [from: number, to: number];
  readonly lengths: LengthDisplay;
  readonly idPrefix: string;
}

const HEIGHT = 290;
/** Degrees between the points of a curve. */
const STEP = 2;

/** Open area of each port over one turn; what lies under the curve is its angle-area. */
export function OpenAreaPlot(props: Props) {
  const { barrel, exhaust, transfer, inlet, blowdown, lengths, idPrefix } = props;
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
  const [from, to] = blowdown;
  const key = [
    portKey('line', 'exhaust'),
    portKey('line', 'transfer'),
    ...(inlet ? [portKey('line', 'inlet')] : []),
    ...(to > from ? [portKey('area', 'blowdown')] : []),
  ];
  const openIn = (
    { x, y }: ChartFrame,
    area: (angle: number) => number,
    start: number,
    end: number,
  ) =>
    angles
      .filter((angle) => angle >= start && angle <= end)
      .filter((angle) => [angle - STEP, angle, angle + STEP].some((near) => area(near) > 0))
      .map((angle) => [x(angle), y(shown(area(angle)))] as const);
  return (
    <Chart
      id={`${idPrefix}open-field`}
      height={HEIGHT}
      label="Open area of each port over one turn of the crank"
      meaning={key}
      x={{ domain: [0, 360], grid: false, label: 'crank angle, degrees after top' }}
      y={{ domain: [0, shown(most) * 1.08], label: `open area, ${unit}` }}
      marks={(frame) => (
        <>
          {to > from ? (
            <Patch
              look={portArea('blowdown')}
              edges={evenly(from, to, 20).map((angle) => [
                frame.x(angle),
                frame.field.bottom,
                frame.y(shown(ofExhaust(angle))),
              ])}
            />
          ) : null}
          <Line look={portCurve('exhaust')} points={openIn(frame, ofExhaust, 0, 360)} />
          <Line look={portCurve('transfer')} points={openIn(frame, ofTransfer, 0, 360)} />
          {inlet ? (
            <>
              <Line look={portCurve('inlet')} points={openIn(frame, ofInlet, 0, 180)} />
              <Line look={portCurve('inlet')} points={openIn(frame, ofInlet, 180, 360)} />
            </>
          ) : null}
        </>
      )}
    />
  );
}
