import { DEMO_CYLINDERS } from '../../calculators/demo/engine.ts';
import { headPlan } from '../../calculators/maths/plate/dividing.ts';
import { evenly } from '../../calculators/maths/numeric/steps.ts';
import { Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';
import { inputs } from '../../calculators/plate/plate-layout/inputs.ts';
import { Turn } from './parts/motion.tsx';
import { polar, through, type Place } from './parts/polar.ts';

const worm = inputs.worm.default;
const plan = headPlan([0, 360 / DEMO_CYLINDERS], worm, inputs.circles.default);
const { turns, holes } = plan.settings[1]!;
const space = 360 / plan.circle;

const PLATE: Place = [126, 152];
const at = polar(PLATE);
const [RIM, CIRCLE, OTHER] = [108, 88, 66];
/** Holes of another circle on the same plate. */
const OTHER_HOLES = 20;
/** Where the plunger stands, degrees clockwise from straight up. */
const START = -2 * space;

const WHEEL: Place = [126, 379];
const onWheel = polar(WHEEL);
const [TIP, ROOT, WORK] = [64, 58, 42];

const arm = (on: number): string => {
  const [tip, base] = [at(RIM - 4, on), at(20, on)];
  return `M${base.join(' ')}L${tip.join(' ')}`;
};

/** The index plate of a dividing head from its front, and what its crank turns. */
export default function DividingHead() {
  const beside = START - space / 2;
  const [here, next] = [at(CIRCLE, START), at(CIRCLE, START + holes * space)];
  const worms = evenly(0, 9, 9);
  return (
    <LineDrawing
      id="dividing-head"
      title="A dividing head: the crank, its circle of holes, worm and wheel"
      description={`Two drawings. Above, the index plate from its front: the crank’s plunger stands in a hole of the circle of ${plan.circle}. From set to set of ${DEMO_CYLINDERS} the crank makes ${turns} whole turns and goes on by ${holes} holes, always the same way. Two sector arms stand so that ${holes} spaces lie between them. Below, the shaft of the crank carries a worm that turns a wheel of ${worm} teeth, one tooth a turn; the blank turns with the wheel.`}
      height={456}
    >
      <text class="axis-text" x={4} y={16}>
        {`${turns} turns and ${holes} holes of the circle of ${plan.circle}`}
      </text>
      <circle class="edge edge-filled" cx={PLATE[0]} cy={PLATE[1]} r={RIM} />
      {evenly(0, plan.circle - 1, plan.circle - 1).map((hole) => {
        const [x, y] = at(CIRCLE, START + hole * space);
        return <circle key={hole} class="edge edge-thin" cx={x} cy={y} r={4} />;
      })}
      {evenly(0, OTHER_HOLES - 1, OTHER_HOLES - 1).map((hole) => {
        const [x, y] = at(OTHER, (hole * 360) / OTHER_HOLES);
        return <circle key={hole} class="edge edge-thin" cx={x} cy={y} r={3} />;
      })}
      <path class="edge" d={`${arm(beside)}${arm(START + (holes + 0.5) * space)}`} />
      <path
        class="edge edge-filled"
        d={through(
          [
            at(12, START - 90),
            at(CIRCLE + 8, START - 5),
            at(CIRCLE + 8, START + 5),
            at(12, START + 90),
          ],
          true,
        )}
      />
      <circle class="edge edge-filled" cx={PLATE[0]} cy={PLATE[1]} r={14} />
      <circle class="joint" cx={here[0]} cy={here[1]} r={5} />
      <circle class="motion" cx={next[0]} cy={next[1]} r={8} />
      <Turn centre={PLATE} radius={46} from={START + 24} to={START + holes * space} />
      <Label words="crank" at={[4, 40]} to={at(58, START)} />
      <Label words="plunger" at={[252, 40]} to={at(CIRCLE, START)} />
      <Label words="sector arm" at={[252, 172]} to={at(RIM - 24, START + (holes + 0.5) * space)} />
      <path
        class="edge edge-thin edge-filled"
        d={through(
          evenly(0, worm * 4 - 1, worm * 4 - 1).map((corner) =>
            onWheel(corner % 4 < 2 ? TIP : ROOT, ((corner - 0.5) * 90) / worm),
          ),
          true,
        )}
      />
      <circle class="edge edge-filled" cx={WHEEL[0]} cy={WHEEL[1]} r={WORK} />
      <circle class="edge" cx={WHEEL[0]} cy={WHEEL[1]} r={12} />
      {evenly(0, DEMO_CYLINDERS - 1, DEMO_CYLINDERS - 1).map((set) => {
        const [a, b] = [onWheel(WORK - 14, set * 120), onWheel(WORK, set * 120)];
        return <path key={set} class="edge edge-thin" d={`M${a.join(' ')}L${b.join(' ')}`} />;
      })}
      <path class="edge edge-filled" d="M70 302h112v18h-112z" />
      <path class="edge edge-thin" d={worms.map((i) => `M${78 + i * 11} 302l-6 18`).join('')} />
      <path
        class="edge edge-filled"
        d="M182 307h96v8h-96zM250 288h7v46h-7zM278 303h6v16h-6zM278 276h6v30h-6zM284 276h34v9h-34z"
      />
      <Label
        words="next hole"
        at={[252, 82]}
        to={at(CIRCLE + 8, START + holes * space)}
        ends="arrow"
      />
      <Label words="index plate" at={[252, 226]} to={at(RIM, 112)} ends="arrow" />
      <Label words="worm" at={[4, 290]} to={[82, 311]} />
      <Label words={`wheel, ${worm} teeth`} at={[216, 372]} to={onWheel(ROOT - 6, 78)} />
      <Label words="blank" at={[216, 404]} to={onWheel(WORK - 8, 112)} />
      <Label words="crank" at={[352, 318]} anchor="end" to={[282, 296]} />
    </LineDrawing>
  );
}
