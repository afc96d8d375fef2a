import { fixed } from '../../frame/text/format.ts';
import { belowKey, Key } from '../../picture/common/key.tsx';
import { scaleLinear } from '../../picture/chart/scale.ts';
import { hundredth } from '../../maths/numeric/steps.ts';

interface Part {
  readonly words: string;
  /** Litres. */
  readonly volume: number;
  /** Class of its patch. */
  readonly look: string;
}

interface Props {
  readonly parts: readonly Part[];
  /** What it makes together. */
  readonly words: string;
  readonly top: number;
  readonly width: number;
  /** Where the bar begins and ends: under the axis of the field above it. */
  readonly left: number;
  readonly right: number;
  /** Room down to the edge of the picture. */
  readonly room: number;
}

const HEIGHT = 26;
/** What the line of its ends takes below it. */
const ENDS = 20;

/** What is in the tank, as one bar of its parts, lying. */
export function Tank({ parts, words, top, width, left, right, room }: Props) {
  const there = parts.filter(({ volume }) => volume > 0);
  const total = there.reduce((sum, { volume }) => sum + volume, 0);
  const x = scaleLinear([0, Math.max(total, 1e-9)], [left, right]);
  const entries = there.map(({ look, words: name }) => ({
    as: 'area' as const,
    look: `tank-part ${look}`,
    words: name,
  }));
  const bar = belowKey(entries, width) + 26;
  let at = 0;
  return (
    <g transform={`translate(0 ${String(top)})`} aria-hidden="true">
      <text x={6} y={10}>
        {words}
      </text>
      <g transform="translate(0 18)">
        <Key entries={entries} width={width} />
      </g>
      {there.map(({ words: name, volume, look }) => {
        const from = x(at);
        at += volume;
        return (
          <rect
            key={name}
            class={`tank-part ${look}`}
            x={hundredth(from)}
            y={bar}
            width={hundredth(x(at) - from)}
            height={HEIGHT}
          />
        );
      })}
      {bar + HEIGHT + ENDS > room ? null : (
        <>
          <text x={left} y={bar + HEIGHT + 15} text-anchor="middle">
            0
          </text>
          <text x={right} y={bar + HEIGHT + 15} text-anchor="end">
            {`${fixed(total, 2)} litres`}
          </text>
        </>
      )}
    </g>
  );
}
