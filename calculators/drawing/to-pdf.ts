import { MILLIMETRES_PER } from '../maths/units/length-units.ts';
import type { LengthDisplay } from '../frame/text/units.ts';
import { holdingWords } from './holding-words.ts';
import { SITE_NAME } from '../frame/site-name.ts';
import { MARGIN, papers, placing, type Paper } from './papers.ts';
import { pathOf } from './paths.ts';
import type { Drawing, Layer, Shape } from './shapes.ts';
import { tilesOf, type Size } from './tiles.ts';
import { CAPITAL } from './svg-element.ts';
import { withoutBars } from './without-bars.ts';

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

type Started = Awaited<ReturnType<typeof started>>;

/** On a sheet of its own, in its middle. */
function onOneSheet(
  { addPage, draw }: Started,
  drawing: Drawing,
  paper: Paper,
  way: 'upright' | 'across',
): void {
  const { width: short, height: long } = papers[paper];
  const sheet = way === 'upright' ? { width: short, height: long } : { width: long, height: short };
  const x0 = (sheet.width - drawing.width) / 2 - drawing.left;
  const y0 = (sheet.height - drawing.height) / 2 - drawing.bottom;
  draw(addPage(sheet), drawing.shapes, x0, y0);
}

/** On as many sheets as it takes, each with its own bars, and with crosses that neighbours share. */
function onSeveral(
  library: Library,
  { addPage, draw }: Started,
  drawing: Drawing,
  paper: Paper,
  lengths: LengthDisplay,
): void {
  const { clip, endPath, popGraphicsState, pushGraphicsState, rectangle } = library;
  const { width: short, height: long } = papers[paper];
  const bare = withoutBars(drawing);
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
}

/**
 * Drawings at true scale as a PDF, each on a sheet of its own, or on several to be joined where it is
 * larger. The library is fetched only when a file is wanted. The same drawings always give the same
 * bytes: the dates inside are fixed.
 *
 * @param lengths Those of the reader, for the bars of each of several sheets.
 */
export async function toPdf(
  drawings: readonly Drawing[],
  paper: Paper,
  lengths: LengthDisplay = 'mm',
): Promise<Uint8Array> {
  const library = await import('pdf-lib');
  const file = await started(library, drawings[0]?.title ?? '');
  for (const drawing of drawings.map(holdingWords)) {
    const way = placing(drawing, paper);
    if (way === undefined) onSeveral(library, file, drawing, paper, lengths);
    else onOneSheet(file, drawing, paper, way);
  }
  return file.document.save();
}
