import { Dimension } from '../../calculators/picture/dimension.tsx';
import { Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';

const CELL = 178;
const SCENE = 190;

/** The end of a plug, large: insulator, centre electrode, side electrode, and the spark between. */
function Gap({ x, strong }: { readonly x: number; readonly strong: boolean }) {
  return (
    <g transform={`translate(${x} 0)`}>
      <text class="axis-text" x={4} y={16}>
        {strong ? 'Strong' : 'Weak'}
      </text>
      <path class="edge" d="M24 30V82H44V30M104 30V82H124V30" />
      <path class="edge edge-filled" d="M56 30L62 92H86L92 30" />
      <path class="edge edge-filled" d="M67 92h14v16h-14z" />
      <path class="edge edge-filled" d="M104 82H124V142H60V128H110V82Z" />
      {strong ? (
        <path
          class="part spark-strong"
          d="M69 108L68 114L73 117L70 122L72 128H79L77 122L80 117L76 113L79 108Z"
        />
      ) : (
        <path class="motion" d="M74 108l-3 5 5 4 -4 5 3 6" />
      )}
    </g>
  );
}

/** What a strong and a weak spark look like, and where the plug lies while you look. */
export default function SparkAtThePlug() {
  return (
    <LineDrawing
      id="spark-at-plug"
      title="A strong and a weak spark, and where the plug lies"
      description="The end of a plug, twice, large. Strong: a short, fat, blue-white spark from the centre electrode to the side electrode. Weak: a thin yellow or orange one. Below, where the plug lies while you look: out of the head, in its cap, its metal body held by a clip and wire to bare metal of the engine, well away from the open plug hole."
      height={SCENE + 218}
    >
      <Gap x={0} strong />
      <Gap x={CELL} strong={false} />
      <Label words="fat, blue-white, snaps" at={[4, 162]} />
      <Label words="thin, yellow, silent" at={[CELL + 4, 162]} />
      <text class="axis-text" x={4} y={SCENE + 8}>
        Out of the head, earthed, well away
      </text>
      <g transform={`translate(0 ${SCENE})`}>
        <path class="edge edge-filled" d="M44 68H92V96H108V68H156V76H138V160H62V76H44Z" />
        <path
          class="edge"
          d="M62 90H44v6H62M62 108H44v6H62M62 124H44v6H62M62 140H44v6H62M138 90h18v6h-18M138 108h18v6h-18M138 124h18v6h-18M138 140h18v6h-18"
        />
        <path class="edge edge-filled" d="M34 160H166V214H34Z" />
        <path class="edge edge-filled" d="M166 180h10v14h-10z" />
        <path class="edge edge-thin" d="M271 116V187H176" />
        <path class="edge edge-filled" d="M242 94h20v18h-20zM262 90h18v26h-18zM280 97h14v12h-14z" />
        <path class="edge" d="M234 112h8M234 112V103M242 101h-4" />
        <path class="part" d="M290 92h34v22h-34z" />
        <path class="edge" d="M324 103H352" />
        <path class="motion" d="M238 102l-4 3" />
        <Dimension from={[100, 66]} to={[234, 100]} along="x" line={52} words="well away" />
        <Label words="open plug hole" at={[4, 30]} to={[98.5, 84]} />
        <Label words="cap" at={[307, 80]} anchor="middle" />
        <Label words="earth wire" at={[280, 144]} />
        <Label words="on bare metal" at={[184, 206]} />
      </g>
    </LineDrawing>
  );
}
