import type { Field } from '../../calculators/frame/field/fields.ts';
import { showsLengths } from '../../calculators/frame/lengths.ts';
import { stillToGive } from '../../calculators/frame/whose.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import { Fields, type FieldHandlers } from '../fields/Fields.tsx';
import { Groups } from '../fields/Groups.tsx';
import { KeyRow } from '../fields/KeyRow.tsx';
import { LengthsChoice } from '../fields/LengthsChoice.tsx';
import { Errors } from '../fields/PlusMinus.tsx';
import { Problems, ReasonsForNone } from '../fields/Problems.tsx';
import { useTouchedBox } from '../fields/use-touched-box.ts';
import { LaterPart } from './LaterPart.tsx';
import type { State } from './state.ts';

interface Props extends State, FieldHandlers {
  readonly calculator: AnyCalculator;
}

const isOf = (key: string, named: string): boolean =>
  key === named || key.replace(/-\d+$/, '') === named;

/** The fields under the picture: those that the page is about in its order, or the first figure of all. */
function inHandOf({ inHand }: AnyCalculator, fields: readonly Field[]): readonly Field[] {
  const first = fields.find(({ kind }) => kind === 'figure');
  const keys: readonly string[] = inHand ?? [first?.key ?? ''];
  const place = ({ key }: Field): number => keys.findIndex((named) => isOf(key, named));
  return fields
    .filter((field) => place(field) >= 0)
    .sort((one, other) => place(one) - place(other));
}

/** The figure in hand, what stands in the way of a result, and the other figures folded in their groups. */
export function Form({ calculator, evaluation, ...handlers }: Props) {
  const { lengths, idPrefix } = handlers;
  const { fields, errorFields, demonstration } = evaluation;
  const toGive = stillToGive(calculator, evaluation);
  const inHand = inHandOf(calculator, fields);
  const shared = { marked: !demonstration, ...handlers };
  const [typing, watch] = useTouchedBox<HTMLFormElement>();
  const field = typing && fields.find(({ key }) => key === typing.name);
  return (
    <form
      class="calc-form"
      data-part="form"
      aria-label={`Figures for: ${calculator.title}`}
      onSubmit={(event) => event.preventDefault()}
      {...watch}
    >
      <p class="sideways">Push the drawing sideways for the next.</p>
      <div class="in-hand">
        <Fields fields={inHand} {...shared} />
      </div>
      {toGive === undefined ? null : <p class="to-give">{toGive}</p>}
      <Problems evaluation={evaluation} idPrefix={idPrefix} />
      <ReasonsForNone evaluation={evaluation} />
      <LaterPart class="calc-groups">
        <Groups
          fields={fields.filter((field) => !inHand.includes(field))}
          side={calculator.folded}
          {...shared}
        />
        {errorFields.length === 0 ? null : <Errors fields={errorFields} {...handlers} />}
        {showsLengths(calculator) ? <LengthsChoice lengths={lengths} idPrefix={idPrefix} /> : null}
      </LaterPart>
      {field?.kind === 'figure' ? <KeyRow box={typing!} unit={field.spec.unit} /> : null}
    </form>
  );
}
