import { useRef } from 'preact/hooks';
import type { TargetedPointerEvent } from 'preact';
import { wrapped } from '../../calculators/practice/instruments.ts';

export interface Round {
  /** What is gone round, in the units of the picture. */
  readonly centre: { readonly x: number; readonly y: number };
  /** So many degrees clockwise. */
  readonly move: (by: number) => void;
}

/** Less is not told from a hand that rests. */
const LEAST = 0.05;

/** The handlers of what a finger or a mouse drags round a centre. */
export function useRound({ centre, move }: Round) {
  const from = useRef<number>();
  const angleOf = (event: TargetedPointerEvent<SVGGElement>): number => {
    const point = new DOMPoint(event.clientX, event.clientY).matrixTransform(
      event.currentTarget.ownerSVGElement!.getScreenCTM()!.inverse(),
    );
    return (Math.atan2(point.x - centre.x, centre.y - point.y) * 180) / Math.PI;
  };
  const leave = (): void => {
    from.current = undefined;
  };
  return {
    // Within a picture browsers pass over touch-action, and would scroll the page under the finger.
    onTouchMove: (event: Event): void => event.preventDefault(),
    onPointerDown: (event: TargetedPointerEvent<SVGGElement>): void => {
      event.currentTarget.setPointerCapture(event.pointerId);
      from.current = angleOf(event);
    },
    onPointerMove: (event: TargetedPointerEvent<SVGGElement>): void => {
      if (from.current === undefined) return;
      const now = angleOf(event);
      const by = wrapped(now - from.current);
      if (Math.abs(by) < LEAST) return;
      from.current = now;
      move(by);
    },
    onPointerUp: leave,
    onPointerCancel: leave,
  };
}
