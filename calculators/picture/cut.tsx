interface HatchingProps {
  /** Unique on the page. */
  readonly id: string;
  /** Which way its lines lean; parts that meet lean apart. */
  readonly leans?: 'right' | 'left';
  /** From line to line, user units. */
  readonly pitch?: number;
}

/** The hatching of a metal part that is cut, at 45° (ISO 128-3). */
export function Hatching({ id, leans = 'right', pitch = 6 }: HatchingProps) {
  return (
    <pattern
      id={id}
      patternUnits="userSpaceOnUse"
      width={pitch}
      height={pitch}
      patternTransform={`rotate(${leans === 'right' ? 45 : -45})`}
    >
      <path class="hatching" d={`M0 0V${pitch}`} />
    </pattern>
  );
}

/** A cut part: its outline in a wide line, filled with the hatching of that id. */
export function Cut({ d, hatching }: { readonly d: string; readonly hatching: string }) {
  return <path class="cut" d={d} fill={`url(#${hatching})`} />;
}
