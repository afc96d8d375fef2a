import { getCollection } from 'astro:content';
import type { Input, ResultSpec } from '../../calculators/frame/types.ts';
import { calculators } from '../all-calculators.ts';
import type { Found, SearchIndex } from './finder.ts';
import { taskNames, tasks } from '../../calculators/practice/tasks.ts';
import { jobPlaces } from './job-places.ts';
import { tradeWords } from './trade-words.ts';
import { wordsOf } from './words-of.ts';

/** Everything that can be found, in a fixed order. */
export async function searchIndex(): Promise<SearchIndex> {
  const articles = (await getCollection('articles')).sort((a, b) => a.id.localeCompare(b.id, 'en'));
  const terms = (await getCollection('glossary')).sort((a, b) => a.id.localeCompare(b.id, 'en'));
  const list: Omit<Found, 'id'>[] = [
    ...jobPlaces(),
    ...calculators.map((calculator) => ({
      url: `calculators/${calculator.slug}/`,
      kind: 'calculator' as const,
      title: calculator.title,
      purpose: calculator.purpose,
      also: calculator.alsoCalled.join(', '),
      text: [
        ...Object.values<Input>(calculator.inputs).map(({ label }) => label),
        ...Object.values<ResultSpec>(calculator.results).map(({ label }) => label),
      ].join(', '),
    })),
    ...articles.map(({ id, data, body }) => ({
      url: `articles/${id}/`,
      kind: 'article' as const,
      title: data.title,
      purpose: data.purpose,
      also: [...(body ?? '').matchAll(/^#+ (.*)$/gm)].map((match) => match[1]).join(', '),
      text: wordsOf(body ?? ''),
    })),
    ...terms.map(({ id, data }) => ({
      url: `glossary/#${id}`,
      kind: 'term' as const,
      title: data.term,
      purpose: data.meaning,
      also: data.also.join(', '),
      text: '',
    })),
    {
      url: 'practice/',
      kind: 'practice' as const,
      title: 'Practice bench',
      purpose:
        'An invented engine to find the top of, to gap and to time, which shows how far off you were.',
      also: 'practice, practise, learn timing, exercise, training, try it',
      text: '',
    },
    ...taskNames.map((name) => ({
      url: `practice/?task=${name}`,
      kind: 'practice' as const,
      title: tasks[name].title,
      purpose: tasks[name].aim,
      also: 'practice',
      text: '',
    })),
  ];
  return {
    documents: list.map((found, id) => ({ id, ...found })),
    alike: [
      ...tradeWords,
      ...terms
        .filter(({ data }) => data.also.length > 0)
        .map(({ data }) => [data.term, ...data.also]),
    ],
  };
}
