import { demoTop } from '../../calculators/demo/top.ts';
import { fixed } from '../../calculators/frame/text/format.ts';
import { tdcReading } from '../../calculators/maths/crank/find-tdc.ts';
import { evenly } from '../../calculators/maths/numeric/steps.ts';
import { Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';
import { Turn } from './parts/motion.tsx';
import { polar } from './parts/polar.ts';

const CELL = 178;
const ROW = 226;
const DISC = 66;
const CENTRE = [89, 148] as const;
const at = polar(CENTRE);

const { before, after } = demoTop;
/** Past the zero, degrees. */
const top = tdcReading(before, after);

const bothWays = (mark: number): string => `${mark > 180 ? 360 - mark : mark}`;
const oneWay = (mark: number): string => `${mark}`;

interface ViewProps {
  readonly x: number;
  readonly y: number;
  /** How far the disc's zero has gone past the pointer, degrees; before it with a minus. */
  readonly past: number;
  readonly words: string;
  readonly write: (mark: number) => string;
}

/** The disc turned with the crank until it shows one reading under the fixed pointer. */
function View({ x, y, past, words, write }: ViewProps) {
  const side = past < 0 ? -1 : 1;
  return (
    <g transform={`translate(${x} ${y})`}>
      <circle class="edge edge-filled" cx={CENTRE[0]} cy={CENTRE[1]} r={DISC} />
      <path
        class="edge edge-thin"
        d={evenly(0, 350, 35)
          .map((mark) => {
            const [long, place] = [mark % 60 === 0 ? 10 : 5, past - mark];
            return `M${at(DISC, place).join(' ')}L${at(DISC - long, place).join(' ')}`;
          })
          .join('')}
      />
      {evenly(0, 300, 5).map((mark) => (
        <Label key={mark} words={write(mark)} at={at(DISC - 24, past - mark)} anchor="middle" />
      ))}
      <circle class="edge" cx={CENTRE[0]} cy={CENTRE[1]} r={7} />
      <Turn centre={CENTRE} radius={18} from={-60} to={60} />
      <path
        class="motion"
        d={`M${at(DISC, past - top).join(' ')}L${at(DISC + 9, past - top).join(' ')}`}
      />
      <path class="leader-end" d={`M${CENTRE[0]} ${CENTRE[1] - DISC + 3}l-5 -20h10z`} />
      <text class="axis-text" x={CENTRE[0]} y={40} text-anchor="middle">
        {words}
      </text>
      <Label
        words="true top"
        at={[CENTRE[0] + side * 84, 66]}
        anchor={side < 0 ? 'start' : 'end'}
        to={at(DISC + 9, past - top)}
        ends="arrow"
      />
    </g>
  );
}

/** The same two readings, on a disc that counts both ways from zero and on one that goes on to 360. */
export default function TwoDiscScales() {
  const [past, short] = [fixed(after, 0), fixed(before, 0)];
  return (
    <LineDrawing
      id="two-disc-scales"
      title="The same two readings on two kinds of degree disc"
      description={`Four views of a disc on the crank under a pointer that stands still; the arrow shows the way the engine runs. Above, a disc that counts both ways from zero: the pointer shows ${short} before the zero, then ${past} after it. Below, a disc that counts one way round: in the same two places the pointer shows ${360 - before} and ${past}. The true top lies halfway, ${fixed(Math.abs(top), 0)} degrees before the zero, ${fixed(360 + top, 0)} on the lower disc.`}
      height={2 * ROW}
    >
      <text class="axis-text" x={4} y={16}>
        Counts both ways from zero
      </text>
      <View x={0} y={0} past={-before} words={`before: ${short}`} write={bothWays} />
      <View x={CELL} y={0} past={after} words={`after: ${past}`} write={bothWays} />
      <Label
        words="pointer"
        at={[CELL, 62]}
        anchor="middle"
        to={[CENTRE[0] + 5, 68]}
        ends="arrow"
      />
      <text class="axis-text" x={4} y={ROW + 16}>
        Counts one way round
      </text>
      <View x={0} y={ROW} past={-before} words={`before: ${360 - before}`} write={oneWay} />
      <View x={CELL} y={ROW} past={after} words={`after: ${past}`} write={oneWay} />
    </LineDrawing>
  );
}
