import { isHomeUnit, numberAndUnit } from '../../calculators/frame/parse.ts';
import { showInput } from '../../calculators/frame/format.ts';
import type { FigureField } from '../../calculators/frame/fields.ts';
import { displayUnit, units, type LengthDisplay } from '../../calculators/frame/units.ts';

/**
 * What stands in a field for the text kept in the state: the unit is left out when it is the one
 * printed beside the field.
 */
export function textInField(field: FigureField, lengths: LengthDisplay): string {
  const { unit } = field.spec;
  const shown = displayUnit(unit, lengths);
  const pieces = numberAndUnit(field.text);
  if (!pieces) return field.text;
  if (isHomeUnit(pieces.unit, unit)) {
    if (shown !== unit) return `${pieces.number} ${units[unit].token}`;
    return field.text === `${pieces.number}${units[unit].token}` ? pieces.number : field.text;
  }
  return shown !== unit && pieces.unit === units[shown].token ? pieces.number : field.text;
}

/** What the state keeps for a typed text: a bare number means the unit printed beside the field. */
export function textToKeep(typed: string, field: FigureField, lengths: LengthDisplay): string {
  const shown = displayUnit(field.spec.unit, lengths);
  if (shown === field.spec.unit) return typed;
  const pieces = numberAndUnit(typed);
  return pieces?.unit === '' ? `${pieces.number}${units[shown].token}` : typed;
}

/** How a text with a unit, a comma or a fraction was read: "= 2.21 mm". */
export function readAs(field: FigureField, lengths: LengthDisplay): string | undefined {
  if (field.problem !== undefined || field.value === undefined || field.pending) return undefined;
  const { unit } = field.spec;
  const pieces = numberAndUnit(field.text);
  if (!pieces) return undefined;
  const foreign = !isHomeUnit(pieces.unit, unit);
  const shown = displayUnit(unit, lengths);
  const bareInShown = foreign && shown !== unit && pieces.unit === units[shown].token;
  if (bareInShown) return `= ${showInput(field.value, unit, 'mm')}`;
  if (foreign || shown !== unit || /[,/⁄]/u.test(field.text)) {
    return `= ${showInput(field.value, unit, lengths)}`;
  }
  return undefined;
}
