import type { Values } from './compute.ts';

interface Preset {
  readonly name: string;
  readonly pins: readonly number[];
  readonly leans: readonly number[];
  /** Along the crank, in steps from throw to throw; one after the other unless given. */
  readonly steps?: readonly number[];
}

const row = (name: string, pins: readonly number[]): Preset => ({
  name,
  pins,
  leans: pins.map(() => 0),
});

/** Usual cranks, to start from. */
export const presets: readonly Preset[] = [
  row('Twin, 180°', [0, 180]),
  row('Twin, 360°', [0, 0]),
  row('Triple, 120°', [0, 240, 120]),
  row('Four, 180°', [0, 180, 180, 0]),
  row('Four, 90°', [0, 180, 270, 90]),
  { name: 'Vee twin, 90°', pins: [0, 0], leans: [-45, 45], steps: [0, 0] },
  { name: 'Vee four, 90°', pins: [0, 0, 180, 180], leans: [-45, 45, -45, 45], steps: [0, 0, 1, 1] },
  { name: 'Boxer twin', pins: [0, 180], leans: [-90, 90] },
];

/** What a usual crank writes into the fields: keys and figures. Throws keep the spacing they have. */
export function presetFields(
  { pins, leans, steps }: Preset,
  v: Pick<Values, 'place'>,
  usualPitch: number,
): readonly (readonly [key: string, value: number])[] {
  const places = [...v.place].sort((a, b) => a - b);
  const pitch = places.map((place, i) => place - places[i - 1]!).find((step) => step > 0);
  return [
    ['cylinders', pins.length],
    ...pins.map((pin, i) => [`pin-${String(i + 1)}`, pin] as const),
    ...leans.map((lean, i) => [`lean-${String(i + 1)}`, lean] as const),
    ...pins.flatMap((_, i) => {
      const place = (steps?.[i] ?? i) * (pitch ?? usualPitch);
      // One that stands there already stays whose it is.
      return place === (v.place[i] ?? i * usualPitch)
        ? []
        : [[`place-${String(i + 1)}`, place] as const];
    }),
  ];
}
