import { showFixed } from '../../frame/text/format.ts';
import { displayUnit, toDisplay, units, type LengthDisplay } from '../../frame/text/units.ts';
import { AxisLeft } from '../../picture/chart/axis.tsx';
import { InField, type Field } from '../../picture/chart/field.tsx';
import { Handle } from '../../picture/common/handle.tsx';
import { Plot } from '../../picture/common/plot.tsx';
import { portArea, type PortKind } from '../port-looks.ts';
import { scaleLinear } from '../../picture/chart/scale.ts';
import { useFrozen } from '../../picture/redraw/frozen.ts';
import { wallLayout, type Strip } from './wall-layout.ts';
import { hundredth } from '../../maths/numeric/steps.ts';

/** One port on the wall: edges in mm below the deck. */
export interface WallPort {
  readonly top: number;
  readonly bottom: number;
}

interface Props {
  readonly exhaust: WallPort;
  readonly transfers: readonly WallPort[];
  /** Only an inlet opened by the skirt lies on the wall. */
  readonly inlet: WallPort | undefined;
  /** Crown edge below the deck, mm, and the piston's length. */
  readonly crown: number;
  readonly skirt: number;
  /** Highest and lowest the crown goes. */
  readonly crownRange: readonly [highest: number, lowest: number];
  readonly lengths: LengthDisplay;
  readonly idPrefix: string;
  readonly onCrown: (depth: number) => void;
  readonly onEdge: (port: 'exhaust' | 'transfer' | 'inlet', depth: number) => void;
  readonly onEnd: () => void;
}

const WIDTH = 360;
const HEIGHT = 376;
/** Above it the axis label, below that the names of the ports over their columns, and room for the handle’s arrow. */
const FIELD: Field = { left: 46, right: 352, top: 60, bottom: HEIGHT - 28 };
const { left: LEFT, right: RIGHT, top: TOP, bottom: BOTTOM } = FIELD;

const NAMES = 28;

const transferName = (index: number, pairs: number): string =>
  pairs === 1 ? 'transfer' : `T${String(index + 1)}`;

