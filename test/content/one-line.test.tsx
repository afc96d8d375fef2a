import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { onOneLine } from '../../site/articles/on-one-line.ts';
import { shortCells } from '../../site/articles/short-cells.ts';
import '../../site/browser/one-line.ts';

/** A text in which what no line's end parts stands in brackets. */
const bracketed = (html: string): string =>
  html.replaceAll('<one-line>', '[').replaceAll('</one-line>', ']');
const read = (text: string): string => bracketed(onOneLine(text));

describe('a figure and its unit stand on one line', () => {
  it.each([
    ['A gap of 0.4 mm, no more', 'A gap of [0.4 mm], no more'],
    ['from 0.35 to 0.4 mm.', 'from 0.35 to [0.4 mm].'],
    ['30.7 ± 0.3 mm', '[30.7 ± 0.3 mm]'],
    ['± 0.3 mm, −2 °C and 5 per cent', '[± 0.3 mm], [−2 °C] and [5 per cent]'],
    ['16 thou at 3000 rpm', '[16 thou] at [3000 rpm]'],
    ['1/58 ohm for 1.5 mm²', '[1/58 ohm] for [1.5 mm²]'],
    ['40 kPa (6 psi) and 20 hPa', '[40 kPa] ([6 psi]) and [20 hPa]'],
    ['tension 0.0216 N/m, torque 12 N m', 'tension [0.0216 N/m], torque [12 N m]'],
    ['3 turns in 12 minutes', '[3 turns] in [12 minutes]'],
    ['premix at 33 : 1, or 25.0 : 1 ± 0.5', 'premix at [33 : 1], or [25.0 : 1] [± 0.5]'],
    ['The angle is 21.52 ± 0.10°, and', 'The angle is [21.52 ± 0.10°], and'],
    [
      '2.2 ± 0.1\u00A0mm or ± 0.1\u00A0mm, 3\u00A0mm',
      '[2.2 ± 0.1\u00A0mm] or [± 0.1\u00A0mm], 3\u00A0mm',
    ],
    ['24.1° before 87.', '24.1° before 87.'],
    ['M14 × 1.25 and 3 cylinders', '[M14 × 1.25] and 3 cylinders'],
    ['some 700 newtons, 88 newton metres', 'some [700 newtons], [88 newton metres]'],
    ['1.0 to 1.5 thousandths, 3 decibels more', '1.0 to [1.5 thousandths], [3 decibels] more'],
    ['AC 43.13-1B, page 8-16, B1.13M-1995', '[AC 43.13-1B], [page 8-16], [B1.13M-1995]'],
    [
      'chapter 5, on; chapters 2, 3 page 1985, page not',
      '[chapter 5], on; chapters 2, 3 [page 1985], page not',
    ],
    ['TM 9-8000, fires 1-3-2; hole 3-1.', '[TM 9-8000], fires [1-3-2]; hole [3-1].'],
    ['lead-free, a 2-hole tag, −1.5 to 1', 'lead-free, a 2-hole tag, −1.5 to 1'],
    ['JCGM 100:2008, ISO 286-1:2010', '[JCGM 100:2008], [ISO 286-1:2010]'],
    ['or (40.0 − 44.0) / 2 is −2.0°, so', 'or [(40.0 − 44.0) / 2] is −2.0°, so'],
    ['from 360 − 2 × 97.9 = 164.2°.', 'from [360 − 2 × 97.9] = 164.2°.'],
    ['3.2 mm + 0.3 mm is 3.5 mm', '[3.2 mm + 0.3 mm] is [3.5 mm]'],
    ['1 mm + 2 mm + 3 mm + 4 mm + 5 mm', '[1 mm] + [2 mm] + [3 mm] + [4 mm] + [5 mm]'],
    ['across −0.05 + 0.15 m: 3', 'across [−0.05 + 0.15 m]: 3'],
    ['a plug of M14 × 1.25, 1 to 3', 'a plug of [M14 × 1.25], 1 to 3'],
    ['4 litresome', '4 litresome'],
    ['Set 2, from set 1 (ISO 273:1979)', '[Set 2], from [set 1] ([ISO 273:1979])'],
    ['ISO 1219-1 on cylinder 3.', '[ISO 1219-1] on [cylinder 3].'],
    ['hole 6 mm wide, pin 0.4, set 2 mm', 'hole [6 mm] wide, pin 0.4, set [2 mm]'],
    ['the first hole 2\u00A0mm out', 'the first hole 2\u00A0mm out'],
    ['by J. P. Den Hartog, C. F. Taylor', 'by [J. P. Den] Hartog, [C. F. Taylor]'],
    ['draws 6 A. The third', 'draws [6 A]. The third'],
    ['1/58 ohm at 20 °C. With heat', '[1/58 ohm] at [20 °C]. With heat'],
    ['McGraw-Hill, an e-Handbook of 14-Inch', '[McGraw-Hill], an [e-Handbook] of 14-Inch'],
    ['well-known, at its top. Then half', 'well-known, at its top. Then half'],
    ['to a taper, 1 in 50. Lower it 1 in', 'to a taper, [1 in 50]. Lower it [1 in]'],
    ['offset 2 and a set 12°, set 125', 'offset 2 and a set 12°, set 125'],
  ])('%s', (text, expected) => {
    expect(read(text)).toBe(expected);
  });

  it('in a page: not in its drawings, nor where components write', () => {
    expect(read('<p title="1 mm">1 mm</p><svg><text>1 mm</text></svg><b>2 mm</b>')).toBe(
      '<p title="1 mm">[1 mm]</p><svg><text>1 mm</text></svg><b>[2 mm]</b>',
    );
    expect(read('<div data-calculator="x"><div>1 mm</div>2 mm</div>3 mm')).toBe(
      '<div data-calculator="x"><div>1 mm</div>2 mm</div>[3 mm]',
    );
  });

  it('and a short cell of a table that holds a figure, whole', () => {
    const cells = (html: string) => bracketed(shortCells(html));
    expect(cells('<tr><th scope="row">1000 m up</th><td>\n 1, 3, 2, 4\n</td></tr>')).toBe(
      '<tr><th scope="row">[1000 m up]</th><td>[1, 3, 2, 4]</td></tr>',
    );
    // On a narrow phone such a name is parted, before its last figure and the word that goes with it.
    expect(cells('<th scope="row">Triple at 120°</th><td>12 V on 10 V</td>')).toBe(
      '<th scope="row">[Triple [at 120°]]</th><td>[12 V on 10 V]</td>',
    );
    const left =
      '<th scope="col">Travel at 20°</th><td>a twin</td><td>0.35</td><td>0°, 180°, 270°, 90°</td>';
    expect(cells(left)).toBe(left);
    // What is held already is not held again.
    expect(bracketed(onOneLine(shortCells('<td>50 to 60 mm</td>')))).toBe('<td>[50 to 60 mm]</td>');
  });

  it('and a comma stands on the line of the letter before it', () => {
    const letter = '<math><mi>D</mi></math>';
    expect(read(`<p>the bore ${letter}, the stroke ${letter} and (${letter}).</p>`)).toBe(
      `<p>the bore [${letter},] the stroke ${letter} and ([${letter}).]</p>`,
    );
    const alone = `<math display="block"><mi>D</mi></math>, 2`;
    expect(read(alone)).toBe(alone);
  });

  it('in what components write: in sentences, and in no name', () => {
    const of = (text: string) => (
      <li>
        <p>{text}</p>
        and {text} <button>{text}</button>
      </li>
    );
    expect(bracketed(render(of('0.4 mm wide')))).toBe(
      '<li><p>[0.4 mm] wide</p>and [0.4 mm] wide <button>0.4 mm wide</button></li>',
    );
  });
});
