import type { ComponentChildren } from 'preact';

/** Room around a plot's field for its axes, in user units. */
export interface Margin {
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly left: number;
}

export const usualMargin: Margin = { top: 28, right: 22, bottom: 40, left: 46 };

/** Width of a plot, in user units. */
export const PLOT_WIDTH = 360;

interface PlotProps {
  readonly width: number;
  readonly height: number;
  /** What the picture shows, for people who do not see it. */
  readonly label: string;
  readonly children: ComponentChildren;
}

/**
 * The sheet on which a plot or a drawing is made. User units are about one CSS pixel on a phone;
 * type inside is set at 13 units.
 */
export function Plot({ width, height, label, children }: PlotProps) {
  return (
    <svg
      class="plot"
      viewBox={`0 0 ${width} ${height}`}
      role="group"
      aria-label={label}
      preserveAspectRatio="xMidYMid meet"
    >
      {children}
    </svg>
  );
}
