import type { Engine } from '../../calculators/sheet/model.ts';
import { isTypedInInches } from '../../calculators/sheet/typed-in.ts';
import { hasChosenLengths, rememberedLengths, rememberLengths } from '../opening/preferences.ts';

/**
 * Shows lengths as a brought engine has them, where nobody has chosen on this device yet; else says
 * once that they are shown otherwise. Empty where there is nothing to say.
 */
export function asTyped(engine: Engine | undefined): string {
  if (!engine || !isTypedInInches(engine)) return '';
  if (!hasChosenLengths()) {
    rememberLengths('in');
    return ' Its lengths were typed in inches, and lengths are shown so here now.';
  }
  return rememberedLengths() === 'in'
    ? ''
    : ' Its lengths were typed in inches; they are shown in millimetres, as chosen on this device.';
}
