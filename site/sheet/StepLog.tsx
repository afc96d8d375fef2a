import { dayWords, readingsAt, roundsOf } from '../../calculators/sheet/log.ts';
import { askedBy } from '../../calculators/sheet/judge.ts';
import { kindWords, readingWords } from '../../calculators/sheet/log-words.ts';
import { boxName, boxesOf } from '../../calculators/sheet/model.ts';
import { standingAfter } from '../../calculators/sheet/outdated.ts';
import { steps, type StepId } from '../../calculators/sheet/steps.ts';
import type { BoxProps } from './FigureBox.tsx';
import { LogLine } from './LogLine.tsx';
import { Said } from './Said.tsx';
import { StepPlot } from './StepPlot.tsx';
import { useTakeOut } from './use-take-out.tsx';

/** Every reading of a step, the last first, what each round asked for, and a plot of them. */
export function StepLog({ id, engine, lengths, edit }: BoxProps & { readonly id: StepId }) {
  const reading = steps[id].reading!;
  const { takeOut, said } = useTakeOut({ engine, edit });
  const rounds = roundsOf(engine, id, boxesOf(engine, id));
  const entries = [...readingsAt(engine, id)].reverse();
  return (
    <div class="step-log">
      {rounds.length > 1 ? (
        <StepPlot id={id} engine={engine} rounds={rounds} lengths={lengths} />
      ) : null}
      {rounds.map(({ entries: read, after }, i) => {
        const { on, kind } = read.at(-1)!;
        const asked = askedBy(engine, id, standingAfter(engine, id, i + 1, after), lengths);
        return asked.length === 0 || i === rounds.length - 1 ? null : (
          <Said
            key={i}
            title={`Asked for ${[dayWords(on), kindWords[kind]].filter(Boolean).join(', ')}`}
            sentences={asked}
          />
        );
      })}
      <ul class="log-entries">
        {entries.map((entry) => {
          const { clock, cylinder, value } = entry;
          const box = boxName(reading, cylinder - 1, engine);
          const words = `${box}: ${readingWords(id, value, lengths)}`;
          return (
            <LogLine
              key={`${String(clock)} ${String(cylinder)}`}
              {...{ words, entry }}
              takeOut={() => takeOut(entry)}
            />
          );
        })}
      </ul>
      {said}
    </div>
  );
}
