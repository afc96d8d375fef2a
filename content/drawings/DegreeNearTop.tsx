import { demoEngine } from '../../calculators/demo/engine.ts';
import { fixed } from '../../calculators/frame/text/format.ts';
import { travelBefore } from '../../calculators/maths/crank/slider-crank.ts';
import { evenly, hundredth } from '../../calculators/maths/numeric/steps.ts';
import { Cut, Hatching } from '../../calculators/picture/cut.tsx';
import { Dimension } from '../../calculators/picture/dimension.tsx';
import { Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';

const { stroke, rod } = demoEngine;
const engine = { stroke, rodLength: rod, pinOffset: 0 };
/** User units for a millimetre of the engine. */
const SCALE = 150;
const TOP = 36;
const FROM = 20;
const WALL = { from: 64, to: 82 } as const;
const END = 200;
const LINE = 252;
const FOOT = 376;

const edgeAt = (degrees: number): number => hundredth(TOP + SCALE * travelBefore(engine, degrees));
/** What the piston rises while the crank turns one degree on towards the top, mm. */
const worth = (degrees: number): number =>
  travelBefore(engine, degrees) - travelBefore(engine, degrees - 1);

/** Where the crown's edge stands at each degree before the top, enlarged. */
export default function DegreeNearTop() {
  const crown = edgeAt(FROM);
  return (
    <LineDrawing
      id="degree-near-top"
      title="Where the edge of the crown stands at each degree before the top"
      description={`The wall of the bore and the edge of the piston’s crown, enlarged, to scale for the demo engine. One line for each degree from ${FROM} before the top up to the top. From 20 to 19 degrees the crown rises ${fixed(worth(20), 2)} millimetres, from 5 to 4 degrees only ${fixed(worth(5), 2)}. In the last two degrees the lines run together.`}
      height={FOOT}
    >
      <Hatching id="near-top-wall" />
      <Hatching id="near-top-piston" leans="left" />
      <Cut d={`M${WALL.from} 10H${WALL.to}V${FOOT - 4}H${WALL.from}Z`} hatching="near-top-wall" />
      <Cut
        d={`M${WALL.to + 3} ${crown}H${END}V${FOOT - 4}H${WALL.to + 3}Z`}
        hatching="near-top-piston"
      />
      <path
        class="edge edge-thin"
        d={evenly(1, FROM - 1, FROM - 2)
          .map((degrees) => `M${WALL.to + 3} ${edgeAt(degrees)}H${degrees % 5 ? END - 24 : END}`)
          .join('')}
      />
      <path class="edge" d={`M${WALL.to + 3} ${TOP}H${END}`} />
      {[5, 20].map((degrees) => (
        <g key={degrees}>
          <path
            class="motion"
            d={`M${WALL.to + 3} ${edgeAt(degrees)}H${END}M${WALL.to + 3} ${edgeAt(degrees - 1)}H${END}`}
          />
          <Dimension
            from={[END + 30, edgeAt(degrees)]}
            to={[END + 30, edgeAt(degrees - 1)]}
            along="y"
            line={LINE}
            words={`${fixed(worth(degrees), 2)} mm`}
          />
          <Label
            words={`${degrees}° to ${degrees - 1}°`}
            at={[LINE + 6, (edgeAt(degrees) + edgeAt(degrees - 1)) / 2 + 17]}
          />
        </g>
      ))}
      {[0, 5, 10, 15, 20].map((degrees) => (
        <Label key={degrees} words={`${degrees}°`} at={[END + 5, edgeAt(degrees)]} />
      ))}
      <Dimension
        from={[WALL.from, TOP]}
        to={[WALL.from, TOP + SCALE]}
        along="y"
        line={50}
        words="1 mm"
        side="left"
      />
      <Label words="the top" at={[238, 14]} to={[END - 8, TOP]} ends="arrow" />
      <Label words="bore" at={[10, 260]} to={[WALL.from + 8, 286]} />
      <Label words="piston" at={[238, 364]} to={[END - 20, 356]} />
    </LineDrawing>
  );
}
