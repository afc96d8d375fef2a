import { describe, expect, it } from 'vitest';
import { documentOf, pageFiles } from './support/built.ts';

/** A number as it is printed, with its unit where there is one. */
const NUMBER = String.raw`−?\d+(?:\.\d+)?`;
const UNIT = String.raw`(?:°|\s(?:mm|ms|V|A|cc|ml))?`;
/** Such as `104 + 25.5 − 2.2 = 127.3` or `(39.5 − 43.5) / 2 is −2.0`. */
const SUM = new RegExp(
  String.raw`(\()?(${NUMBER})${UNIT}((?: [+−] \d+(?:\.\d+)?${UNIT})+)(\) / 2)? (?:=|is|makes) (${NUMBER})`,
  'g',
);
/** Such as `from 80.15° to 83.41° …, which advances the timing by 3.26°`. */
const STEP = new RegExp(
  String.raw`from (${NUMBER})(?:°|\smm) to (${NUMBER})(°|\smm)[^.]*?(?:a band of|by) (${NUMBER})\3`,
  'g',
);

const value = (printed: string): number => Number(printed.replace('−', '-'));
const digits = (printed: string): number => printed.split('.')[1]?.length ?? 0;

/** The sums of a text whose printed terms do not make the printed result. */
function wrongSums(text: string): string[] {
  const sums = [...text.matchAll(SUM)].map(([words, , first, rest, halved, result]) => {
    const terms = [...rest!.matchAll(/([+−]) (\d+(?:\.\d+)?)/g)];
    const total = terms.reduce(
      (sum, [, sign, term]) => sum + (sign === '+' ? 1 : -1) * Number(term),
      value(first!),
    );
    return { words, made: halved ? total / 2 : total, result: result! };
  });
  const steps = [...text.matchAll(STEP)].map(([words, from, to, , result]) => ({
    words,
    made: Math.abs(value(to!) - value(from!)),
    result: result!,
  }));
  return [...sums, ...steps]
    .filter(({ made, result }) => Math.abs(made - value(result)) > 0.501 * 10 ** -digits(result))
    .map(({ words }) => words);
}

/** What an article says in its own words, without its figures. */
function words(file: string): string {
  const article = documentOf(file).querySelector('article')!.cloneNode(true) as Element;
  for (const other of article.querySelectorAll('.calc-figure, math, svg, script')) other.remove();
  return article.textContent.replaceAll('\u00a0', ' ').replace(/\s+/g, ' ');
}

const articles = pageFiles.filter((file) => /^articles\/[^/]+\/index\.html$/.test(file));

describe.each(articles)('%s', (file) => {
  it('prints terms that make the result printed beside them', () => {
    expect(wrongSums(words(file))).toEqual([]);
  });
});

it('sees a sum that does not add up', () => {
  expect(articles.length).toBeGreaterThan(15);
  expect(wrongSums('83.4° − 80.2° = 3.3°')).toHaveLength(1);
  expect(wrongSums('104 + 25.5 − 2.2 = 127.3 mm')).toEqual([]);
  expect(wrongSums('(39.5 − 43.5) / 2 is −2.0°')).toEqual([]);
  expect(wrongSums('(39.5 − 43.5) / 2 is −4.0°')).toHaveLength(1);
  expect(wrongSums('from 80.2° to 83.4° before it, which moves the timing by 3.3°')).toHaveLength(
    1,
  );
  expect(wrongSums('from 21.0° to 22.0°, a band of 1.0°')).toEqual([]);
});
