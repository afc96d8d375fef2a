import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';
import { CONTACT_HIGH } from '../../calculators/picture/circuit-signs.ts';
import { Battery, Earth, Joint, Lamp, Points, Winding } from './parts/circuit.tsx';

const PANEL = 156;
const SECOND = 2 * PANEL + 28;
const CONTACT = 84;
const FOOT = CONTACT + CONTACT_HIGH;

/** What the points are, and the lamp with it. */
const State = ({ open, lamp }: { readonly open: boolean; readonly lamp: string }) => (
  <>
    <text x={4} y={58}>
      {open ? 'open:' : 'shut:'}
    </text>
    <text x={4} y={75}>
      {lamp}
    </text>
  </>
);

/** A lamp with a battery of its own across the points, coil and condenser taken off. */
function Own({ open, top }: { readonly open: boolean; readonly top: number }) {
  return (
    <g transform={`translate(0 ${top})`}>
      <State open={open} lamp={open ? 'goes out' : 'lit'} />
      <path
        class={open ? 'edge edge-thin' : 'current'}
        d={`M110 67V44H169M191 44H250V${CONTACT}M250 ${FOOT}V124H110V75`}
      />
      <Battery x={110} y={71} />
      <Lamp x={180} y={44} lit={!open} />
      <Points x={250} y={CONTACT} open={open} />
      <text x={270} y={98}>
        points
      </text>
      <text x={126} y={76}>
        its battery
      </text>
    </g>
  );
}

/** A lamp from the insulated contact to earth, the ignition on. */
function WithCoil({ open, top }: { readonly open: boolean; readonly top: number }) {
  return (
    <g transform={`translate(0 ${top})`}>
      <State open={open} lamp={open ? 'lights' : 'dark'} />
      <path
        class="edge edge-thin"
        d={`M110 80V126M110 72V22H190V24M250 ${FOOT}V126M316 95V126M190 72H316V73M250 72V${CONTACT}`}
      />
      <path
        class="current"
        d={
          open
            ? 'M110 67V22H190V24M190 72H316V73M316 95V126M110 75V126'
            : `M110 67V22H190V24M190 72H250V${CONTACT}M250 ${FOOT}V126M110 75V126`
        }
      />
      <Battery x={110} y={71} />
      <Winding x={190} y={24} />
      <Lamp x={316} y={84} lit={open} />
      <Points x={250} y={CONTACT} open={open} />
      <Joint x={250} y={72} />
      <Earth x={110} y={126} />
      <Earth x={250} y={126} />
      <Earth x={316} y={126} />
      <text x={204} y={54}>
        coil
      </text>
      <text x={126} y={76}>
        battery
      </text>
    </g>
  );
}

/** The two ways to see the points open by a lamp, which are the reverse of each other. */
export default function LampAtThePoints() {
  return (
    <LineDrawing
      id="lamp-at-points"
      title="Two ways to see the points open by a lamp"
      description="Four circuits. A lamp with its own battery across the points, the wires of coil and condenser taken off: lit while the points are shut, out when they open. A lamp from the insulated contact to earth with the coil connected and the ignition on: dark while the points are shut, since they carry the current past it, and lit when they open. The two are the reverse of each other."
      height={640}
    >
      <text class="axis-text" x={4} y={16}>
        Lamp with its own battery, coil off
      </text>
      <Own open={false} top={10} />
      <Own open top={10 + PANEL - 18} />
      <text class="axis-text" x={4} y={SECOND - 16}>
        Lamp to earth, ignition on
      </text>
      <WithCoil open={false} top={SECOND - 8} />
      <WithCoil open top={SECOND - 8 + PANEL} />
    </LineDrawing>
  );
}
