import { arc } from 'd3-shape';
import { hundredth } from '../../maths/numeric/steps.ts';
import { CENTRE, HEIGHT, PIN, place, POINTER, RIM, WIDTH } from './places.ts';

interface Props {
  /** The reading under the pointer, and at the found top: degrees the way the disc counts onwards. */
  readonly shown: number;
  readonly top: number;
  /** Degrees from each reading to the top, and the ± of the top. */
  readonly half: number;
  readonly spread: number;
  /** What is written at a mark, 0 to 350. */
  readonly label: (mark: number) => number;
  /** Degrees after the top at which the crank stands. */
  readonly crank: number;
  /** The reading in words, in lines. */
  readonly reads: readonly string[];
}

const MARKS = Array.from({ length: 36 }, (_, i) => i * 10);
const WRITTEN = 53;
const SECTOR = [67, 85] as const;

const spoke = (angle: number, from: number, to: number): string =>
  `M${place(angle, from).join(' ')}L${place(angle, to).join(' ')}`;

const ring = arc<null>();
const between = (from: number, to: number, inner: number, outer: number): string =>
  (
    ring
      .innerRadius(inner)
      .outerRadius(outer)
      .startAngle((from * Math.PI) / 180)
      .endAngle((to * Math.PI) / 180)(null) ?? ''
  ).replaceAll(/-?\d+\.\d+(?:e-\d+)?/g, (number) => String(hundredth(Number(number))));

/** The way round to keep a word out of the barrel above and the pointer at the side. */
function clear(angle: number): number {
  const round = (((angle % 360) + 540) % 360) - 180;
  if (Math.abs(round) < 30) return round < 0 ? -30 : 30;
  if (Math.abs(round - POINTER) < 18) return POINTER + (round < POINTER ? -18 : 18);
  return round;
}

/**
 * The disc, fixed to the crank and turning with it clockwise, under a pointer that stands still.
 * Readings grow as it turns, so the figures run round it against the turning.
 */
export function Disc({ shown, top, half, spread, label, crank, reads }: Props) {
  /** Where a reading of the disc stands now, clockwise from straight up. */
  const at = (reading: number): number => POINTER + shown - reading;
  const word = place(clear(at(top)), RIM + 22);
  const tip = CENTRE.x + RIM + 1;
  return (
    <g aria-hidden="true">
      <circle class="part disc" cx={CENTRE.x} cy={CENTRE.y} r={RIM} />
      <g transform={`translate(${CENTRE.x} ${CENTRE.y})`}>
        <path class="band-stop" d={between(at(top + half), at(top - half), ...SECTOR)} />
        <path class="band-error" d={between(at(top + spread), at(top - spread), 88, RIM)} />
      </g>
      <path
        class="tick"
        d={MARKS.map((mark) => spoke(at(mark), RIM - (mark % 30 === 0 ? 10 : 6), RIM)).join('')}
      />
      {MARKS.filter((mark) => mark % 30 === 0).map((mark) => {
        const [x, y] = place(at(mark), WRITTEN);
        return (
          <text key={mark} x={x} y={y} dy="0.32em" text-anchor="middle">
            {label(mark)}
          </text>
        );
      })}
      <path class="dimension true-top" d={spoke(at(top), 89, RIM + 6)} />
      <path
        class="reading-marks"
        d={spoke(at(top - half), 89, RIM) + spoke(at(top + half), 89, RIM)}
      />
      <text class="dimension-text" x={word[0]} y={word[1]} dy="0.32em" text-anchor="middle">
        top
      </text>
      <path class="part-rod crank" d={spoke(crank, 0, PIN)} />
      <circle class="part" cx={CENTRE.x} cy={CENTRE.y} r={8} />
      <path class="part pointer" d={`M${tip} ${CENTRE.y}l12 -4H${WIDTH - 6}v8H${tip + 12}z`} />
      <text x={WIDTH - 6} y={CENTRE.y - 11} text-anchor="end">
        fixed pointer
      </text>
      {reads.map((line, row) => (
        <text
          key={line}
          class="dimension-text"
          x={WIDTH - 6}
          y={CENTRE.y + 21 + 15 * row}
          text-anchor="end"
        >
          {line}
        </text>
      ))}
      <text x={6} y={HEIGHT - 8}>
        disc and crank turn clockwise; not to scale
      </text>
    </g>
  );
}
