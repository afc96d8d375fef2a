import { order, steps } from '../../calculators/sheet/steps.ts';
import { actionsOf } from '../../content/faults/types.ts';
import { signGroups } from '../../content/first-start/signs.ts';
import { symptoms } from '../../content/faults/symptoms.ts';
import type { Found } from './finder.ts';

type Place = Omit<Found, 'id'>;

const pages: readonly Place[] = [
  {
    url: 'first-start/',
    kind: 'page',
    title: 'First start',
    purpose:
      'The list to tick before the first kick, what the engine says, and two ways to stop it.',
    also: 'first start, starting up, start up, first kick, checklist',
    text: '',
  },
  {
    url: 'first-start/#signs',
    kind: 'page',
    title: 'What the engine says',
    purpose:
      'Sound, spark, smoke, plugs and temperature: what each means, and what to check first.',
    also: 'symptoms, signs, smoke, noises, plug colours, backfires, pops back, spits back, bangs',
    text: signGroups.flatMap(({ signs }) => signs.map(({ sign }) => sign)).join(', '),
  },
  {
    url: 'first-start/#runaway',
    kind: 'page',
    title: 'If it runs away',
    purpose: 'What to do when it revs by itself, in order.',
    also: 'runaway, screams, how to stop it',
    text: '',
  },
  {
    url: 'faults/',
    kind: 'page',
    title: 'Fault finder',
    purpose: 'From what you notice to the figure to measure, by yes or no.',
    also: 'troubleshooting, fault finding, diagnosis, what is wrong',
    text: '',
  },
  {
    url: 'sheet/',
    kind: 'page',
    title: 'Engine sheet',
    purpose:
      'Your engine’s figures, the order of work, readings as found and as left, one sheet to print.',
    also: 'log, readings, job sheet, firing order, leads',
    text: '',
  },
  {
    url: 'search/?q=15+thou',
    kind: 'page',
    title: 'A figure in another unit',
    purpose:
      'Search for a figure with its unit, such as 0.015 in or 15 thou, and it is told in the others. Every box of a calculator takes them too.',
    also: 'convert inches, inches to mm, mm to inches, thou to mm, mm to thou, unit converter, conversion, convert units, psi to bar',
    text: '',
  },
  {
    url: 'theory/',
    kind: 'page',
    title: 'The theory in an evening',
    purpose: 'Seven articles in order, what to take from each, and three questions on each.',
    also: 'theory, where to begin, beginner, course, questions, exercises, quiz, test yourself',
    text: '',
  },
  {
    url: 'bench/',
    kind: 'page',
    title: 'At the bench',
    purpose: 'The checks of all articles, on one sheet to print for each stage of the job.',
    also: 'bench checks, workshop sheets, print the checks',
    text: '',
  },
];

/** What can be found beside calculators, articles and terms: symptoms, steps of the job, and pages. */
export function jobPlaces(): Place[] {
  return [
    ...pages,
    ...symptoms.map((symptom) => ({
      url: `faults/#${symptom.id}`,
      kind: 'fault' as const,
      title: symptom.title,
      purpose: symptom.first.ask,
      also: symptom.also.join(', '),
      text: actionsOf(symptom)
        .map(({ cause }) => cause)
        .join(', '),
    })),
    ...order.map((id) => ({
      url: `sheet/#step-${id}`,
      kind: 'step' as const,
      title: steps[id].title,
      purpose: steps[id].why,
      also: steps[id].reading?.label ?? '',
      text: steps[id].tool,
    })),
  ];
}
