import { hundredth } from '../../calculators/maths/numeric/steps.ts';
import { arrowHead } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';
import { cranks, firingOrder, type Crank } from '../cranks.ts';

const PANEL = { wide: 178, high: 196 } as const;
const THROW = 32;
/** The centre lines end short of the numbers of the pins. */
const REACH = THROW + 9;
const MIDDLE = [58, 106] as const;
const SIDE = 128;
const PITCH = 10;

/** Where a pin stands in the end view, the crank turning clockwise and pin 1 at the top. */
const at = (angle: number, radius: number): readonly [number, number] => {
  const turn = (angle * Math.PI) / 180;
  return [
    hundredth(MIDDLE[0] + radius * Math.sin(turn)),
    hundredth(MIDDLE[1] - radius * Math.cos(turn)),
  ];
};

/** The numbers of the cylinders on each pin. */
function pinsOf({ pins }: Crank): readonly (readonly [angle: number, numbers: string])[] {
  return [...new Set(pins)].map((angle) => [
    angle,
    pins.flatMap((each, i) => (each === angle ? [String(i + 1)] : [])).join(' + '),
  ]);
}

function End({ crank }: { readonly crank: Crank }) {
  const [cx, cy] = MIDDLE;
  const [from, to] = [at(28, 18), at(88, 18)];
  return (
    <g>
      <path
        class="centre-line"
        d={`M${cx - REACH} ${cy}H${cx + REACH}M${cx} ${cy - REACH}V${cy + REACH}`}
      />
      <circle class="edge edge-thin" cx={cx} cy={cy} r={THROW} />
      {pinsOf(crank).map(([angle, numbers]) => {
        const [x, y] = at(angle, THROW);
        const [wordsX, wordsY] = at(angle, THROW + 17);
        return (
          <g key={angle}>
            <path class="part-rod" d={`M${cx} ${cy}L${x} ${y}`} />
            <circle class="edge edge-filled" cx={x} cy={y} r={7} />
            <text x={wordsX} y={wordsY + 4} text-anchor="middle">
              {numbers}
            </text>
          </g>
        );
      })}
      <circle class="edge edge-filled" cx={cx} cy={cy} r={6} />
      <path class="motion" d={`M${from.join(' ')}A18 18 0 0 1 ${to.join(' ')}`} />
      <path class="motion-head" d={arrowHead([to[0], to[1] - 6], [to[0], to[1] + 4])} />
    </g>
  );
}

/** The same crank from its side: each throw as high as it stands. */
function FromTheSide({ crank }: { readonly crank: Crank }) {
  const cy = MIDDLE[1];
  const high = crank.pins.map((pin) => hundredth(-THROW * Math.cos((pin * Math.PI) / 180)));
  const start = SIDE + ((4 - high.length) * PITCH) / 2;
  const steps = high
    .map((y, i) => {
      const x = start + i * PITCH;
      return `H${x}V${hundredth(cy + y)}H${x + PITCH - 4}V${cy}`;
    })
    .join('');
  return (
    <g>
      <path class="centre-line" d={`M${SIDE - 6} ${cy}H${PANEL.wide - 5}`} />
      <path class="edge" d={`M${start - 8} ${cy}${steps}H${start + high.length * PITCH + 3}`} />
    </g>
  );
}

function Panel({ crank, x, y }: { readonly crank: Crank; readonly x: number; readonly y: number }) {
  return (
    <g transform={`translate(${x} ${y})`}>
      <text class="axis-text" x={4} y={14}>
        {crank.name}
      </text>
      <text x={4} y={31}>
        fires {firingOrder(crank)}
      </text>
      <End crank={crank} />
      <FromTheSide crank={crank} />
    </g>
  );
}

/** Four cranks from their ends and their sides, with the order in which they fire. */
export default function CrankEnds() {
  return (
    <LineDrawing
      id="crank-ends"
      title="Four cranks from the end and from the side, with their firing orders"
      description="Each crank is seen from its end, turning clockwise, with pin 1 at the top, and from its side. Twin at 180 degrees: one pin up and one down, a spark every half turn. Twin at 360 degrees: both pins up, both cylinders fire together. Triple at 120 degrees: pin 2 stands 240 degrees ahead, which is 120 behind, so that it reaches the top next; the order is 1, 2, 3. Four at 90 degrees with pins at 0, 180, 270 and 90: the order is 1, 3, 2, 4, a spark every quarter turn."
      height={2 * PANEL.high - 24}
    >
      {cranks.map((crank, i) => (
        <Panel
          key={crank.name}
          crank={crank}
          x={(i % 2) * PANEL.wide}
          y={Math.floor(i / 2) * (PANEL.high - 8)}
        />
      ))}
    </LineDrawing>
  );
}
