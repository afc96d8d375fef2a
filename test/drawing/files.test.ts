import DxfParser, { type IArcEntity, type ICircleEntity } from 'dxf-parser';
import { parseHTML } from 'linkedom';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, it } from 'vitest';
import { toDxf } from '../../calculators/drawing/to-dxf.ts';
import { MARGIN, placing } from '../../calculators/drawing/papers.ts';
import { toPdf } from '../../calculators/drawing/to-pdf.ts';
import { toSvg } from '../../calculators/drawing/to-svg.ts';
import { discDrawing, strips, tapeDrawing } from '../../calculators/plate/degree-disc/drawing.ts';
import { holePlaces } from '../../calculators/maths/plate/plate-layout.ts';
import { tapeLength } from '../../calculators/maths/crank/degree-disc.ts';
import { plateDrawing } from '../../calculators/plate/plate-layout/drawing.ts';
import { wordsWidth } from '../../calculators/drawing/holding-words.ts';
import { tilesOf } from '../../calculators/drawing/tiles.ts';
import { withoutBars } from '../../calculators/drawing/without-bars.ts';
import degreeDisc from '../../calculators/plate/degree-disc/calculator.tsx';
import { discOf, tapeOf } from '../../calculators/plate/degree-disc/files.ts';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import { patternDrawing } from '../../calculators/plate/hole-pattern/template.ts';
import holePattern from '../../calculators/plate/hole-pattern/calculator.tsx';
import { longestRun, renderPdf } from './render-pdf.ts';
import { sampleDrawing, samplePlate } from './sample-plate.ts';

const places = holePlaces(samplePlate.angles, samplePlate.holes);
const DPI = 300;
/** Dots of 0.085 mm. The ink runs over by half the thickness of the tick at either end, 0.2 mm. */
const DOT = 25.4 / DPI;
const THICK = 0.2;
const barError = (run: number, nominal: number): number => Math.abs(run - THICK - nominal);

describe('SVG read back by linkedom', () => {
  const { document } = parseHTML(toSvg(sampleDrawing).replace(/^<\?xml.*\n/, ''));
  const svg = document.querySelector('svg')!;
  const number = (element: Element | null, name: string): number =>
    Number(element?.getAttribute(name));

  it('says its size in mm, one user unit to the mm', () => {
    const [, , width, height] = svg.getAttribute('viewBox')!.split(' ').map(Number);
    expect(svg.getAttribute('width')).toBe(`${width}mm`);
    expect(svg.getAttribute('height')).toBe(`${height}mm`);
  });

  it('has every hole where it was calculated, Y down', () => {
    places.forEach((set, s) => {
      set.forEach(({ x, y }, h) => {
        const hole = document.getElementById(`hole-${s + 1}-${h + 1}`);
        expect(number(hole, 'cx')).toBeCloseTo(x, 5);
        expect(number(hole, 'cy')).toBeCloseTo(-y, 5);
        expect(number(hole, 'r')).toBe(samplePlate.holes[h]!.drill / 2);
      });
    });
    expect(number(document.getElementById('outside'), 'r')).toBe(46);
    expect(number(document.getElementById('bore'), 'r')).toBe(13.5);
  });

  it('holds proving bars of 100 and 50 mm', () => {
    const across = document.getElementById('bar-across');
    const up = document.getElementById('bar-up');
    expect(number(across, 'x2') - number(across, 'x1')).toBeCloseTo(100, 9);
    expect(number(up, 'y1') - number(up, 'y2')).toBeCloseTo(50, 9);
  });

  it('keeps everything inside its sheet', () => {
    const [left, top, width, height] = svg.getAttribute('viewBox')!.split(' ').map(Number);
    for (const line of document.querySelectorAll('line')) {
      for (const end of ['1', '2']) {
        expect(number(line, `x${end}`)).toBeGreaterThanOrEqual(left!);
        expect(number(line, `x${end}`)).toBeLessThanOrEqual(left! + width!);
        expect(number(line, `y${end}`)).toBeGreaterThanOrEqual(top!);
        expect(number(line, `y${end}`)).toBeLessThanOrEqual(top! + height!);
      }
    }
  });

  it('is the same each time', () => {
    expect(toSvg(plateDrawing({ plate: samplePlate, allowance: 3 }))).toBe(toSvg(sampleDrawing));
  });
});

