import { demoBarrel } from '../../calculators/demo/barrel.ts';
import { demoEngine } from '../../calculators/demo/engine.ts';
import { fixed } from '../../calculators/frame/text/format.ts';
import { crownPort } from '../../calculators/maths/cylinder/port-timing.ts';
import { hundredth } from '../../calculators/maths/numeric/steps.ts';
import { Dimension } from '../../calculators/picture/dimension.tsx';
import { Label } from '../../calculators/picture/label.tsx';
import { DRAWING_WIDTH, LineDrawing } from '../../calculators/picture/line-drawing.tsx';

const { stroke, rod, offset } = demoEngine;
const barrel = { stroke, rodLength: rod, pinOffset: offset, deckClearance: demoBarrel.deck };
const opens = crownPort(barrel, demoBarrel.exhaust).opens;

/** User units for a millimetre, both along the wall and down it. */
const SCALE = 2;
const DECK = 44;
const FOOT = DECK + 94 * SCALE;
const MIDDLE = DRAWING_WIDTH / 2;
const half = hundredth((Math.PI * demoBarrel.bore * SCALE) / 2);
const [LEFT, RIGHT] = [MIDDLE - half, MIDDLE + half];
/** Widths of the windows and where the transfers' middles stand, mm along the wall. */
const WIDE = { exhaust: 34, transfer: 26, inlet: 34 } as const;
const TRANSFER = 44;

const down = (height: number): number => hundredth(DECK + height * SCALE);
const across = (along: number): number => hundredth(MIDDLE + along * SCALE);
const crown = down(demoBarrel.exhaust);

const windowAt = (along: number, wide: number, edge: number, high: number): string =>
  `M${across(along - wide / 2)} ${down(edge)}h${wide * SCALE}v${high * SCALE}h${-wide * SCALE}Z`;

/** The wall of the bore rolled out, the crown's edge at the top of the exhaust. */
export default function PortsUnrolled() {
  const inletTop = demoBarrel.inlet - demoBarrel.inletHeight;
  const halfInlet = (WIDE.inlet / 2) * SCALE;
  return (
    <LineDrawing
      id="ports-unrolled"
      title="The wall of the bore rolled out flat, with its ports"
      description={`The wall of the demo barrel, cut open down the middle of the inlet and rolled out, to scale. The exhaust port is in the middle, a transfer port on either side of it, half of the inlet at each end. The crown’s edge lies level with the top of the exhaust, ${fixed(demoBarrel.exhaust, 1)} millimetres below the deck: the exhaust is about to open, ${fixed(opens, 1)} degrees after the top. The piston, shaded, still covers the transfers, whose top is at ${fixed(demoBarrel.transfer, 0)}, and the inlet, whose bottom edge is at ${fixed(demoBarrel.inlet, 1)}.`}
      height={FOOT + 62}
    >
      <path class="edge" d={`M${LEFT} ${DECK}H${RIGHT}V${FOOT}H${LEFT}Z`} />
      <path
        class="edge"
        d={
          windowAt(0, WIDE.exhaust, demoBarrel.exhaust, demoBarrel.exhaustHeight) +
          windowAt(-TRANSFER, WIDE.transfer, demoBarrel.transfer, demoBarrel.transferHeight) +
          windowAt(TRANSFER, WIDE.transfer, demoBarrel.transfer, demoBarrel.transferHeight) +
          `M${LEFT} ${down(inletTop)}h${halfInlet}V${down(demoBarrel.inlet)}H${LEFT}` +
          `M${RIGHT} ${down(inletTop)}h${-halfInlet}V${down(demoBarrel.inlet)}H${RIGHT}`
        }
      />
      <path
        class="piston-over"
        d={`M${LEFT} ${crown}H${RIGHT}V${down(demoBarrel.exhaust + demoBarrel.skirt)}H${LEFT}Z`}
      />
      <path
        class="edge edge-thin"
        d={`M${LEFT} ${down(demoBarrel.exhaust + demoBarrel.skirt)}H${RIGHT}`}
      />
      <path class="motion crown" d={`M${LEFT} ${crown}H${RIGHT}`} />
      <Dimension
        from={[across(-24), DECK]}
        to={[across(-24), crown]}
        along="y"
        line={across(-24)}
        words={fixed(demoBarrel.exhaust, 1)}
        side="left"
      />
      <Dimension
        from={[across(TRANSFER), DECK]}
        to={[across(TRANSFER), down(demoBarrel.transfer)]}
        along="y"
        line={across(TRANSFER)}
        words={fixed(demoBarrel.transfer, 0)}
      />
      <Dimension
        from={[LEFT + halfInlet, DECK]}
        to={[LEFT + halfInlet, down(demoBarrel.inlet)]}
        along="y"
        line={LEFT + halfInlet + 7}
        words={fixed(demoBarrel.inlet, 1)}
        side="left"
      />
      <Label words="deck" at={[LEFT, 14]} to={[LEFT + 16, DECK]} ends="arrow" />
      <Label
        words={`crown’s edge, ${fixed(opens, 1)}° after the top`}
        at={[352, 14]}
        anchor="end"
        to={[across(24), crown]}
        ends="arrow"
      />
      <Label
        words="exhaust port"
        at={[MIDDLE, FOOT + 48]}
        anchor="middle"
        to={[MIDDLE, down(demoBarrel.exhaust + 12)]}
      />
      <Label
        words="transfer port"
        at={[RIGHT, FOOT + 18]}
        anchor="end"
        to={[across(TRANSFER), down(demoBarrel.transfer + 6)]}
      />
      <Label words="heights in mm" at={[LEFT, FOOT + 48]} />
      <Label words="inlet port" at={[LEFT, FOOT + 18]} to={[LEFT + 16, down(inletTop + 9)]} />
      <Label words="skirt" at={[across(-36), FOOT + 18]} to={[across(-30), down(76)]} />
    </LineDrawing>
  );
}
