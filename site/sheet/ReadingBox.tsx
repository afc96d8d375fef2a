import { useRef } from 'preact/hooks';
import {
  plainText,
  readFigure,
  type FieldSpec,
  type FigureField,
} from '../../calculators/frame/fields.ts';
import { fieldUnit } from '../../calculators/frame/field-unit.ts';
import { units } from '../../calculators/frame/units.ts';
import {
  readingOf,
  retype,
  setUnread,
  type Before,
  type Moment,
} from '../../calculators/sheet/edit.ts';
import { boxName, type StepId, type StepReading } from '../../calculators/sheet/steps.ts';
import { textInField, textToKeep } from '../calculator/field-text.ts';
import type { BoxProps } from './FigureBox.tsx';
import { useTyped } from './typed.ts';

export const momentWords: Readonly<Record<Moment, string>> = {
  found: 'as found',
  left: 'as left',
};

interface Props extends BoxProps {
  readonly step: StepId;
  readonly reading: StepReading;
  readonly index: number;
  readonly moment: Moment;
}

const specOf = (reading: StepReading, index: number, moment: Moment): FieldSpec => ({
  label: `${boxName(reading, index)}, ${reading.label.toLowerCase()} ${momentWords[moment]}`,
  help: '',
  unit: reading.unit,
  min: reading.min,
  max: reading.max,
  why: reading.why,
  step: reading.step,
  optional: true,
  ...(reading.whole === undefined ? {} : { whole: reading.whole }),
});

/** One box of the order of work: a figure as found or as left at one cylinder. */
export function ReadingBox(props: Props) {
  const { engine, step, reading, index, moment, lengths, edit } = props;
  const place = `${moment}:${step}:${String(index + 1)}`;
  const value = readingOf(engine, step)[moment][index] ?? undefined;
  const stands = value === undefined ? '' : plainText(value);
  const [text, keep] = useTyped(`${engine.id} ${place}`, stands, engine.unread[place]);
  const spec = specOf(reading, index, moment);
  const read = (typed: string): FigureField =>
    readFigure(place, spec, typed, undefined, value, { lengths });
  const field = read(text);
  const before = useRef<Before>({ entry: value ?? null, changed: 0 });
  const written = useRef<number>();

  const type = (shown: string): void => {
    const typed = textToKeep(shown, field, lengths);
    const next = read(typed);
    if (next.problem !== undefined) {
      edit((now) => setUnread(now, place, typed));
      return;
    }
    keep(typed, next.value === undefined ? '' : plainText(next.value));
    edit((now) => {
      const from = setUnread(now, place, undefined);
      const entry = next.value ?? null;
      const after = retype(from, step, moment, index, entry, before.current, written.current);
      written.current = readingOf(after, step).changed;
      return after;
    });
  };

  const id = `box-${moment}-${step}-${String(index + 1)}`;
  const { label } = units[fieldUnit(spec, lengths)];
  return (
    <div class={`box${field.problem === undefined ? '' : ' field-wrong'}`}>
      <span class="field-box">
        <input
          id={id}
          type="text"
          inputMode="decimal"
          autocomplete="off"
          spellcheck={false}
          aria-label={label === '' ? spec.label : `${spec.label}, ${label}`}
          aria-invalid={field.problem === undefined ? undefined : 'true'}
          aria-describedby={field.problem === undefined ? undefined : `${id}-problem`}
          value={textInField(field, lengths)}
          onFocus={() => {
            before.current = { entry: value ?? null, changed: readingOf(engine, step).changed };
            written.current = undefined;
          }}
          onInput={(event) => type(event.currentTarget.value)}
        />
      </span>
      {field.problem === undefined ? null : (
        <p class="field-problem" id={`${id}-problem`}>
          <span aria-hidden="true">▲ </span>
          {field.problem}
        </p>
      )}
    </div>
  );
}
