import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { breakLine } from '../../calculators/picture/break-line.ts';
import { Hatching } from '../../calculators/picture/cut.tsx';
import { Dimension } from '../../calculators/picture/dimension.tsx';
import { ForceArrow } from '../../calculators/picture/force-arrow.tsx';

/** Where a path goes through, in absolute places; of the commands that these signs are made of. */
function placesOf(path: string): readonly (readonly [x: number, y: number])[] {
  let [x, y] = [0, 0];
  return [...path.matchAll(/([MLHhlz])([^MLHhlz]*)/gi)].flatMap(([, command, rest]) => {
    const [first = 0, second = 0] = (rest!.match(/-?[\d.]+/g) ?? []).map(Number);
    if (command === 'z' || command === 'Z') return [];
    if (command === 'H') x = first;
    else if (command === 'h') x += first;
    else if (command === 'l') [x, y] = [x + first, y + second];
    else [x, y] = [first, second];
    return [[x, y] as const];
  });
}
const pathsIn = (html: string, look: string): string =>
  new RegExp(`class="${look}" d="([^"]*)"`).exec(html)![1]!;

describe('a force', () => {
  it.each([
    ['down', 30, 123],
    ['up', -30, 77],
    // No longer than its own head.
    ['down a little', 3, 100],
  ] as const)(
    '%s: its head has its tip where the arrow ends, and its foot behind it',
    (_, length, foot) => {
      const html = render(<ForceArrow x={10} from={100} length={length} label="F" side="left" />);
      expect(placesOf(pathsIn(html, 'force-head'))).toEqual([
        [10, 100 + length],
        [6, foot],
        [14, foot],
      ]);
    },
  );

  it('has its letter beside it, on the side that is asked for', () => {
    const of = (side: 'left' | 'right') =>
      /<text x="([\d.]+)".*text-anchor="(\w+)"/
        .exec(render(<ForceArrow x={10} from={100} length={30} label="F" side={side} />))!
        .slice(1);
    expect(of('left')).toEqual(['3', 'end']);
    expect(of('right')).toEqual(['17', 'start']);
  });
});

// ISO 129-1: the heads lie within, and without where there is no room for them; either way they point at
// the extension lines.
it.each([
  ['wide', 100, 'within'],
  ['narrow', 10, 'without'],
] as const)('a %s dimension of %i has its arrow heads %s', (_, long, where) => {
  const html = render(
    <Dimension from={[50, 0]} to={[50 + long, 0]} along="x" line={-20} words="" />,
  );
  const [first, second] = pathsIn(html, 'size-head').split('Z').map(placesOf);
  for (const [head, tip, inwards] of [
    [first!, 50, 1],
    [second!, 50 + long, -1],
  ] as const) {
    const [at, ...feet] = head;
    expect(at).toEqual([tip, -20]);
    const way = where === 'within' ? inwards : -inwards;
    for (const [x] of feet) expect(Math.sign(x - tip)).toBe(way);
  }
});

it('a part that goes on undrawn ends in a zigzag, across all of it and a little further', () => {
  const line = placesOf(breakLine(0, 100, 50));
  expect([line[0], line.at(-1)]).toEqual([
    [-6, 50],
    [106, 50],
  ]);
  expect(line.map(([, y]) => y)).toEqual([50, 50, 44, 56, 50, 50]);
});

it('the hatchings of two parts that meet cross one another', () => {
  const lean = (leans: 'right' | 'left'): number =>
    Number(/rotate\((-?\d+)\)/.exec(render(<Hatching id="h" leans={leans} />))![1]);
  expect(lean('right') - lean('left')).toBe(90);
});
