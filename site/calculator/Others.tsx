import { wordForNothing, wordsOf } from '../../calculators/frame/show-result.ts';
import type { AnyCalculator, ResultSpec } from '../../calculators/frame/types.ts';
import { whoseBeside } from '../../calculators/frame/whose.ts';
import { inSentence } from '../../calculators/frame/text/sentence.ts';
import { Help } from '../fields/Help.tsx';
import { Figure } from './Figure.tsx';
import type { State } from './state.ts';

interface Props extends State {
  readonly calculator: AnyCalculator;
  readonly idPrefix: string;
}

/** The single results beyond the answer, ruled off one by one. */
export function Others({ calculator, evaluation, lengths, idPrefix }: Props) {
  const others = Object.entries<ResultSpec>(calculator.results).filter(
    ([, spec]) => !spec.lead && spec.table === undefined,
  );
  if (others.length === 0) return null;
  return (
    <dl class="results">
      {others.map(([name, spec]) => {
        const value = evaluation.results[name];
        const { label, help } = wordsOf(spec, lengths);
        const beside = whoseBeside(calculator, evaluation, name);
        return (
          <div class="result" key={name}>
            <dt>{label}</dt>
            <dd>
              <output name={name} aria-live="off">
                {typeof value === 'number' ? (
                  <Figure
                    {...{ value, spec, lengths }}
                    values={evaluation.values}
                    spread={evaluation.spreads[name]}
                  />
                ) : (
                  <span class="none">{wordForNothing(value)}</span>
                )}
              </output>
              {beside === undefined ? null : <p class="whose-beside">{beside}</p>}
              <Help
                id={`${idPrefix}result-${name}`}
                about={inSentence(label)}
                help={help}
                lengths={lengths}
              />
            </dd>
          </div>
        );
      })}
    </dl>
  );
}
