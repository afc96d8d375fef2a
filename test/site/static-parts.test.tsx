import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import { setEntry } from '../../calculators/sheet/set-entry.ts';
import { calculatorBySlug } from '../../site/all-calculators.ts';
import { Downloads } from '../../site/calculator/take-away/Downloads.tsx';
import { TitleBlock } from '../../site/calculator/take-away/TitleBlock.tsx';
import type { State } from '../../site/calculator/state.ts';
import { StepLog } from '../../site/sheet/StepLog.tsx';
import { figured } from '../sheet/job.ts';

const lengths = 'mm' as const;

const stateOf = (slug: string) => {
  const calculator = calculatorBySlug(slug);
  const evaluation = evaluate(calculator, {}, { lengths });
  const state: State = { evaluation, lengths };
  return { calculator, ...state, now: () => state };
};

it('a title block says that no ± is stated, where there is none, and else which', () => {
  const spread = (slug: string) =>
    /<dt>±<\/dt><dd>([^<]*)<\/dd>/.exec(render(<TitleBlock {...stateOf(slug)} />))?.[1];
  expect(spread('firing-order')).toBe('none stated');
  expect(spread('find-tdc')).toMatch(/^[\d.]+°$/);
});

describe('saving as a file', () => {
  const { calculator, now } = stateOf('degree-disc');
  const html = (refused?: string) => render(<Downloads {...{ calculator, now, refused }} />);
  const buttons = (text: string): number => text.match(/<button/g)!.length;

  it('says why where nothing may be saved, and offers no button then', () => {
    const why = 'The stroke cannot be read.';
    expect(html(why)).toContain(`role="status">${why}<`);
    expect(html(why).match(/disabled/g)).toHaveLength(buttons(html(why)));
  });

  it('is open to all files else', () => {
    expect(html()).not.toContain('disabled');
    expect(buttons(html())).toBeGreaterThan(3);
  });
});

describe('the log of a step', () => {
  const entries = [
    ['found', 0, 1.4, '2026-03-19'],
    ['found', 1, 1.9, '2026-03-20'],
    ['left', 1, 1.4, '2026-03-21'],
  ] as const;
  const engine = entries.reduce(
    (so, [moment, index, value, on]) => setEntry(so, 'squish', moment, index, value, { on }),
    figured({ cylinders: 2 }),
  );
  const html = render(
    <StepLog id="squish" engine={engine} lengths={lengths} edit={() => undefined} />,
  );

  it('has the last reading first, each with its day and a way to take it out', () => {
    const lines = [...html.matchAll(/<b>(.*?)<\/b> ([^<]*)<.*?aria-label="(.*?)"/g)].map(
      ([, words, day, label]) => [words, day, label],
    );
    expect(lines).toEqual([
      ['Cylinder 2: 1.4 mm', '21 Mar 2026, after a change', 'Take out Cylinder 2: 1.4 mm'],
      ['Cylinder 2: 1.9 mm', '20 Mar 2026, as found', 'Take out Cylinder 2: 1.9 mm'],
      ['Cylinder 1: 1.4 mm', '19 Mar 2026, as found', 'Take out Cylinder 1: 1.4 mm'],
    ]);
  });

  it('has what each round asked for by what was read then, but the last, which the step itself says', () => {
    // The squish of the example is 1.4 mm: 0.5, 0.3 and 0.2 mm less than what was read.
    const rounds = (
      [
        ['found', 1.9, '2026-03-20'],
        ['left', 1.7, '2026-03-21'],
        ['left', 1.6, '2026-03-22'],
      ] as const
    ).reduce(
      (so, [moment, value, on]) => setEntry(so, 'squish', moment, 0, value, { on }),
      figured({ cylinders: 1 }),
    );
    const told = render(
      <StepLog id="squish" engine={rounds} lengths={lengths} edit={() => undefined} />,
    );
    const asked = [...told.matchAll(/said-title">(.*?)<.*?by ([\d.]+) mm/g)];
    expect(asked.map(([, title, by]) => [title, by])).toEqual([
      ['Asked for 20 Mar 2026, as found', '0.5'],
      ['Asked for 21 Mar 2026, after a change', '0.3'],
    ]);
  });

  it('tells what a round asked of all that it read, though a turn of the plate has left some behind', () => {
    const turned = (
      [
        ['found', 0, 2.9],
        ['found', 1, 2.6],
        ['left', 0, 2.2],
      ] as const
    ).reduce(
      (so, [moment, index, value]) =>
        setEntry(so, 'timing', moment, index, value, {
          on: moment === 'found' ? '2026-03-20' : '2026-03-21',
        }),
      figured({ cylinders: 2, 'set-2': 180, condensers: 2, 'fed-coils': 2 }),
    );
    const told = render(
      <StepLog id="timing" engine={turned} lengths={lengths} edit={() => undefined} />,
    );
    // Of 2.2 mm wanted: 0.7 and 0.4 mm too early.
    expect(told).toMatch(
      /as found<.*Cylinder 1: [^<]* 0\.7 mm, early.*Cylinder 2: [^<]* 0\.4 mm, early/,
    );
  });
});
