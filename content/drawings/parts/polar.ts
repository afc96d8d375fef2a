import { hundredth } from '../../../calculators/maths/numeric/steps.ts';

export type Place = readonly [x: number, y: number];

/** A place by its distance from a centre and its direction, degrees clockwise from straight up. */
export const polar =
  ([cx, cy]: Place) =>
  (radius: number, direction: number): Place => [
    hundredth(cx + radius * Math.sin((direction * Math.PI) / 180)),
    hundredth(cy - radius * Math.cos((direction * Math.PI) / 180)),
  ];

/** A line through places in user units, as a path. */
export const through = (places: readonly Place[], shut = false): string =>
  `M${places.map((place) => place.map(hundredth).join(' ')).join('L')}${shut ? 'Z' : ''}`;
