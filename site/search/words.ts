/** Words that say nothing of what is asked for. "On" and "no" do: "runs on two", "no spark". */
const LITTLE = new Set(
  `a about an and any are as at be been but by can could did do does for from get gets getting go goes going
   had has have how i if in into is it its just know many me mean means much must my need of or please really
   shall should so some still tell than that the their them then there these they this those to too up use
   used using very want was were what when where which who why will with would you your`
    .trim()
    .split(/\s+/),
);

/** A measured figure says nothing of what is asked about: "0.094 in before top". */
const MEASURED = /^\d*\.\d+$/;

/** Small letters without accents, each word apart from the next by one space. */
export const plain = (text: string): string =>
  text
    .normalize('NFKD')
    .replaceAll(/\p{M}/gu, '')
    .replaceAll(/['’](?=\p{L})/gu, '')
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}.]+/gu, ' ')
    .replaceAll(/\.(?!\d)/g, ' ')
    .replaceAll(/ +/g, ' ')
    .trim();

/** "Rods" finds "rod", "gauges" and "gauged" find "gauge", and "stopping" finds "stop". */
const stem = (word: string): string => {
  const one = /[^s]s$/.test(word) && word.length > 3 ? word.slice(0, -1) : word;
  const [, base] = /^(.{4,})(?:ing|ed)$/.exec(one) ?? [];
  if (base !== undefined && /[aeiouy]/.test(base)) return base.replace(/([^aeiouflsz])\1$/, '$1');
  return one.length > 4 ? one.replace(/e$/, '') : one;
};

/** The words of a text that tell one thing from another, as they are compared. */
export const tellingWords = (text: string): string[] =>
  plain(text)
    .split(' ')
    .filter((word) => word !== '' && !LITTLE.has(word) && !MEASURED.test(word))
    .map(stem);
