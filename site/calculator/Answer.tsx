import type { ComponentChildren } from 'preact';
import { calledAs, figureText, leadLines, leadSpecs } from '../../calculators/frame/summary.ts';
import { showResult, wordForNothing } from '../../calculators/frame/show-result.ts';
import { Absent, type AnyCalculator, type ResultValue } from '../../calculators/frame/types.ts';
import { restsOnExample } from '../../calculators/frame/whose.ts';
import { problemLines } from '../fields/Problems.tsx';
import { Spoken } from '../browser/Spoken.tsx';
import { Figure } from './Figure.tsx';
import { LaterPart } from './LaterPart.tsx';
import type { State } from './state.ts';

interface Props extends State {
  readonly calculator: AnyCalculator;
  /** Names of the results to show; those that lead unless given. */
  readonly results?: readonly string[] | undefined;
  /** What can be done with it, at the end of the strip. */
  readonly children?: ComponentChildren;
}

/** Letters of a figure with its unit beyond which the strip would need another line. */
const LONG = 10;

/** A column that leads: its figures in a line. Programs read them in the table. */
function columnWords(value: ResultValue | undefined, write: (figure: number) => string) {
  const figures = Array.isArray(value) ? (value as readonly number[]) : [];
  if (figures.length === 0) return <span class="none">{wordForNothing(value)}</span>;
  // A unit stands on the line of its figure.
  const whole = figures.map((figure) => write(figure).replaceAll(' ', '\u00A0'));
  return <span class="lead-column">{whole.join(', ')}</span>;
}

function Strip({ calculator, evaluation, lengths, results, children }: Props) {
  const leads = results
    ? results.map((name) => [name, calculator.results[name]!] as const)
    : leadSpecs(calculator, evaluation.values);
  const long = leads.some(([name, spec]) => {
    const value = evaluation.results[name];
    if (typeof value !== 'number') return false;
    const { figure, unit } = showResult(value, spec, evaluation.spreads[name], lengths);
    return `${figure} ${unit}`.length > LONG;
  });
  const problems = problemLines(evaluation);
  return (
    <>
      <dl class={long ? 'leads long' : 'leads'}>
        {leads.map(([name, spec]) => {
          const value = evaluation.results[name];
          const { label, short } = calledAs(calculator, evaluation, name, lengths);
          return (
            <div class="lead" key={name}>
              <dt>
                {short ?? label}
                {value !== undefined &&
                !(value instanceof Absent) &&
                restsOnExample(calculator, evaluation, name)
                  ? ' (example)'
                  : null}
              </dt>
              <dd>
                {spec.table === undefined ? (
                  <output name={name} aria-live="off">
                    {typeof value === 'number' ? (
                      <Figure
                        brief
                        {...{ value, spec, lengths }}
                        values={evaluation.values}
                        spread={evaluation.spreads[name]}
                      />
                    ) : (
                      <span class="none">{wordForNothing(value)}</span>
                    )}
                  </output>
                ) : (
                  columnWords(value, (figure) =>
                    figureText(figure, spec, undefined, lengths, evaluation.values),
                  )
                )}
              </dd>
            </div>
          );
        })}
      </dl>
      {children}
      <Spoken
        lines={problems.length > 0 ? problems : leadLines(calculator, evaluation, lengths, results)}
      />
    </>
  );
}

/** The strip of the answer: the main figure large, the others on one line. */
export const Answer = (props: Props) => (
  <LaterPart class="calc-answer" data-part="answer">
    <Strip {...props} />
  </LaterPart>
);
