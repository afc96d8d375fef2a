import { demoCrank } from '../../demo/crank.ts';
import type { PictureProps } from '../../frame/types.ts';
import { firingOf, withinTurn } from '../../maths/crank/firing-order.ts';
import { Presets } from '../../picture/presets.tsx';
import { useTurning } from '../../picture/use-turning.ts';
import { throwsOf } from './compute.ts';
import { EndView } from './EndView.tsx';
import { isByOrder, type inputs } from './inputs.ts';
import { PlateView } from './PlateView.tsx';
import { Polygons } from './Polygons.tsx';
import { presetFields, presets } from './presets.ts';
import type { results } from './results.ts';
import { SideView } from './SideView.tsx';

/** Crank from the end and from the side, the plate, and the polygons, all at the same turn. */
export function Picture(props: PictureProps<typeof inputs, typeof results>) {
  const { values: v, results: computed, set, commit } = props;
  const throws = throwsOf(v);
  const tops = computed.top as readonly number[];
  const turnTo = (angle: number): void => set('turned', Math.round(angle));
  const { at, turning, toggle, stop } = useTurning({
    at: v.turned,
    grows: true,
    wrapped: withinTurn,
    rest: (angle) => {
      turnTo(angle);
      commit();
    },
  });
  const most = (name: 'primary' | 'secondary' | 'primary-couple' | 'secondary-couple'): number =>
    computed[name] as number;

  return (
    <>
      <div class="picture-block">
        <EndView
          throws={throws}
          turned={at}
          onTurn={(angle) => {
            stop();
            turnTo(angle);
          }}
          onEnd={commit}
        />
        <button type="button" class="turn" onClick={toggle}>
          {turning ? 'Stop the crank' : 'Turn the crank'}
        </button>
        {isByOrder(v) ? (
          <p class="presets">
            A row of cylinders on one crank, its pins by the firing order given. Empty that field to
            start from another crank.
          </p>
        ) : (
          <Presets name="Start from a usual crank">
            {presets.map((preset) => (
              <button
                key={preset.name}
                type="button"
                class="turn"
                onClick={() => {
                  stop();
                  for (const [key, value] of presetFields(preset, v, demoCrank.pitch))
                    set(key, value);
                  commit();
                }}
              >
                {preset.name}
              </button>
            ))}
          </Presets>
        )}
      </div>
      <SideView throws={throws} turned={at} stroke={v.stroke} rodLength={v.rod} />
      <PlateView
        sets={computed.set as readonly number[]}
        firing={firingOf(tops)}
        turned={at}
        clockwise={v.turning === 'clockwise'}
      />
      <Polygons
        throws={throws}
        turned={at}
        most={{
          primary: most('primary'),
          secondary: most('secondary'),
          'primary-couple': most('primary-couple'),
          'secondary-couple': most('secondary-couple'),
        }}
      />
    </>
  );
}
