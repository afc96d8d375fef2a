import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';
import { CONTACT_HIGH, GAP_HALF } from '../../calculators/picture/circuit-signs.ts';
import { Battery, Earth, Joint, Plug, Points, Switch, Winding } from './parts/circuit.tsx';

const PANEL = 216;
/** Across: battery, primary, secondary, condenser, plug. */
const X = { battery: 44, primary: 150, secondary: 182, condenser: 226, plug: 318 } as const;
/** Down: the feed, the foot of the windings, the wire to the points, the fixed contact, the plug's gap, the earth. */
const Y = { feed: 52, foot: 100, points: 124, contact: 144, gap: 90, earth: 178 } as const;
const SWITCH = { from: 76, to: 104 } as const;

interface PanelProps {
  /** The pole of the battery that is earthed. */
  readonly earthed: '+' | '−';
  readonly top: number;
}

/** One cylinder's circuit; the coil's terminal of the earthed pole's sign goes to the points. */
function Panel({ earthed, top }: PanelProps) {
  const fed = earthed === '−' ? '+' : '−';
  // Inside the coil the secondary is joined to its − terminal here, whichever way round that lies.
  const lead =
    earthed === '−'
      ? `M${X.secondary} ${Y.foot}V108H${X.primary}M${X.secondary} ${Y.feed}H${X.plug}V${Y.gap - GAP_HALF}`
      : `M${X.primary} ${Y.feed}H${X.secondary}M${X.secondary} ${Y.foot}H250V${Y.feed}H${X.plug}V${Y.gap - GAP_HALF}`;
  return (
    <g transform={`translate(0 ${top})`}>
      <text class="axis-text" x={4} y={16}>
        {earthed === '−' ? 'Negative earth: − to the points' : 'Positive earth: + to the points'}
      </text>
      <path
        class="edge edge-thin"
        d={`M${X.battery} 96V${Y.feed}H${SWITCH.from}M${SWITCH.to} ${Y.feed}H${X.primary}M${X.battery} 104V${Y.earth}M${X.primary} ${Y.foot}V${Y.contact}M${X.primary} ${Y.contact + CONTACT_HIGH}V${Y.earth}M${X.primary} ${Y.points}H${X.condenser}V138M${X.condenser} 144V${Y.earth}M${X.plug} ${Y.gap + GAP_HALF}V${Y.earth}${lead}`}
      />
      <path class="edge" d={`M${X.condenser - 9} 138h18M${X.condenser - 9} 144h18`} />
      {earthed === '−' ? (
        <Battery x={X.battery} y={100} />
      ) : (
        <path class="edge" d={`M${X.battery - 6} 96h12M${X.battery - 12} 104h24`} />
      )}
      <Winding x={X.primary} y={Y.feed} />
      <path class="edge" d={`M${X.secondary} ${Y.feed}${'a6 6 0 0 0 0 12'.repeat(4)}`} />
      <path
        class="edge"
        d={`M${X.primary + 14} ${Y.feed + 5}v38M${X.primary + 18} ${Y.feed + 5}v38`}
      />
      <Points x={X.primary} y={Y.contact} open />
      <Plug x={X.plug} y={Y.gap} fires />
      <Joint x={X.primary} y={Y.points} />
      <Joint x={X.primary} y={earthed === '−' ? 108 : Y.feed} />
      <Switch {...SWITCH} y={Y.feed} />
      <Earth x={X.battery} y={Y.earth} />
      <Earth x={X.primary} y={Y.earth} />
      <Earth x={X.condenser} y={Y.earth} />
      <Earth x={X.plug} y={Y.earth} />
      <text class="axis-text sign-fed" x={X.primary - 20} y={Y.feed + 18}>
        {fed}
      </text>
      <text class="axis-text sign-points" x={X.primary - 20} y={Y.foot + 3}>
        {earthed}
      </text>
      <text class="axis-text" x={X.battery - 26} y={93}>
        {fed}
      </text>
      <text class="axis-text" x={X.battery - 26} y={118}>
        {earthed}
      </text>
      <text class="axis-text" x={X.plug - 22} y={84}>
        −
      </text>
      <text x={72} y={Y.feed - 9}>
        switch
      </text>
      <text x={X.battery + 16} y={105}>
        battery
      </text>
      <text x={X.secondary + 8} y={80}>
        coil
      </text>
      <text x={X.primary - 20} y={Y.contact + 12} text-anchor="end">
        points
      </text>
      <text x={X.condenser + 14} y={146}>
        condenser
      </text>
      <text x={X.plug - 16} y={104} text-anchor="end">
        plug
      </text>
    </g>
  );
}

/** Which terminal of a coil goes to the points, for either pole of the battery earthed. */
export default function CoilPolarity() {
  return (
    <LineDrawing
      id="coil-polarity"
      title="Which terminal of the coil goes to the points"
      description="Two circuits of one cylinder. Negative earth: the battery’s negative pole is earthed, its positive pole feeds the terminal of the coil marked with a plus, and the terminal marked with a minus goes to points and condenser. Positive earth: the battery is the other way round, feeds the terminal marked with a minus, and the one marked with a plus goes to points and condenser. Both are shown as the points open. In both the centre electrode of the plug is negative."
      height={2 * PANEL - 16}
    >
      <Panel earthed="−" top={0} />
      <Panel earthed="+" top={PANEL} />
    </LineDrawing>
  );
}