describe('DXF read back by dxf-parser', async () => {
  const written = await toDxf(sampleDrawing);
  const dxf = new DxfParser().parseSync(written)!;
  const circles = dxf.entities.filter(
    (entity): entity is ICircleEntity => entity.type === 'CIRCLE' && entity.layer === 'CUT',
  );

  it('is in millimetres', () => {
    expect(dxf.header.$INSUNITS).toBe(4);
  });

  it('has every hole on the layer to be cut, where it was calculated', () => {
    const wanted = places.flatMap((set) =>
      set.map(({ x, y }, h) => ({ x, y, radius: samplePlate.holes[h]!.drill / 2 })),
    );
    for (const hole of wanted) {
      const match = circles.filter(
        ({ center, radius }) =>
          Math.hypot(center.x - hole.x, center.y - hole.y) < 1e-5 && radius === hole.radius,
      );
      expect(match).toHaveLength(1);
    }
    expect(circles).toHaveLength(wanted.length + 2);
  });

  it('draws each slot of two arcs and two round ends that meet', () => {
    const arcs = dxf.entities.filter(
      (entity): entity is IArcEntity => entity.type === 'ARC' && entity.layer === 'CUT',
    );
    expect(arcs).toHaveLength(4 * samplePlate.slots.length);
    const ends = arcs
      .slice(0, 4)
      .flatMap(({ center, radius, startAngle, endAngle }) =>
        [startAngle, endAngle].map((angle) => [
          center.x + radius * Math.cos(angle),
          center.y + radius * Math.sin(angle),
        ]),
      );
    for (const [x, y] of ends) {
      const together = ends.filter(([u, v]) => Math.hypot(u! - x!, v! - y!) < 1e-4);
      expect(together).toHaveLength(2);
    }
  });

  it('keeps stock, centres, lettering and proving bars off the layer to be cut', () => {
    const layers = new Set(dxf.entities.map(({ layer }) => layer));
    expect(layers).toEqual(new Set(['CUT', 'CENTRE', 'SCRAP', 'TEXT', 'PROVING']));
    expect(Object.keys(dxf.tables.layer.layers)).toEqual(expect.arrayContaining([...layers]));
  });

  it('is the same each time', async () => {
    expect(await toDxf(sampleDrawing)).toBe(written);
  });
});

describe('PDF rendered by pdf.js', async () => {
  const onA4 = await toPdf([sampleDrawing], 'a4');
  const [page] = await renderPdf(onA4, DPI);

  it('is a sheet of A4', () => {
    expect(page!.width).toBeCloseTo(210, 1);
    expect(page!.height).toBeCloseTo(297, 1);
  });

  it('lays the bars down 100 and 50 mm long, to a dot of 1/300 in', () => {
    expect(barError(longestRun(page!, 'across'), 100)).toBeLessThan(1.5 * DOT);
    expect(barError(longestRun(page!, 'up'), 50)).toBeLessThan(1.5 * DOT);
  });

  it('lays them down as long on Letter', async () => {
    const [letter] = await renderPdf(await toPdf([sampleDrawing], 'letter'), DPI);
    expect(letter!.width).toBeCloseTo(215.9, 1);
    expect(barError(longestRun(letter!, 'across'), 100)).toBeLessThan(1.5 * DOT);
  });

  it('bears the words that tell how to print it', () => {
    expect(page!.words).toContain('Print at 100%, not fitted to the page, then measure both.');
  });

  it('is the same bytes each time', async () => {
    expect(await toPdf([sampleDrawing], 'a4')).toEqual(onA4);
    expect(Buffer.from(onA4).toString('latin1')).not.toContain(String(new Date().getFullYear()));
  });

  it('goes on several where the plate is larger than the paper, and beside others', async () => {
    const large = plateDrawing({ plate: { ...samplePlate, outsideDiameter: 300 }, allowance: 3 });
    const pages = await renderPdf(await toPdf([large, sampleDrawing], 'a4'), 100);
    // 306 mm of stock and its title: two sheets across the longer side, two along the shorter.
    expect(pages).toHaveLength(5);
    for (const [i, { words }] of pages.slice(0, 4).entries())
      expect(words).toMatch(new RegExp(`Plate of 300\\smm\\. +Sheet ${i + 1} of 4`));
    for (const { words } of pages)
      expect(words.match(/Print at 100%, not fitted/g), words).toHaveLength(1);
    expect(pages[4]!.words).not.toContain('Sheet ');
  });

  it('turns the sheet where the drawing is wider than the paper', () => {
    expect(placing({ width: 190, height: 277 }, 'a4')).toBe('upright');
    expect(placing({ width: 191, height: 190 }, 'a4')).toBe('across');
    expect(placing({ width: 191, height: 191 }, 'a4')).toBeUndefined();
  });
});

