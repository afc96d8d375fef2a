import { DUBLIN_CORE, SITE_NAME } from '../../../calculators/frame/site-name.ts';
import { withMaker } from '../../../calculators/picture/png-maker.ts';

/** Looks that a picture takes from the page's style sheet and must carry with it in a file. */
const LOOKS = [
  'paint-order',
  'fill',
  'fill-opacity',
  'stroke',
  'stroke-width',
  'stroke-dasharray',
  'stroke-linecap',
  'stroke-linejoin',
  'font-family',
  'font-size',
  'font-weight',
  'opacity',
] as const;

const PNG_SCALE = 3;

/** What the page gives a picture that means nothing in a file. */
const LEFT_BEHIND = [
  'class',
  'tabindex',
  'role',
  'aria-valuemin',
  'aria-valuemax',
  'aria-valuenow',
  'aria-valuetext',
  'aria-orientation',
] as const;

/** The light palette, without what is there for a finger (`base.css`, `picture.css`). */
const IN_FILE = 'in-file';

/** Lengths in px, such as those of a dash, for a sheet drawn so many times as large. */
const shrunk = (lengths: string, times: number): string =>
  lengths.replaceAll(/[\d.]+px/g, (length) => String(Number.parseFloat(length) / times));

/** How many times as large as the sheet's units those of an element are. */
function timesOf(element: Element, sheet: DOMMatrix): number {
  const matrix = (element as SVGGraphicsElement).getScreenCTM();
  return matrix ? sheet.inverse().multiply(matrix).a : 1;
}

/** Writes out the looks of an element; widths that do not grow with it, as wide as they are seen. */
function writeLooks(element: Element, copy: Element, sheet: DOMMatrix): void {
  const looks = getComputedStyle(element);
  const fixed = looks.getPropertyValue('vector-effect') === 'non-scaling-stroke';
  const times = fixed ? timesOf(element, sheet) : 1;
  for (const look of LOOKS) {
    const value = looks.getPropertyValue(look);
    const ofStroke = look === 'stroke-width' || look === 'stroke-dasharray';
    copy.setAttribute(look, ofStroke ? shrunk(value, times) : value);
  }
  for (const name of LEFT_BEHIND) copy.removeAttribute(name);
}

/**
 * The picture as a document of its own: computed looks written out, nothing left to a style sheet. It
 * is light whatever the page is, since most pages that show it are.
 */
export function standalone(picture: SVGSVGElement, note?: string): string {
  picture.classList.add(IN_FILE);
  try {
    return written(picture, note);
  } finally {
    picture.classList.remove(IN_FILE);
  }
}

/** What a note takes below a picture, in its units. */
const NOTE_ROOM = 22;

/** How high a picture is in its file, with the note below it. */
const heightWith = (picture: SVGSVGElement, note: string | undefined): number =>
  picture.viewBox.baseVal.height + (note === undefined ? 0 : NOTE_ROOM);

/** The note as a line of text below a picture, in the looks of the picture's own words. */
function noteBelow(picture: SVGSVGElement, words: string): SVGTextElement {
  const { x, y, height } = picture.viewBox.baseVal;
  const note = document.createElementNS('http://www.w3.org/2000/svg', 'text');
  const looks = [...picture.querySelectorAll('text'), picture]
    .map((words) => getComputedStyle(words))
    .find(({ fill }) => fill !== 'none')!;
  note.setAttribute('x', String(x + 8));
  note.setAttribute('y', String(y + height + NOTE_ROOM - 8));
  for (const look of ['paint-order', 'fill', 'font-family']) {
    note.setAttribute(look, looks.getPropertyValue(look));
  }
  note.setAttribute('font-size', '12');
  note.textContent = words;
  return note;
}

function written(picture: SVGSVGElement, note: string | undefined): string {
  const copy = picture.cloneNode(true) as SVGSVGElement;
  const sheet = picture.getScreenCTM()!;
  const from = [picture, ...picture.querySelectorAll('*')];
  const to = [copy, ...copy.querySelectorAll('*')];
  from.forEach((element, i) => {
    if (getComputedStyle(element).display === 'none') to[i]!.remove();
    else writeLooks(element, to[i]!, sheet);
  });
  const { x, y, width } = picture.viewBox.baseVal;
  const height = heightWith(picture, note);
  copy.setAttribute('viewBox', [x, y, width, height].join(' '));
  if (note !== undefined) copy.append(noteBelow(picture, note));
  copy.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
  copy.setAttribute('width', String(width));
  copy.setAttribute('height', String(height));
  const ground = document.createElementNS('http://www.w3.org/2000/svg', 'rect');
  ground.setAttribute('width', String(width));
  ground.setAttribute('height', String(height));
  ground.setAttribute('fill', getComputedStyle(picture).backgroundColor);
  const metadata = document.createElementNS('http://www.w3.org/2000/svg', 'metadata');
  const creator = document.createElementNS(DUBLIN_CORE, 'creator');
  creator.textContent = SITE_NAME;
  metadata.append(creator);
  copy.prepend(metadata, ground);
  return new XMLSerializer().serializeToString(copy);
}

export const svgFile = (picture: SVGSVGElement, note?: string): Blob =>
  new Blob([standalone(picture, note)], { type: 'image/svg+xml' });

/** The picture as a PNG, three dots to a unit. */
export async function pngFile(picture: SVGSVGElement, note?: string): Promise<Blob> {
  const image = new Image();
  image.src = `data:image/svg+xml,${encodeURIComponent(standalone(picture, note))}`;
  await image.decode();
  const { width } = picture.viewBox.baseVal;
  const height = heightWith(picture, note);
  const canvas = document.createElement('canvas');
  canvas.width = width * PNG_SCALE;
  canvas.height = height * PNG_SCALE;
  canvas.getContext('2d')!.drawImage(image, 0, 0, canvas.width, canvas.height);
  return new Promise((resolve, reject) => {
    canvas.toBlob((blob) => {
      if (blob) resolve(withMaker(blob));
      else reject(new Error('The browser could not draw the picture as a PNG.'));
    }, 'image/png');
  });
}
