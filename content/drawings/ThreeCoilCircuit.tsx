import { Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';
import { CONTACT_HIGH, GAP_HALF } from '../../calculators/picture/circuit-signs.ts';
import { Battery, Earth, Joint, Plug, Points, Switch, Winding } from './parts/circuit.tsx';

const PANEL = 300;
const FEED = 46;
const BUS = 70;
const COIL = 80;
const FOOT = COIL + 48;
const CONTACT = 180;
const GAP = 184;
const EARTH = 222;
const columns = [70, 176, 282] as const;

/** Whether a set is shut, open with nothing going on, or has opened this moment. */
type State = 'shut' | 'open' | 'fires';

/** One coil with its points, its condenser and its plug. */
function Cylinder({ x, state, number }: { x: number; state: State; number: number }) {
  const open = state !== 'shut';
  const plug = x + 48;
  const live = state === 'open' ? 'edge edge-thin' : 'current';
  return (
    <g class={`cylinder ${state}`}>
      <path class={live} d={`M${x} ${BUS}V${COIL}M${x} ${FOOT}V160`} />
      <Winding x={x} y={COIL} />
      <path class="edge edge-thin" d={`M${x + 13} ${COIL}V${FOOT}M${x + 17} ${COIL}V${FOOT}`} />
      <path class="edge" d={`M${x + 30} ${COIL}${'a4 4 0 0 0 0 8'.repeat(6)}`} />
      <path class="edge edge-thin" d={`M${x + 30} ${FOOT}V140H${x}`} />
      <path
        class="edge edge-thin"
        d={`M${x + 30} ${COIL}H${plug}V${GAP - GAP_HALF}M${plug} ${GAP + GAP_HALF}V${EARTH}`}
      />
      <Plug x={plug} y={GAP} fires={state === 'fires'} />
      <path
        class={state === 'shut' ? 'current' : 'edge edge-thin'}
        d={`M${x} 160V${CONTACT}M${x} ${CONTACT + CONTACT_HIGH}V${EARTH}`}
      />
      <path
        class={state === 'fires' ? 'current' : 'edge edge-thin'}
        d={`M${x} 160H${x - 26}V184M${x - 26} 192V${EARTH}`}
      />
      <path class="edge" d={`M${x - 35} 184h18M${x - 35} 192h18`} />
      <Points x={x} y={CONTACT} open={open} />
      <Joint x={x} y={140} />
      <Joint x={x} y={160} />
      <Earth x={x - 26} y={EARTH} />
      <Earth x={x} y={EARTH} />
      <Earth x={plug} y={EARTH} />
      <text x={x - 14} y={86}>
        +
      </text>
      <text x={x - 14} y={136}>
        −
      </text>
      <text x={x - 8} y={256}>
        {number}
      </text>
    </g>
  );
}

function Circuit({ top, title, states }: { top: number; title: string; states: readonly State[] }) {
  const last = columns[2];
  const far = states[2] === 'open' ? columns[1] : last;
  return (
    <g transform={`translate(0 ${top})`}>
      <text class="axis-text" x={4} y={14}>
        {title}
      </text>
      <path class="edge edge-thin" d={`M${far} ${BUS}H${last}`} />
      <path
        class="current"
        d={`M18 85V${FEED}H44M72 ${FEED}H96M126 ${FEED}H144V${BUS}M${columns[0]} ${BUS}H${far}`}
      />
      <path class="edge" d={`M44 ${FEED - 6}H72V${FEED + 6}H44ZM44 ${FEED}H72`} />
      <Joint x={144} y={BUS} />
      <Switch from={97} to={125} y={FEED} />
      <Battery x={18} y={89} />
      <path class="current" d="M18 93V104" />
      <Earth x={18} y={104} />
      {columns.map((x, i) => (
        <Cylinder key={x} x={x} state={states[i]!} number={i + 1} />
      ))}
    </g>
  );
}

/** From battery to plug with three coils, before and after the points of cylinder 1 open. */
export default function ThreeCoilCircuit() {
  return (
    <LineDrawing
      id="three-coils"
      title="From battery to plug with three coils, before and after a set opens"
      description="The circuit twice, its negative pole earthed. From the battery’s positive pole through one fuse and one switch to the plus terminal of all three coils. Each coil’s minus terminal goes to its own points, with its own condenser beside them, and its secondary to its own plug. Before: sets 1 and 2 are shut and their coils carry current, set 3 is open. After: set 1 has just opened, its current goes into the condenser for an instant, and plug 1 sparks. Set 2 is still shut."
      height={2 * PANEL - 34}
    >
      <Circuit top={0} title="Set 1 about to open" states={['shut', 'shut', 'open']} />
      <Label words="fuse" at={[44, 28]} />
      <Label words="switch" at={[94, 28]} />
      <Label words="coil 3" at={[352, 28]} anchor="end" to={[312, 80]} />
      <Label words="battery" at={[2, 134]} />
      <Label words="condenser" at={[4, 276]} to={[33.5, 192]} />
      <Label words="points" at={[112, 276]} to={[68, 190]} />
      <Label words="plug" at={[178, 276]} to={[121, 184]} />
      <Circuit
        top={PANEL}
        title="Set 1 has opened: plug 1 fires"
        states={['fires', 'shut', 'open']}
      />
    </LineDrawing>
  );
}
