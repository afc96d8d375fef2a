import { describe, expect, it } from 'vitest';
import { makeFinder } from '../../site/search/finder.ts';
import { jobPlaces } from '../../site/search/job-places.ts';
import { tradeWords } from '../../site/search/trade-words.ts';
import { order } from '../../calculators/sheet/steps.ts';
import { symptoms } from '../../content/faults/symptoms.ts';

const places = jobPlaces();
const find = makeFinder({ documents: places, alike: tradeWords });
const urls = (question: string): string[] => find(question).map(({ url }) => url);

describe('what is typed beside an engine that does not run', () => {
  it.each([
    ['no spark', 'faults/#no-spark'],
    ['kicks back', 'faults/#kicks-back'],
    ['kickback', 'faults/#kicks-back'],
    ['magneto no spark', 'faults/#magneto'],
    ['will not idle', 'faults/#will-not-idle'],
    ['wont idle', 'faults/#will-not-idle'],
    ['first start', 'first-start/'],
    ['ignition too early', 'faults/#kicks-back'],
    ['timing too early', 'faults/#kicks-back'],
    ['runs on two', 'faults/#one-dead'],
    ['floods', 'faults/#floods'],
    ['plug black', 'faults/#plugs'],
    ['black plug', 'faults/#plugs'],
    ['weak spark', 'faults/#poor-spark'],
    ['spark at one coil', 'faults/#one-coil'],
    ['four stroking', 'faults/#four-strokes'],
    ['bogs', 'faults/#bogs'],
    ['screams', 'faults/#runs-away'],
    ['runs on', 'faults/#runs-on'],
    ['overheats', 'faults/#overheats'],
    ['leaks', 'faults/#leaks'],
    ['carb leaks petrol', 'faults/#leaks'],
    ['carb floods', 'faults/#floods'],
    ['my engine runs too hot', 'faults/#overheats'],
    ['engine too hot', 'faults/#overheats'],
    ['points burn', 'faults/#poor-spark'],
    ['will not start hot', 'faults/#hot-start'],
    ['will not start', 'faults/#spark-no-start'],
    ['points gap', 'sheet/#step-gap'],
    ['plug gap', 'sheet/#step-plug'],
    ['squish', 'sheet/#step-squish'],
    ['float height', 'sheet/#step-float'],
    ['fault finder', 'faults/'],
    ['theory', 'theory/'],
    ['questions', 'theory/'],
    ['where to begin', 'theory/'],
    ['convert inches', 'search/?q=15+thou'],
    ['bench checks', 'bench/'],
    ['backfire', 'first-start/#signs'],
    ['bangs in the exhaust', 'first-start/#signs'],
    ['spits back', 'first-start/#signs'],
    ['bent crank', 'sheet/#step-run-out'],
    ['crank runout', 'sheet/#step-run-out'],
    ['decoke', 'faults/#short-of-power'],
    ['octane', 'faults/#knocks'],
  ])('“%s” finds %s among the first two', (question, url) => {
    expect(urls(question).slice(0, 2)).toContain(url);
  });

  it('finds every symptom and step by its own title', () => {
    for (const { title, url } of places) expect(urls(title).slice(0, 2), title).toContain(url);
    expect(places).toHaveLength(symptoms.length + order.length + 8);
  });

  it('says each thing once', () => {
    expect(new Set(places.map(({ url }) => url)).size).toBe(places.length);
  });
});
