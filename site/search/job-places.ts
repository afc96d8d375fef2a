import { stepNames } from '../../calculators/sheet/step-names.ts';
import { order, steps } from '../../calculators/sheet/steps.ts';
import { actionsOf, everyAnswer, isAction } from '../../content/faults/types.ts';
import { signGroups } from '../../content/first-start/signs.ts';
import { symptoms } from '../../content/faults/symptoms.ts';
import type { Found } from './found.ts';
import { wordsIn } from './words-in.ts';

const pages: readonly Found[] = [
  {
    url: 'first-start/',
    kind: 'page',
    title: 'First start',
    purpose:
      'The list to tick before the first kick, what the engine says, and two ways to stop it.',
    also: 'first start, starting up, start up, start it tonight, first kick, checklist',
  },
  {
    url: 'first-start/#signs',
    kind: 'page',
    title: 'What the engine says',
    purpose:
      'Sound, spark, smoke, plugs and temperature: what each means, and what to check first.',
    also: 'symptoms, signs, exhaust smokes, blue smoke, white smoke, black smoke, noises, plug colours, backfires, pops back, spits back, bangs',
    words: wordsIn(
      signGroups
        .flatMap(({ title, signs }) => [
          title,
          ...signs.flatMap(({ sign, means }) => [sign, means]),
        ])
        .join(' '),
    ),
  },
  {
    url: 'first-start/#runaway',
    kind: 'page',
    title: 'If it runs away',
    purpose: 'What to do when it revs by itself, in order.',
    also: 'runaway, runs away, screams, revs up by itself, will not stop, engine will not stop, how to stop it',
  },
  {
    url: 'faults/',
    kind: 'page',
    title: 'Fault finder',
    purpose: 'From what you notice to the figure to measure, by yes or no.',
    also: 'troubleshooting, fault finding, diagnosis, what is wrong',
  },
  {
    url: 'sheet/',
    kind: 'page',
    title: 'Engine sheet',
    purpose:
      'Your engine’s figures, the order of work, readings as found and as left, one sheet to print.',
    also: 'log, readings, job sheet, firing order, leads',
  },
  {
    url: 'search/?q=15+thou',
    kind: 'page',
    title: 'A figure in another unit',
    purpose:
      'Search for a figure with its unit, such as 0.015 in or 15 thou, and it is told in the others. Every box of a calculator takes them too.',
    also: 'in mm, convert inches, inches to mm, mm to inches, thou to mm, mm to thou, unit converter, conversion, convert units, psi to bar',
  },
  {
    url: 'theory/',
    kind: 'page',
    title: 'The theory in an evening',
    purpose: 'Seven articles in order, what to take from each, and three questions on each.',
    also: 'theory, where to begin, beginner, course, questions, exercises, quiz, test yourself',
  },
  {
    url: 'bench/',
    kind: 'page',
    title: 'At the bench',
    purpose: 'The checks of all articles, on one sheet to print for each stage of the job.',
    also: 'bench checks, workshop sheets, print the checks',
  },
];

/** What can be found beside calculators, articles and terms: symptoms, steps of the job, and pages. */
export function jobPlaces(): Found[] {
  return [
    ...pages,
    ...symptoms.map((symptom) => ({
      url: `faults/#${symptom.id}`,
      kind: 'fault' as const,
      title: symptom.title,
      purpose: symptom.first.ask,
      also: symptom.also.join(', '),
      words: wordsIn(
        [
          ...everyAnswer(symptom).flatMap(({ answer }) => (isAction(answer) ? [] : [answer.ask])),
          ...actionsOf(symptom).map(({ cause }) => cause),
        ].join(' '),
      ),
    })),
    ...order.map((id) => ({
      url: `sheet/#step-${id}`,
      kind: 'step' as const,
      title: steps[id].title,
      purpose: steps[id].why,
      also: [...(steps[id].reading ? [steps[id].reading.label] : []), ...stepNames[id]].join(', '),
      words: wordsIn([...steps[id].how, steps[id].tool].join(' ')),
    })),
  ];
}