/** The bore slit open opposite the exhaust and rolled flat, with the piston over it. */
export function CylinderWall(props: Props) {
  const { exhaust, transfers, inlet, crown, skirt, crownRange, lengths, idPrefix, onEnd } = props;
  const [highest, lowest] = crownRange;
  const deepest = useFrozen(
    Math.max(lowest, exhaust.bottom, ...transfers.map((t) => t.bottom), inlet?.bottom ?? 0) + 8,
  );
  const above = Math.min(0, highest) - 2;
  const shown = (mm: number): number => toDisplay(mm, 'mm', lengths);
  const axis = scaleLinear([shown(above), shown(deepest)], [TOP, BOTTOM]);
  const y = (mm: number): number => hundredth(axis(shown(mm)));
  const mmAt = (place: number): number =>
    above + ((place - TOP) / (BOTTOM - TOP)) * (deepest - above);
  const layout = wallLayout(LEFT, RIGHT, transfers.length);
  const unit = units[displayUnit('mm', lengths)].label;
  const say = (mm: number): string => showFixed(mm, 'mm', 1, lengths);
  const skirtEnd = Math.min(crown + skirt, deepest);

  const openByCrown = ({ top, bottom }: WallPort): readonly [number, number] => [
    top,
    Math.min(bottom, Math.max(top, crown)),
  ];
  const openBySkirt = ({ top, bottom }: WallPort): readonly [number, number] => [
    Math.max(top, Math.min(bottom, crown + skirt)),
    bottom,
  ];
  const window = (
    strip: Strip,
    port: WallPort,
    [from, to]: readonly [number, number],
    kind: PortKind,
    key: string,
  ) => (
    <g key={key}>
      <rect
        class={`port port-shut port-line-${kind}`}
        x={hundredth(strip.x)}
        width={hundredth(strip.width)}
        y={y(port.top)}
        height={hundredth(y(port.bottom) - y(port.top))}
      />
      {to > from ? (
        <rect
          class={portArea(kind)}
          x={hundredth(strip.x)}
          width={hundredth(strip.width)}
          y={y(from)}
          height={hundredth(y(to) - y(from))}
        />
      ) : null}
    </g>
  );
  const name = (words: string, { x, width }: Strip) => (
    <text
      key={`${words}-${String(x)}`}
      class="key"
      x={hundredth(x + width / 2)}
      y={TOP - 19}
      text-anchor="middle"
    >
      {words}
    </text>
  );
  const edge = (
    port: 'exhaust' | 'transfer' | 'inlet',
    name: string,
    strip: Strip,
    depth: number,
  ) => (
    <Handle
      key={port}
      x={strip.x + strip.width / 2}
      y={y(depth)}
      label={name}
      value={hundredth(depth)}
      min={0}
      max={hundredth(deepest)}
      step={0.1}
      valueText={`${say(depth)} below the deck`}
      along="y"
      downwards
      onDrag={(_, place) => props.onEdge(port, mmAt(place))}
      onStep={(depthWanted) => props.onEdge(port, depthWanted)}
      onEnd={onEnd}
    />
  );

  return (
    <Plot
      width={WIDTH}
      height={HEIGHT}
      label={`Cylinder wall rolled flat: crown ${say(crown)} below the deck`}
    >
      <g aria-hidden="true">
        <InField field={FIELD} id={`${idPrefix}wall-field`}>
          <rect
            class="bore-wall"
            x={LEFT}
            width={RIGHT - LEFT}
            y={y(0)}
            height={hundredth(BOTTOM - y(0))}
          />
          {window(layout.exhaust, exhaust, openByCrown(exhaust), 'exhaust', 'exhaust')}
          {transfers.flatMap((port, index) =>
            layout.transfers[index]!.map((strip, side) =>
              window(
                strip,
                port,
                openByCrown(port),
                'transfer',
                `${String(index)}-${String(side)}`,
              ),
            ),
          )}
          {inlet
            ? layout.inlet.map((strip, side) =>
                window(strip, inlet, openBySkirt(inlet), 'inlet', String(side)),
              )
            : null}
          <rect
            class="piston-over"
            x={LEFT}
            width={RIGHT - LEFT}
            y={y(crown)}
            height={hundredth(y(skirtEnd) - y(crown))}
          />
          <path class="piston-edge" d={`M${LEFT} ${y(crown)}H${RIGHT}`} />
          <path class="axis-line" d={`M${LEFT} ${y(0)}H${RIGHT}`} />
        </InField>
        {name('exhaust', layout.exhaust)}
        {layout.transfers.flatMap((pair, index) =>
          pair.map((strip) => name(transferName(index, transfers.length), strip)),
        )}
        {inlet ? layout.inlet.map((strip) => name('inlet', strip)) : null}
        <text class="key" x={(LEFT + RIGHT) / 2} y={BOTTOM + 19} text-anchor="middle">
          ◆ crown; heights to scale, widths not
        </text>
      </g>
      <AxisLeft
        scale={axis}
        field={FIELD}
        grid={false}
        labelUp={NAMES}
        label={`${unit} below deck`}
      />
      {edge('exhaust', 'Exhaust, top edge', layout.exhaust, exhaust.top)}
      {edge('transfer', 'Transfer, top edge', layout.transfers[0]![0], transfers[0]!.top)}
      {inlet ? edge('inlet', 'Inlet, bottom edge', layout.inlet[1], inlet.bottom) : null}
      <Handle
        x={LEFT + 17}
        y={y(crown)}
        label="Piston, crown below the deck"
        form="diamond"
        value={hundredth(crown)}
        min={hundredth(highest)}
        max={hundredth(lowest)}
        step={0.5}
        valueText={`${say(crown)} below the deck`}
        along="y"
        downwards
        onDrag={(_, place) => props.onCrown(mmAt(place))}
        onStep={props.onCrown}
        onEnd={onEnd}
      />
    </Plot>
  );
}
