import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { fromQuery } from '../../calculators/frame/address.ts';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import { crankWords, readActs } from '../../calculators/practice/acts.ts';
import { setUp, type Act, type Note } from '../../calculators/practice/bench.ts';
import { inventEngine, LAST_ENGINE } from '../../calculators/practice/engine.ts';
import { inventFloat } from '../../calculators/practice/float.ts';
import {
  inventSlides,
  setUpSlides,
  workSlides,
  type SlidesAct,
} from '../../calculators/practice/slides.ts';
import { isCrankTask, taskNames, tasks, type TaskName } from '../../calculators/practice/tasks.ts';
import { calculatorBySlug } from '../../site/all-calculators.ts';
import { readAddress, writeAddress } from '../../site/practice/address.ts';
import { crankQueries, floatQueries, slidesQueries } from '../../site/practice/queries.ts';
import { work } from '../../calculators/practice/work.ts';
import { byHeights, byStop, inOrder } from './solver.ts';

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
    ].flatMap((slug) => [
      ...article(slug).matchAll(/\/practice\/\?(?:engine=\d+&)?task=([a-z]+)(?:&done=([^)]*))?/g),
    ]);
    expect(opened.length).toBeGreaterThan(3);
    for (const [, name, done = ''] of opened) {
      expect(taskNames).toContain(name);
      expect(readActs(crankWords, done)).toBeDefined();
    }
    expect(opened.some(([, , done]) => done !== undefined)).toBe(true);
  });
});

describe('what an article has done on the bench beforehand', () => {
  it('leaves the piston on the stop before the top, with its reading on the pad', () => {
    const engine = inventEngine(1, 'stop');
    const acts = readActs<Act>(crankWords, 'put:stop,turn:150,note')!;
    const bench = acts.reduce((before, act) => work(engine, before, act), setUp(engine));
    expect(bench.inHole).toBe('stop');
    expect(bench.crank).toBeLessThan(0);
    expect(bench.notes).toHaveLength(1);
    expect(bench.notes[0]!.disc).toBeLessThan(0);
  });
});