describe('disc and tape', async () => {
  const scale = {
    numbering: 'one-way',
    grows: 'anticlockwise',
    marks: [{ angle: -24, label: '2.2 mm before', short: '2.2' }],
  } as const;
  const disc = discDrawing({
    ...scale,
    note: 'Stroke 51 mm, rod 104 mm',
    outsideDiameter: 180,
    insideDiameter: 12,
  });
  const tape = tapeDrawing({
    ...scale,
    note: '',
    rotorDiameter: 96,
    thickness: 0.2,
    tapeWidth: 12,
  });
  const svgOf = (drawing: typeof disc) =>
    parseHTML(toSvg(drawing).replace(/^<\?xml.*\n/, '')).document;
  const number = (element: Element | null, name: string): number =>
    Number(element?.getAttribute(name));

  it('has a mark in the direction of each degree, the zero at the top', () => {
    const document = svgOf(disc);
    for (const angle of [0, 1, 90, 245]) {
      const mark = document.getElementById(`mark-${angle}`);
      const direction = (Math.atan2(-number(mark, 'y2'), number(mark, 'x2')) * 180) / Math.PI;
      expect(((((direction - 90 - angle) % 360) + 540) % 360) - 180).toBeCloseTo(0, 4);
      expect(Math.hypot(number(mark, 'x2'), number(mark, 'y2'))).toBeCloseTo(90, 5);
    }
  });

  it('puts a mark before the top on the side that comes to the pointer first', () => {
    const mark = svgOf(disc).getElementById('piston-1');
    const direction = (Math.atan2(-number(mark, 'y2'), number(mark, 'x2')) * 180) / Math.PI;
    expect(direction).toBeCloseTo(90 - 24, 4);
    const other = discDrawing({
      ...scale,
      note: 'Stroke 51 mm, rod 104 mm',
      grows: 'clockwise',
      outsideDiameter: 180,
      insideDiameter: 0,
    });
    const mirrored = svgOf(other).getElementById('piston-1');
    expect(number(mirrored, 'x2')).toBeCloseTo(-number(mark, 'x2'), 5);
  });

  it('has strips whose lengths add up to the tape', () => {
    const document = svgOf(tape);
    const parts = strips(96, 0.2);
    const lengths = parts.map((_, i) => {
      const edge = document.getElementById(`strip-${i + 1}`);
      return number(edge, 'x2') - number(edge, 'x1');
    });
    expect(lengths.reduce((a, b) => a + b, 0)).toBeCloseTo(tapeLength(96, 0.2), 4);
    expect(Math.max(...lengths)).toBeLessThanOrEqual(180);
  });

  it('marks the tape where the arc says, right to left where readings grow to the left', () => {
    const document = svgOf(tape);
    const last = strips(96, 0.2).at(-1)!;
    const mark = document.getElementById('tape-2-piston-1');
    expect(number(mark, 'x1')).toBeCloseTo((24 / 360) * tapeLength(96, 0.2), 4);
    expect(last.to).toBe(360);
  });

  it('gives each shape a name of its own', () => {
    for (const drawing of [disc, tape, sampleDrawing]) {
      const names = drawing.shapes.flatMap(({ name }) => name ?? []);
      expect(new Set(names).size).toBe(names.length);
    }
  });

  it('the tape says what rotor and engine it is for', () => {
    const of = tapeOf(evaluate(degreeDisc, { rotor: '96' }, { lengths: 'mm' }).values as never);
    const words = of.shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));
    expect(words).toContainEqual(
      expect.stringMatching(
        /^Tape for a rotor of 96\smm\. Stroke \d+\smm, rod \d+\smm; crank turns/,
      ),
    );
  });

  it('goes on A4, two sheets, bars true', async () => {
    const bytes = await toPdf([disc, tape], 'a4');
    const pages = await renderPdf(bytes, DPI);
    expect(pages).toHaveLength(2);
    expect(barError(longestRun(pages[0]!, 'across'), 100)).toBeLessThan(1.5 * DOT);
    expect(pages[0]!.words).toContain('2.2 mm before');
    expect(pages[1]!.words).toContain('Strip 2');
    expect(await toPdf([disc, tape], 'a4')).toEqual(bytes);
  });
});

