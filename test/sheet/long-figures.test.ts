import { expect, it } from 'vitest';
import { newEngine } from '../../calculators/sheet/model.ts';
import { readNumber } from '../../calculators/sheet/read-number.ts';
import { setFigure } from '../../calculators/sheet/set-figure.ts';
import { textInField } from '../../site/fields/field-text.ts';

const box = { kind: 'figure', key: 'leak-drop' } as const;
const shown = (value: number, text: string) =>
  textInField(
    readNumber(setFigure(newEngine('e-1', 'One'), 'leak-drop', value), box, text, {
      lengths: 'mm',
    }),
    'mm',
  );

it('a file’s figure that was typed in another unit has no more digits than anybody reads', () => {
  // One pound to the square inch is 6.894757 kPa (NIST SP 811, recalled from memory); a tenth of the step is as fine as it is read.
  expect(shown(6.89475729316836, '6.89475729316836')).toBe('6.9');
  expect(shown(7, '7')).toBe('7');
  expect(shown(7.123456, '7.123456')).toBe('7.123456');
  // What was typed here stays as typed.
  expect(shown(6.89475729316836, '1 psi')).toBe('1 psi');
});
