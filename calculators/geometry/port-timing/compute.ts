import { attempt, ifThere, blameField } from '../../frame/attempt.ts';
import { sliderCrank } from '../../position/engine-inputs.ts';
import { absent, type Absent, type ComputedOf, type ValuesOf } from '../../frame/types.ts';
import { crownBelowPort, skirtCover } from '../../maths/cylinder/port-fit.ts';
import {
  layoutTiming,
  lowerInlet,
  raiseBarrel,
  raiseExhaust,
  raiseTransfers,
  spreadOf,
  type Inlet,
  type PortLayout,
} from '../../maths/cylinder/port-layout.ts';
import {
  bottomEdgeForDuration,
  crownPort,
  discPort,
  skirtPort,
  topEdgeForDuration,
  type PistonInBarrel,
  type PortEvents,
} from '../../maths/cylinder/port-timing.ts';
import { travelAt } from '../../maths/crank/slider-crank.ts';
import { memoize } from '../../frame/memoize.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

export type Values = ValuesOf<typeof inputs>;
type Computed = ComputedOf<typeof results>;

// Most of these stay as they are while one reading is moved by its ±.
const timingOf = memoize(layoutTiming);
const crownEvents = memoize(crownPort);
const skirtEvents = memoize(skirtPort);

const REED =
  'A reed opens by the pressure in the crankcase and not by the crank, so an inlet with a reed has no timing of its own. Choose the piston skirt or a disc valve if the engine has one.';

export const barrelOf = (v: Values): PistonInBarrel => ({
  ...sliderCrank(v),
  deckClearance: v.deck,
});

/** The inlet's events; a sentence where it has none. */
function inletOf(v: Values, barrel: PistonInBarrel): PortEvents | Absent {
  if (v.inlet === 'reed') return absent(REED);
  return attempt(() =>
    v.inlet === 'disc'
      ? discPort(v['disc-opens'], v['disc-closes'])
      : skirtEvents(barrel, v['inlet-edge'], v.skirt),
  );
}

/** The layout without its inlet, which is reckoned apart so that it cannot spoil the rest. */
const crownLayout = (v: Values): PortLayout => ({
  barrel: barrelOf(v),
  exhaust: v.port[0]!,
  transfers: v.port.slice(1),
  inlet: { kind: 'reed' },
});

const skirtInlet = (v: Values): Inlet => ({
  kind: 'piston',
  bottomEdge: v['inlet-edge'],
  skirtLength: v.skirt,
});

const changes = {
  barrel: raiseBarrel,
  exhaust: raiseExhaust,
  transfers: raiseTransfers,
  inlet: lowerInlet,
} as const;

function afterChange(v: Values, before: readonly PortEvents[], inletBefore: PortEvents | Absent) {
  const changed = changes[v.change](crownLayout(v), v.by);
  const after = attempt(() => {
    const { exhaust, transfers, blowdown } = timingOf(changed);
    return { events: [exhaust, ...transfers], blowdown };
  });
  const inlet = ifThere(inletBefore, (events) => {
    if (v.inlet !== 'piston') return events;
    const whole = changes[v.change]({ ...crownLayout(v), inlet: skirtInlet(v) }, v.by);
    const { barrel, inlet: cut } = whole;
    return attempt(() =>
      cut.kind === 'piston' ? skirtEvents(barrel, cut.bottomEdge, cut.skirtLength) : events,
    );
  });
  return {
    'after-opens': ifThere(after, ({ events }) => events.map(({ opens }) => opens)),
    'after-duration': ifThere(after, ({ events }) => events.map(({ duration }) => duration)),
    'duration-change': ifThere(after, ({ events }) =>
      events.map(({ duration }, index) => duration - before[index]!.duration),
    ),
    'after-blowdown': ifThere(after, ({ blowdown }) => blowdown),
    'after-inlet': ifThere(inlet, ({ duration }) => duration),
  };
}

