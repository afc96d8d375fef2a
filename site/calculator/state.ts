import type { Evaluation } from '../../calculators/frame/evaluate.ts';
import type { LengthDisplay } from '../../calculators/frame/text/units.ts';

/** What a calculator in use shows. */
export interface State {
  readonly evaluation: Evaluation;
  readonly lengths: LengthDisplay;
}

/** Gives the state of the moment: what is copied or saved is asked for only when a button is pressed. */
export type Now = () => State;
