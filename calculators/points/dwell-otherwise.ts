const SHARE = /^(\d{1,2}(?:[.,]\d+)?)\s*%$/u;
const ANGLE = /^(\d{1,3}(?:[.,]\d+)?)\s*(?:°|deg|degrees?)$/iu;

const TURN = 360;

const short = (figure: number): string => String(Number(figure.toFixed(1)));
const numberOf = (digits: string): number => Number(digits.replace(',', '.'));

/** What is said of a dwell told as a part of the time in a box of degrees; nothing of any other text. */
export function dwellShare(typed: string): string | undefined {
  const text = typed.trim();
  const [, digits] = SHARE.exec(text) ?? [];
  if (digits === undefined) return undefined;
  const angle = (numberOf(digits) / 100) * TURN;
  return `“${text}” is a part of the time, and this box holds degrees of the cam for each lobe. On a cam of one lobe type “${short(angle)} deg”, of two type “${short(angle / 2)} deg”.`;
}

/** What is said of a dwell told in degrees in a box of per cent; nothing of any other text. */
export function dwellAngle(typed: string): string | undefined {
  const text = typed.trim();
  const [, digits] = ANGLE.exec(text) ?? [];
  const share = digits === undefined ? NaN : (numberOf(digits) / TURN) * 100;
  if (!(share > 0 && share < 100)) return undefined;
  const two = share < 50 ? `, of two type “${short(2 * share)}%”` : '';
  return `“${text}” is an angle of the cam, and this box holds the part of the time. On a cam of one lobe type “${short(share)}%”${two}.`;
}
