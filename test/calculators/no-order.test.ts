/** An order stands large only where something is to be done by it: nothing is asked for and forbidden at once. */
import { expect, it } from 'vitest';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import { resultLines } from '../../calculators/frame/summary.ts';
import { calculators } from '../../site/all-calculators.ts';
import { said, verdicts } from './said.ts';

const labels = (slug: string, texts: Record<string, string>): string[] => {
  const calculator = calculators.find((one) => one.slug === slug)!;
  const evaluation = evaluate(calculator, texts, { lengths: 'mm' });
  expect(evaluation.problems).toEqual([]);
  return resultLines(calculator, evaluation, 'mm').map(({ label }) => label);
};

const plate = (...fired: string[]) => ({
  ...{ cylinders: '3', as: 'angle', 'target-angle': '22', tolerance: '1', offset: '0' },
  ...{ stroke: '60', rod: '118', 'plate-radius': '46', 'slot-radius': '31', 'speed-ratio': '1' },
  ...Object.fromEntries(fired.map((angle, i) => [`fired-angle-${String(i + 1)}`, angle])),
});

it('a plate that passes as found is left alone, in the answer as in the text', () => {
  const [first] = labels('plate-setting', plate('22.8', '22.6', '22.4'));
  expect(first).toBe('Leave the plate; the best turn is');
  expect(said('plate-setting', plate('22.8', '22.6', '22.4'))).toContain(
    'Leave plate and sets alone',
  );
  expect(labels('plate-setting', plate('24', '22.6', '22.4'))[0]).toMatch(/^Turn the plate/);
});

it('by a reading where no engine fires nothing is turned and nothing passes', () => {
  const odd = plate('77', '22.6', '22.4');
  expect(labels('plate-setting', odd)[0]).toMatch(/^Put the figures right first/);
  expect(said('plate-setting', odd)).not.toMatch(/^(?:Pass|Fail)/m);
  expect(verdicts('plate-setting', 'cylinders', 3, odd)).toEqual(
    Array(3).fill('not judged: see the remark under the answer'),
  );
  expect(said('plate-setting', { ...plate('22', '22', '22'), 'target-angle': '45' })).toMatch(
    /^The timing to set is 45° before the top, earlier than such engines are set/m,
  );
});

it('jets of which none are alike are no best set', () => {
  const sizes = (...all: string[]) => ({
    ...{ jets: '4', wanted: '3', tolerance: '3', by: 'pin' },
    ...Object.fromEntries(all.map((size, i) => [`bore-${String(i + 1)}`, size])),
  });
  expect(labels('jet-set', sizes('1.1', '1.05', '0.95', '1.2')).join()).toMatch(
    /least unlike: jet/,
  );
  // Four alike make four sets as good as one another.
  expect(said('jet-set', sizes('1.1', '1.1', '1.1', '1.1'))).toMatch(/Either will do/);
  expect(said('jet-set', sizes('1.1', '1.1', '1.1', '1.2'))).not.toMatch(/Either will do/);
  expect(labels('jet-set', sizes('1.1', '1.1', '1.1', '1.2')).join()).toMatch(/best set: jet/);
});
