/** A paragraph, and the drawing that comes straight after it; one of a calculator has attributes. */
const SPOKEN_OF = /(<p>(?:(?!<\/?p[ >])[\s\S])*?<\/p>)\s*(<figure>[\s\S]*?<\/figure>)/g;

/**
 * The HTML of an article in which each drawing is held together with the paragraph that leads to it:
 * where there is room it stands beside that paragraph, and elsewhere below it.
 */
export const besideText = (html: string): string =>
  html.replaceAll(
    SPOKEN_OF,
    (_, text: string, figure: string) => `<div class="beside">${figure}${text}</div>`,
  );
