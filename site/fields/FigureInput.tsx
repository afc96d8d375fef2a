import type { TargetedKeyboardEvent, TargetedMouseEvent } from 'preact';
import { edgeIn } from '../../calculators/frame/text/format.ts';
import { fieldUnit } from '../../calculators/frame/field/field-unit.ts';
import { isMeasured, plainText, type FigureField } from '../../calculators/frame/field/fields.ts';
import { BETWEEN, readingParts, withoutEnd } from '../../calculators/frame/field/readings.ts';
import { roundStep } from '../../calculators/frame/field/round-steps.ts';
import { onStep } from '../../calculators/maths/numeric/steps.ts';
import { toShown, units, type LengthDisplay } from '../../calculators/frame/text/units.ts';
import { FieldName } from './FieldName.tsx';
import { FieldNotes, Mark, describedBy, fieldId } from './FieldNotes.tsx';
import { inSentence } from '../../calculators/frame/text/sentence.ts';
import { boxClass, bringsUnit, readAs, textToKeep } from './field-text.ts';
import { Help } from './Help.tsx';
import { leaveFocus } from './leave-focus.ts';
import { toNextBox } from './next-box.ts';
import { useBoxText } from './use-box-text.ts';
import { useDraft } from './use-draft.ts';

interface Props {
  readonly field: FigureField;
  readonly lengths: LengthDisplay;
  readonly idPrefix: string;
  /** The word that says whose figure it is. */
  readonly mark?: string | undefined;
  readonly onText: (key: string, text: string) => void;
  readonly onCommit: () => void;
}

type Typing = Pick<Props, 'field' | 'lengths' | 'onText'>;

/** What is typed into a figure's box, and its steps up and down. */
function useTyping({ field, lengths, onText }: Typing) {
  const [text, keep] = useDraft(field, lengths);
  const { key, spec } = field;
  const shown = fieldUnit(spec, lengths);
  const type = (typed: string): void => {
    const kept = textToKeep(typed, field, lengths);
    keep(typed, kept);
    onText(key, kept);
  };
  const step = (by: number): void => {
    const size = roundStep(spec, shown);
    const next = onStep(toShown(field.value ?? spec.min, shown) + by * size, size);
    const low = edgeIn(spec.min, shown, 1, spec.step);
    const high = edgeIn(spec.max, shown, -1, spec.step);
    type(plainText(Math.min(high, Math.max(low, next))));
  };
  return { text, type, step };
}

interface AgainProps {
  readonly field: FigureField;
  readonly name: string;
  readonly typing: ReturnType<typeof useTyping>;
}

/** Makes room for one more reading of the same quantity: a phone's keys for figures have no semicolon. */
function Again({ field, name, typing }: AgainProps) {
  if (!isMeasured(field.spec)) return null;
  const more = (event: TargetedMouseEvent<HTMLButtonElement>): void => {
    const box = event.currentTarget.parentElement?.querySelector('input');
    // The example's figure is no reading: it gives way to the reader's first.
    if (field.origin === 'example') box?.select();
    else typing.type(`${withoutEnd(typing.text)}${BETWEEN} `);
    box?.focus();
  };
  return (
    <button
      type="button"
      class="once-more"
      aria-label={`Again: another reading of ${name}`}
      onClick={more}
    >
      again
    </button>
  );
}

interface BoxProps extends Props {
  /** Id of the help that describes it, where that is not its own. */
  readonly help?: string | undefined;
  readonly typing: ReturnType<typeof useTyping>;
}

/** The box itself. */
function FigureBox({ field, idPrefix, mark, help, typing, onText, onCommit }: BoxProps) {
  const { key } = field;
  const id = fieldId(idPrefix, key);
  const { text, type, step } = typing;
  const boxText = useBoxText(text);
  const keys = (event: TargetedKeyboardEvent<HTMLInputElement>): void => {
    if (event.key === 'ArrowUp' || event.key === 'ArrowDown') {
      event.preventDefault();
      step(event.key === 'ArrowUp' ? 1 : -1);
    } else if (event.key === 'Enter') {
      event.preventDefault();
      // Confirmed as it stands, the example's figure becomes the reader's, which is to be seen first.
      const isConfirmed = field.origin === 'example';
      if (isConfirmed) onText(key, field.text);
      onCommit();
      if (!isConfirmed && field.problem === undefined) toNextBox(event.currentTarget);
    }
  };
  return (
    <input
      {...boxText}
      id={id}
      name={key}
      type="text"
      inputMode="decimal"
      autocomplete="off"
      autocapitalize="off"
      enterkeyhint="next"
      spellcheck={false}
      aria-invalid={field.problem === undefined ? undefined : 'true'}
      aria-describedby={describedBy(id, field, mark, help)}
      onInput={(event) => type(event.currentTarget.value)}
      onChange={onCommit}
      onKeyDown={keys}
    />
  );
}

/** A box in a row of others: its name and help stand once above them all. */
export function FigureInRow(props: Omit<BoxProps, 'typing'>) {
  const { field, mark, idPrefix } = props;
  const id = fieldId(idPrefix, field.key);
  const typing = useTyping(props);
  return (
    <span
      class={`field-box${field.spec.whole ? ' field-short' : ''}${field.problem === undefined ? '' : ' box-wrong'}`}
    >
      <label class="spoken" for={id}>
        {field.spec.label}
      </label>
      <FigureBox {...props} typing={typing} />
      {mark === undefined ? null : (
        <span class="spoken">
          <Mark id={id} mark={mark} />
        </span>
      )}
    </span>
  );
}

export function FigureInput(props: Props) {
  const { field, lengths, idPrefix, mark } = props;
  const { key, spec } = field;
  const id = fieldId(idPrefix, key);
  const shown = fieldUnit(spec, lengths);
  const typing = useTyping(props);
  const { step } = typing;
  const name = inSentence(spec.label);
  const stepBy = (by: number) => (): void => step(by);

  return (
    <div class={`field${field.problem === undefined ? '' : ' field-wrong'}`}>
      <span class="field-name">
        <label for={id}>
          <FieldName label={spec.label} />
        </label>
        <Mark id={id} mark={mark} />
      </span>
      <span class="field-row">
        <button
          type="button"
          class="step"
          aria-label={`Less ${name}`}
          onMouseDown={leaveFocus}
          onClick={stepBy(-1)}
        >
          −
        </button>
        <span class={boxClass(typing.text)}>
          <FigureBox {...props} typing={typing} />
          {units[shown].label === '' || bringsUnit(typing.text) ? null : (
            <span class="field-unit">{units[shown].label}</span>
          )}
          <Again field={field} name={name} typing={typing} />
        </span>
        <button
          type="button"
          class="step"
          aria-label={`More ${name}`}
          onMouseDown={leaveFocus}
          onClick={stepBy(1)}
        >
          +
        </button>
      </span>
      <Help id={id} about={name} help={spec.help} measure={spec.measure} lengths={lengths} />
      <FieldNotes
        id={id}
        field={field}
        note={readAs(field, lengths)}
        // A text for one of several readings would take the place of all.
        onType={readingParts(typing.text) ? undefined : typing.type}
      />
    </div>
  );
}
