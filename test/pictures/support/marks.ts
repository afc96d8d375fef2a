import { parseHTML } from 'linkedom';
import { textWidth } from '../../../calculators/picture/common/text-width.ts';
import { flatten, type Point } from './paths.ts';

/** An upright rectangle, in the user units of the picture. */
export interface Area {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

interface MarkBase {
  readonly classes: readonly string[];
  /** Where it stands in the order of drawing: what comes later lies on top. */
  readonly order: number;
}

/** A line of type. */
export interface TextMark extends MarkBase {
  readonly words: string;
  readonly area: Area;
  /** Whether it is cut out of what lies below it. */
  readonly haloed: boolean;
}

/** A stroke or a patch. */
export interface ShapeMark extends MarkBase {
  readonly lines: readonly (readonly Point[])[];
  readonly clip: Area | undefined;
}

export interface Sheet {
  readonly label: string;
  readonly frame: Area;
  readonly texts: readonly TextMark[];
  readonly shapes: readonly ShapeMark[];
}

type Matrix = readonly [a: number, b: number, c: number, d: number, e: number, f: number];
const IDENTITY: Matrix = [1, 0, 0, 1, 0, 0];

const times = (m: Matrix, n: Matrix): Matrix => [
  m[0] * n[0] + m[2] * n[1],
  m[1] * n[0] + m[3] * n[1],
  m[0] * n[2] + m[2] * n[3],
  m[1] * n[2] + m[3] * n[3],
  m[0] * n[4] + m[2] * n[5] + m[4],
  m[1] * n[4] + m[3] * n[5] + m[5],
];

const apply =
  (m: Matrix) =>
  ([x, y]: Point): Point => [m[0] * x + m[2] * y + m[4], m[1] * x + m[3] * y + m[5]];

const numbers = (text: string): number[] =>
  (text.match(/-?\d*\.?\d+(?:e[-+]?\d+)?/g) ?? []).map(Number);

function matrixOf(transform: string): Matrix {
  return [...transform.matchAll(/(\w+)\(([^)]*)\)/g)].reduce((matrix, [, name, inner]) => {
    const [a = 0, b] = numbers(inner!);
    if (name === 'translate') return times(matrix, [1, 0, 0, 1, a, b ?? 0]);
    if (name === 'scale') return times(matrix, [a, 0, 0, b ?? a, 0, 0]);
    throw new Error(`The test knows no transform ${name!}`);
  }, IDENTITY);
}

const DRAWN = new Set(['path', 'circle', 'rect', 'line', 'polyline', 'polygon']);
/** Elements that draw nothing where they stand. */
const OFF_THE_SHEET = new Set(['clippath', 'pattern', 'defs', 'title', 'desc']);
/** What is there for the finger or for paper only. */
const UNSEEN = /^(?:handle-hit|picker|drawn-words)$/;
const BOLD = /^(?:axis-text|dimension-text)$/;

/** The pictures of a page, each as its texts and its strokes and patches in places of its own sheet. */
export function sheetsOf(html: string): Sheet[] {
  const { document } = parseHTML(`<body>${html}</body>`);
  return [...document.querySelectorAll('svg.plot')].map((svg) => sheetOf(svg));
}

function sheetOf(svg: Element): Sheet {
  const [, , width = 0, height = 0] = numbers(svg.getAttribute('viewBox') ?? '');
  const texts: TextMark[] = [];
  const shapes: ShapeMark[] = [];
  let order = 0;

  const walk = (element: Element, outer: Matrix, clipAbove: Area | undefined, above: string[]) => {
    const tag = element.tagName.toLowerCase();
    const classes = (element.getAttribute('class') ?? '').split(/\s+/).filter(Boolean);
    if (OFF_THE_SHEET.has(tag) || classes.some((name) => UNSEEN.test(name))) return;
    const matrix = times(outer, matrixOf(element.getAttribute('transform') ?? ''));
    const id = /^url\(#(.+)\)$/.exec(element.getAttribute('clip-path') ?? '')?.[1];
    const clip = id === undefined ? clipAbove : clipOf(element, id, matrix);
    order += 1;
    if (tag === 'text') {
      texts.push({ classes, order, ...textOf(element, matrix, [...above, ...classes]) });
      return;
    }
    if (DRAWN.has(tag)) {
      const lines = flatten(tag, (name) => element.getAttribute(name)).map((line) =>
        line.map(apply(matrix)),
      );
      shapes.push({ classes, order, lines, clip });
    }
    for (const child of element.children) walk(child, matrix, clip, [...above, ...classes]);
  };
  walk(svg, IDENTITY, undefined, []);
  return {
    label: svg.getAttribute('aria-label') ?? '',
    frame: { left: 0, top: 0, right: width, bottom: height },
    texts,
    shapes,
  };
}

function clipOf(element: Element, id: string, matrix: Matrix): Area {
  const rect = [...element.children].find((child) => child.getAttribute('id') === id)?.children[0];
  if (!rect) throw new Error(`Nothing is cut off by #${id}`);
  const [x, y, width, height] = ['x', 'y', 'width', 'height'].map((name) =>
    Number(rect.getAttribute(name)),
  ) as [number, number, number, number];
  const [left, top] = apply(matrix)([x, y]);
  return { left, top, right: left + width, bottom: top + height };
}

function textOf(element: Element, matrix: Matrix, classes: readonly string[]) {
  const words = element.textContent;
  const force = classes.includes('force');
  const size = 13;
  const wide = textWidth(words, { size, bold: force || classes.some((c) => BOLD.test(c)) });
  const at = (name: string): number => Number(element.getAttribute(name) ?? 0);
  const dy = element.getAttribute('dy') === '0.32em' ? 0.32 * size : 0;
  const [x, y] = apply(matrix)([at('x'), at('y') + dy]);
  const anchor = element.getAttribute('text-anchor') ?? 'start';
  const left = x - (anchor === 'middle' ? wide / 2 : anchor === 'end' ? wide : 0);
  return {
    words,
    area: { left, right: left + wide, top: y - 0.74 * size, bottom: y + 0.22 * size },
    haloed: classes.includes('on-screen'),
  };
}
