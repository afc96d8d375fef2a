import { figure } from './paths.ts';
import { DUBLIN_CORE, SITE_NAME } from '../frame/site-name.ts';
import type { Drawing, Layer, Shape } from './shapes.ts';
import { svgElement } from './svg-element.ts';

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
