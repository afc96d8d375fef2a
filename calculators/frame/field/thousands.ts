/** A figure whose marks may part thousands: 1,000 and 12.500, 1,234.5 and 1.234,5, 12 500. */
const GROUPED =
  /(?<![\d.,])([1-9]\d{0,2})((?:,\d{3})+(?:\.\d+)?|(?:\.\d{3})+(?:,\d+)?|(?:[ \u00A0\u202F'’]\d{3})+(?:[.,]\d+)?)(?![\d.,])/gu;
/** One mark and three digits behind it. */
const ONE_MARK = /(?<![\d.,])([1-9]\d{0,2})[.,](\d{3})(?![\d.,])/gu;

/** A text with no mark between thousands, 1000 for 1,000; nothing where no mark may be one. */
export function asThousands(text: string): string | undefined {
  const plain = text.replaceAll(GROUPED, (_, first: string, rest: string) => {
    const mark = rest[0]!;
    return `${first}${rest.replaceAll(mark, '').replace(',', '.')}`;
  });
  return plain === text ? undefined : plain;
}

/** Whether a mark of the text may part thousands or decimals: three digits stand behind it. */
export const mayBeThousands = (text: string): boolean => text.search(ONE_MARK) >= 0;

/** A text whose marks before three digits can be decimal ones only: 1.0 for 1,000 and 1.2340 for 1.234. */
export const asDecimals = (text: string): string =>
  text.replaceAll(ONE_MARK, (_, first: string, digits: string) => {
    const short = digits.replace(/0+$/u, '');
    return `${first}.${short === '' ? '0' : short.length === digits.length ? `${digits}0` : short}`;
  });
