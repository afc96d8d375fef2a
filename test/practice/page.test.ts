import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { evaluate, knownKeys } from '../../calculators/frame/evaluate.ts';
import { setUp } from '../../calculators/practice/bench.ts';
import { inventEngine, LAST_ENGINE } from '../../calculators/practice/engine.ts';
import { inventFloat } from '../../calculators/practice/float.ts';
import { inventSlides } from '../../calculators/practice/slides.ts';
import { crankTasks, isCrankTask, taskNames, tasks } from '../../calculators/practice/tasks.ts';
import { readAddress, writeAddress } from '../../site/practice/address.ts';
import { crankQueries, floatQueries, slidesQueries } from '../../site/practice/queries.ts';
import { Player } from './player.ts';
import { inOrder } from './solver.ts';

const article = (slug: string): string =>
  readFileSync(new URL(`../../content/articles/${slug}.mdx`, import.meta.url), 'utf8');

/** The headings of an article as the site names them in addresses. */
const anchors = (text: string): string[] =>
  [...text.matchAll(/^#{2,3} (.+)$/gm)].map(([, words]) =>
    words!
      .toLowerCase()
      .replaceAll(/[^\p{L}\p{N} -]/gu, '')
      .replaceAll(' ', '-'),
  );

describe('what a task sends the reader to', () => {
  it.each(taskNames)('%s: places in articles that are there', (name) => {
    for (const { article: slug, heading } of tasks[name].read) {
      const text = article(slug);
      if (heading !== undefined) expect(anchors(text)).toContain(heading);
    }
  });

  it('every article that opens the bench names a task', () => {
    const opened = [
      'finding-top-dead-centre',
      'gap-dwell-and-timing',
      'setting-several-cylinders',
    ].flatMap((slug) => [...article(slug).matchAll(/\/practice\/\?task=([a-z]+)/g)]);
    expect(opened.length).toBeGreaterThan(3);
    for (const [, name] of opened) expect(taskNames).toContain(name);
  });
});

describe('the address', () => {
  it('comes back as it was written', () => {
    for (const task of taskNames) {
      for (const engine of [0, 1, 4711, LAST_ENGINE]) {
        expect(readAddress(writeAddress({ engine, task }))).toEqual({ engine, task, problem: '' });
      }
    }
  });

  it.each(['?engine=-1', '?engine=1.5', '?engine=1000000', '?engine=', '?engine=1e3', '?engine= 1'])(
    'says so where the engine is no engine: %s',
    (search) => {
      expect(readAddress(search)).toMatchObject({ engine: 1, task: 'stop' });
      expect(readAddress(search).problem).toContain('whole number');
    },
  );

  it('says so where the task is none', () => {
    for (const name of ['', 'Stop', 'constructor', '<b>']) {
      expect(readAddress(`?engine=7&task=${encodeURIComponent(name)}`)).toMatchObject({
        engine: 7,
        task: 'stop',
      });
      expect(readAddress(`?task=${encodeURIComponent(name)}`).problem).toContain('no task');
    }
  });
});
