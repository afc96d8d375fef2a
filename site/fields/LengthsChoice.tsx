import type { LengthDisplay } from '../../calculators/frame/text/units.ts';
import { rememberLengths } from '../opening/preferences.ts';

/** Lengths in mm or inches, for every page. */
export function LengthsChoice({
  lengths,
  idPrefix,
}: {
  readonly lengths: LengthDisplay;
  readonly idPrefix: string;
}) {
  return (
    <div class="lengths" role="radiogroup" aria-labelledby={`${idPrefix}lengths`}>
      <span id={`${idPrefix}lengths`}>Lengths in</span>
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
    </div>
  );
}
