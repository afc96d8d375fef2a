/** Longer texts of a cell are parted where the line ends. */
const LONGEST = 14;
const CELL = /(<(?:td|th scope="row")>)\s*([^<]+?)\s*(?=<)/g;

/** The HTML of a table whose short cells with a figure stand on one line each: “207°, 57%”, “50 to 60”. */
export const shortCells = (html: string): string =>
  html.replaceAll(CELL, (whole, open: string, text: string) =>
    text.length <= LONGEST && /\d/.test(text) && text.includes(' ')
      ? `${open}<one-line>${text}</one-line>`
      : whole,
  );
