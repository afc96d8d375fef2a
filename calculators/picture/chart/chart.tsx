import type { ComponentChildren } from 'preact';
import { AxisBottom, AxisLeft, roomLeft } from './axis.tsx';
import { fieldOf, InField, type Field } from './field.tsx';
import { fieldTop, Key, type KeyEntry } from '../common/key.tsx';
import { spreadOut } from '../common/labels.ts';
import { Plot, PLOT_WIDTH, usualMargin } from '../common/plot.tsx';
import { scaleLinear, type LinearScale } from './scale.ts';
import { textWidth } from '../common/text-width.ts';

interface AxisOf {
  /** In the unit that the axis shows; of the vertical axis, what stands at the bottom comes first. */
  readonly domain: readonly [from: number, to: number];
  /** Quantity and unit, such as "crank angle, degrees BTDC". */
  readonly label: string;
  readonly ticks?: number;
  readonly format?: (value: number) => string;
  readonly grid?: boolean;
}

/** Words at the right-hand end of a line. */
export interface EndLabel {
  /** Where the line ends, in the unit of the vertical axis. */
  readonly at: number;
  readonly words: string;
  readonly bold?: boolean;
}

/** What marks are placed by: the rectangle within the axes and both scales, in user units. */
export interface ChartFrame {
  readonly field: Field;
  readonly x: LinearScale;
  readonly y: LinearScale;
}

type Draw = (frame: ChartFrame) => ComponentChildren;

interface ChartProps {
  /** Unique on the page. */
  readonly id: string;
  /** What the picture shows, for people who do not see it. */
  readonly label: string;
  readonly height: number;
  /** Without a label it has no axis: for columns that carry their own words. */
  readonly x: Omit<AxisOf, 'label'> & { readonly label?: string };
  readonly y: AxisOf;
  /** What the lines, patches and marks mean; stands above the field. */
  readonly meaning?: readonly KeyEntry[];
  readonly ends?: readonly EndLabel[];
  /** Room, in user units, for a row of words above the field, and for what stands right of it or below its axis. */
  readonly above?: number;
  readonly right?: number;
  readonly below?: number;
  /** What lies behind the lines of the axes, cut off at the edge of the field. */
  readonly behind?: Draw;
  /** What is cut off at the edge of the field. */
  readonly marks: Draw;
  /** What may stand out of it: words, handles. */
  readonly children?: Draw;
}

const AFTER_LINE = 4;

/** The words at the ends of lines, moved apart so that each can be read. */
function Ends({ ends, frame }: { readonly ends: readonly EndLabel[]; readonly frame: ChartFrame }) {
  const { field, y } = frame;
  const places = spreadOut(
    ends.map(({ at }) => y(at)),
    field.top,
    field.bottom,
  );
  return (
    <g aria-hidden="true">
      {ends.map(({ words, bold }, index) => (
        <text
          key={index}
          {...(bold ? { class: 'dimension-text' } : {})}
          x={field.right + AFTER_LINE}
          y={places[index]}
          dy="0.32em"
        >
          {words}
        </text>
      ))}
    </g>
  );
}

const widest = (ends: readonly EndLabel[]): number =>
  Math.max(...ends.map(({ words, bold }) => textWidth(words, { bold: bold ?? false })));

/**
 * A plot: it gives its key, axes and the words at the ends of its lines the room that they need,
 * and cuts its marks off at the field that is left.
 */
export function Chart(props: ChartProps) {
  const { id, label, height, x: across, y: up, meaning = [], ends = [] } = props;
  const { above = 0, below = 0 } = props;
  const right =
    props.right ?? (ends.length > 0 ? widest(ends) + 2 * AFTER_LINE : usualMargin.right);
  const field = fieldOf(PLOT_WIDTH, height, {
    top: (meaning.length > 0 ? fieldTop(meaning, PLOT_WIDTH) : usualMargin.top) + above,
    right,
    bottom: usualMargin.bottom + below,
    left: roomLeft(up.domain, up),
  });
  const frame: ChartFrame = {
    field,
    x: scaleLinear(across.domain, [field.left, field.right]),
    y: scaleLinear(up.domain, [field.bottom, field.top]),
  };
  return (
    <Plot width={PLOT_WIDTH} height={height} label={label}>
      {props.behind ? (
        <InField field={field} id={`${id}-behind`}>
          {props.behind(frame)}
        </InField>
      ) : null}
      {meaning.length > 0 ? <Key entries={meaning} width={PLOT_WIDTH} /> : null}
      {across.label === undefined ? null : (
        <AxisBottom {...across} label={across.label} scale={frame.x} field={field} />
      )}
      <AxisLeft {...up} scale={frame.y} field={field} labelUp={above} />
      <InField field={field} id={id}>
        {props.marks(frame)}
      </InField>
      {ends.length > 0 ? <Ends ends={ends} frame={frame} /> : null}
      {props.children?.(frame)}
    </Plot>
  );
}

/** Thin lines from the working point to the axes, or to the lower one alone. Places in user units. */
export function Guides(props: {
  readonly frame: ChartFrame;
  readonly at: readonly [x: number, y: number];
  readonly to?: 'both' | 'bottom';
}) {
  const [x, y] = props.at;
  const { left, bottom } = props.frame.field;
  const from = props.to === 'bottom' ? `M${x} ${y}` : `M${left} ${y}H${x}`;
  return <path class="rule-line" fill="none" d={`${from}V${bottom}`} />;
}
