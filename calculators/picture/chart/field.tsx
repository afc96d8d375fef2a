import type { ComponentChildren } from 'preact';
import { usualMargin, type Margin } from '../common/plot.tsx';

/** The rectangle of a plot within its axes, in user units. */
export interface Field {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The field of a sheet of this size; margins other than the usual ones are given by name. */
export function fieldOf(width: number, height: number, margin: Partial<Margin> = {}): Field {
  const { top, right, bottom, left } = { ...usualMargin, ...margin };
  return { left, top, right: width - right, bottom: height - bottom };
}

interface InFieldProps {
  readonly field: Field;
  /** Unique on the page. */
  readonly id: string;
  readonly children: ComponentChildren;
}

/** Marks of a plot, cut off at the edge of its field. */
export function InField({ field: { left, top, right, bottom }, id, children }: InFieldProps) {
  return (
    <g clip-path={`url(#${id})`}>
      <clipPath id={id}>
        <rect x={left} y={top} width={right - left} height={bottom - top} />
      </clipPath>
      {children}
    </g>
  );
}
