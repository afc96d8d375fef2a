import { render } from 'preact-render-to-string';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { evaluate, type Texts } from '../../calculators/frame/evaluate.ts';
import { proseIn } from '../../calculators/frame/text/prose.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import { demoSheet } from '../../calculators/sheet/demo.ts';
import { figureKeys, figureSpec } from '../../calculators/sheet/figures.ts';
import type { Engine } from '../../calculators/sheet/model.ts';
import { progressOf } from '../../calculators/sheet/progress.ts';
import { order, steps } from '../../calculators/sheet/steps.ts';
import { sheetSummary } from '../../calculators/sheet/summary.ts';
import { calculators } from '../../site/all-calculators.ts';
import { Answer } from '../../site/calculator/Answer.tsx';
import { Form } from '../../site/calculator/Form.tsx';
import { More } from '../../site/calculator/More.tsx';
import { Figures as SheetFigures } from '../../site/sheet/Figures.tsx';
import { PrintSheet } from '../../site/sheet/PrintSheet.tsx';
import { StepCard } from '../../site/sheet/StepCard.tsx';
import { millimetresLeft } from './metric-left.ts';
import { someState, spreader, whole } from './states.ts';

const nothing = () => undefined;

/** All that a calculator shows with lengths in inches, with every ± and every fold open. */
function htmlOf(calculator: AnyCalculator, texts: Texts): string {
  const lengths = 'in';
  const evaluation = evaluate(calculator, texts, { lengths });
  const { values, results, spreads, computed, errorFields } = evaluation;
  const { picture: Picture } = calculator;
  const shared = { calculator, evaluation, lengths, idPrefix: '' } as const;
  const handlers = { onText: nothing, onCommit: nothing };
  // A ± that was given has its field shown.
  const reasons = [...evaluation.fields, ...errorFields].flatMap((field) =>
    field.kind === 'choice' ? [] : [field.spec.why],
  );
  const given = { ...evaluation, errorFields: errorFields.map((f) => ({ ...f, given: true })) };
  return render(
    <>
      <Answer {...shared} />
      <Form {...shared} evaluation={given} {...handlers} />
      <More {...shared} now={() => ({ evaluation, lengths })} />
      {computed ? (
        <Picture
          {...{ values, results, lengths, idPrefix: '', set: nothing, commit: nothing }}
          spreads={() => spreads}
        />
      ) : null}
      {[...calculator.limits, calculator.ready?.caption ?? '', ...reasons].map((text) => (
        <p key={text}>{proseIn(text, lengths)}</p>
      ))}
    </>,
  );
}

describe.each(calculators.map((calculator) => [calculator.slug, calculator] as const))(
  '%s with lengths in inches',
  (_, calculator) => {
    const next = spreader(20);
    const states = [undefined, ...Array.from({ length: 6 }, () => someState(calculator, next))].map(
      (state): Texts => (state === undefined ? {} : whole(state)),
    );

    it('leaves nothing in millimetres that has an inch twin', () => {
      for (const texts of states) expect(millimetresLeft(htmlOf(calculator, texts))).toEqual([]);
    });

    it('tells a place in one unit along X and along Y', () => {
      const places = states.flatMap((texts) => [
        ...htmlOf(calculator, texts).matchAll(/X [−\d.]+ (\p{L}+), Y [−\d.]+ (\p{L}+)/gu),
      ]);
      for (const [place, across, up] of places) expect(across, place).toBe(up);
    });
  },
);

describe('the engine sheet with lengths in inches', () => {
  const engine: Engine = demoSheet();
  const shared = { engine, lengths: 'in', edit: nothing } as const;

  beforeAll(() =>
    vi.stubGlobal('document', {
      querySelector: () => ({ href: 'https://site.example/' }),
    }),
  );
  afterAll(() => vi.unstubAllGlobals());

  it('leaves nothing in millimetres that has an inch twin', () => {
    const progress = progressOf(engine);
    const judged = order.flatMap((id) => {
      const { reading } = steps[id];
      return reading ? [reading.why, reading.moves ?? ''] : [];
    });
    const html = render(
      <>
        <SheetFigures {...shared} />
        {order.map((id, i) => (
          <StepCard
            key={id}
            {...{ id, number: i + 1, progress: progress[id], next: true, copied: undefined }}
            places={{ calculators: {}, articles: {} }}
            copyStep={nothing}
            {...shared}
          />
        ))}
        <PrintSheet engine={engine} lengths="in" />
        {[...figureKeys.map((key) => figureSpec(key).why), ...judged].map((text) => (
          <p key={text}>{proseIn(text, 'in')}</p>
        ))}
        <pre>{sheetSummary(engine, 'in', '')}</pre>
      </>,
    );
    expect(millimetresLeft(html)).toEqual([]);
  });
});
