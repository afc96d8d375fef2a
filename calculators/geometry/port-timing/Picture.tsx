import type { PictureProps } from '../../frame/types.ts';
import type { PortEvents } from '../../maths/cylinder/port-timing.ts';
import { angleAfter, angleBefore, bdcAfter, totalTravel } from '../../maths/crank/slider-crank.ts';
import { intoRange, onStep } from '../../maths/numeric/steps.ts';
import { barrelOf } from './compute.ts';
import { CylinderWall, type WallPort } from './CylinderWall.tsx';
import { inputs } from './inputs.ts';
import type { results } from './results.ts';
import { TimingRing } from './TimingRing.tsx';

/** The ring of one turn and the wall rolled flat, in the same state. */
export function Picture(props: PictureProps<typeof inputs, typeof results>) {
  const { values: v, results: r, lengths, idPrefix, set, commit } = props;
  const barrel = barrelOf(v);
  const events = (r.opens as readonly number[]).map((opens, index): PortEvents => {
    const closes = (r.closes as readonly number[])[index]!;
    return { opens, closes, duration: closes - opens };
  });
  const inletOpens = r['inlet-opens'];
  const inletCloses = r['inlet-closes'];
  const inlet =
    typeof inletOpens === 'number' && typeof inletCloses === 'number'
      ? { opens: -inletOpens, closes: inletCloses, duration: inletOpens + inletCloses }
      : undefined;
  const walls = v.port.map((top, index): WallPort => ({ top, bottom: top + v.height[index]! }));
  const inletWall =
    v.inlet === 'piston'
      ? { top: v['inlet-edge'] - v['inlet-height'], bottom: v['inlet-edge'] }
      : undefined;

  const moveCrown = (depth: number): void => {
    const travel = Math.min(totalTravel(barrel), Math.max(0, depth - v.deck));
    const goingDown = v.crank <= bdcAfter(barrel);
    const angle = goingDown ? angleAfter(barrel, travel) : 360 - angleBefore(barrel, travel);
    set('crank', onStep(angle, 0.5));
  };
  const moveEdge = (port: 'exhaust' | 'transfer' | 'inlet', depth: number): void => {
    const at = onStep(Math.max(0, depth), 0.1);
    if (port === 'inlet') return set('inlet-edge', intoRange(inputs['inlet-edge'], at));
    const lowest = v.deck + totalTravel(barrel) - 0.1;
    set(
      port === 'exhaust' ? 'port-1' : 'port-2',
      Math.min(onStep(lowest, 0.1), Math.max(at, v.deck)),
    );
  };

  return (
    <>
      <TimingRing
        exhaust={events[0]!}
        transfers={events.slice(1)}
        inlet={inlet}
        crank={v.crank}
        onCrank={(angle) => set('crank', intoRange(inputs.crank, angle))}
        onEnd={commit}
      />
      <CylinderWall
        exhaust={walls[0]!}
        transfers={walls.slice(1)}
        inlet={inletWall}
        crown={r['crown-depth'] as number}
        skirt={v.skirt}
        crownRange={[v.deck, v.deck + totalTravel(barrel)]}
        lengths={lengths}
        idPrefix={idPrefix}
        onCrown={moveCrown}
        onEdge={moveEdge}
        onEnd={commit}
      />
    </>
  );
}
