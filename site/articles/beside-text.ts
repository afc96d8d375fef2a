/** A paragraph or a list, and the drawing straight after it; one of a calculator has attributes. */
const SPOKEN_OF = /(<(p|ul|ol)>(?:(?!<\/?\2[ >])[\s\S])*?<\/\2>)\s*(<figure>[\s\S]*?<\/figure>)/g;

/**
 * The HTML of an article in which each drawing is held together with the paragraph or list that leads
 * to it: where there is room it stands beside that, and elsewhere below it.
 */
export const besideText = (html: string): string =>
  html.replaceAll(
    SPOKEN_OF,
    (_, text: string, __, figure: string) => `<div class="beside">${figure}${text}</div>`,
  );
