import type { PictureProps } from '../../frame/types.ts';
import { Presets } from '../../picture/presets.tsx';
import { BoreRound } from './BoreRound.tsx';
import { HeatPlot } from './HeatPlot.tsx';
import type { inputs } from './inputs.ts';
import { metals } from './metals.ts';
import type { results } from './results.ts';
import { Section } from './Section.tsx';

/** Piston in its bore with the clearance enlarged, what heat does to it, and the bore's readings. */
export function Picture(props: PictureProps<typeof inputs, typeof results>) {
  const { values: v, results: computed, spreads, lengths, idPrefix, set, commit } = props;
  return (
    <>
      <div class="picture-block">
        <Section
          bore={v.bore}
          cold={computed.cold as number}
          hot={computed.hot as number}
          lengths={lengths}
        />
        <Presets name="Fill in a usual metal">
          {metals.map(({ key, name, value }) => (
            <button
              key={name}
              type="button"
              class="turn"
              onClick={() => {
                set(key, value);
                commit();
              }}
            >
              {name}
            </button>
          ))}
        </Presets>
      </div>
      <HeatPlot
        values={v}
        spread={spreads().hot ?? 0}
        lengths={lengths}
        idPrefix={idPrefix}
        onTemperature={(temperature) => set('piston-temperature', temperature)}
        onEnd={commit}
      />
      <BoreRound heights={v.height} along={v.along} across={v.across} lengths={lengths} />
    </>
  );
}
