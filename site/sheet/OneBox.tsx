import { useContext, useEffect, useRef, useState } from 'preact/hooks';
import { fieldUnit } from '../../calculators/frame/field/field-unit.ts';
import { units } from '../../calculators/frame/text/units.ts';
import { placeOf, type Moment } from '../../calculators/sheet/box-places.ts';
import { readingSpec } from '../../calculators/sheet/box-specs.ts';
import { readNumber } from '../../calculators/sheet/read-number.ts';
import type { Manner } from '../../calculators/sheet/set-entry.ts';
import type { Spot } from '../../calculators/sheet/due.ts';
import { bringsUnit, readAs, textToKeep } from '../fields/field-text.ts';
import { Spoken } from '../browser/Spoken.tsx';
import { Doubt } from '../fields/FieldNotes.tsx';
import { useDraft } from '../fields/use-draft.ts';
import { meaning, type BoxProps } from './FigureBox.tsx';
import { useAgain } from './use-again.ts';
import { useRun } from './use-run.ts';
import { SheetSums } from './sheet-sums.ts';
import { TextProblem } from './TextProblem.tsx';
import { rememberTyped } from './typed.ts';

interface Props extends BoxProps {
  readonly spot: Spot;
  readonly moment: Moment;
  readonly kind: Manner['kind'];
  /** Told whether a reading stands now that was typed here. */
  readonly wrote: (wrote: boolean) => void;
  /** Told whether what stands in the box is refused. */
  readonly refused: (refused: boolean) => void;
  readonly onEnter: () => void;
}

/** The one box of the screen: empty at first, for a reading of its own, whatever stood there before. */
export function OneBox(props: Props) {
  const { engine, spot, moment, kind, lengths, edit, wrote, refused, onEnter } = props;
  const { step, index } = spot;
  const box = { kind: 'reading', step, moment, index } as const;
  const place = placeOf(box);
  const sums = useContext(SheetSums);
  const how = { lengths, sums };
  const spec = readingSpec(engine, step, index, moment);
  const [text, setText] = useState(engine.unread[place] ?? '');
  const field = readNumber(engine, box, text, how);
  const { put } = useRun({ engine, edit }, box, how);
  const enterText = (typed: string): void => {
    const next = readNumber(engine, box, typed, how);
    setText(typed);
    const means = meaning(next);
    if (means !== undefined) rememberTyped(engine, box, typed, means);
    wrote(next.problem === undefined && next.value !== undefined);
    put(typed, { kind, anew: true });
  };
  const isWrong = field.problem !== undefined;
  useEffect(() => refused(isWrong), [isWrong]);
  /** How often what is refused was confirmed. */
  const [asked, setAsked] = useState(0);
  const id = 'one-box';
  const waits = useAgain(sums, enterText, { id });
  const [shown, draft] = useDraft(field, lengths);
  const type = (typing: string): void => {
    const typed = textToKeep(typing, field, lengths);
    draft(typing, typed);
    waits(typed);
    enterText(typed);
  };
  const was = useRef(kind);
  useEffect(() => {
    // What was typed already is read in the other manner.
    if (was.current === kind) return;
    was.current = kind;
    if (text !== '') put(text, { kind, anew: true });
  }, [kind]);

  const { label } = units[fieldUnit(spec, lengths)];
  const as = readAs(field, lengths);
  return (
    <div class={`one-field${field.problem === undefined ? '' : ' field-wrong'}`}>
      <span class="field-box">
        <input
          id={id}
          name={place}
          type="text"
          inputMode="decimal"
          autocomplete="off"
          enterkeyhint="next"
          spellcheck={false}
          aria-label={label === '' ? spec.label : `${spec.label}, ${label}`}
          aria-invalid={field.problem === undefined ? undefined : 'true'}
          aria-describedby={field.problem === undefined ? undefined : `${id}-problem`}
          value={shown}
          onInput={(event) => type(event.currentTarget.value)}
          onKeyDown={(event) => {
            if (event.key !== 'Enter') return;
            event.preventDefault();
            if (isWrong) setAsked(asked + 1);
            else onEnter();
          }}
        />
        {label === '' || bringsUnit(shown) ? null : <span class="field-unit">{label}</span>}
      </span>
      {as === undefined ? null : <p class="field-note">{as}</p>}
      <Doubt id={id} doubt={field.doubt} onType={type} />
      <TextProblem id={`${id}-problem`} problem={field.problem} onType={type} />
      <Spoken lines={field.problem === undefined ? [] : [field.problem]} asked={asked} />
    </div>
  );
}
