import { belowKey, Key } from '../../picture/key.tsx';
import { scaleLinear } from '../../picture/scale.ts';
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
}

const EDGE = 14;
const HEIGHT = 26;

/** What is in the tank, as one bar of its parts, lying. */
export function Tank({ parts, words, top, width }: Props) {
  const there = parts.filter(({ volume }) => volume > 0);
  const total = there.reduce((sum, { volume }) => sum + volume, 0);
  const x = scaleLinear([0, Math.max(total, 1e-9)], [EDGE, width - EDGE]);
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
    </g>
  );
}
