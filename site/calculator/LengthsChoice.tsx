import type { LengthDisplay } from '../../calculators/frame/units.ts';
import { rememberLengths } from './preferences.ts';

/** Lengths in mm or inches, for every page. */
export function LengthsChoice({
  lengths,
  idPrefix,
}: {
  readonly lengths: LengthDisplay;
  readonly idPrefix: string;
}) {
  return (
    <fieldset class="lengths">
      <legend>Lengths in</legend>
      {(['mm', 'in'] as const).map((unit) => (
        <label class="option" key={unit}>
          <input
            type="radio"
            name={`${idPrefix}lengths`}
            value={unit}
            checked={lengths === unit}
            onChange={() => rememberLengths(unit)}
          />
          <span>{unit === 'mm' ? 'mm' : 'inch'}</span>
        </label>
      ))}
    </fieldset>
  );
}