describe('drawings for a reader in inches', async () => {
  const disc = discDrawing({
    lengths: 'in',
    numbering: 'one-way',
    grows: 'anticlockwise',
    marks: [],
    note: '',
    outsideDiameter: 100,
    insideDiameter: 12,
  });
  const tape = tapeDrawing({
    lengths: 'in',
    numbering: 'one-way',
    grows: 'anticlockwise',
    marks: [],
    note: '',
    rotorDiameter: 20,
    thickness: 0.2,
    tapeWidth: 12,
  });
  const plate = plateDrawing({ plate: samplePlate, allowance: 3, lengths: 'in' });
  const values = evaluate(holePattern, {}, { lengths: 'in' }).values as never;
  const part = patternDrawing(values, 'in');

  it.each([
    ['plate', plate],
    ['disc', disc],
    ['tape', tape],
    ['part', part],
  ] as const)(
    '%s: bars of 4 and 2 in beside those of 100 and 50 mm, within the sheet',
    (_, drawing) => {
      const lines = drawing.shapes.filter((shape) => shape.kind === 'line');
      const named = (name: string) => lines.find((one) => one.name === name)!;
      const [across, up] = [named('bar-across'), named('bar-up')];
      // 1 in is 25.4 mm by definition.
      expect(named('bar-across-inches').x2 - across.x1).toBeCloseTo(101.6, 9);
      expect(named('bar-up-inches').y2 - up.y1).toBeCloseTo(50.8, 9);
      expect(across.x2 - across.x1).toBeCloseTo(100, 9);
      const below = lines.filter(
        ({ layer, x1, x2, y1, y2 }) =>
          layer === 'proving' && x1 === x2 && y1 === across.y1 && y2 < across.y1,
      );
      expect(below.map(({ x1 }) => Number(((x1 - across.x1) / 25.4).toFixed(6)))).toEqual([
        0, 1, 2, 3, 4,
      ]);
      for (const { x1, x2, y1, y2 } of lines) {
        for (const x of [x1, x2]) {
          expect(x).toBeGreaterThanOrEqual(drawing.left);
          expect(x).toBeLessThanOrEqual(drawing.left + drawing.width);
        }
        for (const y of [y1, y2]) {
          expect(y).toBeGreaterThanOrEqual(drawing.bottom);
          expect(y).toBeLessThanOrEqual(drawing.bottom + drawing.height);
        }
      }
    },
  );

  it.each([
    ['plate', plate],
    ['disc', disc],
    ['tape', tape],
    ['part', part],
  ] as const)('%s: no length without its inches', (_, drawing) => {
    const words = drawing.shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));
    expect(words.filter((text) => /\bmm\b/.test(text) && !/\bin\b/.test(text))).toEqual([]);
    expect(drawing.title).not.toContain('mm');
  });

  it('letter a hole of 6.5 mm in inches, and keep its place and the unit of the file', async () => {
    const words = part.shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));
    // 6.5 / 25.4 = 0.2559
    expect(words.find((text) => text.startsWith('1: '))).toMatch(/^1: 0\.256\sin$/);
    const holes = (drawing: typeof part) => drawing.shapes.filter(({ kind }) => kind === 'circle');
    expect(holes(part)).toEqual(holes(patternDrawing(values)));
    expect(new DxfParser().parseSync(await toDxf(part))!.header.$INSUNITS).toBe(4);
  });

  it('are proved on each sheet of several', async () => {
    const large = evaluate(holePattern, { outline: 'round', outside: '380' }, { lengths: 'in' })
      .values as never;
    const pages = await renderPdf(await toPdf([patternDrawing(large, 'in')], 'letter', 'in'), 100);
    expect(pages.length).toBeGreaterThan(2);
    for (const page of pages) expect(page.words).toMatch(/outer ticks: 4\sin \(101\.6 mm\) across/);
  });
});

