import { describe, expect, it } from 'vitest';
import { order, steps, stepsOf } from '../../calculators/sheet/steps.ts';
import { stages, type Stage } from '../../calculators/frame/stages.ts';
import { documentOf, pageFiles } from './support/built.ts';

/** The steps that links lead to, in the order in which they stand. */
const stepsIn = (links: Iterable<Element>): string[] =>
  [...links].map((link) => link.getAttribute('href')!.replace(/^.*#step-/, ''));

const linked = (part: ParentNode): string[] => stepsIn(part.querySelectorAll('.job-steps a'));

describe('the order of the job is one, wherever it is told', () => {
  it('in the sheet, before it holds an engine', () => {
    const cards = documentOf('sheet/index.html').querySelectorAll('.tasks details[id^="step-"]');
    expect([...cards].map((card) => card.id)).toEqual(order.map((id) => `step-${id}`));
  });

  it('on the home page, stage by stage', () => {
    const parts = [...documentOf('index.html').querySelectorAll('.job > li')];
    expect(parts.map(linked)).toEqual(
      (Object.keys(stages) as Stage[]).map((stage) => stepsOf(stage)),
    );
    expect(parts.flatMap(linked)).toEqual([...order]);
  });

  it('in every article, where it names steps', () => {
    const articles = pageFiles.filter((file) => /^articles\/.+\/index\.html$/.test(file));
    const told = articles.map((file) => {
      const lists = [...documentOf(file).querySelectorAll('.job-steps')];
      for (const list of lists) {
        const named = stepsIn(list.querySelectorAll('a'));
        expect(named, file).toEqual(order.filter((id) => named.includes(id)));
      }
      return lists.length;
    });
    expect(told.filter((count) => count > 0).length).toBeGreaterThan(15);
    const [whole] = documentOf('articles/proving-a-mixed-engine/index.html').querySelectorAll(
      '.job-steps',
    );
    expect([...whole!.querySelectorAll('a')].map(({ textContent }) => textContent)).toEqual(
      stepsOf('geometry').map((id) => steps[id].title),
    );
  });

  it('and each step names an article that leads back to it', () => {
    for (const id of order) {
      expect(steps[id].articles.length, id).toBeGreaterThan(0);
      for (const slug of steps[id].articles) {
        expect(linked(documentOf(`articles/${slug}/index.html`)), `${id}, ${slug}`).toContain(id);
      }
    }
  });
});
