import {
  CONTACT_HIGH,
  fixedContact,
  GAP_HALF,
  movingContact,
  sparkAcross,
  sparkGap,
  SWITCH_RING,
  switchLever,
} from './circuit-signs.ts';

const WIDTH = 340;
const PANEL = 186;
/** Across: battery, primary, secondary, condenser and plug. */
const X = { battery: 40, primary: 140, secondary: 168, condenser: 210, plug: 312 } as const;
/** Down: the feed, the foot of the windings, the wire to the points, and the earth. */
const Y = { feed: 52, foot: 100, points: 112, earth: 156 } as const;
/** The fixed contact, the middle of the plug's gap, and the contacts of the switch. */
const FIXED = 127;
const GAP = 84;
const SWITCH = [68, 98] as const;

const WINDING = 4;
const TURN = (Y.foot - Y.feed) / WINDING;

const winding = (x: number, bulge: 0 | 1): string =>
  `M${x} ${Y.feed}${`a6 ${TURN / 2} 0 0 ${bulge} 0 ${TURN}`.repeat(WINDING)}`;

const earth = (x: number, y: number): string => `M${x} ${y}v6m-9 0h18m-15 4h12m-9 4h6`;

interface PanelProps {
  readonly open: boolean;
  readonly top: number;
}

function Panel({ open, top }: PanelProps) {
  const [off, on] = SWITCH;
  const feed = `M${X.battery} ${Y.feed}H${off}${switchLever(off, on, Y.feed)}M${on} ${Y.feed}H${X.primary}`;
  const toPoints = `M${X.primary} ${Y.foot}V${FIXED}`;
  const fromPoints = `M${X.primary} ${FIXED + CONTACT_HIGH}V${Y.earth}`;
  const toCondenser = `M${X.primary} ${Y.points}H${X.condenser}V126`;
  const lead = `M${X.secondary} ${Y.feed}H${X.plug}V${GAP - GAP_HALF}`;
  const fed = [feed, `M${X.battery} ${Y.feed}V92`];
  const used = open
    ? [...fed, `M${X.primary} ${Y.foot}V${Y.points}`, toCondenser, lead]
    : [...fed, toPoints, fromPoints];
  return (
    <g class={open ? 'points-open' : 'points-shut'} transform={`translate(0 ${top})`}>
      <text x={8} y={18} class="axis-text">
        {open
          ? 'Open: to the condenser; the plug fires'
          : 'Shut: the current builds up in the primary'}
      </text>
      <path
        class="wire"
        d={`${feed}M${X.battery} ${Y.feed}V92M${X.battery} 100V${Y.earth - 22}${earth(X.battery, Y.earth - 22)}`}
      />
      <path class="plates" d={`M${X.battery - 11} 92h22M${X.battery - 5} 100h10`} />
      <path class="wire" d={`${toPoints}${fromPoints}${earth(X.primary, Y.earth)}`} />
      <path
        class="wire"
        d={`${toCondenser}M${X.condenser} 132V${Y.earth}${earth(X.condenser, Y.earth)}`}
      />
      <path class="plates" d={`M${X.condenser - 9} 126h18M${X.condenser - 9} 132h18`} />
      <path
        class="wire"
        d={`M${X.secondary} ${Y.foot}v6H${X.primary}${lead}M${X.plug} ${GAP + GAP_HALF}V112${earth(X.plug, 112)}`}
      />
      <path class="wire wire-live" d={used.join('')} />
      <path class="wire wire-live" d={winding(X.primary, 0)} />
      <path class={open ? 'wire wire-live' : 'wire'} d={winding(X.secondary, 1)} />
      <path class="plates" d={`M${X.primary + 12} ${Y.feed - 2}v52m4 0v-52`} />
      <path class="contact-still" d={fixedContact(X.primary, FIXED)} />
      <path class="contact-moving" d={movingContact(X.primary, FIXED, open)} />
      <path class="pointer" d={sparkGap(X.plug, GAP)} />
      {open && <path class="spark" d={sparkAcross(X.plug, GAP)} />}
      <circle class="joint" cx={X.primary} cy={Y.points} r={3} />
      <circle class="joint" cx={X.primary} cy={Y.foot + 6} r={3} />
      {SWITCH.map((x) => (
        <circle key={x} class="found-mark" cx={x} cy={Y.feed} r={SWITCH_RING} />
      ))}
      <text x={64} y={Y.feed - 9}>
        switch
      </text>
      <text x={X.battery + 17} y={101}>
        battery
      </text>
      <text x={X.primary - 14} y={80} text-anchor="end">
        primary
      </text>
      <text x={X.secondary + 12} y={80}>
        secondary
      </text>
      <text x={X.primary - 22} y={FIXED + 12} text-anchor="end">
        points
      </text>
      <text x={X.condenser + 16} y={134}>
        condenser
      </text>
      <text x={X.plug - 12} y={88} text-anchor="end">
        plug
      </text>
    </g>
  );
}

/** The circuit of one cylinder on battery ignition, its points shut and open. */
export function PointsCircuit() {
  return (
    <svg
      class="plot points-circuit"
      viewBox={`0 0 ${WIDTH} ${2 * PANEL}`}
      role="img"
      aria-label="The circuit of one cylinder, twice. Points shut: current flows from the battery through switch, primary and points to earth. Points open: the current of the primary goes into the condenser, which lies across the points, and the secondary drives a spark across the plug."
    >
      <Panel open={false} top={0} />
      <Panel open top={PANEL} />
    </svg>
  );
}
