import { describe, expect, it } from 'vitest';
import { Handle } from '../../calculators/picture/common/handle.tsx';
import { HolePicker } from '../../calculators/picture/hole-picker.tsx';

type Drawn = { readonly props: Readonly<Record<string, unknown>> };

/** What a part does at a key: what it was told to become, and whether the page is kept from moving. */
function atKey(part: unknown, told: unknown[], key: string): unknown {
  let kept = false;
  const { onKeyDown } = (part as Drawn).props as { onKeyDown: (event: object) => void };
  onKeyDown({ key, preventDefault: () => (kept = true) });
  const [value] = told.splice(0);
  expect(kept).toBe(value !== undefined);
  return value;
}

const nothing = (): void => undefined;
const range = { value: 5, min: 0, max: 20, step: 0.5 };

function handle(more: object = {}) {
  const told: unknown[] = [];
  const props = {
    ...{ x: 0, y: 0, label: 'Travel', valueText: '', onDrag: nothing, onEnd: nothing, ...range },
    ...{ onStep: (value: number) => void told.push(value), ...more },
  };
  const part = Handle(props) as unknown as Drawn;
  return { props: part.props, at: (key: string) => atKey(part, told, key) };
}

describe('a handle by keyboard', () => {
  it('goes a step by an arrow, ten by a page, and to the ends of its range and no further', () => {
    const { at } = handle();
    expect(['ArrowUp', 'ArrowRight', 'ArrowDown', 'ArrowLeft'].map(at)).toEqual([
      5.5, 5.5, 4.5, 4.5,
    ]);
    expect([at('PageUp'), at('Home'), at('End'), at('a')]).toEqual([10, 0, 20, undefined]);
    expect(handle({ value: 18 }).at('PageUp')).toBe(20);
    expect(handle({ value: 2 }).at('PageDown')).toBe(0);
  });

  it('of a depth goes up by the upper arrow, and is spoken of as a height', () => {
    const { at, props } = handle({ downwards: true, along: 'y' });
    expect([at('ArrowUp'), at('ArrowDown'), at('End'), at('Home')]).toEqual([4.5, 5.5, 0, 20]);
    expect(props).toMatchObject({
      ...{ 'aria-valuemin': -20, 'aria-valuemax': 0, 'aria-valuenow': -5 },
      'aria-orientation': 'vertical',
    });
    expect(handle().props['aria-orientation']).toBe('horizontal');
  });
});

it('holes are gone through one after the other, and on from the last to the first', () => {
  const spots = ['1', '2', '3'].map((name) => ({ x: 0, y: 0, radius: 1, name, words: name }));
  const from = (picked: number, key: string): unknown => {
    const told: unknown[] = [];
    const onPick = (index: number): void => void told.push(index);
    const rest = { labels: new Map(), width: 1, height: 1, idPrefix: '' };
    return atKey(HolePicker({ spots, picked, onPick, ...rest }), told, key);
  };
  expect([from(2, 'ArrowRight'), from(0, 'ArrowLeft'), from(1, 'ArrowDown')]).toEqual([0, 2, 2]);
  expect([from(1, 'Home'), from(1, 'End'), from(1, 'x')]).toEqual([0, 2, undefined]);
});
