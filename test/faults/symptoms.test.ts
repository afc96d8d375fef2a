import { existsSync, globSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { figureKeys } from '../../calculators/sheet/figures.ts';
import { isStepId } from '../../calculators/sheet/steps.ts';
import { formerIds, symptoms } from '../../content/faults/symptoms.ts';
import { actionsOf, everyAnswer, isAction, type Answer } from '../../content/faults/types.ts';
import { signGroups } from '../../content/first-start/signs.ts';
import { guidesOf } from '../../site/faults/guides.ts';
import { linkTerms } from '../../site/faults/link-terms.ts';
import { glossary } from '../content/prose.ts';

const MOST_QUESTIONS = 6;

/** What the trade asks for by name, written by hand: a symptom that is lost is missed here. */
const asked = [
  'no-spark',
  'one-coil',
  'poor-spark',
  'magneto',
  'spark-no-start',
  'hot-start',
  'kicks-back',
  'will-not-idle',
  'one-dead',
  'uneven',
  'bogs',
  'four-strokes',
  'short-of-power',
  'plugs',
  'runs-away',
  'runs-on',
  'overheats',
  'knocks',
  'metal-noise',
  'floods',
  'leaks',
];

describe('the fault finder', () => {
  it('has every symptom once', () => {
    expect(
      symptoms.map(({ id }) => id),
      'a new symptom goes into `asked` of this file, in its place',
    ).toEqual(asked);
    expect(symptoms.map(({ first }) => isAction(first))).not.toContain(true);
  });

  it.each(symptoms.map((symptom) => [symptom.id, symptom] as const))(
    '%s ends every way in an action, in six questions at most',
    (_, symptom) => {
      for (const { answer, depth } of everyAnswer(symptom)) {
        if (isAction(answer)) {
          expect(depth, answer.id).toBeGreaterThan(0);
          expect(depth, answer.id).toBeLessThanOrEqual(MOST_QUESTIONS);
          expect(answer.act, answer.id).toMatch(/^[A-Z].{20,}\.$/);
          expect(answer.cause, answer.id).toMatch(/^[A-Z].*[^.]$/);
        } else {
          expect(answer.ask).toMatch(/^[A-Z].*\?$/);
          expect(answer.how).toMatch(/\.$/);
        }
      }
    },
  );

  it.each(symptoms.map((symptom) => [symptom.id, symptom] as const))(
    '%s has an address for every action, and each leads to what is there',
    (_, symptom) => {
      const actions = actionsOf(symptom);
      const ids = actions.map(({ id }) => id);
      expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
      for (const { id, step, calculator, article, figures = [] } of actions) {
        expect(step ?? calculator ?? article, id).toBeDefined();
        if (step !== undefined) expect(isStepId(step), id).toBe(true);
        if (calculator !== undefined) {
          expect(globSync(`calculators/*/${calculator}/calculator.tsx`), id).toHaveLength(1);
        }
        if (article !== undefined) {
          expect(existsSync(`content/articles/${article}.mdx`), id).toBe(true);
        }
        for (const key of figures) expect(figureKeys, id).toContain(key);
      }
    },
  );

  it('knows the causes that are most often overlooked', () => {
    const causes = symptoms.flatMap(actionsOf).map(({ cause }) => cause.toLowerCase());
    for (const word of [
      'condenser',
      'insulated side',
      'no feed',
      'bad earth',
      'leads swapped',
      'air leaks in',
      'blocked pilot',
    ]) {
      expect(
        causes.filter((cause) => cause.includes(word)),
        word,
      ).not.toEqual([]);
    }
  });

  it('calls four-stroking usual up to the opening that the first start page gives', () => {
    const sign = signGroups
      .flatMap(({ signs }) => signs)
      .find((each) => /four-strok/.test(each.sign))!;
    expect(sign.first).toContain('a quarter open');
    const ask = symptoms
      .flatMap(everyAnswer)
      .flatMap(({ answer }) => (isAction(answer) ? [] : [answer]))
      .find(({ yes }) => isAction(yes) && yes.id === 'usual')!;
    expect(ask.ask).toContain('by a quarter of the opening');
  });

  it('says of the switch what its question found', () => {
    const asked = symptoms
      .flatMap(everyAnswer)
      .flatMap(({ answer }) => (isAction(answer) ? [] : [answer]))
      .filter(({ ask }) => /switch stop/.test(ask));
    expect(asked.length).toBeGreaterThan(1);
    for (const { no } of asked) {
      expect(isAction(no) && no.cause).toBe('The switch does not stop every coil');
    }
  });

  it('names the figure of each range that it gives, and sends nobody to a caution that is not there', () => {
    const guides = symptoms.flatMap(actionsOf).flatMap(guidesOf);
    expect(guides).toContainEqual(expect.stringMatching(/^Side play at the big end\. No manual: /));
    for (const guide of guides) expect(guide).toMatch(/^[A-Z][^.]*\. No manual: .*\d|^Pilot jet/);
    for (const { atOnce, ...symptom } of symptoms) {
      if (atOnce === undefined) expect(JSON.stringify(symptom)).not.toMatch(/caution at the head/);
    }
  });

  it('looks for spark and moment where an engine does not fire on fuel put into its cylinder', () => {
    const start = symptoms.find(({ id }) => id === 'spark-no-start')!;
    const primed = everyAnswer(start)
      .map(({ answer }) => answer)
      .find(
        (answer) => !isAction(answer) && answer.ask.includes('fuel mixture down the plug hole'),
      );
    if (!primed || isAction(primed)) throw new Error('the question is not there');
    const ends = (answer: Answer): string[] =>
      isAction(answer) ? [answer.id] : [...ends(answer.yes), ...ends(answer.no)];
    expect(ends(primed.no)).toEqual(expect.arrayContaining(['poor-dry', 'moment', 'compression']));
    expect(ends(primed.yes).sort()).toEqual(['air-leak', 'pilot', 'reed']);
  });

  it('tries a magneto with no fuel vapour at an open hole, and measures with what is apart', () => {
    const magneto = symptoms.find(({ id }) => id === 'magneto')!;
    const acts = new Map(
      everyAnswer(magneto).flatMap(({ answer }) =>
        isAction(answer) ? [] : [[answer.ask, answer.how] as const],
      ),
    );
    const howOf = (ask: RegExp): string => [...acts].find(([asked]) => ask.test(asked))![1];
    expect(howOf(/lead spark by itself/)).toMatch(/^Fuel shut, plugs in their holes\./);
    expect(howOf(/lead spark by itself/)).toMatch(/take the hands off/);
    // A coil that is left on is itself a way to earth, of a few ohms.
    expect([...acts.keys()]).toContainEqual(
      expect.stringMatching(/card between the contacts and the coil’s wire off/),
    );
    expect(howOf(/both its windings/)).toMatch(/^Points’ wire off\./);
    expect(howOf(/stop wire off the points/)).toMatch(/goes back before the engine can start/);
  });

  it('tells of each cause what mends it, and not the other way round', () => {
    const acts = new Map(symptoms.flatMap(actionsOf).map(({ id, act }) => [id, act]));
    for (const [id, words] of [
      [
        'polarity',
        /terminal of the same sign as the earthed pole of the battery goes to the points/,
      ],
      ['polarity', /centre of the plug should be negative/],
      ['magnet', /points open where the magnet has just left the coil’s core/],
      ['rotor-key', /clean both tapers dry of oil.* set the timing anew/],
      ['condenser', /for 1000 V DC or more.* touch its wire to its case before you hold it/],
    ] as const) {
      expect(acts.get(id), id).toMatch(words);
    }
  });

  it('says what to do first where it can hurt before anything is looked at', () => {
    const first = new Map(symptoms.map(({ id, atOnce }) => [id, atOnce]));
    for (const id of ['runs-away', 'runs-on', 'kicks-back', 'knocks', 'metal-noise', 'floods']) {
      expect(first.get(id), id).toBeDefined();
    }
    const before = [
      ['floods', /^Tap shut, ignition off.* Never kick an engine that is full/],
      ['kicks-back', /^Switch off\. Do not kick again/],
      ['knocks', /^Shut off/],
      ['leaks', /^Petrol: tap shut, no switch, flame/],
      ['metal-noise', /^Stop it, and do not start it again/],
      ['overheats', /^Stop before it seizes/],
      ['runs-away', /^Switch off and shut the twistgrip.* board over every inlet/],
      ['runs-on', /^Shut the twistgrip.* board over every inlet/],
    ] as const;
    for (const [id, words] of before) expect(first.get(id)).toMatch(words);
  });

  it('goes on answering to the ids that the first start page had', () => {
    const ids = symptoms.map(({ id }) => id);
    expect(Object.keys(formerIds)).toEqual([
      'runs-away',
      'kicks-back',
      'knocks',
      'metal-noise',
      'no-spark',
      'spark-no-start',
      'one-dead',
      'floods',
      'hot-one',
      'weak-all',
      'uneven',
    ]);
    for (const id of Object.values(formerIds)) expect(ids).toContain(id);
  });
});

describe('the terms of the fault finder', () => {
  it.each(symptoms.map((symptom) => [symptom.id, symptom] as const))(
    '%s links each where it is first met on a way',
    (_, { first }) => {
      const walk = (answer: Answer, met: readonly string[]): void => {
        const seen = new Set(met);
        const text = isAction(answer)
          ? `${answer.cause} ${answer.act}`
          : `${answer.ask} ${answer.how}`;
        const parts = linkTerms(text, glossary, seen);
        expect(parts.map((part) => (typeof part === 'string' ? part : part.words)).join('')).toBe(
          text,
        );
        const linked = parts.flatMap((part) => (typeof part === 'string' ? [] : [part.id]));
        expect(linked.filter((id) => met.includes(id))).toEqual([]);
        for (const { id, names } of glossary) {
          const stands = names.some(
            (name) => name.includes(' ') && new RegExp(`\\b${name}s?\\b`, 'i').test(text),
          );
          if (stands) expect(seen, `${id} in: ${text}`).toContain(id);
        }
        if (isAction(answer)) return;
        walk(answer.yes, [...seen]);
        walk(answer.no, [...seen]);
      };
      walk(first, []);
    },
  );

  it('are linked once, by their longest name', () => {
    const seen = new Set<string>();
    const parts = linkTerms('The float valve, and float valves; the condenser.', glossary, seen);
    expect(parts).toEqual([
      'The ',
      { id: 'float-valve', words: 'float valve' },
      ', and float valves; the ',
      { id: 'condenser', words: 'condenser' },
      '.',
    ]);
  });
});