/** How long a path of straight lines and circular arcs is, and by what it turns in these, anticlockwise. */
function courseOf(path: string): { readonly length: number; readonly turned: number } {
  let [x, y, length, turned] = [0, 0, 0, 0];
  for (const [, letter, rest] of path.matchAll(/([MLA])([^MLAZ]+)/g)) {
    const figures = rest!.trim().split(/[ ,]+/).map(Number);
    const [u, v] = figures.slice(-2) as [number, number];
    const chord = Math.hypot(u - x, v - y);
    if (letter === 'L') length += chord;
    if (letter === 'A') {
      const [radius, , , large, sweep] = figures as [number, number, number, number, number];
      const half = 2 * Math.asin(Math.min(1, chord / (2 * radius)));
      const angle = large === 1 ? 2 * Math.PI - half : half;
      length += radius * angle;
      // With Y down, as SVG has it, what sweeps by growing angles runs clockwise.
      turned += sweep === 1 ? -angle : angle;
    }
    [x, y] = [u, v];
  }
  return { length, turned };
}

describe('a gasket with a band', async () => {
  const values = evaluate(
    holePattern,
    { band: '6', 'in-opening': '5', 'bulge-1': '3', 'bulge-2': '-4' },
    { lengths: 'mm' },
  ).values as never;
  const drawing = patternDrawing(values);

  it('has its inner edge in the SVG as one closed path on the layer to be cut', () => {
    const { document } = parseHTML(toSvg(drawing).replace(/^<\?xml.*\n/, ''));
    const opening = document.getElementById('opening-1')!;
    expect(opening.parentElement!.id).toBe('cut');
    expect(opening.getAttribute('d')).toMatch(/^M[^MZ]+Z$/);
    // What lies in the opening is shown, and not cut.
    expect(document.getElementById('hole-5')!.parentElement!.id).toBe('position');
    expect(document.getElementById('hole-4')!.parentElement!.id).toBe('cut');
  });

  it('has it in the DXF as one closed polyline, as long as the path of the SVG', async () => {
    const dxf = new DxfParser().parseSync(await toDxf(drawing))!;
    const found = dxf.entities.filter(({ type }) => type === 'LWPOLYLINE') as unknown as readonly {
      layer: string;
      shape: boolean;
      vertices: readonly { x: number; y: number; bulge?: number }[];
    }[];
    expect(found).toHaveLength(1);
    const { layer, shape, vertices } = found[0]!;
    expect([layer, shape]).toEqual(['CUT', true]);
    // A bulge is the tangent of a quarter of the angle: chord × angle / (2 sin (angle / 2)) along it.
    const round = vertices.reduce((sum, { x, y, bulge = 0 }, i) => {
      const next = vertices[(i + 1) % vertices.length]!;
      const chord = Math.hypot(next.x - x, next.y - y);
      const angle = 4 * Math.atan(bulge);
      return sum + (angle === 0 ? chord : (chord * angle) / (2 * Math.sin(angle / 2)));
    }, 0);
    const { document } = parseHTML(toSvg(drawing).replace(/^<\?xml.*\n/, ''));
    const path = document.getElementById('opening-1')!.getAttribute('d')!;
    const course = courseOf(path);
    expect(round).toBeCloseTo(course.length, 3);
    const turned = vertices.reduce((sum, { bulge = 0 }) => sum + 4 * Math.atan(bulge), 0);
    expect(turned).toBeCloseTo(course.turned, 5);
  });
});

