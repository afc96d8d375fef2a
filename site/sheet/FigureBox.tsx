import { plainText, type FigureField } from '../../calculators/frame/fields.ts';
import type { LengthDisplay } from '../../calculators/frame/units.ts';
import { isRefused, readNumber } from '../../calculators/sheet/boxes.ts';
import { enter } from '../../calculators/sheet/enter.ts';
import type { FigureKey } from '../../calculators/sheet/figures.ts';
import type { Engine } from '../../calculators/sheet/model.ts';
import { today } from '../browser/today.ts';
import { FigureInput } from '../fields/FigureInput.tsx';
import { useTyped } from './typed.ts';

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

/** One figure of the sheet. What cannot be read stays as typed, and no figure stands for it. */
export function FigureBox({
  figure,
  engine,
  lengths,
  edit,
}: BoxProps & { readonly figure: FigureKey }) {
  const box = { kind: 'figure', key: figure } as const;
  const how = { lengths };
  const [text, keep] = useTyped(engine, box, written(engine.figures[figure]));

  return (
    <FigureInput
      field={readNumber(engine, box, text, how)}
      lengths={lengths}
      idPrefix="figure-"
      onText={(_, typed) => {
        keep(typed, meaning(readNumber(engine, box, typed, how)));
        edit((now) => enter(now, box, typed, how, undefined, today()));
      }}
      onCommit={() => undefined}
    />
  );
}
