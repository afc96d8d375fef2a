import type { TargetedKeyboardEvent } from 'preact';
import { MOST, type Bench } from '../../calculators/practice/bench.ts';
import { discShows } from '../../calculators/practice/instruments.ts';
import type { Engine } from '../../calculators/practice/engine.ts';
import { useRound, type Round } from './use-round.ts';
import { useLengths } from './lengths.ts';
import { discWords, signed, standsWords } from './words.ts';

interface Props extends Pick<Round, 'centre'> {
  readonly engine: Engine;
  readonly bench: Bench;
  readonly rim: number;
  /** Where the wire is held, and how far the words beside it reach. */
  readonly held: number;
  readonly width: number;
  readonly bend: (by: number) => void;
}

const STEPS: Readonly<Record<string, number>> = {
  ArrowRight: 0.25,
  ArrowUp: 0.25,
  ArrowLeft: -0.25,
  ArrowDown: -0.25,
  PageUp: 2,
  PageDown: -2,
};
/** Half of what a finger covers. */
const REACH = 26;

/** The pointer that the disc is read by: held on the case, its tip bent along the rim. */
export function Pointer({ engine, bench, centre, rim, held, width, bend }: Props) {
  const lengths = useLengths();
  const drag = useRound({ centre, move: bend });
  const name = engine.task === 'disc' ? 'pointer A' : 'pointer';
  const turn = (bench.pointer * Math.PI) / 180;
  const at = (radius: number, aside: number): string =>
    `${(centre.x + radius * Math.cos(turn) - aside * Math.sin(turn)).toFixed(1)} ${(centre.y + radius * Math.sin(turn) + aside * Math.cos(turn)).toFixed(1)}`;
  const key = (event: TargetedKeyboardEvent<SVGGElement>): void => {
    const by = STEPS[event.key];
    if (by === undefined) return;
    event.preventDefault();
    bend(by);
  };
  return (
    <g
      class="bent-pointer"
      role="slider"
      tabindex={0}
      aria-label={`${name[0]!.toUpperCase()}${name.slice(1)}, to be bent`}
      aria-valuemin={-MOST.pointer}
      aria-valuemax={MOST.pointer}
      aria-valuenow={bench.pointer}
      aria-valuetext={`${standsWords(bench, 'pointer', lengths)}, disc ${discWords(discShows(engine, bench))}`}
      onKeyDown={key}
      {...drag}
    >
      <rect
        class="pointer-hit"
        x={centre.x + rim + 3}
        y={centre.y - REACH}
        width={width - centre.x - rim - 6}
        height={2 * REACH}
        rx={4}
      />
      <path
        class="part pointer"
        d={`M${at(rim - 8, 0)}L${at(rim + 8, -5)}L${held} ${centre.y - 5}v10L${at(rim + 8, 5)}z`}
      />
      <circle class="part" cx={held} cy={centre.y} r={4} />
      <text x={held + 8} y={centre.y + (bench.pointer === 0 ? 4 : -2)}>
        {name}
      </text>
      {bench.pointer !== 0 && (
        <text x={held + 8} y={centre.y + 14}>
          {signed(bench.pointer, 2)}°
        </text>
      )}
    </g>
  );
}
