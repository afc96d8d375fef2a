import type { Calculator, Input, ResultSpec } from '../../calculators/frame/types.ts';
import { taskNames, tasks } from '../../calculators/practice/tasks.ts';
import { calculators } from '../all-calculators.ts';
import type { Found, SearchIndex } from './found.ts';
import { jobPlaces } from './job-places.ts';
import { sectionsOf } from './sections.ts';
import { tradeWords } from './trade-words.ts';
import { wordsIn } from './words-in.ts';

/** What is searched of an article. */
export interface ArticleText {
  readonly id: string;
  readonly title: string;
  readonly purpose: string;
  readonly body: string;
}

/** What is searched of an entry of the glossary. */
export interface TermText {
  readonly id: string;
  readonly term: string;
  readonly also: readonly string[];
  readonly meaning: string;
}

const ofCalculator = ({
  slug,
  title,
  purpose,
  alsoCalled,
  inputs,
  results,
}: Calculator): Found => ({
  url: `calculators/${slug}/`,
  kind: 'calculator',
  title,
  purpose,
  also: alsoCalled.join(', '),
  words: wordsIn(
    [
      ...Object.values<Input>(inputs).map(({ label }) => label),
      ...Object.values<ResultSpec>(results).map(({ label }) => label),
    ].join(', '),
  ),
});

function ofArticle({ id, title, purpose, body }: ArticleText): Found {
  const { opening, sections } = sectionsOf(body);
  return {
    url: `articles/${id}/`,
    kind: 'article',
    title,
    purpose,
    words: wordsIn(opening, `${title} ${purpose}`),
    parts: sections.map(({ heading, id: at, text }) => ({
      heading,
      id: at,
      words: wordsIn(text, heading),
    })),
  };
}

const ofTerm = ({ id, term, also, meaning }: TermText): Found => ({
  url: `glossary/#${id}`,
  kind: 'term',
  title: term,
  purpose: meaning,
  ...(also.length > 0 && { also: also.join(', ') }),
});

const practice: readonly Found[] = [
  {
    url: 'practice/',
    kind: 'practice',
    title: 'Practice bench',
    purpose:
      'An invented engine to find the top of, to gap and to time, which shows how far off you were.',
    also: 'practice, practise, learn timing, exercise, training, try it',
  },
  ...taskNames.map((name): Found => ({
    url: `practice/?task=${name}`,
    kind: 'practice',
    title: tasks[name].title,
    purpose: tasks[name].aim,
    also: 'practice',
  })),
];

const byId = (a: { id: string }, b: { id: string }): number => a.id.localeCompare(b.id, 'en');

/** Everything that can be found, in a fixed order. */
export const searchIndex = (
  articles: readonly ArticleText[],
  terms: readonly TermText[],
): SearchIndex => ({
  documents: [
    ...jobPlaces(),
    ...calculators.map(ofCalculator),
    ...articles.toSorted(byId).map(ofArticle),
    ...terms.toSorted(byId).map(ofTerm),
    ...practice,
  ],
  alike: [
    ...tradeWords,
    ...terms.filter(({ also }) => also.length > 0).map(({ term, also }) => [term, ...also]),
  ],
});
