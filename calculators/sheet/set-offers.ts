import { showInput } from '../frame/text/format.ts';
import type { LengthDisplay } from '../frame/text/units.ts';
import { orderText } from '../frame/text/order.ts';
import { setFigure } from './set-figure.ts';
import { orderWords, setOrderOf } from './firing-order.ts';
import { cylindersOf, setsOf, sharesSets, type Engine } from './model.ts';
import { evenDirections, setEven } from './sets.ts';

/** A question about the engine, and what its answer enters in the sheet. */
export interface SetOffer {
  readonly ask: string;
  readonly answer: string;
  readonly take: (engine: Engine) => Engine;
}

/** The order in which evenly placed sets would fire, where there is more than one. */
function orderAsked(engine: Engine): string {
  if (setsOf(engine) < 3) return '';
  const order = setOrderOf(engine)
    ? orderWords(engine)
    : orderText(Array.from({ length: setsOf(engine) }, (_, i) => i + 1));
  return ` in the order ${order}`;
}

/** Sets that stand evenly, for pistons that come to the top in turn. */
function evenOffer(engine: Engine, lengths: LengthDisplay): SetOffer {
  const even = evenDirections(engine).map((direction) => showInput(direction, 'deg', lengths));
  const each = sharesSets(engine)
    ? 'those of one set together, set after set'
    : 'one after another';
  return {
    ask: `Do its pistons come to the top ${each}${orderAsked(engine)}, evenly, with the cam on the crankshaft? Then the sets belong at 0°, ${even.join(', ')}:`,
    answer: 'Evenly, in turn: enter these',
    take: setEven,
  };
}

/** One set for every two cylinders, where the sheet has not said yet that some share one. */
function pairOffer(engine: Engine): SetOffer | undefined {
  const sets = cylindersOf(engine) / 2;
  if (sharesSets(engine) || !Number.isInteger(sets)) return undefined;
  const isTwin = sets === 1;
  return {
    ask: isTwin
      ? 'Do both pistons come to the top together, as in many an opposed twin? Then one set fires both, with a coil of two leads or a coil for each:'
      : 'Do its pistons come to the top two and two together? Then one set fires each pair, with a coil of two leads or a coil for each:',
    answer: isTwin ? 'Together: one set for both' : `In pairs: ${String(sets)} sets`,
    take: (now) => setFigure(now, 'sets', sets),
  };
}

/** What is offered where the sheet does not say where its sets of points belong. */
export const setOffers = (engine: Engine, lengths: LengthDisplay): readonly SetOffer[] => [
  evenOffer(engine, lengths),
  ...[pairOffer(engine) ?? []].flat(),
];