describe('the width of a band in the files', () => {
  const texts = { band: '6', 'in-opening': '5' };
  const files = async (more: Record<string, string>) => {
    const { values } = evaluate(holePattern, { ...texts, ...more }, { lengths: 'mm' });
    const [pdf, svg, dxf] = await Promise.all(
      holePattern.downloads!.map(({ make }) => make(values as never, 'mm')),
    );
    const { document } = parseHTML((svg as string).replace(/^<\?xml.*\n/, ''));
    const read = new DxfParser().parseSync(dxf as string)!;
    const pages = await renderPdf(pdf as Uint8Array, 20);
    return { pdf: pages.map(({ words }) => words).join(' '), document, read };
  };
  const svgWords = (document: Document): string =>
    [...document.querySelectorAll('text')].map(({ textContent }) => textContent).join(' ');
  const dxfWords = (dxf: { entities: readonly unknown[] }): string =>
    (dxf.entities as readonly { type: string; text?: string }[])
      .flatMap(({ type, text }) => (type === 'TEXT' ? (text ?? '') : []))
      .join(' ');
  const plain = (words: string): string => words.replaceAll('\u00A0', ' ');

  it('is a dimension of 6 mm between two arrows, on a layer that is not cut', async () => {
    const { pdf, document, read } = await files({});
    const number = (id: string, name: string): number =>
      Number(document.getElementById(id)!.getAttribute(name));
    const tips = ['band-outer', 'band-inner'].map((id) => [number(id, 'x2'), number(id, 'y2')]);
    expect(Math.hypot(tips[0]![0]! - tips[1]![0]!, tips[0]![1]! - tips[1]![1]!)).toBeCloseTo(6, 2);
    expect(document.getElementById('band-outer')!.parentElement!.id).toBe('dimension');
    for (const words of [pdf, svgWords(document), dxfWords(read)]) {
      expect(plain(words)).toMatch(/\bband 6 mm(?!\S)/);
    }
    const lines = read.entities.filter(
      ({ type, layer }) => type === 'LINE' && layer === 'DIMENSION',
    );
    // Two arrows of a line and a head of two strokes each; a leader has a line under its words too.
    const leaders = document.querySelectorAll('[id^="leader-"]').length;
    expect(lines).toHaveLength(6 + 4 * leaders);
  });

  it('stands in a note where the part has no room for it', async () => {
    // Holes 8 mm apart in a row: nothing but rims, and an opening of a few millimetres.
    const small = {
      holes: '3',
      distances: '3',
      span: 'centres',
      ...Object.fromEntries([1, 2, 3].map((i) => [`hole-${i}`, '1'])),
      ...Object.fromEntries([1, 2, 3].map((i) => [`land-${i}`, '1'])),
      ...{ 'distance-1': '7', 'distance-2': '7', 'distance-3': '7' },
      ...{ band: '1', 'in-opening': '' },
    };
    const { pdf, document, read } = await files(small);
    expect(document.getElementById('band-outer')).toBeNull();
    for (const words of [pdf, svgWords(document), dxfWords(read)]) {
      expect(plain(words)).toMatch(/\bBand: 1 mm from its outer edge to its inner one\.(?!\S)/);
    }
  });

  it('stands nowhere where there is no band', async () => {
    const { pdf, document, read } = await files({ band: '', 'in-opening': '' });
    for (const words of [pdf, svgWords(document), dxfWords(read)]) {
      expect(words.toLowerCase()).not.toContain('band');
    }
  });
});

