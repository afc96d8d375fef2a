import { MathsError } from '../maths/numeric/errors.ts';
import { MILLIMETRES_PER } from '../maths/units/length-units.ts';
import { sayNumber } from '../maths/numeric/rounding.ts';
import type { LengthDisplay } from '../frame/text/units.ts';
import { SITE_NAME } from '../frame/site-name.ts';
import { MARGIN, papers, placing, type Paper } from './papers.ts';
import { pathOf } from './paths.ts';
import type { Drawing, Layer, Shape } from './shapes.ts';
import { tilesOf, type Size } from './tiles.ts';
import { CAPITAL } from './svg-element.ts';

/** A PDF is measured in points of 1/72 in (ISO 32000-1, 8.3.2.3). */
const POINTS_PER_MM = 72 / MILLIMETRES_PER.in;

const widths: Readonly<Record<Layer, { width: number; dash?: number[]; grey?: number }>> = {
  cut: { width: 0.25 },
  centre: { width: 0.1, dash: [4, 1, 0.5, 1] },
  mark: { width: 0.15 },
  position: { width: 0.3 },
  scrap: { width: 0.15, dash: [4, 1, 0.5, 1, 0.5, 1], grey: 0.45 },
  text: { width: 0 },
  dimension: { width: 0.13 },
  proving: { width: 0.2 },
};

/**
 * Throws a MathsError `too-large-for-paper` unless the drawing goes on one sheet at true scale.
 *
 * @param quantities Names of the quantities that made it so large.
 */
export function assertFits(
  drawing: Drawing,
  paper: Paper,
  quantities: readonly string[] = [],
): void {
  if (placing(drawing, paper) !== undefined) return;
  const { name, width, height } = papers[paper];
  throw new MathsError(
    'too-large-for-paper',
    quantities,
    `${drawing.title} with its proving bars is ${sayNumber(drawing.width)} × ${sayNumber(drawing.height)} mm and does not go on ${name} at true scale: inside margins of ${MARGIN} mm there are ${sayNumber(width - 2 * MARGIN)} × ${sayNumber(height - 2 * MARGIN)} mm. Save the SVG and have it printed on larger paper, or make it smaller.`,
  );
}

type Library = typeof import('pdf-lib');

/** A document that says who made it, and draws shapes. The dates inside are fixed. */
async function started(library: Library, title: string) {
  const { PDFDocument, StandardFonts, degrees, grayscale } = library;
  const document = await PDFDocument.create();
  const never = new Date(0);
  document.setTitle(title);
  document.setAuthor(SITE_NAME);
  document.setCreator(SITE_NAME);
  document.setProducer(SITE_NAME);
  document.setCreationDate(never);
  document.setModificationDate(never);
  const font = await document.embedFont(StandardFonts.Helvetica);
  const addPage = ({ width, height }: Size) =>
    document.addPage([width * POINTS_PER_MM, height * POINTS_PER_MM]);

  /** Draws shapes with their own zero at `x0`, `y0`, mm from the lower left corner of the sheet. */
  const draw = (
    page: ReturnType<typeof addPage>,
    shapes: readonly Shape[],
    x0: number,
    y0: number,
  ): void => {
    for (const shape of shapes) {
      if (shape.kind === 'text') {
        const size = shape.height / CAPITAL;
        const long = font.widthOfTextAtSize(shape.text, size);
        const back = { start: 0, middle: long / 2, end: long }[shape.anchor];
        const turn = (shape.turn * Math.PI) / 180;
        page.drawText(shape.text, {
          x: (x0 + shape.x - back * Math.cos(turn)) * POINTS_PER_MM,
          y: (y0 + shape.y - back * Math.sin(turn)) * POINTS_PER_MM,
          size: size * POINTS_PER_MM,
          font,
          rotate: degrees(shape.turn),
        });
        continue;
      }
      const { width: thick, dash, grey = 0 } = widths[shape.layer];
      page.drawSvgPath(pathOf(shape), {
        x: x0 * POINTS_PER_MM,
        y: y0 * POINTS_PER_MM,
        scale: POINTS_PER_MM,
        borderWidth: thick,
        borderColor: grayscale(grey),
        ...(dash === undefined ? {} : { borderDashArray: dash }),
      });
    }
  };
  return { document, addPage, draw };
}

/**
 * Drawings at true scale as a PDF, one a page. The library is fetched only when a file is wanted.
 * The same drawings always give the same bytes: the dates inside are fixed.
 *
 * @throws MathsError `too-large-for-paper`.
 */
export async function toPdf(drawings: readonly Drawing[], paper: Paper): Promise<Uint8Array> {
  drawings.forEach((drawing) => {
    assertFits(drawing, paper);
  });
  const { document, addPage, draw } = await started(
    await import('pdf-lib'),
    drawings[0]?.title ?? '',
  );
  for (const drawing of drawings) {
    const { width: short, height: long } = papers[paper];
    const sheet =
      placing(drawing, paper) === 'upright'
        ? { width: short, height: long }
        : { width: long, height: short };
    const x0 = (sheet.width - drawing.width) / 2 - drawing.left;
    const y0 = (sheet.height - drawing.height) / 2 - drawing.bottom;
    draw(addPage(sheet), drawing.shapes, x0, y0);
  }
  return document.save();
}

/**
 * A drawing at true scale on as many sheets as it takes, to be joined: each with its own bars that
 * prove the scale, and with crosses where it lies over its neighbours.
 *
 * @param drawing With its bars: goes on one sheet where there is room.
 * @param bare The same without them, for several.
 * @param lengths Those of the reader, for the bars of each sheet.
 */
export async function toTiledPdf(
  drawing: Drawing,
  bare: Drawing,
  paper: Paper,
  lengths: LengthDisplay = 'mm',
): Promise<Uint8Array> {
  if (placing(drawing, paper) !== undefined) return toPdf([drawing], paper);
  const library = await import('pdf-lib');
  const { clip, endPath, popGraphicsState, pushGraphicsState, rectangle } = library;
  const { document, addPage, draw } = await started(library, drawing.title);
  const { width: short, height: long } = papers[paper];
  const plan = tilesOf(bare, { width: short, height: long }, MARGIN, lengths);
  for (const tile of plan.tiles) {
    const page = addPage(plan.sheet);
    draw(page, tile.frame, 0, 0);
    const corner = [tile.x, tile.y, plan.window.width, plan.window.height];
    const [x, y, width, height] = corner.map((mm) => mm * POINTS_PER_MM) as [
      number,
      number,
      number,
      number,
    ];
    page.pushOperators(pushGraphicsState(), rectangle(x, y, width, height), clip(), endPath());
    draw(page, [...bare.shapes, ...plan.joins], tile.x - tile.left, tile.y - tile.bottom);
    page.pushOperators(popGraphicsState());
  }
  return document.save();
}
