import { plainText, type FigureField } from '../../calculators/frame/field/fields.ts';
import type { LengthDisplay } from '../../calculators/frame/text/units.ts';
import { useContext } from 'preact/hooks';
import { isRefused, readNumber } from '../../calculators/sheet/read-number.ts';
import { enter } from '../../calculators/sheet/enter.ts';
import { sheetFigures, type FigureKey } from '../../calculators/sheet/figures.ts';
import type { Engine } from '../../calculators/sheet/model.ts';
import { today } from '../browser/today.ts';
import { ChoiceInput } from '../fields/ChoiceInput.tsx';
import { FigureInput } from '../fields/FigureInput.tsx';
import { SheetSums } from './sheet-sums.ts';
import { useTyped } from './typed.ts';
import { useAgain } from './use-again.ts';

export interface BoxProps {
  readonly engine: Engine;
  readonly lengths: LengthDisplay;
  readonly edit: (edit: (engine: Engine) => Engine) => void;
}

/** How a value is written in its box. */
export const written = (value: number | undefined): string =>
  value === undefined ? '' : plainText(value);

/** What a text that was read means, as it would be written; nothing where it was refused. */
export const meaning = (field: FigureField): string | undefined =>
  isRefused(field) ? undefined : written(field.value);

/** One figure of the sheet that is chosen and not typed: an answer, or none yet. */
function AnswerBox({ figure, engine, lengths, edit }: BoxProps & { readonly figure: FigureKey }) {
  const { answers = {}, help, label } = sheetFigures[figure];
  const value = written(engine.figures[figure]);
  return (
    <ChoiceInput
      field={{
        kind: 'choice',
        key: figure,
        label,
        help,
        options: answers,
        value,
        text: value,
        given: value !== '',
        origin: 'yours',
        heldOver: false,
        unread: false,
        kept: false,
      }}
      lengths={lengths}
      idPrefix="figure-"
      onText={(_, text) =>
        edit((now) =>
          enter(now, { kind: 'figure', key: figure }, text, { lengths }, undefined, today()),
        )
      }
      onCommit={() => undefined}
    />
  );
}

/** One figure of the sheet. */
export const FigureBox = (props: BoxProps & { readonly figure: FigureKey }) =>
  sheetFigures[props.figure].answers ? <AnswerBox {...props} /> : <TypedBox {...props} />;

/** One figure of the sheet that is typed. What cannot be read stays as typed, and no figure stands for it. */
function TypedBox({ figure, engine, lengths, edit }: BoxProps & { readonly figure: FigureKey }) {
  const box = { kind: 'figure', key: figure } as const;
  const sums = useContext(SheetSums);
  const how = { lengths, sums };
  const [text, keep, settle] = useTyped(engine, box, written(engine.figures[figure]));

  const enterText = (typed: string): void => {
    keep(typed, meaning(readNumber(engine, box, typed, how)));
    edit((now) => enter(now, box, typed, how, undefined, today()));
  };
  const waits = useAgain(sums, enterText, { id: `figure-${figure}`, settle });
  return (
    <FigureInput
      field={readNumber(engine, box, text, how)}
      lengths={lengths}
      idPrefix="figure-"
      onText={(_, typed) => {
        waits(typed);
        enterText(typed);
      }}
      onCommit={settle}
    />
  );
}
