import { demoBarrel } from '../../calculators/demo/barrel.ts';
import { demoHead } from '../../calculators/demo/head.ts';
import { fixed } from '../../calculators/frame/text/format.ts';
import { Cut, Hatching } from '../../calculators/picture/cut.tsx';
import { Dimension } from '../../calculators/picture/dimension.tsx';
import { Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';
import { Move } from './parts/motion.tsx';

/** Height of the view from above, and of the first section. */
const PLAN = 222;
const PANEL = 208;
/** User units for a millimetre, in the sections at the edge of the bore. */
const SCALE = 14;
const FACE = 84;
const WALL = 62;
const END = 348;
const FOOT = 44;
const deck = FACE + demoHead.gasket * SCALE;
const bowl = WALL + ((demoBarrel.bore - demoHead.bowl) / 2) * SCALE;
/** Thickness of the solder as bought, mm, and how far below the top the piston is drawn first. */
const SOLDER = 2;
const BELOW = 1.9;

function Section({ pressed, top }: { readonly pressed: boolean; readonly top: number }) {
  const id = pressed ? 'solder-after' : 'solder-before';
  const crown = FACE + (demoHead.squish + (pressed ? 0 : BELOW)) * SCALE;
  const foot = crown + FOOT;
  const [from, to, upper] = [WALL + 3, bowl + 66, crown - SOLDER * SCALE];
  return (
    <g transform={`translate(0 ${top})`}>
      <text class="axis-text" x={4} y={16}>
        {pressed ? 'At the top: pressed to the squish' : 'Cut at the edge: below the top'}
      </text>
      <Hatching id={`${id}-head`} />
      <Hatching id={`${id}-barrel`} leans="left" />
      <Cut d={`M12 ${FACE - 48}H${bowl + 72}L${bowl} ${FACE}H12Z`} hatching={`${id}-head`} />
      <Cut d={`M12 ${deck}H${WALL}V${foot}H12Z`} hatching={`${id}-barrel`} />
      <path class="joint" d={`M12 ${FACE}H${WALL - SCALE}V${deck}H12Z`} />
      <Cut d={`M${from - 1} ${crown}H${END}V${foot}H${from - 1}Z`} hatching={`${id}-head`} />
      <path
        class="part part-moving solder"
        d={
          pressed
            ? `M${from} ${FACE}H${bowl}L${bowl + (crown - FACE - SOLDER * SCALE) * -1.5} ${upper}H${to}V${crown}H${from}Z`
            : `M${from} ${upper}H${to}V${crown}H${from}Z`
        }
      />
      {pressed ? (
        <>
          <Dimension
            from={[bowl + 2, FACE]}
            to={[END - 30, crown]}
            along="y"
            line={END - 30}
            words=""
          />
          <Label
            words={`squish ${fixed(demoHead.squish, 1)} mm`}
            at={[END + 4, FACE - 28]}
            anchor="end"
          />
          <Label
            words="solder"
            at={[140, foot + 14]}
            to={[(from + bowl) / 2, (FACE + crown) / 2]}
          />
        </>
      ) : (
        <>
          <Label words="head" at={[268, 28]} to={[206, 54]} />
          <Label words="band" at={[268, 52]} to={[160, FACE]} ends="arrow" />
          <Label
            words="bowl"
            at={[bowl + 76, FACE - 14]}
            to={[bowl + 40, FACE - 26]}
            ends="arrow"
          />
          <Label
            words="solder"
            at={[bowl + 86, FACE + 12]}
            to={[to - 20, upper + SOLDER * SCALE * 0.5]}
          />
          <Move from={[END - 22, crown - 4]} to={[END - 22, crown - 36]} />
          <Label words="gasket" at={[4, foot + 14]} to={[28, FACE + 8]} />
          <Label words="barrel" at={[70, foot + 14]} to={[48, foot - 22]} />
          <Label words="piston" at={[140, foot + 14]} to={[170, foot - 22]} />
        </>
      )}
    </g>
  );
}

/** Solder laid over the pin at both sides, and pressed between crown and head at the top. */
export default function SolderInTheSquish() {
  const [cx, cy, r] = [116, 122, 78];
  return (
    <LineDrawing
      id="solder-in-squish"
      title="Solder in the squish, before and after"
      description={`Three drawings. The crown from above: two pieces of solder lie over the gudgeon pin, one on either side, and reach out to the bore. The edge of the bore cut, the piston below the top: solder of ${SOLDER} millimetres lies on the crown under the band of the head. The same at the top: the solder is pressed between crown and band to ${fixed(demoHead.squish, 1)} millimetres, which is the squish. Over the bowl it keeps its thickness.`}
      height={PLAN + PANEL + 172}
    >
      <text class="axis-text" x={4} y={16}>
        From above: two pieces, over the pin
      </text>
      <circle class="edge edge-filled" cx={cx} cy={cy} r={r + 8} />
      <circle class="edge" cx={cx} cy={cy} r={r} />
      <path
        class="edge edge-thin edge-hidden"
        d={`M${cx - r + 8} ${cy - 12}H${cx + r - 8}M${cx - r + 8} ${cy + 12}H${cx + r - 8}`}
      />
      <path
        class="centre-line"
        d={`M${cx - r - 16} ${cy}H${cx + r + 16}M${cx} ${cy - r - 16}V${cy + r + 16}`}
      />
      <path
        class="part part-moving solder"
        d={`M${cx - r + 1} ${cy - 3}h34v6h-34zM${cx + r - 35} ${cy - 3}h34v6h-34z`}
      />
      <Label words="solder" at={[236, 96]} to={[cx + r - 14, cy - 2]} />
      <Label words="gudgeon pin," at={[236, 160]} to={[cx + 30, cy + 12]} ends="arrow" />
      <Label words="below the crown" at={[236, 176]} />
      <Label words="bore" at={[236, 56]} to={[cx + r * 0.72, cy - r * 0.7]} ends="arrow" />
      <Section pressed={false} top={PLAN} />
      <Section pressed top={PLAN + PANEL} />
    </LineDrawing>
  );
}
