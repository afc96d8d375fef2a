import { useContext, useEffect, useRef, useState } from 'preact/hooks';
import { fieldUnit } from '../../calculators/frame/field-unit.ts';
import { units } from '../../calculators/frame/units.ts';
import { placeOf, readingSpec, readNumber, type Moment } from '../../calculators/sheet/boxes.ts';
import {
  readingOf,
  writtenLast,
  type Before,
  type Manner,
  type WrittenLast,
} from '../../calculators/sheet/edit.ts';
import { enter } from '../../calculators/sheet/enter.ts';
import type { Spot } from '../../calculators/sheet/due.ts';
import { today } from '../browser/today.ts';
import { readAs, textInField, textToKeep } from '../fields/field-text.ts';
import { KeyRow } from '../fields/KeyRow.tsx';
import type { BoxProps } from './FigureBox.tsx';
import { useAgain } from './use-again.ts';
import { SheetSums } from './sheet-sums.ts';
import { TextProblem } from './TextProblem.tsx';

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

/** Whether the reader has fingers and no mouse: then a pad of digits covers the screen's foot. */
const touched = (): boolean => matchMedia('(pointer: coarse)').matches;

/** The one box of the screen: empty at first, for a reading of its own, whatever stood there before. */
export function OneBox(props: Props) {
  const { engine, spot, moment, kind, lengths, edit, wrote, refused, onEnter } = props;
  const { step, index } = spot;
  const box = { kind: 'reading', step, moment, index } as const;
  const place = placeOf(box);
  const sums = useContext(SheetSums);
  const how = { lengths, sums };
  const spec = readingSpec(step, index, moment);
  const [text, setText] = useState(engine.unread[place] ?? '');
  const [typing, setTyping] = useState<HTMLInputElement>();
  const field = readNumber(engine, box, text, how);
  const before = useRef<Before>();
  const last = useRef<WrittenLast>();
  before.current ??= {
    entry: readingOf(engine, step)[moment][index] ?? null,
    changed: readingOf(engine, step).changed,
  };

  const put = (typed: string, as: Manner['kind']): void =>
    edit((now) => {
      const anew = { before: before.current!, written: last.current, kind: as, anew: true };
      const after = enter(now, box, typed, how, anew, today());
      last.current = writtenLast(after, step);
      return after;
    });
  const enterText = (typed: string): void => {
    const next = readNumber(engine, box, typed, how);
    setText(typed);
    wrote(next.problem === undefined && next.value !== undefined);
    put(typed, kind);
  };
  const isWrong = field.problem !== undefined;
  useEffect(() => refused(isWrong), [isWrong]);
  const id = 'one-box';
  const waits = useAgain(sums, enterText, { id });
  const type = (shown: string): void => {
    const typed = textToKeep(shown, field, lengths);
    waits(typed);
    enterText(typed);
  };
  const was = useRef(kind);
  useEffect(() => {
    // What was typed already is read in the other manner.
    if (was.current === kind) return;
    was.current = kind;
    if (text !== '') put(text, kind);
  }, [kind]);

  const { label } = units[fieldUnit(spec, lengths)];
  const as = readAs(field, lengths);
  return (
    <div class={`one-field${field.problem === undefined ? '' : ' field-wrong'}`}>
      <span class="field-box">
        <input
          id={id}
          type="text"
          inputMode="decimal"
          autocomplete="off"
          enterkeyhint="next"
          spellcheck={false}
          aria-label={label === '' ? spec.label : `${spec.label}, ${label}`}
          aria-invalid={field.problem === undefined ? undefined : 'true'}
          aria-describedby={field.problem === undefined ? undefined : `${id}-problem`}
          value={textInField(field, lengths)}
          onFocus={(event) => setTyping(touched() ? event.currentTarget : undefined)}
          onBlur={() => setTyping(undefined)}
          onInput={(event) => type(event.currentTarget.value)}
          onKeyDown={(event) => {
            if (event.key !== 'Enter') return;
            event.preventDefault();
            if (field.problem === undefined) onEnter();
          }}
        />
        {label === '' ? null : <span class="field-unit">{label}</span>}
      </span>
      {as === undefined ? null : <p class="field-note">{as}</p>}
      <TextProblem id={`${id}-problem`} problem={field.problem} />
      {typing ? <KeyRow box={typing} unit={spec.unit} /> : null}
    </div>
  );
}
