import type { SlidesBench } from '../../calculators/practice/slides.ts';

interface Props {
  readonly bench: SlidesBench;
  readonly drill: number;
}

const WIDTH = 360;
const HEIGHT = 250;
/** Pixels for a mm. */
const SCALE = 3.6;
const BORE = 24;

/** Three bores seen along them, each with its slide and the shank in hand under one of them. */
export function SlidesDrawing({ bench, drill }: Props) {
  const r = (BORE / 2) * SCALE;
  const y = 150;
  return (
    <svg
      class="plot"
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      role="img"
      aria-label={`Three bores seen along them; the shank is under slide ${bench.slide + 1}`}
    >
      {bench.stands.map((stands, i) => {
        const x = 66 + 114 * i;
        const edge = Math.round(y + r - stands * SCALE);
        const turn = (bench.turns[i]! * 360) % 360;
        return (
          <g key={i}>
            <clipPath id={`bore-${i}`}>
              <circle cx={x} cy={y} r={r} />
            </clipPath>
            <circle class="hollow" cx={x} cy={y} r={r} />
            <g clip-path={`url(#bore-${i})`}>
              <path class="part" d={`M${x - r} ${y - r}h${2 * r}V${edge}h${-2 * r}z`} />
              {i === bench.slide && (
                <circle
                  class="leaf"
                  cx={x}
                  cy={y + r - (drill * SCALE) / 2}
                  r={(drill * SCALE) / 2}
                />
              )}
            </g>
            <path class="part" d={`M${x - 9} ${y - r - 26}h18v26h-18z`} />
            <circle class="part" cx={x} cy={34} r={20} />
            <path class="dial-hand" d={`M${x} 34v-17`} transform={`rotate(${turn} ${x} 34)`} />
            <text x={x} y={HEIGHT - 8} text-anchor="middle">
              {i === bench.slide ? `slide ${i + 1}, shank` : `slide ${i + 1}`}
            </text>
          </g>
        );
      })}
    </svg>
  );
}
