import { h } from 'preact';
import { metric } from '../frame/text/prose.ts';
import { BAR_ACROSS, BAR_UP, INCH_BAR, INCHES_ACROSS, INCHES_UP } from './proving-bar.ts';
import { svgElement } from './svg-element.ts';
import type { Drawing, Layer, Line, Shape } from './shapes.ts';
import { hundredth } from '../maths/numeric/steps.ts';
import { textBox } from '../picture/boxes.ts';
import type { Box } from '../picture/common/overlap.ts';

interface Props {
  readonly drawing: Drawing;
  /** User units to the mm. */
  readonly scale: number;
}

/** Size of the picture of a drawing, in user units. */
export const sizeOf = ({ drawing, scale }: Props): { width: number; height: number } => ({
  width: hundredth(drawing.width * scale),
  height: hundredth(drawing.height * scale),
});

/** From the drawing's mm, Y up, to the picture's user units. */
export const placeOf =
  ({ drawing, scale }: Props) =>
  (x: number, y: number): { x: number; y: number } => ({
    x: hundredth((x - drawing.left) * scale),
    y: hundredth((drawing.bottom + drawing.height - y) * scale),
  });

/** From the picture's user units back to mm. */
export const millimetresOf =
  ({ drawing, scale }: Props) =>
  (x: number, y: number): { x: number; y: number } => ({
    x: x / scale + drawing.left,
    y: drawing.bottom + drawing.height - y / scale,
  });

const isLine = (shape: Shape): shape is Line => shape.kind === 'line';

/** The lines of a drawing as one path a layer: a disc has hundreds. */
function linePaths(shapes: readonly Shape[]): Map<Layer, string> {
  const paths = new Map<Layer, string>();
  for (const { layer, x1, y1, x2, y2 } of shapes.filter(isLine)) {
    const path = `M${hundredth(x1)} ${hundredth(-y1)}L${hundredth(x2)} ${hundredth(-y2)}`;
    paths.set(layer, (paths.get(layer) ?? '') + path);
  }
  return paths;
}

/**
 * The shapes of a drawing inside a picture. Its own lettering, of a size for paper, is there for
 * printing only: on the screen it would be too small to read.
 */
export function DrawingShapes({ drawing, scale }: Props) {
  const origin = placeOf({ drawing, scale })(0, 0);
  return (
    <g
      class="drawing"
      aria-hidden="true"
      transform={`translate(${String(origin.x)} ${String(origin.y)}) scale(${String(scale)})`}
    >
      {[...linePaths(drawing.shapes)].map(([layer, path]) => (
        <path key={layer} class={`drawn drawn-${layer}`} d={path} />
      ))}
      {drawing.shapes.map((shape, i) => {
        if (isLine(shape)) return null;
        const { tag, attributes, words } = svgElement(shape);
        const look = `drawn drawn-${shape.kind === 'text' ? 'words' : shape.layer}`;
        return h(tag, { key: i, class: look, ...attributes }, words);
      })}
    </g>
  );
}

/** Whether the outer side of the bars has what an inch rule proves. */
const hasInches = ({ drawing }: Props): boolean =>
  drawing.shapes.some((shape) => isLine(shape) && shape.name === INCH_BAR);

const barWords = (props: Props): string =>
  hasInches(props)
    ? `outer ticks: ${String(INCHES_ACROSS)} in across, ${String(INCHES_UP)} up`
    : `${metric(BAR_ACROSS)} across, ${String(BAR_UP)} up`;

/** Where the lengths of the proving bars stand, under the bar across: the start of the line. */
function barFoot({ drawing, scale }: Props): { x: number; y: number } | undefined {
  const bar = drawing.shapes.find((shape) => isLine(shape) && shape.name === 'bar-across');
  if (bar?.kind !== 'line') return undefined;
  const { x, y } = placeOf({ drawing, scale })(bar.x1, bar.y1);
  const { height } = sizeOf({ drawing, scale });
  // Clear of the ticks on the outer side.
  const below = hasInches({ drawing, scale }) ? 17 : 13;
  return y + below + 3 > height ? undefined : { x: x + 2, y: y + below };
}

/** The room that they take. */
export function barBox(props: Props): Box | undefined {
  const foot = barFoot(props);
  return foot && textBox(barWords(props), foot.x, foot.y);
}

/** What the proving bars measure on paper, on the screen; where the sheet has room for it. */
export function BarLengths(props: Props) {
  const foot = barFoot(props);
  return foot ? (
    <text class="on-screen" aria-hidden="true" x={hundredth(foot.x)} y={hundredth(foot.y)}>
      {barWords(props)}
    </text>
  ) : null;
}