describe('the address', () => {
  it('comes back as it was written', () => {
    for (const task of taskNames) {
      for (const engine of [0, 1, 4711, LAST_ENGINE]) {
        expect(readAddress(writeAddress({ engine, task }))).toEqual({
          engine,
          task,
          done: '',
          problem: '',
        });
      }
    }
  });

  it.each([
    '?engine=-1',
    '?engine=1.5',
    '?engine=1000000',
    '?engine=',
    '?engine=1e3',
    '?engine= 1',
  ])('says so where the engine is no engine: %s', (search) => {
    expect(readAddress(search)).toMatchObject({ engine: 1, task: 'stop' });
    expect(readAddress(search).problem).toContain('whole number');
  });

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

describe('the calculators at hand', () => {
  const read = (slug: string, query: string) =>
    evaluate(calculatorBySlug(slug), fromQuery(query.slice(1)), { lengths: 'mm' });
  const queriesOf = (task: TaskName): Readonly<Record<string, string>> => {
    if (task === 'slides')
      return slidesQueries(inventSlides(4711).card, setUpSlides(inventSlides(4711)));
    if (task === 'float') return floatQueries(inventFloat(4711).card, 21.3);
    const engine = inventEngine(4711, task);
    return crankQueries(engine, setUp(engine));
  };

  it.each(taskNames)('%s: take every figure that they are opened with', (task) => {
    const queries = queriesOf(task);
    for (const slug of tasks[task].calculators) {
      expect(queries[slug], slug).toBeDefined();
      expect(read(slug, queries[slug]!).problems, slug).toEqual([]);
    }
  });

  it('carry a figure of another engine to the engine on the bench', () => {
    const engine = inventEngine(4711, 'figure');
    const { values, results } = read(
      'piston-position',
      crankQueries(engine, setUp(engine))['piston-position']!,
    );
    expect(values['stroke']).toBe(engine.card.stroke);
    expect(values['given-stroke']).toBe(engine.card.given!.stroke);
    expect(results['travel']).not.toBe(engine.card.given!.before);
  });

  it('take what stands on the pad: readings of the points, and of the disc', () => {
    const { engine, bench } = inOrder(21, 'plate');
    const notes = [0, 1, 2].map((cylinder) => ({
      cylinder,
      dial: 2 + cylinder / 10,
      disc: -20,
      lamp: 'out',
      way: 1 as const,
      rising: true,
      standing: 0,
    }));
    const plate = read(
      'plate-setting',
      crankQueries(engine, { ...bench, notes })['plate-setting']!,
    );
    expect(plate.problems).toEqual([]);
    expect(plate.values['fired']).toEqual([2, 2.1, 2.2]);
    expect(plate.values['speed-ratio']).toBe(1);

    // Backwards the play lies on the other side: such a reading says nothing of how it fires.
    const back = { ...notes[1]!, dial: 3.3, way: -1 as const };
    const some = crankQueries(engine, { ...bench, notes: [notes[1]!, back] })['plate-setting']!;
    expect(some).toContain('fired-2=2.1mm');
    expect(some).not.toMatch(/fired-[13]|3\.3/);

    const stopped = byStop(21, 'stop');
    const disc = read('find-tdc', crankQueries(stopped.engine, stopped.bench)['find-tdc']!);
    expect(disc.problems).toEqual([]);
    expect(disc.values['before']).not.toBe(44);
  });

  it('take the shank that dragged under each slide, until its adjuster is turned again', () => {
    const slides = inventSlides(4711);
    const openings = slides.hidden.openings.map((opening) => Math.floor(opening * 10) / 10);
    const acts = openings.flatMap((drill, slide): SlidesAct[] => [
      { act: 'slide', slide },
      { act: 'try', drill: drill + 0.4 },
      { act: 'try', drill },
    ]);
    const done = (all: readonly SlidesAct[]): string => {
      const bench = all.reduce((b, act) => workSlides(slides, b, act), setUpSlides(slides));
      return slidesQueries(slides.card, bench)['slide-balance']!;
    };
    const dragging = openings.flatMap((drill, i) =>
      slides.hidden.openings[i]! - drill <= 0.05 ? [`opening-${i + 1}=${drill}mm`] : [],
    );
    expect(dragging.length).toBeGreaterThan(0);
    const query = done(acts);
    for (const each of dragging) expect(query).toContain(each);
    expect(query.match(/opening-/g)).toHaveLength(dragging.length);
    const { problems, values } = read('slide-balance', query);
    expect(problems).toEqual([]);
    expect([values['to'], values['wanted']]).toEqual(['wanted', slides.card.target]);
    const first = Number(/\d/.exec(dragging[0]!)![0]);
    const turned: readonly SlidesAct[] = [
      { act: 'slide', slide: first - 1 },
      { act: 'adjust', by: 0.0625 },
    ];
    expect(done([...acts, ...turned])).not.toContain(`opening-${first}=`);
  });

  it('take two readings of the disc only where it stood alike for both', () => {
    const { engine, bench } = byStop(21, 'stop');
    const [forwards, back] = [1, -1].map((way) => bench.notes.find((note) => note.way === way)!);
    const carried = (...notes: Note[]): string =>
      crankQueries(engine, { ...bench, notes })['find-tdc']!;
    expect(carried(forwards!, back!)).toContain(`before=${-forwards!.disc}deg`);
    expect(carried(forwards!, { ...back!, standing: 2 })).not.toContain('before');
    expect(
      carried(
        { ...forwards!, standing: 5 },
        { ...forwards!, disc: -31, standing: 2 },
        { ...back!, standing: 2 },
      ),
    ).toContain('before=31deg');
  });

  it('take the mean of two opposite pointers', () => {
    const { engine, bench } = byStop(21, 'disc');
    const [forwards, back] = [-20.25, 24].map((disc, i) => ({
      ...bench.notes[i]!,
      way: i === 0 ? (1 as const) : (-1 as const),
      disc,
      // Opposite would be 180° on; this disc shows a degree more there.
      opposite: disc < 0 ? disc + 181 : disc - 179,
    }));
    const query = crankQueries(engine, { ...bench, notes: [forwards!, back!] })['find-tdc']!;
    expect(query).toContain('before=19.75deg');
    expect(query).toContain('after=24.5deg');
  });

  it('take the height of two readings by the indicator, and by how much it differed', () => {
    const { engine, bench } = byHeights(21);
    const [forwards, back] = bench.notes.slice(-2);
    const { values, problems } = read(
      'find-tdc',
      crankQueries(engine, {
        ...bench,
        notes: [
          { ...forwards!, dial: 8.01 },
          { ...back!, dial: 7.95 },
        ],
      })['find-tdc']!,
    );
    expect(problems).toEqual([]);
    expect(values).toMatchObject({ method: 'equal', height: 7.98, 'height-error': 0.06 });
    expect(values['before']).toBe(-forwards!.disc);
    expect(values['after']).toBe(back!.disc);
  });

  it('are told nothing that the card and the pad do not tell', () => {
    for (const task of taskNames.filter(isCrankTask)) {
      const { hidden } = inventEngine(4711, task);
      const text = Object.values(queriesOf(task)).join(' ');
      for (const figure of [hidden.geometry.stroke, hidden.geometry.rodLength, ...hidden.gaps]) {
        expect(text).not.toContain(figure.toFixed(3));
      }
    }
  });
});
