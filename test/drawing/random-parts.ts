import { evaluate, type Evaluation, type Texts } from '../../calculators/frame/evaluate.ts';
import type { LengthDisplay } from '../../calculators/frame/text/units.ts';
import holePattern from '../../calculators/plate/hole-pattern/calculator.tsx';
import type { Values } from '../../calculators/plate/hole-pattern/compute.ts';
import { spreader } from '../calculators/states.ts';

export interface RandomPart {
  readonly values: Values;
  readonly evaluation: Evaluation;
  readonly lengths: LengthDisplay;
  readonly texts: Texts;
}

/** Random parts of three to nine holes that can be drawn. */
export function* randomParts(seed: number, count: number): Generator<RandomPart> {
  const next = spreader(seed);
  const between = (least: number, most: number): number => least + (most - least) * next();
  for (let made = 0, tried = 0; made < count && tried < 40 * count; tried += 1) {
    const holes = 3 + Math.floor(next() * 7);
    const size = between(12, 130);
    const places = Array.from(
      { length: holes },
      () => [size * next(), 0.7 * size * next()] as const,
    );
    const pairs = places.flatMap((_, b) =>
      Array.from({ length: b }, (__, a) => [a, b] as const).filter(([a]) => a < 4),
    );
    const kind = next();
    const texts: Texts = {
      holes: String(holes),
      distances: String(pairs.length),
      span: 'centres',
      outline: kind < 0.15 ? 'none' : kind < 0.3 ? 'round' : 'lands',
      outside: String((1.9 * size).toFixed(1)),
      ...(next() < 0.3 ? { band: between(2, 8).toFixed(1) } : {}),
      ...(next() < 0.2 ? { bore: between(3, 0.4 * size).toFixed(1) } : {}),
      ...(next() < 0.3 ? { about: 'circle' } : {}),
      ...Object.fromEntries(
        places.flatMap((_, i) => [
          [`hole-${i + 1}`, between(1.5, 0.16 * size).toFixed(2)],
          [`land-${i + 1}`, between(1.5, 6).toFixed(1)],
          ...(next() < 0.3 ? [[`bulge-${i + 1}`, between(-6, 4).toFixed(1)]] : []),
        ]),
      ),
      ...Object.fromEntries(
        pairs.flatMap(([a, b], k) => [
          [`a-${k + 1}`, String(a + 1)],
          [`b-${k + 1}`, String(b + 1)],
          [
            `distance-${k + 1}`,
            Math.hypot(places[a]![0] - places[b]![0], places[a]![1] - places[b]![1]).toFixed(4),
          ],
        ]),
      ),
    };
    const lengths = next() < 0.3 ? 'in' : 'mm';
    const evaluation = evaluate(holePattern, texts, { lengths: 'mm' });
    if (evaluation.problems.length > 0) continue;
    made += 1;
    yield { values: evaluation.values as Values, evaluation, lengths, texts };
  }
}
