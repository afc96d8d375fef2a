/**
 * Widths in hundredths of the type size, in the widest of the faces that the site asks for
 * (DejaVu Sans, measured in a browser); what is laid out by it has room enough in any of the others.
 */
const WIDTHS: readonly (readonly [width: number, characters: string])[] = [
  [29, `'ijlIJ`],
  [36, ' ,.’/:;\\|f-'],
  [41, '()[]tr!²³'],
  [51, '"*_`°–'],
  [55, 'sz?cL'],
  [60, 'FkvxyPTYao'],
  [64, 'eESbdghnpqu0123456789${}'],
  [70, 'KAVBRXZC'],
  [79, 'UHNDG▲&OQ'],
  [116, '‰'],
  [84, 'w#+<=>^~−±×'],
];
const WIDEST = 100;
/** Bold type, against the same in plain. */
const BOLD = 1.13;

const widthOf = new Map(
  WIDTHS.flatMap(([width, characters]) => [...characters].map((each) => [each, width] as const)),
);

/** At most how wide a line of type is, in user units. */
export function textWidth(text: string, { size = 13, bold = false } = {}): number {
  const hundredths = [...text].reduce((sum, each) => sum + (widthOf.get(each) ?? WIDEST), 0);
  return (hundredths * size * (bold ? BOLD : 1)) / 100;
}
