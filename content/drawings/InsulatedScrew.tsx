import { Cut, Hatching } from '../../calculators/picture/cut.tsx';
import { Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';

/** Half widths: of the screw's thread, of the hole in the set, of washers and of tags. */
const [THREAD, HOLE, WASHER, TAG, EDGE] = [9, 16, 32, 24, 40] as const;
const LEFT = 60;
const RIGHT = 282;

interface Tops {
  readonly x: number;
  readonly head: number;
  readonly spring: number;
  readonly upper: number;
  readonly bush: number;
  readonly set: number;
  readonly lower: number;
  readonly tags: readonly [number, number];
  readonly nut: number;
  /** From the head down to the end of the thread. */
  readonly long: number;
}

const apart: Tops = {
  x: LEFT,
  head: 28,
  spring: 116,
  upper: 146,
  bush: 180,
  set: 226,
  lower: 274,
  tags: [308, 338],
  nut: 368,
  long: 62,
};
const together: Tops = {
  x: RIGHT,
  head: 170,
  spring: 184,
  upper: 188,
  bush: 196,
  set: 196,
  lower: 214,
  tags: [222, 226],
  nut: 230,
  long: 84,
};

/** What lies on both sides of the screw, cut, or whole where the parts stand apart. */
const sides = (x: number, y: number, inner: number, outer: number, high: number): string =>
  [-1, 1]
    .map((side) => `M${x + side * inner} ${y}H${x + side * outer}v${high}H${x + side * inner}Z`)
    .join('');

function Stack({ at, id }: { readonly at: Tops; readonly id: string }) {
  const { x } = at;
  return (
    <g>
      <Hatching id={id} />
      <path class="edge edge-filled" d={sides(x, at.spring, THREAD, TAG, 4)} />
      <path class="part" d={sides(x, at.upper, THREAD, WASHER, 8)} />
      <Cut d={sides(x, at.set, HOLE, EDGE, 18)} hatching={id} />
      <path class="part" d={sides(x, at.bush, THREAD, HOLE, 18)} />
      <path class="part" d={sides(x, at.lower, THREAD, WASHER, 8)} />
      {at.tags.map((y) => (
        <path key={y} class="edge edge-filled" d={sides(x, y, THREAD, TAG, 4)} />
      ))}
      <path
        class="edge edge-filled"
        d={`M${x - 20} ${at.head}h40v14h${THREAD - 20}v${at.long}h${-2 * THREAD}v${-at.long}h${THREAD - 20}z`}
      />
      <path class="edge edge-filled" d={sides(x, at.nut, THREAD, 20, 14)} />
      <path
        class="centre-line"
        d={`M${x} ${at.head - 8}V${Math.max(at.nut + 22, at.head + at.long + 22)}`}
      />
    </g>
  );
}

/** The insulated screw of a set taken apart, in the order in which it goes together, and assembled. */
export default function InsulatedScrew() {
  const name = LEFT + EDGE + 14;
  return (
    <LineDrawing
      id="insulated-screw"
      title="The live screw of a set, taken apart and together, cut"
      description="On the left the parts in their order from the head of the screw down: screw, end of the spring, insulating washer, insulating bush, the upright of the set with the hole that takes the bush, second insulating washer, tag of the coil’s wire, tag of the condenser, nut. On the right the same together. Screw, spring, tags and nut touch one another and nothing of the set: the bush stands between screw and set, a washer on either side of it. Blue is insulation; hatched is the set, which is earthed."
      height={402}
    >
      <Stack at={apart} id="insulated-apart" />
      <Stack at={together} id="insulated-together" />
      <text class="axis-text" x={4} y={16}>
        Apart
      </text>
      <text class="axis-text" x={RIGHT - EDGE} y={16}>
        Together
      </text>
      <Label words="screw" at={[name, 58]} to={[LEFT + THREAD - 3, 68]} />
      <Label words="spring" at={[name, 118]} to={[LEFT + TAG, 118]} ends="arrow" />
      <Label words="washer" at={[name, 150]} to={[LEFT + WASHER - 6, 150]} />
      <Label words="bush" at={[name, 189]} to={[LEFT + HOLE - 2, 189]} />
      <Label words="set, earthed" at={[name, 235]} to={[LEFT + EDGE - 6, 235]} />
      <Label words="washer" at={[name, 278]} to={[LEFT + WASHER - 6, 278]} />
      <Label words="tag, coil" at={[name, 310]} to={[LEFT + TAG, 310]} ends="arrow" />
      <Label words="tag, condenser" at={[name, 340]} to={[LEFT + TAG, 340]} ends="arrow" />
      <Label words="nut" at={[name, 375]} to={[LEFT + 16, 375]} />
    </LineDrawing>
  );
}
