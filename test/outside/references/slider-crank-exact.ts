/**
 * The slider-crank done again by mathjs with 64 significant digits, straight from the closed form and
 * from the cosine rule, with none of the rearranging that the maths package does.
 */
import { all, create, type BigNumber, type FactoryFunctionMap } from 'mathjs';
import type { SliderCrank } from '../../../calculators/maths/crank/slider-crank.ts';

const math = create(all as FactoryFunctionMap, { number: 'BigNumber', precision: 64 });

const big = (value: number): BigNumber => math.bignumber(String(value));
const evaluate = (expression: string, scope: Record<string, BigNumber>): number =>
  math.number(math.evaluate(expression, scope) as BigNumber);

function scopeOf(g: SliderCrank): Record<string, BigNumber> {
  return {
    r: math.divide(big(g.stroke), big(2)) as BigNumber,
    l: big(g.rodLength),
    e: big(g.pinOffset),
  };
}

const height = 'r * cos(phi) + sqrt(l^2 - (r * sin(phi) - e)^2)';
const phi = '(asin(e / (l + r)) + angle * pi / 180)';
const heightAt = height.replaceAll('phi', phi);
const top = 'sqrt((l + r)^2 - e^2)';

const slopeOfHeight = math.derivative(heightAt, 'angle');
const slope = slopeOfHeight.toString();
const bend = math.derivative(slopeOfHeight, 'angle').toString();

/** mm below the top, `angle` degrees after it. */
export function exactTravel(g: SliderCrank, angle: number): number {
  return evaluate(`${top} - (${heightAt})`, { ...scopeOf(g), angle: big(angle) });
}

/** mm per degree, from the derivative that mathjs finds symbolically. */
export function symbolicVelocity(g: SliderCrank, angle: number): number {
  return -evaluate(slope, { ...scopeOf(g), angle: big(angle) });
}

/** mm per degree², from the second symbolic derivative. */
export function symbolicAcceleration(g: SliderCrank, angle: number): number {
  return -evaluate(bend, { ...scopeOf(g), angle: big(angle) });
}

/**
 * The angle for a travel by the cosine rule, on the triangle of crank centre, big end and gudgeon pin:
 * no search. `side` is 1 after the top and −1 before it.
 */
export function exactAngle(g: SliderCrank, travel: number, side: 1 | -1): number {
  const pin = `(${top} - travel)`;
  const reach = `sqrt(${pin}^2 + e^2)`;
  const spread = `acos((r^2 + (${reach})^2 - l^2) / (2 * r * ${reach}))`;
  const after = `(side * ${spread} + atan(e / ${pin}) - asin(e / (l + r))) * 180 / pi`;
  return side * evaluate(after, { ...scopeOf(g), travel: big(travel), side: big(side) });
}

/** Degrees from the top to the bottom on the way down. */
export function exactBottom(g: SliderCrank): number {
  return evaluate('180 + (asin(e / (l - r)) - asin(e / (l + r))) * 180 / pi', scopeOf(g));
}

/** mm from the top to the bottom. */
export function exactWhole(g: SliderCrank): number {
  return evaluate('sqrt((l + r)^2 - e^2) - sqrt((l - r)^2 - e^2)', scopeOf(g));
}
