import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { toQuery } from '../../calculators/frame/address.ts';
import type { Evaluation, Texts } from '../../calculators/frame/evaluate.ts';
import type { Field } from '../../calculators/frame/field/fields.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import '../browser/one-line.ts';
import { Answer } from '../calculator/Answer.tsx';
import { pageAddress } from '../calculator/page-address.ts';
import { anExample, useCalculation, type Given } from '../calculator/use-calculation.ts';
import { usePicture } from '../calculator/use-picture.tsx';
import { Fields } from '../fields/Fields.tsx';
import { Problems, ReasonsForNone, type InTheWay } from '../fields/Problems.tsx';
import { takeWanted, WANTED } from '../opening/wanted.ts';

export interface FigureProps {
  readonly calculator: AnyCalculator;
  /** The case that the text argues: inputs other than the defaults. */
  readonly set: Texts;
  /** Keys of the inputs that it is about; those of the calculator's own page unless given. */
  readonly inputs: readonly string[] | undefined;
  /** Names of the results that answer it; those that lead on the calculator's own page unless given. */
  readonly results: readonly string[] | undefined;
  readonly idPrefix: string;
  /** What comes of its case, where it has been worked out beforehand. */
  readonly first?: Evaluation;
  /** What the visitor typed before the script came. */
  readonly typed?: Texts;
  /** Where it stands; nowhere yet on the server. */
  readonly place?: HTMLElement;
}

/** The fields that a figure shows, in the order in which they are named. */
function fieldsOf(keys: readonly string[], { fields, errorFields }: Evaluation): readonly Field[] {
  const all = [...fields, ...errorFields];
  return keys.flatMap((key) =>
    all.filter((field) => field.key === key || field.key.replace(/-\d+$/, '') === key),
  );
}

/**
 * Why there is no result; what stands beside a field of the figure is not said a second time, and nothing
 * of one whose last good figure is still used.
 */
function tied({ problems, results }: Evaluation, shown: readonly Field[]): InTheWay {
  const told = problems.flatMap((problem) => {
    const field = shown.find(({ key }) => key === problem.key);
    if (field === undefined) return [{ sentence: problem.sentence }];
    return field.heldOver
      ? []
      : [{ ...problem, sentence: 'No result until the figure marked ▲ is put right.' }];
  });
  return { problems: told, results };
}

/** A figure of an article: the picture with its handles, the answer, and the inputs in question. */
export function FigureInText(props: FigureProps) {
  const { calculator, set, inputs, results, idPrefix, first, typed, place } = props;
  const begin = useRef<Given>();
  begin.current ??= anExample(set);
  const { state, given, setGiven, dragged, onText, onTyped, onSet, onEnd } = useCalculation(
    calculator,
    {
      begin: begin.current,
      first,
      typed,
      demonstration: true,
      ownEngine: false,
    },
  );
  const [fromText, setFromText] = useState<{ readonly given: Given; readonly words: string }>();
  // It holds until the reader changes a figure.
  const words = fromText?.given === given ? fromText.words : undefined;

  useLayoutEffect(() => {
    if (!place) return undefined;
    const show = (): void => {
      const wanted = takeWanted(place);
      if (!wanted) return;
      const asked = anExample({ ...set, ...wanted.texts });
      setGiven(asked);
      setFromText({ given: asked, words: wanted.words });
    };
    show();
    place.addEventListener(WANTED, show);
    return () => place.removeEventListener(WANTED, show);
  }, [place]);

  const holds = (key: string): boolean =>
    fieldsOf(inputs ?? calculator.inHand ?? [], state.evaluation).some(
      (field) => field.key === key,
    );
  const { figured, answered, picture } = usePicture({
    calculator,
    state,
    dragged,
    idPrefix,
    holds,
    onSet,
    onEnd,
  });
  const answer = useMemo(
    () => <Answer {...answered} {...{ calculator, results }} />,
    [calculator, answered, results],
  );
  const form = useMemo(() => {
    const { evaluation, lengths } = figured;
    const shown = fieldsOf(inputs ?? calculator.inHand ?? [], evaluation);
    return (
      <form
        class="calc-form"
        data-part="form"
        aria-label={`Figures for: ${calculator.title}`}
        onSubmit={(event) => event.preventDefault()}
      >
        <div class="in-hand">
          <Fields fields={shown} {...{ lengths, idPrefix, onText }} onCommit={onTyped} />
        </div>
        <Problems evaluation={tied(evaluation, shown)} idPrefix={idPrefix} />
        <ReasonsForNone evaluation={evaluation} />
      </form>
    );
  }, [calculator, figured, inputs, idPrefix, onText, onTyped]);

  return (
    <>
      {picture}
      <div class="figure-beside">
        {answer}
        {form}
      </div>
      <figcaption class="figure-foot">
        <span>
          {words === undefined ? 'Worked example.' : null}
          <span role="status">{words === undefined ? '' : `Set to ${words}.`}</span>
          <span class="sideways">More drawings: push sideways.</span>
        </span>{' '}
        <a href={pageAddress(calculator.slug, toQuery(figured.evaluation))}>
          Open the whole calculation
          <span class="spoken"> in this state: {calculator.title}</span>
        </a>
      </figcaption>
    </>
  );
}
