/** Longer texts of a cell are parted where the line ends. */
const LONGEST = 14;
const CELL = /(<(?:td|th scope="row")>)\s*([^<]+?)\s*(?=<)/g;

/** The end of a row's name at which it may be parted on a narrow phone: “Twin | at 180°”, “12 V | on 12 V”. */
const END = /(?<= )\p{L}+ \d\S*(?: \p{L}+)?$/u;

/** The HTML of a table whose short cells with a figure stand on one line each: “207°, 57%”, “50 to 60”. */
export const shortCells = (html: string): string =>
  html.replaceAll(CELL, (whole, open: string, text: string) =>
    text.length <= LONGEST && /\d/.test(text) && text.includes(' ')
      ? `${open}<one-line>${open === '<td>' ? text : text.replace(END, '<one-line>$&</one-line>')}</one-line>`
      : whole,
  );
