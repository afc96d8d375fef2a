import { demoJets } from '../../calculators/demo/jets.ts';
import { fixed } from '../../calculators/frame/text/format.ts';
import { needleDiameterAt, needleRise } from '../../calculators/maths/carburettor/needle.ts';
import { hundredth } from '../../calculators/maths/numeric/steps.ts';
import { Cut, Hatching } from '../../calculators/picture/cut.tsx';
import { Dimension } from '../../calculators/picture/dimension.tsx';
import { Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';
import { through, type Place } from './parts/polar.ts';

const needle = { diameter: demoJets.needle, taper: demoJets.taper, straight: demoJets.straight };
/** User units for a millimetre: of width, and of height. */
const WIDE = 22;
const HIGH = 5;
const MOUTH = 232;
const JET_FOOT = 372;
const PLAN = 436;
/** How much of the needle is below the mouth while the slide is shut, mm. */
const BELOW = demoJets.slideTravel + 2;
const BORE = (demoJets.needleJet / 2) * WIDE;
/** Thickness of the slide's foot, and half its width, user units. */
const PLATE = 16;
const SLIDE = 48;
const SLIDE_TOP = 44;

interface State {
  readonly words: string;
  readonly x: number;
  /** Share of the slide's travel. */
  readonly opened: number;
}

const states: readonly State[] = [
  { words: 'Slide shut', x: 84, opened: 0 },
  { words: 'Three quarters open', x: 262, opened: 0.75 },
];

const half = (rise: number): number => (needleDiameterAt(needle, Math.max(0, rise)) / 2) * WIDE;

function Panel({ words, x, opened }: State) {
  const lift = opened * demoJets.slideTravel;
  const rise = needleRise(lift, demoJets.clip, demoJets.clipPitch);
  const foot = MOUTH - 8 - lift * HIGH;
  const shelf = foot - PLATE;
  const tip = MOUTH + (BELOW - rise) * HIGH;
  const taper = MOUTH - (rise - demoJets.straight) * HIGH;
  const stem = (demoJets.needle / 2) * WIDE;
  const end = half(BELOW);
  const head = shelf - (demoJets.clip - 0.4) * demoJets.clipPitch * HIGH - 4;
  const groove = (number: number): number =>
    shelf - (demoJets.clip - number) * demoJets.clipPitch * HIGH - 2;
  const outline: Place[] = [
    [x - stem, head],
    [x - stem, taper],
    [x - end, tip - 6],
    [x, tip],
    [x + end, tip - 6],
    [x + stem, taper],
    [x + stem, head],
  ];
  const inner = half(rise);
  const wall = (side: 1 | -1): string =>
    `M${x + side * BORE} ${MOUTH}V${JET_FOOT}H${x + side * (BORE + 16)}V${MOUTH}Z`;
  return (
    <g class={opened > 0 ? 'open' : 'shut'}>
      <text class="axis-text" x={x} y={16} text-anchor="middle">
        {words}
      </text>
      <path class="liquid" d={`M${x - BORE} ${MOUTH}H${x + BORE}V${JET_FOOT}H${x - BORE}Z`} />
      <Cut d={`${wall(-1)}${wall(1)}`} hatching="needle-jet" />
      <path class="edge edge-filled needle" d={through(outline, true)} />
      <path
        class="edge slide"
        d={`M${x - SLIDE} ${SLIDE_TOP}V${foot}H${x + SLIDE}V${SLIDE_TOP}M${x - SLIDE} ${shelf}H${x - stem}M${x + stem} ${shelf}H${x + SLIDE}`}
      />
      <path
        class="edge edge-thin grooves"
        d={[1, 2, 4, 5]
          .filter((number) => groove(number) < shelf)
          .map((number) => `M${x - stem} ${groove(number)}H${x + stem}`)
          .join('')}
      />
      <path class="motion clip" d={`M${x - stem - 9} ${shelf - 2}H${x + stem + 9}`} />
      <path class="centre-line" d={`M${x} ${SLIDE_TOP - 18}V${JET_FOOT + 10}`} />
      <circle class="liquid" cx={x} cy={PLAN} r={BORE} />
      <circle class="edge jet-from-above" cx={x} cy={PLAN} r={BORE} />
      <circle
        class="edge edge-thin edge-filled needle-from-above"
        cx={x}
        cy={PLAN}
        r={hundredth(inner)}
      />
      <Dimension
        from={[x - BORE, PLAN]}
        to={[x + BORE, PLAN]}
        along="x"
        line={PLAN + BORE + 22}
        words=""
      />
      <Label words={`⌀D ${fixed(demoJets.needleJet, 2)}`} at={[x + BORE + 6, PLAN + BORE + 22]} />
      <Dimension
        from={[x - inner, PLAN]}
        to={[x + inner, PLAN]}
        along="x"
        line={PLAN + BORE + 44}
        words=""
      />
      <Label words={`⌀d ${fixed((2 * inner) / WIDE, 2)}`} at={[x + BORE + 6, PLAN + BORE + 44]} />
    </g>
  );
}

/** The needle on its clip in the slide, its jet, and the ring that is left between them. */
export default function NeedleClipAndMouth() {
  const [shut, open] = states as [State, State];
  const foot = MOUTH - 8 - open.opened * demoJets.slideTravel * HIGH;
  const taper = MOUTH - (open.opened * demoJets.slideTravel - demoJets.straight) * HIGH;
  return (
    <LineDrawing
      id="needle-and-mouth"
      title="Needle, clip and mouth of the needle jet"
      description={`The demo carburettor’s needle in its jet, twice, widths drawn larger than heights. A clip in a groove near the needle’s head rests in the foot of the slide, so that the needle hangs from the slide. With the slide shut the parallel part stands in the mouth of the jet. With the slide three quarters open the taper has come up into the mouth. Below, the mouth seen from above: the ring between the jet of ${fixed(demoJets.needleJet, 2)} and the needle is thin at first and wide afterwards.`}
      height={524}
    >
      <Hatching id="needle-jet" />
      {states.map((state) => (
        <Panel key={state.words} {...state} />
      ))}
      <Label words="in mm" at={[4, PLAN + BORE + 44]} />
      <Label words="clip" at={[146, 170]} to={[shut.x + 41, MOUTH - 8 - PLATE - 2]} ends="arrow" />
      <Label words="slide" at={[146, 66]} to={[shut.x + SLIDE, 76]} ends="arrow" />
      <Label words="mouth" at={[148, MOUTH - 14]} to={[shut.x + BORE, MOUTH]} ends="arrow" />
      <Label
        words="taper"
        at={[318, (foot + taper) / 2 + 30]}
        to={[open.x + 27, taper + 2]}
        ends="arrow"
      />
      <Label words="needle jet" at={[144, 300]} to={[shut.x + BORE + 8, 316]} />
      <Label words="ring" at={[162, PLAN]} to={[open.x - BORE + 2.5, PLAN]} ends="arrow" />
    </LineDrawing>
  );
}
