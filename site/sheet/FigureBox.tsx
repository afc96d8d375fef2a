import { plainText, readFigure, type FigureField } from '../../calculators/frame/fields.ts';
import type { LengthDisplay } from '../../calculators/frame/units.ts';
import { setFigure, setUnread } from '../../calculators/sheet/edit.ts';
import { figureSpec, type FigureKey } from '../../calculators/sheet/figures.ts';
import type { Engine } from '../../calculators/sheet/model.ts';
import { FigureInput } from '../calculator/FigureInput.tsx';
import { useTyped } from './typed.ts';

export interface BoxProps {
  readonly engine: Engine;
  readonly lengths: LengthDisplay;
  readonly edit: (edit: (engine: Engine) => Engine) => void;
}

const meaning = (value: number | undefined): string =>
  value === undefined ? '' : plainText(value);

/** One figure of the sheet. What cannot be read stays as typed, and the last good figure stands. */
export function FigureBox({
  engine,
  figure,
  lengths,
  edit,
}: BoxProps & { readonly figure: FigureKey }) {
  const place = `figure:${figure}`;
  const value = engine.figures[figure];
  const [text, keep] = useTyped(`${engine.id} ${place}`, meaning(value), engine.unread[place]);
  const spec = figureSpec(figure);
  const read = (typed: string): FigureField =>
    readFigure(figure, spec, typed, undefined, value, { lengths });
  const field = read(text);

  const onText = (_: string, typed: string): void => {
    const next = read(typed);
    if (next.problem !== undefined) {
      edit((before) => setUnread(before, place, typed));
      return;
    }
    keep(typed, meaning(next.value));
    edit((before) => setFigure(setUnread(before, place, undefined), figure, next.value));
  };

  return (
    <FigureInput
      field={{ ...field, heldOver: field.problem !== undefined && value !== undefined }}
      lengths={lengths}
      idPrefix="figure-"
      onText={onText}
      onCommit={() => undefined}
    />
  );
}
