import { renderToString } from 'preact-render-to-string';
import type { AnyCalculator } from '../../../calculators/frame/types.ts';
import type { State } from './states.ts';

const nothing = (): void => undefined;

/** The picture of a state, as the server draws it. */
export function drawn(calculator: AnyCalculator, { evaluation, lengths }: State): string {
  const { picture: Picture } = calculator;
  const { values, results, spreads } = evaluation;
  return renderToString(
    <Picture
      values={values}
      results={results}
      spreads={() => spreads}
      lengths={lengths}
      idPrefix=""
      set={nothing}
      commit={nothing}
    />,
  );
}