/** Top or bottom edge for the duration wanted, and how much metal that means. */
function heightFor(v: Values, barrel: PistonInBarrel) {
  const port = v['wanted-port'];
  const duration = v['wanted-duration'];
  if (port === 'inlet' && v.inlet !== 'piston') {
    const none = absent(
      'Only an inlet opened by the skirt has an edge to be cut for a duration. Choose the piston skirt as the inlet, or ask for the exhaust or the transfer.',
    );
    return { 'edge-for': none, 'raise-for': none };
  }
  const edge = attempt(() =>
    port === 'inlet'
      ? bottomEdgeForDuration(barrel, v.skirt, duration)
      : topEdgeForDuration(barrel, duration),
  );
  const now = port === 'inlet' ? v['inlet-edge'] : v.port[port === 'exhaust' ? 0 : 1]!;
  return {
    'edge-for': edge,
    'raise-for': ifThere(edge, (at) => (port === 'inlet' ? at - now : now - at)),
  };
}

/** Each cylinder with the stroke, rod and skirt of the first and edges of its own. */
function cylinders(
  v: Values,
  blowdown: number,
  own: readonly PortEvents[],
  inlet: PortEvents | Absent,
) {
  const rows = attempt(() => [
    { exhaust: own[0]!.duration, transfer: own[1]!.duration, blowdown },
    ...v['other-deck'].map((deckClearance, index) => {
      const timing = timingOf({
        ...crownLayout(v),
        barrel: { ...barrelOf(v), deckClearance },
        exhaust: v['other-exhaust'][index]!,
        transfers: [v['other-transfer'][index]!],
      });
      return {
        exhaust: timing.exhaust.duration,
        transfer: timing.transfers[0]!.duration,
        blowdown: timing.blowdown,
      };
    }),
  ]);
  const inlets = ifThere(inlet, (first) => {
    if (v.inlet !== 'piston') return [first, ...v['other-deck'].map(() => first)];
    return attempt(() => [
      first,
      ...v['other-deck'].map((deckClearance, index) =>
        skirtEvents({ ...barrelOf(v), deckClearance }, v['other-inlet'][index]!, v.skirt),
      ),
    ]);
  });
  const exhausts = ifThere(rows, (all) => all.map((row) => row.exhaust));
  const transfers = ifThere(rows, (all) => all.map((row) => row.transfer));
  return {
    'cylinder-exhaust': exhausts,
    'cylinder-transfer': transfers,
    'cylinder-blowdown': ifThere(rows, (all) => all.map((row) => row.blowdown)),
    'cylinder-inlet': ifThere(inlets, (all) => all.map(({ duration }) => duration)),
    'exhaust-spread': ifThere(exhausts, spreadOf),
    'transfer-spread': ifThere(transfers, spreadOf),
  };
}

export function compute(v: Values): Computed {
  const barrel = barrelOf(v);
  const events = v.port.map((edge, index) =>
    blameField(`port-${String(index + 1)}`, 'topEdge', () => crownEvents(barrel, edge)),
  );
  const { blowdown, exhaustLag } = timingOf(crownLayout(v));
  const inlet = inletOf(v, barrel);
  const bottoms = v.port.map((edge, index) => edge + v.height[index]!);
  return {
    blowdown,
    'exhaust-duration': events[0]!.duration,
    opens: events.map(({ opens }) => opens),
    closes: events.map(({ closes }) => closes),
    duration: events.map(({ duration }) => duration),
    clears: bottoms.map((bottom) => crownBelowPort(barrel, bottom)),
    'exhaust-lag': exhaustLag,
    'inlet-opens': ifThere(inlet, ({ opens }) => -opens),
    'inlet-closes': ifThere(inlet, ({ closes }) => closes),
    'inlet-duration': ifThere(inlet, ({ duration }) => duration),
    'skirt-cover': skirtCover(barrel, bottoms[0]!, v.skirt),
    'inlet-clears':
      v.inlet === 'piston'
        ? -skirtCover(barrel, v['inlet-edge'] - v['inlet-height'], v.skirt)
        : absent('Only an inlet opened by the skirt can be left covered by it.'),
    'crown-depth': v.deck + travelAt(barrel, v.crank),
    ...heightFor(v, barrel),
    ...afterChange(v, events, inlet),
    ...cylinders(v, blowdown, events, inlet),
  };
}
