/**
 * A number as it is put into a sentence: at most `digits` decimals, no trailing noughts, a true
 * minus sign.
 */
export function plain(value: number, digits = 2): string {
  const text = String(Number(value.toFixed(digits)));
  return text.replace('-', '−');
}
