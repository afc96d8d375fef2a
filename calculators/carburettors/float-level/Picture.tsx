import { MathsError } from '../../maths/numeric/errors.ts';
import { fuelLevel } from '../../maths/carburettor/float-level.ts';
import type { PictureProps } from '../../frame/types.ts';
import { intoRange, onStep } from '../../maths/numeric/steps.ts';
import { feedOf, gaugingOf, leverOf, standingOf, type Values } from './compute.ts';
import { GaugingDrawing } from './GaugingDrawing.tsx';
import { inputs } from './inputs.ts';
import { LevelPlot } from './LevelPlot.tsx';
import type { results } from './results.ts';
import { SectionDrawing } from './SectionDrawing.tsx';

/** Rise of the fuel with 500 mm more head, or nothing where the float could not bear it. */
function fullerTank(v: Values, level: number): number | undefined {
  const feed = feedOf(v);
  try {
    const more = { ...feed, head: feed.head + 500 };
    return level - fuelLevel(leverOf(v), more, gaugingOf(v), standingOf(v));
  } catch (error) {
    if (error instanceof MathsError) return undefined;
    throw error;
  }
}

/** The chamber in section and the level against the gauge, in the same state. */
export function Picture(props: PictureProps<typeof inputs, typeof results>) {
  const { values: v, results: computed, spreads, lengths, idPrefix, set, commit } = props;
  const level = computed.level as number;
  return (
    <>
      <SectionDrawing
        lever={leverOf(v)}
        lowerFace={level + (computed.submerged as number)}
        level={level}
        height={v.height}
        far={v.edge === 'far'}
        tilt={v.tilt}
        push={computed['needle-push'] as number}
        buoyancy={computed.buoyancy as number}
        lengths={lengths}
      />
      <LevelPlot
        height={v.height}
        level={level}
        levelSpread={spreads().level ?? 0}
        wanted={v.wanted}
        heightFor={computed['height-for'] as number}
        found={v.found}
        fuller={fullerTank(v, level)}
        lengths={lengths}
        idPrefix={idPrefix}
        onHeight={(height) => set('height', intoRange(inputs.height, onStep(height, 0.1)))}
        onEnd={commit}
      />
      <GaugingDrawing
        lever={leverOf(v)}
        height={v.height}
        far={v.edge === 'far'}
        tipped={v.gauged === 'tipped'}
        lengths={lengths}
      />
    </>
  );
}
