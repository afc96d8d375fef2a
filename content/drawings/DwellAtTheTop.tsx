import { demoEngine } from '../../calculators/demo/engine.ts';
import { fixed } from '../../calculators/frame/text/format.ts';
import { dwellAtTop } from '../../calculators/maths/crank/find-tdc.ts';
import { travelAt } from '../../calculators/maths/crank/slider-crank.ts';
import { evenly, hundredth } from '../../calculators/maths/numeric/steps.ts';
import { Line } from '../../calculators/picture/chart/curve.tsx';
import { Dimension } from '../../calculators/picture/dimension.tsx';
import { Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';

const engine = { stroke: demoEngine.stroke, rodLength: demoEngine.rod, pinOffset: 0 };
/** Degrees either way of the top, and how far down is drawn, mm. */
const REACH = 8;
const DEEP = 0.32;
/** The least travel that a good indicator shows, mm. */
const SEEN = 0.01;
const FIELD = { left: 58, right: 340, top: 62, foot: 242 } as const;

const x = (degrees: number): number =>
  hundredth(FIELD.left + ((degrees + REACH) / (2 * REACH)) * (FIELD.right - FIELD.left));
const y = (travel: number): number =>
  hundredth(FIELD.top + (travel / DEEP) * (FIELD.foot - FIELD.top));

/** The height of the crown on either side of the top, and how long it seems to stand still. */
export default function DwellAtTheTop() {
  const half = dwellAtTop(engine, SEEN) / 2;
  const { left, right, top, foot } = FIELD;
  return (
    <LineDrawing
      id="dwell-at-top"
      title="How far the piston is down on either side of the top"
      description={`A curve to scale for the demo engine: the crank’s angle from ${REACH} degrees before the top to ${REACH} after it, and how far the piston is down, to ${fixed(DEEP, 2)} millimetres. Near the top the curve is flat. For ${fixed(2 * half, 1)} degrees the piston is less than ${fixed(SEEN, 2)} millimetres down, which is all that a good indicator shows. Twice as far from the top it is four times as far down.`}
      height={290}
    >
      <path class="grid" d={[4, -4].map((each) => `M${x(each)} ${top}V${foot}`).join('')} />
      <path
        class="axis-line"
        d={`M${left} ${top}V${foot}H${right}${[-8, -4, 0, 4, 8].map((each) => `M${x(each)} ${foot}v5`).join('')}${[0.1, 0.2, 0.3].map((each) => `M${left} ${y(each)}h-5`).join('')}`}
      />
      <path class="band-error" d={`M${x(-half)} ${top}H${x(half)}V${foot}H${x(-half)}Z`} />
      <Line
        look="curve"
        points={evenly(-REACH, REACH, 80)
          .map((angle): [number, number] => [angle, travelAt(engine, angle)])
          .filter(([, down]) => down <= DEEP)
          .map(([angle, down]): [number, number] => [x(angle), y(down)])}
      />
      <path class="centre-line" d={`M${x(0)} ${top - 8}V${foot}`} />
      <Dimension
        from={[x(-half), top]}
        to={[x(half), top]}
        along="x"
        line={40}
        words={`${fixed(2 * half, 1)}°`}
      />
      <Label words="dwell at the top" at={[4, 14]} to={[x(-half) + 6, 36]} ends="arrow" />
      {[-8, -4, 0, 4, 8].map((each) => (
        <text key={each} x={x(each)} y={foot + 19} text-anchor="middle">
          {each === 0 ? 'top' : Math.abs(each)}
        </text>
      ))}
      {[0.1, 0.2, 0.3].map((each) => (
        <text key={each} x={left - 9} y={y(each) + 4} text-anchor="end">
          {fixed(each, 1)}
        </text>
      ))}
      <text x={left} y={foot + 40}>
        degrees before
      </text>
      <text x={right} y={foot + 40} text-anchor="end">
        and after the top
      </text>
      <text x={8} y={top - 10}>
        mm down
      </text>
      {[4, 8].map((angle) => (
        <circle
          key={angle}
          class="leader-end"
          cx={x(angle)}
          cy={y(travelAt(engine, angle))}
          r={3}
        />
      ))}
      <Label
        words={`${fixed(travelAt(engine, 4), 2)}`}
        at={[x(4) + 8, y(travelAt(engine, 4)) - 6]}
      />
      <Label
        words={`${fixed(travelAt(engine, 8), 2)}`}
        at={[x(8) - 14, y(travelAt(engine, 8)) - 4]}
        anchor="end"
      />
    </LineDrawing>
  );
}
