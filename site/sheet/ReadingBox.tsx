import { useContext, useState } from 'preact/hooks';
import { fieldUnit } from '../../calculators/frame/field/field-unit.ts';
import { units } from '../../calculators/frame/text/units.ts';
import { placeOf, type Moment } from '../../calculators/sheet/box-places.ts';
import { readingSpec } from '../../calculators/sheet/box-specs.ts';
import { readNumber } from '../../calculators/sheet/read-number.ts';
import { readingOf } from '../../calculators/sheet/readings.ts';
import { type Manner } from '../../calculators/sheet/set-entry.ts';
import type { StepId } from '../../calculators/sheet/steps.ts';
import { textToKeep } from '../fields/field-text.ts';
import { Doubt } from '../fields/FieldNotes.tsx';
import { useDraft } from '../fields/use-draft.ts';
import { meaning, written, type BoxProps } from './FigureBox.tsx';
import { SheetSums } from './sheet-sums.ts';
import { TextProblem } from './TextProblem.tsx';
import { useTyped } from './typed.ts';
import { useAgain } from './use-again.ts';
import { useRun } from './use-run.ts';

interface Props extends BoxProps {
  readonly step: StepId;
  readonly index: number;
  readonly moment: Moment;
  /** Whether what is typed is read after a change or in a check, where that was said. */
  readonly kind?: Manner['kind'];
}

/** Letters beyond which a text needs smaller type to stand whole in its box. */
const LONG = 6;

/** One box of the order of work: a figure as found or as left at one cylinder. */
export function ReadingBox({ engine, step, index, moment, kind, lengths, edit }: Props) {
  const box = { kind: 'reading', step, moment, index } as const;
  const sums = useContext(SheetSums);
  const how = { lengths, sums };
  const entry = readingOf(engine, step)[moment][index] ?? null;
  const [text, keep, settle] = useTyped(engine, box, written(entry ?? undefined));
  const spec = readingSpec(engine, step, index, moment);
  const field = readNumber(engine, box, text, how);
  const { begin, put } = useRun({ engine, edit }, box, how);
  /** What stands comes back into a box that was emptied, once it is left. */
  const [emptied, setEmptied] = useState(false);

  const enterText = (typed: string): void => {
    setEmptied(typed === '');
    if (typed !== '') keep(typed, meaning(readNumber(engine, box, typed, how)));
    put(typed, { kind });
  };

  const id = `box-${moment}-${step}-${String(index + 1)}`;
  const waits = useAgain(sums, enterText, { id, settle });
  const [shown, draft] = useDraft(field, lengths);
  const type = (typing: string): void => {
    const typed = textToKeep(typing, field, lengths);
    draft(typing, typed);
    waits(typed);
    enterText(typed);
  };

  const { label } = units[fieldUnit(spec, lengths)];
  return (
    <div class={`box${field.problem === undefined ? '' : ' field-wrong'}`}>
      <span class={shown.length > LONG ? 'field-box field-full' : 'field-box'}>
        <input
          id={id}
          name={placeOf(box)}
          type="text"
          inputMode="decimal"
          autocomplete="off"
          spellcheck={false}
          aria-label={label === '' ? spec.label : `${spec.label}, ${label}`}
          aria-invalid={field.problem === undefined ? undefined : 'true'}
          aria-describedby={field.problem === undefined ? undefined : `${id}-problem`}
          value={emptied ? '' : shown}
          onFocus={begin}
          onBlur={() => {
            setEmptied(false);
            settle();
          }}
          onInput={(event) => type(event.currentTarget.value)}
        />
      </span>
      {emptied && entry !== null ? (
        <p class="field-note">
          What was read stays, and comes back here. It is taken out under “All readings of this
          step”.
        </p>
      ) : null}
      <Doubt id={id} doubt={field.doubt} onType={type} />
      <TextProblem id={`${id}-problem`} problem={field.problem} onType={type} />
    </div>
  );
}
