import { options, type VNode } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { evaluate, type Evaluation } from '../../calculators/frame/evaluate.ts';
import type { AnyCalculator, Input } from '../../calculators/frame/types.ts';
import { Handle } from '../../calculators/picture/common/handle.tsx';
import { calculators } from '../../site/all-calculators.ts';
import { reading } from '../calculators/states.ts';

type HandleProps = Parameters<typeof Handle>[0];
type Told = readonly [key: string, value: number];
type Corner = readonly [x: number, y: number];

/** The handles of a picture in a state, how far a finger may take them, and what they told the form. */
function handlesOf(
  { picture: Picture }: AnyCalculator,
  { values, results, spreads }: Evaluation,
): { handles: readonly HandleProps[]; corners: readonly Corner[]; told: Told[] } {
  const handles: HandleProps[] = [];
  const told: Told[] = [];
  const before = options.vnode;
  options.vnode = (node: VNode) => {
    if (node.type === Handle) handles.push(node.props as unknown as HandleProps);
    before?.(node);
  };
  const html = renderToString(
    <Picture
      values={values}
      results={results}
      spreads={() => spreads}
      lengths="mm"
      idPrefix=""
      set={(key, value) => void told.push([key, value])}
      commit={() => undefined}
    />,
  );
  options.vnode = before!;
  const corners = [...html.matchAll(/viewBox="0 0 ([\d.]+) ([\d.]+)"/g)].flatMap(([, w, h]) =>
    [0, Number(w)].flatMap((x) => [0, Number(h)].map((y): Corner => [x, y])),
  );
  return { handles, corners, told };
}

/** States with one figure after the other at the ends of its range, and the one as it is served. */
function* edgesOf(calculator: AnyCalculator): Generator<readonly [string, Evaluation]> {
  const served = evaluate(calculator, {}, reading);
  yield ['as served', served];
  for (const field of served.fields) {
    if (field.kind !== 'figure') continue;
    for (const end of [field.spec.min, field.spec.max]) {
      const state = evaluate(calculator, { [field.key]: String(end) }, reading);
      if (state.computed && state.problems.length === 0) yield [`${field.key}=${end}`, state];
    }
  }
}

const inputOf = (calculator: AnyCalculator, key: string): Input | undefined =>
  calculator.inputs[key] ?? calculator.inputs[key.replace(/-\d+$/, '')];

describe.each(calculators.map((calculator) => [calculator.slug, calculator] as const))(
  'a handle of %s',
  (_, calculator) => {
    it('tells no figure that its field refuses, wherever it is dragged or stepped', () => {
      const out: string[] = [];
      for (const [state, evaluation] of edgesOf(calculator)) {
        const { handles, corners, told } = handlesOf(calculator, evaluation);
        if (handles.length > 0) expect(corners.length).toBeGreaterThan(0);
        for (const { onDrag, onStep, min, max } of handles) {
          for (const [x, y] of corners) onDrag(x, y);
          onStep(min);
          onStep(max);
        }
        for (const [key, value] of told) {
          const input = inputOf(calculator, key);
          if (input === undefined || input.kind === 'choice') out.push(`${state}: ${key}`);
          else if (!(value >= input.min && value <= input.max)) {
            out.push(`${state}: ${key} ${value} is not from ${input.min} to ${input.max}`);
          }
        }
      }
      expect([...new Set(out)]).toEqual([]);
    });

    it('goes one step at a step, also at the ends of its range', () => {
      const out: string[] = [];
      for (const [state, evaluation] of edgesOf(calculator)) {
        const { handles, told } = handlesOf(calculator, evaluation);
        for (const { onStep, value, step, min, max, label } of handles) {
          for (const next of [value - step, value + step]) {
            onStep(Math.min(max, Math.max(min, next)));
            const [key, set] = told.splice(0).at(-1) ?? [];
            const field = evaluation.fields.find((each) => each.key === key);
            // A handle that speaks of another figure than its field goes by steps of that one.
            if (field?.kind !== 'figure' || field.value !== value) continue;
            // What was between two steps comes onto one.
            if (!(Math.abs(set! - value) <= 1.5 * step)) {
              out.push(`${state}: ${label} goes from ${value} to ${set}`);
            }
          }
        }
      }
      expect(out).toEqual([]);
    });
  },
);