describe('a hole pattern', async () => {
  const valuesOf = (texts: Record<string, string>) =>
    evaluate(holePattern, texts, { lengths: 'mm' }).values as never;
  const small = valuesOf({ 'bulge-1': '3', 'bulge-3': '-2', bore: '0' });
  const drawing = patternDrawing(small);
  const { results, values } = evaluate(holePattern, {}, { lengths: 'mm' });
  const [xs, ys] = [results.x, results.y] as readonly (readonly number[])[];
  const diameters = values.hole as readonly number[];

  it('has every hole where it was fitted, in SVG and DXF', async () => {
    const { document } = parseHTML(toSvg(drawing).replace(/^<\?xml.*\n/, ''));
    const dxf = new DxfParser().parseSync(await toDxf(drawing))!;
    const circles = dxf.entities.filter(
      (entity): entity is ICircleEntity => entity.type === 'CIRCLE' && entity.layer === 'CUT',
    );
    diameters.forEach((diameter, i) => {
      const hole = document.getElementById(`hole-${i + 1}`);
      expect(Number(hole?.getAttribute('cx'))).toBeCloseTo(xs![i]!, 5);
      expect(Number(hole?.getAttribute('cy'))).toBeCloseTo(-ys![i]!, 5);
      const match = circles.filter(
        ({ center, radius }) =>
          Math.hypot(center.x - xs![i]!, center.y - ys![i]!) < 1e-5 && radius === diameter / 2,
      );
      expect(match).toHaveLength(1);
    });
  });

  it('has an outline that is closed, of straight and round edges that meet', async () => {
    const dxf = new DxfParser().parseSync(await toDxf(drawing))!;
    const ends = dxf.entities.flatMap((entity) => {
      if (entity.layer !== 'CUT') return [];
      if (entity.type === 'LINE') {
        return (entity as unknown as { vertices: { x: number; y: number }[] }).vertices.map(
          ({ x, y }) => [x, y] as const,
        );
      }
      if (entity.type !== 'ARC') return [];
      const { center, radius, startAngle, endAngle } = entity as IArcEntity;
      return [startAngle, endAngle].map(
        (angle) =>
          [center.x + radius * Math.cos(angle), center.y + radius * Math.sin(angle)] as const,
      );
    });
    expect(ends).toHaveLength(16);
    for (const [x, y] of ends) {
      const together = ends.filter(([u, v]) => Math.hypot(u - x, v - y) < 1e-4);
      expect(together).toHaveLength(2);
    }
  });

  it('goes on one sheet where there is room', async () => {
    const pages = await renderPdf(await toPdf([drawing], 'a4'), DPI);
    expect(pages).toHaveLength(1);
    expect(barError(longestRun(pages[0]!, 'across'), 100)).toBeLessThan(1.5 * DOT);
  });

  it('goes on several where it is larger, each with its bars and its place', async () => {
    const large = valuesOf({ outline: 'round', outside: '380' });
    const bytes = await toPdf([patternDrawing(large)], 'a4');
    const pages = await renderPdf(bytes, 150);
    expect(pages.length).toBeGreaterThan(2);
    pages.forEach((page, i) => {
      expect(page.words).toContain(`Sheet ${i + 1} of ${pages.length}`);
      expect(page.words).toContain('Print at 100%, not fitted to the page, then measure both.');
    });
    expect(await toPdf([patternDrawing(large)], 'a4')).toEqual(bytes);
  });

  it.each(['mm', 'in'] as const)(
    'has no words on others on any sheet, lengths in %s',
    async (lengths) => {
      const large = valuesOf({ outline: 'round', outside: '380' });
      const bytes = await toPdf([patternDrawing(large, lengths)], 'a4', lengths);
      const { promise } = getDocument({ data: new Uint8Array(bytes), verbosity: 0 });
      const pdf = await promise;
      for (let page = 1; page <= pdf.numPages; page += 1) {
        const { items } = await (await pdf.getPage(page)).getTextContent();
        const words = items.flatMap((item) => {
          // Names of holes beyond the window are cut off, and still read.
          if (!('str' in item) || /^\s*$|^\d+: /.test(item.str)) return [];
          const [, , , , left, foot] = item.transform as number[];
          return [{ left: left!, right: left! + item.width, foot: foot!, str: item.str }];
        });
        words.forEach((a, i) => {
          for (const b of words.slice(0, i)) {
            const level = Math.abs(a.foot - b.foot) < 6;
            const clear = a.left >= b.right || b.left >= a.right;
            expect(!level || clear, `${a.str} on ${b.str}`).toBe(true);
          }
        });
      }
    },
  );

  it.each([
    [400, 300],
    [190, 900],
    [1000, 1000],
  ])('covers %d by %d mm whole, neighbours lying over each other', (width, height) => {
    const whole = { title: '', left: -17, bottom: 5, width, height, shapes: [] };
    const { tiles, window, sheet } = tilesOf(whole, { width: 210, height: 297 }, MARGIN);
    const holds = (x: number, y: number): number =>
      tiles.filter(
        ({ left, bottom }) =>
          x >= left && x <= left + window.width && y >= bottom && y <= bottom + window.height,
      ).length;
    for (let i = 0; i <= 20; i += 1) {
      for (let j = 0; j <= 20; j += 1) {
        expect(holds(-17 + (width * i) / 20, 5 + (height * j) / 20)).toBeGreaterThan(0);
      }
    }
    for (const { x, y } of tiles) {
      expect(x + window.width).toBeLessThanOrEqual(sheet.width - MARGIN + 1e-9);
      expect(y + window.height).toBeLessThanOrEqual(sheet.height - MARGIN + 1e-9);
    }
  });

  it.each(['mm', 'in'] as const)('has its words within the paper, lengths in %s', (lengths) => {
    for (const drawing of [
      patternDrawing(valuesOf({}), lengths),
      plateDrawing({ plate: samplePlate, allowance: 3, lengths }),
    ]) {
      const whole = { ...drawing, width: 800, height: 500 };
      const { tiles, sheet } = tilesOf(whole, { width: 210, height: 297 }, MARGIN, lengths);
      for (const shape of tiles.flatMap(({ frame }) => frame)) {
        if (shape.kind !== 'text') continue;
        const end = shape.x + wordsWidth(shape.text, shape.height);
        expect(end, shape.text).toBeLessThanOrEqual(sheet.width - MARGIN);
        expect(shape.y, shape.text).toBeGreaterThanOrEqual(MARGIN);
      }
    }
  });

  it.each([
    ['a4', 210, 297],
    ['letter', 215.9, 279.4],
  ] as const)('sets its crosses on no line and no word, on %s', (_, width, height) => {
    const disc = evaluate(degreeDisc, { outside: '340' }, { lengths: 'mm' }).values as never;
    for (const drawing of [
      patternDrawing(valuesOf({ outline: 'round', outside: '380' })),
      discOf(disc),
    ]) {
      const bare = withoutBars(drawing);
      const { joins } = tilesOf(bare, { width, height }, MARGIN);
      expect(joins.length).toBeGreaterThan(6);
      const [words, rest] = [true, false].map((is) =>
        bare.shapes.filter(({ kind }) => (kind === 'text') === is),
      );
      for (const arm of joins) {
        if (arm.kind !== 'line') continue;
        for (const shape of words!) {
          if (shape.kind !== 'text') continue;
          const long = wordsWidth(shape.text, shape.height);
          // Only words that lie level: those along spokes stand nowhere near.
          if (shape.turn !== 0) continue;
          const left = shape.x - { start: 0, middle: long / 2, end: long }[shape.anchor];
          const hits =
            arm.x2 >= left &&
            arm.x1 <= left + long &&
            arm.y2 >= shape.y &&
            arm.y1 <= shape.y + shape.height;
          expect(hits, shape.text).toBe(false);
        }
        for (const shape of rest!) {
          if (shape.kind !== 'circle' || shape.layer !== 'cut') continue;
          const ends = [
            Math.hypot(arm.x1 - shape.x, arm.y1 - shape.y),
            Math.hypot(arm.x2 - shape.x, arm.y2 - shape.y),
          ];
          const crosses = Math.min(...ends) <= shape.radius && Math.max(...ends) >= shape.radius;
          expect(crosses, shape.name).toBe(false);
        }
      }
    }
  });

  it('has crosses on a sheet that stand in the same place of the drawing on its neighbour', () => {
    const whole = { title: '', left: 0, bottom: 0, width: 400, height: 200, shapes: [] };
    const { tiles, window, joins } = tilesOf(whole, { width: 210, height: 297 }, MARGIN);
    const middles = joins.flatMap((shape) =>
      shape.kind === 'line' && shape.y1 === shape.y2 ? [[(shape.x1 + shape.x2) / 2, shape.y1]] : [],
    );
    expect(middles.length).toBeGreaterThan(1);
    for (const [x, y] of middles) {
      const on = tiles.filter(
        ({ left, bottom }) =>
          x! - left > 3 &&
          left + window.width - x! > 3 &&
          y! > bottom &&
          y! < bottom + window.height,
      );
      expect(on.length).toBeGreaterThan(1);
    }
  });
});
