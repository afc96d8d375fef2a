import { figure, pathOf } from './paths.ts';
import type { Shape } from './shapes.ts';

/** Height of a capital letter as a share of the type size, in the usual sans-serif faces. */
export const CAPITAL = 0.72;

export interface SvgElement {
  readonly tag: 'circle' | 'line' | 'path' | 'text';
  readonly attributes: Readonly<Record<string, string>>;
  readonly words?: string;
}

/** One shape as an SVG element in mm, Y down, without colours. */
export function svgElement(shape: Shape): SvgElement {
  switch (shape.kind) {
    case 'circle':
      return {
        tag: 'circle',
        attributes: { cx: figure(shape.x), cy: figure(-shape.y), r: figure(shape.radius) },
      };
    case 'line':
      return {
        tag: 'line',
        attributes: {
          x1: figure(shape.x1),
          y1: figure(-shape.y1),
          x2: figure(shape.x2),
          y2: figure(-shape.y2),
        },
      };
    case 'text':
      return {
        tag: 'text',
        attributes: {
          'font-size': figure(shape.height / CAPITAL),
          'text-anchor': shape.anchor,
          transform: `translate(${figure(shape.x)} ${figure(-shape.y)}) rotate(${figure(-shape.turn)})`,
        },
        words: shape.text,
      };
    default:
      return { tag: 'path', attributes: { d: pathOf(shape) } };
  }
}
