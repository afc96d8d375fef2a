import { parseHTML } from 'linkedom';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { demoEngine, sliderCrank } from '../../calculators/position/engine-inputs.ts';
import { travelBefore } from '../../calculators/maths/crank/slider-crank.ts';
import { CrankTriangle, triangleOf } from '../../calculators/picture/crank-triangle.tsx';
import { PointsCircuit } from '../../calculators/picture/points-circuit.tsx';

const drawn = (picture: Parameters<typeof render>[0]): Document =>
  parseHTML(`<body>${render(picture)}</body>`).document;

/** The numbers of a path or of some attributes, in order. */
const numbers = (text: string): number[] => (text.match(/-?\d+(?:\.\d+)?/g) ?? []).map(Number);

describe('the triangle of crank, rod and bore', () => {
  const geometry = sliderCrank(demoEngine);

  it.each([0, 20, 60, 120])('holds its lengths %s° before the top', (angle) => {
    const { bigEnd, pin, travel } = triangleOf({ geometry, angle });
    expect(Math.hypot(bigEnd.x, bigEnd.up)).toBeCloseTo(geometry.stroke / 2, 9);
    expect(Math.hypot(pin.x - bigEnd.x, pin.up - bigEnd.up)).toBeCloseTo(geometry.rodLength, 9);
    expect(travel).toBe(travelBefore(geometry, angle));
    // Before the top the big end of a crank that turns clockwise still stands to the left.
    if (angle > 0) expect(bigEnd.x).toBeLessThan(0);
  });

  it('is drawn to scale, both cranks and both rods alike', () => {
    const page = drawn(<CrankTriangle geometry={geometry} angle={60} />);
    const long = (path: Element): number => {
      const [x1, y1, x2, y2] = numbers(path.getAttribute('d')!);
      return Math.hypot(x2! - x1!, y2! - y1!);
    };
    const rods = [...page.querySelectorAll('.triangle-rod')].map(long);
    const cranks = [...page.querySelectorAll('.triangle-crank')].map(long);
    expect(rods).toHaveLength(2);
    for (const crank of cranks) {
      for (const rod of rods) {
        expect(rod / crank).toBeCloseTo((2 * geometry.rodLength) / geometry.stroke, 2);
      }
    }
  });

  it('stays within its frame for a long rod and a short one', () => {
    for (const rodLength of [60, 104, 300]) {
      const page = drawn(<CrankTriangle geometry={{ stroke: 51, rodLength }} angle={60} />);
      for (const text of page.querySelectorAll('text')) {
        expect(Number(text.getAttribute('x'))).toBeGreaterThan(0);
        expect(Number(text.getAttribute('y'))).toBeGreaterThan(10);
        expect(Number(text.getAttribute('y'))).toBeLessThan(400);
      }
    }
  });
});

describe('the circuit of the points', () => {
  const page = drawn(<PointsCircuit />);
  const part = (state: string, name: string): string =>
    page.querySelector(`.points-${state} .${name}`)!.getAttribute('d')!;

  it('leaves the fixed contact where it is and lets the moving one touch it when shut', () => {
    expect(part('open', 'contact-still')).toBe(part('shut', 'contact-still'));
    const [x, y, out] = numbers(part('shut', 'contact-still')) as [number, number, number];
    const tip = (state: string): { x: number; y: number } => {
      const [footX, footY, across, up] = numbers(part(state, 'contact-moving')) as number[];
      return { x: footX! + across!, y: footY! + up! };
    };
    // Shut, its tip lies past the end of the fixed one, on the same side of the wire.
    expect(Math.hypot(tip('shut').x - (x + out), tip('shut').y - y)).toBeLessThan(4);
    expect(tip('open').x).toBeLessThan(x + out - 5);
  });

  it('sparks at the plug only while the points are open', () => {
    expect(page.querySelectorAll('.points-open .spark')).toHaveLength(1);
    expect(page.querySelectorAll('.points-shut .spark')).toHaveLength(0);
  });
});
