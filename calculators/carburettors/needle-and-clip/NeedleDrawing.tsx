import { showFixed } from '../../frame/text/format.ts';
import type { LengthDisplay } from '../../frame/text/units.ts';
import type { TaperedNeedle } from '../../maths/carburettor/needle.ts';
import { hundredth } from '../../maths/numeric/steps.ts';
import { breakLine } from '../../picture/break-line.ts';
import { Label } from '../../picture/label.tsx';

interface Props {
  readonly needle: TaperedNeedle;
  readonly jetBore: number;
  /** Rise of the needle from its lowest place, and lift of the slide alone, mm. */
  readonly rise: number;
  readonly lift: number;
  readonly travel: number;
  readonly atMouth: number;
  readonly lengths: LengthDisplay;
}

const WIDTH = 350;
const HEIGHT = 340;
const MIDDLE = 175;
/** User units of the jet's mouth from the top. */
const MOUTH = 190;
const JET_DEPTH = 112;
const JET_WALL = 34;
/** Half the bore of the jet, in user units, whatever its size. */
const BORE = 44;
/** Half the width of the slide, which leaves room beside it for words. */
const SLIDE = 74;
/** Where the slide is broken off. */
const TOP = 18;
/** Where the names right of the jet begin. */
const NAMES = 280;
/** The strokes that make the ring as thick as it can be seen. */
const RING = [0, -3, 3] as const;

/** Needle and jet in section: widths magnified, heights to a scale of their own. */
export function NeedleDrawing(props: Props) {
  const { needle, jetBore, rise, lift, travel, atMouth, lengths } = props;
  const wide = BORE / (jetBore / 2);
  const high = 130 / (travel + 8);
  const taperStart = MOUTH - (rise - needle.straight) * high;
  const foot = MOUTH + JET_DEPTH;
  const slope = Math.tan((needle.taper * Math.PI) / 360);
  const halfAt = (y: number): number => {
    const along = Math.max(0, (y - taperStart) / high);
    return Math.max(0, needle.diameter / 2 - along * slope) * wide;
  };
  const slideFoot = MOUTH - 6 - lift * high;
  const stem = (needle.diameter / 2) * wide;
  const bend = Math.min(foot, Math.max(slideFoot, taperStart));
  const bore = MIDDLE - BORE;
  const far = MIDDLE + BORE;
  // Without an edge where it is broken off.
  const outline =
    `M${hundredth(MIDDLE - halfAt(foot))} ${foot}` +
    `L${hundredth(MIDDLE - halfAt(bend))} ${hundredth(bend)}` +
    `L${hundredth(MIDDLE - stem)} ${hundredth(slideFoot)}H${hundredth(MIDDLE + stem)}` +
    `L${hundredth(MIDDLE + halfAt(bend))} ${hundredth(bend)}` +
    `L${hundredth(MIDDLE + halfAt(foot))} ${foot}`;
  const gap = hundredth(halfAt(MOUTH));
  /** Below the start of the taper and its words where a name would stand on them. */
  const clear = (y: number): number =>
    y > taperStart - 26 && y < taperStart + 14 ? hundredth(taperStart + 14) : y;
  const say = (mm: number): string => showFixed(mm, 'mm', 3, lengths);

  return (
    <svg
      class="plot needle-drawing"
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      role="img"
      aria-label={`Needle in its jet: needle ${say(atMouth)} in a bore of ${say(jetBore)}, the slide lifted ${showFixed(lift, 'mm', 1, lengths)}`}
    >
      <path
        class="part part-moving slide"
        d={`M${MIDDLE - SLIDE} ${TOP}V${hundredth(slideFoot)}H${MIDDLE + SLIDE}V${TOP}`}
      />
      <path class="part needle" d={outline} />
      <path
        class="casting"
        d={`M${bore} ${foot}V${MOUTH}H${bore - 22}L${bore - JET_WALL} ${MOUTH + 22}V${foot}M${far} ${foot}V${MOUTH}H${far + 22}L${far + JET_WALL} ${MOUTH + 22}V${foot}`}
      />
      <path class="centre-line" d={`M${MIDDLE} 8V${foot + 10}`} />
      <path
        class="face-line break-line"
        d={
          breakLine(MIDDLE - SLIDE, MIDDLE + SLIDE, TOP) +
          breakLine(bore - JET_WALL, far + JET_WALL, foot, [bore - 17, far + 17])
        }
      />
      <path
        class="ring-line"
        d={RING.map(
          (off) =>
            `M${MIDDLE - BORE} ${MOUTH + off}H${MIDDLE - gap}M${MIDDLE + gap} ${MOUTH + off}H${MIDDLE + BORE}`,
        ).join('')}
      />
      {taperStart > slideFoot && taperStart < foot ? (
        <path
          class="dimension"
          d={`M${hundredth(MIDDLE + stem + 4)} ${hundredth(taperStart)}H${WIDTH - 6}`}
        />
      ) : null}
      {taperStart > slideFoot && taperStart < foot ? (
        <text class="dimension-text" x={WIDTH - 6} y={hundredth(taperStart) - 5} text-anchor="end">
          taper starts
        </text>
      ) : null}
      <text x={MIDDLE - SLIDE + 8} y={36}>
        slide
      </text>
      <Label words="mouth" at={[8, MOUTH]} to={[MIDDLE - BORE - 22, MOUTH]} ends="arrow" />
      <Label
        words="ring"
        at={[8, MOUTH - 30]}
        to={[hundredth(MIDDLE - (gap + BORE) / 2), MOUTH - 3]}
        ends="arrow"
      />
      <Label
        words="needle jet"
        at={[NAMES - 6, clear(MOUTH + 60)]}
        to={[MIDDLE + BORE + 20, MOUTH + 60]}
      />
      <Label
        words="needle"
        at={[8, MOUTH + 84]}
        to={[MIDDLE - halfAt(MOUTH + 70) + 10, MOUTH + 70]}
      />
      <text x={8} y={HEIGHT - 12}>
        {`needle ${say(atMouth)} in ${say(jetBore)}; widths enlarged`}
      </text>
    </svg>
  );
}
