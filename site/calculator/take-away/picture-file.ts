import { DUBLIN_CORE } from '../../../calculators/drawing/to-svg.ts';
import { SITE_NAME } from '../../../calculators/frame/site-name.ts';
import { withMaker } from '../../browser/png-maker.ts';

/** Looks that a picture takes from the page's style sheet and must carry with it in a file. */
const LOOKS = [
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

/** The picture as a document of its own: computed looks written out, nothing left to a style sheet. */
export function standalone(picture: SVGSVGElement): string {
  const copy = picture.cloneNode(true) as SVGSVGElement;
  const from = [picture, ...picture.querySelectorAll('*')];
  const to = [copy, ...copy.querySelectorAll('*')];
  from.forEach((element, i) => {
    const looks = getComputedStyle(element);
    for (const look of LOOKS) to[i]!.setAttribute(look, looks.getPropertyValue(look));
    for (const name of [
      'class',
      'tabindex',
      'role',
      'aria-valuemin',
      'aria-valuemax',
      'aria-valuenow',
      'aria-valuetext',
      'aria-orientation',
    ]) {
      to[i]!.removeAttribute(name);
    }
  });
  const { width, height } = picture.viewBox.baseVal;
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

export const svgFile = (picture: SVGSVGElement): Blob =>
  new Blob([standalone(picture)], { type: 'image/svg+xml' });

/** The picture as a PNG, three dots to a unit. */
export async function pngFile(picture: SVGSVGElement): Promise<Blob> {
  const image = new Image();
  image.src = `data:image/svg+xml,${encodeURIComponent(standalone(picture))}`;
  await image.decode();
  const { width, height } = picture.viewBox.baseVal;
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
