import type { TargetedKeyboardEvent, TargetedPointerEvent } from 'preact';
import { hundredth } from '../../maths/numeric/steps.ts';
import { hold } from '../redraw/frozen.ts';

export type HandleForm = 'round' | 'square' | 'diamond';

/** Outlines of handles that are not round, alike in size. */
export const handleOutline = {
  square: 'M-6.5 -6.5h13v13h-13z',
  diamond: 'M0 -9l9 9l-9 9l-9 -9z',
} as const;

interface HandleProps {
  readonly x: number;
  readonly y: number;
  /** What moves, such as "Piston travel". */
  readonly label: string;
  readonly value: number;
  readonly min: number;
  readonly max: number;
  readonly step: number;
  /** The state in words, such as "2.2 mm before the top, 24.1 degrees". */
  readonly valueText: string;
  /** Called while dragging, with the pointer in the sheet's user units. */
  readonly onDrag: (x: number, y: number) => void;
  /** Called by the keyboard, with the new value within the range. */
  readonly onStep: (value: number) => void;
  /** Called when the drag or the step has ended. */
  readonly onEnd: () => void;
  /** Its form, where several stand in one picture; round unless told. */
  readonly form?: HandleForm;
  /** Along which axis the hint arrows point. */
  readonly along?: 'x' | 'y';
  /**
   * Whether the value grows downwards in the picture, as a depth does. The handle then speaks of it
   * as a height, so that the upper arrow key is always the one that moves it up.
   */
  readonly downwards?: boolean;
}

/** In user units: 44 pixels across still where a phone draws the sheet at 80% of its size. */
const HIT = 28;
const FACTOR: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  ArrowUp: 1,
  ArrowLeft: -1,
  ArrowDown: -1,
  PageUp: 10,
  PageDown: -10,
};

const within = (place: number, size: number): number => Math.min(size, Math.max(0, place));

/** The pointer on the sheet; beyond its edges, the nearest place on them. */
function userPoint(event: PointerEvent): { x: number; y: number } | undefined {
  const svg = (event.currentTarget as SVGElement).ownerSVGElement;
  const matrix = svg?.getScreenCTM();
  if (!svg || !matrix) return undefined;
  const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
  const { width, height } = svg.viewBox.baseVal;
  return { x: within(x, width), y: within(y, height) };
}

/** Without a minus before nothing. */
const upright = (figure: number, sign: 1 | -1): number => sign * figure || 0;

/** The working point: dragged by finger or mouse, stepped by the arrow keys. */
export function Handle(props: HandleProps) {
  const { x, y, label, step, valueText, along = 'x', downwards = false, form = 'round' } = props;
  const sign = downwards ? -1 : 1;
  const value = upright(props.value, sign);
  const [min, max] = downwards
    ? [upright(props.max, sign), upright(props.min, sign)]
    : [props.min, props.max];
  const move = (event: TargetedPointerEvent<SVGGElement>): void => {
    if (!event.currentTarget.hasPointerCapture(event.pointerId)) return;
    const point = userPoint(event);
    if (point) props.onDrag(point.x, point.y);
  };
  const press = (event: TargetedPointerEvent<SVGGElement>): void => {
    event.currentTarget.setPointerCapture(event.pointerId);
    hold();
  };
  const key = (event: TargetedKeyboardEvent<SVGGElement>): void => {
    const factor = FACTOR[event.key];
    const next =
      event.key === 'Home' ? min : event.key === 'End' ? max : factor ? value + factor * step : NaN;
    if (Number.isNaN(next)) return;
    event.preventDefault();
    props.onStep(upright(Math.min(max, Math.max(min, next)), sign));
  };
  const arrows = along === 'x' ? 'M-16 0l5-4v8zM16 0l-5-4v8z' : 'M0-16l-4 5h8zM0 16l-4-5h8z';
  return (
    <g
      class="handle"
      transform={`translate(${hundredth(x)} ${hundredth(y)})`}
      role="slider"
      tabIndex={0}
      aria-label={label}
      aria-orientation={along === 'x' ? 'horizontal' : 'vertical'}
      aria-valuemin={min}
      aria-valuemax={max}
      aria-valuenow={value}
      aria-valuetext={valueText}
      // Within a picture browsers pass over touch-action, and would scroll the page under the finger.
      onTouchMove={(event) => event.preventDefault()}
      onPointerDown={press}
      onPointerMove={move}
      onPointerUp={props.onEnd}
      onPointerCancel={props.onEnd}
      onKeyDown={key}
      onKeyUp={props.onEnd}
    >
      <circle class="handle-hit" r={HIT} />
      <path class="handle-arrows" d={arrows} />
      {form === 'round' ? (
        <circle class="handle-dot" r={7} />
      ) : (
        <path class="handle-dot" d={handleOutline[form]} />
      )}
    </g>
  );
}
