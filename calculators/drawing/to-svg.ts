import { figure, pathOf } from './paths.ts';
import { SITE_NAME } from '../frame/site-name.ts';
import type { Drawing, Layer, Shape } from './shapes.ts';

/** Namespace of the Dublin Core's elements (ISO 15836-1), whose `creator` says who made a file. */
export const DUBLIN_CORE = 'http://purl.org/dc/elements/1.1/';

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

/** The `viewBox` that shows the whole drawing, in mm. */
export function viewBoxOf({ left, bottom, width, height }: Drawing): string {
  return [left, -(bottom + height), width, height].map(figure).join(' ');
}

const strokes: Readonly<Record<Layer, string>> = {
  cut: 'stroke="#000" stroke-width="0.25"',
  centre: 'stroke="#000" stroke-width="0.1" stroke-dasharray="4 1 0.5 1"',
  mark: 'stroke="#000" stroke-width="0.15"',
  position: 'stroke="#000" stroke-width="0.3"',
  scrap: 'stroke="#777" stroke-width="0.15" stroke-dasharray="4 1 0.5 1 0.5 1"',
  text: 'stroke="none"',
  dimension: 'stroke="#000" stroke-width="0.13"',
  proving: 'stroke="#000" stroke-width="0.2"',
};
const layers = Object.keys(strokes) as Layer[];

const escape = (words: string): string =>
  words.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');

function written(shape: Shape): string {
  const { tag, attributes, words } = svgElement(shape);
  const all = {
    ...(shape.name === undefined ? {} : { id: shape.name }),
    ...attributes,
    ...(shape.kind === 'text' ? { fill: '#000', stroke: 'none' } : {}),
  };
  const list = Object.entries(all).map(([key, value]) => ` ${key}="${escape(value)}"`);
  return words === undefined
    ? `<${tag}${list.join('')}/>`
    : `<${tag}${list.join('')}>${escape(words)}</${tag}>`;
}

/**
 * The drawing as an SVG file at true scale: its width and height are in mm, and one user unit is
 * 1 mm. Each layer is a group. The same drawing always gives the same text.
 */
export function toSvg(drawing: Drawing): string {
  const groups = layers.flatMap((layer) => {
    const shapes = drawing.shapes.filter((shape) => shape.layer === layer);
    if (shapes.length === 0) return [];
    return [`<g id="${layer}" fill="none" ${strokes[layer]}>`, ...shapes.map(written), '</g>'];
  });
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${figure(drawing.width)}mm" height="${figure(drawing.height)}mm" viewBox="${viewBoxOf(drawing)}" font-family="Helvetica, Arial, sans-serif">`,
    `<title>${escape(drawing.title)}</title>`,
    `<metadata><creator xmlns="${DUBLIN_CORE}">${SITE_NAME}</creator></metadata>`,
    ...groups,
    '</svg>',
    '',
  ].join('\n');
}
