/**
 * The site's mark: a piston on its rod, cut square to the gudgeon pin, with two rings in their
 * grooves and the two centre lines. What is cut is shown solid, as narrow sections are;
 * outlines are twice as wide as the chain-dotted centre lines (ISO 128). Edges lie on even units,
 * so that they fall on whole pixels at 16 px. One drawing for the page's head, the icons, the
 * previews and paper: the colour is that of the text round it.
 */
export const MARK_SIZE = 32;
export const MARK_GROUND = '#123a63';

const PISTON =
  'M6 26V14.3H8.7V11.3H6V10.3H8.7V7.3H6V5.4Q16 1.4 26 5.4V7.3H23.3V10.3H26V11.3H23.3V14.3H26V26H22V11.6Q16 9.4 10 11.6V26Z';
const RINGS = 'M4 8H8V9.6H4ZM4 12H8V13.6H4ZM24 8H28V9.6H24ZM24 12H28V13.6H24Z';

export const markDrawing = [
  `<path fill="currentColor" d="${PISTON}${RINGS}"/>`,
  '<g fill="none" stroke="currentColor">',
  '<circle cx="16" cy="18" r="4" stroke-width="2"/>',
  '<path stroke-width="2" d="M13 22V31M19 22V31"/>',
  '<path stroke-width="1" stroke-dasharray="4 1.2 1 1.2" d="M16 11.3V32M.6 18H11M21 18H31.4"/>',
  '</g>',
].join('');

/** The mark on its ground, as a file of its own. */
export const markFile = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${MARK_SIZE} ${MARK_SIZE}" color="#fff"><rect width="${MARK_SIZE}" height="${MARK_SIZE}" fill="${MARK_GROUND}"/>${markDrawing}</svg>\n`;
