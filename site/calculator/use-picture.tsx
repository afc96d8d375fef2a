import { useMemo } from 'preact/hooks';
import { withSpreadsOf } from '../../calculators/frame/with-spreads.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import { LaterPart } from './LaterPart.tsx';
import { NothingDrawn } from './NothingDrawn.tsx';
import { PictureGuard } from './PictureGuard.tsx';
import type { State } from './state.ts';
import { useLate } from './use-late.ts';

interface Props {
  readonly calculator: AnyCalculator;
  readonly state: State;
  /** Whether the picture is what moves. */
  readonly dragged: boolean;
  readonly idPrefix: string;
  /** Whether the page holds the field of a key; every one unless given. */
  readonly holds?: (key: string) => boolean;
  readonly onSet: (key: string, value: number) => void;
  readonly onEnd: () => void;
}

/** While the picture is dragged, the figures follow at a pace that can be read, and leave the frames to it. */
const FOLLOW_MS = 150;

const everyField = (): boolean => true;

/**
 * The picture of a state, the state that the figures beside it show, what the answer shows of it, and
 * what is told later of it. The answer comes first: the picture and the ± are painted after it, and
 * the picture before it when it is what moves.
 */
export function usePicture({
  calculator,
  state,
  dragged,
  idPrefix,
  holds = everyField,
  onSet,
  onEnd,
}: Props) {
  const drawn = useLate(state, dragged ? 'none' : 'paint');
  const figured = useLate(state, dragged ? FOLLOW_MS : 'none');
  const told = useLate(figured, dragged ? 'none' : 'paint');
  const answered = useMemo(
    (): State => ({ ...figured, evaluation: withSpreadsOf(told.evaluation, figured.evaluation) }),
    [figured, told],
  );
  const { picture: Picture } = calculator;
  const { computed } = drawn.evaluation;
  const picture = useMemo(() => {
    const { values, results } = drawn.evaluation;
    if (!computed) {
      return <NothingDrawn evaluation={drawn.evaluation} {...{ idPrefix, holds }} />;
    }
    // The ± of a figure hardly changes along a drag, and costs more than the figure itself.
    const spreads = () => (dragged ? figured : drawn).evaluation.spreads;
    const known = { values, results, spreads, lengths: drawn.lengths };
    return (
      <PictureGuard>
        <Picture {...known} idPrefix={idPrefix} set={onSet} commit={onEnd} />
      </PictureGuard>
    );
  }, [Picture, drawn, dragged, idPrefix, onSet, onEnd]);
  return {
    figured,
    answered,
    told,
    picture: (
      <LaterPart class={`calc-picture${computed ? '' : ' stale'}`} data-part="picture">
        {picture}
      </LaterPart>
    ),
  };
}
