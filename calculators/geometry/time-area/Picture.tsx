import type { PictureProps } from '../../frame/types.ts';
import { crownPort } from '../../maths/cylinder/port-timing.ts';
import { barrelOf, inletAreaAt, windowOf } from './compute.ts';
import type { inputs } from './inputs.ts';
import { OpenAreaPlot } from './OpenAreaPlot.tsx';
import type { results } from './results.ts';
import { SpeedPlot } from './SpeedPlot.tsx';

/** The open areas over a turn, and what they are worth at each speed. */
export function Picture(props: PictureProps<typeof inputs, typeof results>) {
  const { values: v, results: r, lengths, idPrefix, set, commit } = props;
  const barrel = barrelOf(v);
  const blowdown = r['blowdown-time-area'];
  const inlet = r['inlet-time-area'];
  return (
    <>
      <SpeedPlot
        rpm={v.rpm}
        exhaust={r['exhaust-time-area'] as number}
        transfer={r['transfer-time-area'] as number}
        blowdown={typeof blowdown === 'number' ? blowdown : undefined}
        inlet={typeof inlet === 'number' ? inlet : undefined}
        idPrefix={idPrefix}
        onSpeed={(rpm) => set('rpm', rpm)}
        onEnd={commit}
      />
      <OpenAreaPlot
        barrel={barrel}
        exhaust={{ ...windowOf(v, 'exhaust'), topEdge: v['exhaust-edge'] }}
        transfer={{ ...windowOf(v, 'transfer'), topEdge: v['transfer-edge'] }}
        inlet={typeof inlet === 'number' ? inletAreaAt(v, barrel) : undefined}
        blowdown={[
          crownPort(barrel, v['exhaust-edge']).opens,
          crownPort(barrel, v['transfer-edge']).opens,
        ]}
        lengths={lengths}
        idPrefix={idPrefix}
      />
    </>
  );
}
