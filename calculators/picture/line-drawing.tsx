import type { ComponentChildren } from 'preact';

/** Width of a line drawing that fills a phone's column, in user units: one is a CSS pixel. */
export const DRAWING_WIDTH = 356;

interface Props {
  /** Unique on the page; the parts of the drawing that need a name are named from it. */
  readonly id: string;
  /** What it is, in a few words. */
  readonly title: string;
  /** What it shows, for people who do not see it. */
  readonly description: string;
  readonly width?: number;
  readonly height: number;
  readonly children: ComponentChildren;
}

/**
 * The sheet of a drawing that only shows: rendered when the site is built, never larger than life on
 * the screen, with the lines of ISO 128 and lettering of 13 units.
 */
export function LineDrawing(props: Props) {
  const { id, title, description, width = DRAWING_WIDTH, height, children } = props;
  return (
    <svg
      class="plot line-drawing"
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-labelledby={`${id}-title ${id}-description`}
    >
      <title id={`${id}-title`}>{title}</title>
      <desc id={`${id}-description`}>{description}</desc>
      {children}
    </svg>
  );
}
