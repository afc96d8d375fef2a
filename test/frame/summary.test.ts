import { describe, expect, it } from 'vitest';
import {
  bbcodeLink,
  csvSummary,
  markdownLink,
  plainSummary,
} from '../../calculators/frame/copies.ts';
import {
  inputLines,
  leadLines,
  leadParts,
  resultLines,
  rowLabel,
} from '../../calculators/frame/summary.ts';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import { calculatorBySlug } from '../../site/all-calculators.ts';
import { run, sample } from './sample.ts';

const calculator: AnyCalculator = sample;
const given = { width: '50', depth: '30', 'gap-1': '0.4', 'gap-2': '0.5' };
const rows = (csv: string): string[] => csv.split('\r\n');

describe('the figures as comma-separated values', () => {
  const csv = rows(csvSummary(calculator, run(given)));

  it('begins with a heading and has every row in its order', () => {
    expect(csv.slice(0, 9)).toEqual([
      'name,label,value,unit,plus or minus,whose',
      'shape,Shape,round,,,example',
      'width,Width,50,mm,,yours',
      'depth,Depth,30,mm,,yours',
      'count,Gaps,2,,,assumed',
      'gap-1,Gap 1,0.4,mm,,yours',
      'gap-2,Gap 2,0.5,mm,,yours',
      'hole-2,Hole 2,9,mm,,example',
      'sizes,Sizes in the drawer,1 2.5,mm,,example',
    ]);
  });

  it('gives results unrounded, with their ±, by the names that links use', () => {
    const cells = csv.slice(9, -1).map((row) => row.split(','));
    expect(cells.map(([name]) => name)).toEqual([
      'area',
      'rest',
      'play',
      'share-1',
      'share-2',
      'grid-1-1',
      'grid-1-2',
      'grid-2-1',
      'grid-2-2',
      'loose-1',
      'loose-2',
    ]);
    expect(cells[0]!.slice(0, 4)).toEqual(['area', 'Area', '1875', 'mm²']);
    // 0.75 × 2 × 50 mm × 0.1 mm.
    expect(Number(cells[0]![4])).toBeCloseTo(7.5, 1);
    expect(cells[2]).toEqual(['play', 'Play', '0.3', 'mm', '', '']);
    expect(cells[3]!.slice(0, 4)).toEqual(['share-1', 'Share', '0.8', '%']);
    expect(cells[6]!.slice(0, 4)).toEqual(['grid-1-2', 'Grid', '0.8', 'mm']);
    expect(csv.at(-1)).toBe('');
  });

  it('leaves a cell empty where there is no figure, and no row where there is no result', () => {
    const empty = rows(csvSummary(calculator, run({ depth: '' })));
    expect(empty).toContain('depth,Depth,,mm,,yours');
    expect(empty.some((row) => row.startsWith('rest,'))).toBe(false);
  });

  it('quotes what holds a comma, a quotation mark or a new line, and nothing else', () => {
    const label = (text: string) =>
      rows(
        csvSummary(
          {
            ...calculator,
            results: {
              ...calculator.results,
              area: { ...calculator.results['area']!, label: text },
            },
          },
          run(given),
        ),
      )[9];
    expect(label('a, b')).toMatch(/^area,"a, b",1875,/);
    expect(label('a "b"')).toMatch(/^area,"a ""b""",1875,/);
    expect(label('a\nb')).toMatch(/^area,"a$|^area,"a\nb",1875,/);
    expect(label('a b')).toMatch(/^area,a b,1875,/);
  });
});

describe('inputs in lines for people', () => {
  const lines = (texts: Record<string, string>, lengths: 'mm' | 'in') =>
    inputLines(run(texts).fields, lengths).map(({ label, text }) => `${label}: ${text}`);

  it('has the words of a choice, units, and no line for what is empty', () => {
    expect(lines({}, 'mm')).toEqual([
      'Shape: Round',
      'Width: 50 mm',
      'Gaps: 2',
      'Gap 1: 0.4 mm',
      'Gap 2: 0.5 mm',
      'Hole 2: 9 mm',
      'Sizes in the drawer: 1 mm, 2.5 mm',
    ]);
  });

  it('follows the lengths, each figure in the unit of its field', () => {
    expect(lines({ depth: '-2.54' }, 'in').slice(1, 5)).toEqual([
      'Width: 1.969 in',
      'Depth: −0.1 in',
      'Gaps: 2',
      'Gap 1: 15.7 thou',
    ]);
  });
});

describe('results in lines for people', () => {
  const lines = (texts: Record<string, string>) =>
    resultLines(calculator, run(texts), 'mm').map(
      ({ name, label, text }) => `${name} | ${label} | ${text}`,
    );

  it('has the row before the label, the ± and the word', () => {
    expect(lines(given)).toEqual(
      [
        'area | Area | 1875 ± 8 mm²',
        'rest | Width left | 5.0 ± 0.3 mm over',
        'play | Play | 0.3 mm',
        'share | Gap 1, share | 0.80 ± 0.04 %',
        'share | Gap 2, share | 1.00 ± 0.04 %',
        'grid | Gap 1 side 1, grid | 0.40 ± 0.02 mm',
        'grid | Gap 1 side 2, grid | 0.80 ± 0.04 mm',
        'grid | Gap 2 side 1, grid | 0.50 ± 0.02 mm',
        'grid | Gap 2 side 2, grid | 1.00 ± 0.04 mm',
        'loose | 1, loose ones | 1.0 mm',
        'loose | 2, loose ones | 2.5 mm',
      ].map((line) => line.replace(' %', '%')),
    );
  });

  it('leaves out what does not exist', () => {
    expect(lines({}).some((line) => line.startsWith('rest'))).toBe(false);
    expect(lines({ depth: '20' })[1]).toBe('rest | Width left | 5.0 ± 0.3 mm short');
  });

  it('names rows of no table by their numbers', () => {
    expect(rowLabel(calculator, undefined, {}, 'mm', 2)).toBe('2');
    expect(rowLabel(calculator, undefined, {}, 'mm', 2, 3)).toBe('2-3');
    expect(rowLabel(calculator, 'gaps', {}, 'mm', 2, 3)).toBe('Gap 2 side 3');
    const { tables: _, ...without } = calculator;
    expect(rowLabel(without, 'gaps', {}, 'mm', 2)).toBe('2');
  });
});

describe('a text to paste', () => {
  const link = 'https://site.example/calculators/sample/?width=50mm';

  it('holds inputs, results, what they rest on, remarks and link, line by line', () => {
    const lines = plainSummary(calculator, run(given), 'mm', link).split('\n');
    expect(lines.slice(0, 4)).toEqual([
      'A sample',
      'From:',
      '  Shape: Round (the example’s)',
      '  Width: 50 mm',
    ]);
    expect(lines).toContain('  Gaps: 2');
    expect(lines).toContain('  Hole 2: 9 mm (the example’s)');
    expect(lines.slice(lines.indexOf('Result:'), lines.indexOf('Result:') + 2)).toEqual([
      'Result:',
      '  Area: 1875 ± 8 mm²',
    ]);
    expect(lines.slice(-5)).toEqual([
      '  1 figure is still the example’s: shape.',
      '  Not judged yet: the size. Shape is still the example’s; give it first.',
      '  The second gap is open.',
      '  The second share is a guess.',
      link,
    ]);
  });

  it('marks no figure where all are the example’s, and says so once', () => {
    const text = plainSummary(calculator, run(), 'mm', link);
    expect(text).not.toContain('(the example’s)');
    expect(text).toContain(
      '\n  Worked example of an invented engine. Give your own figures: shape and width.\n',
    );
  });

  it('marks a limit that is assumed, and the example beside an engine of the reader’s own', () => {
    const coil = calculatorBySlug('coil-charge');
    const text = (texts: Record<string, string>, ownEngine = false): string =>
      plainSummary(coil, evaluate(coil, texts, { lengths: 'mm', ownEngine }), 'mm', link);
    const limit = /^ {2}Largest standing current: \S+ A \(assumed\)$/m;
    expect(text({ volts: '12' })).toMatch(limit);
    expect(text({ volts: '12', 'current-limit': '4' })).not.toMatch(limit);
    expect(text({})).not.toContain(' V (the example’s)');
    expect(text({}, true)).toContain(' V (the example’s)');
  });

  it('says nothing of an example where all is given', () => {
    const all = { ...given, shape: 'square', corner: '1', 'hole-2': '5', sizes: '1', count: '2' };
    const text = plainSummary(calculator, run(all), 'mm', 'x');
    expect(text).not.toMatch(/example/i);
    expect(text.split('\n').slice(-5)).toEqual([
      '  1, loose ones: 1.0 mm',
      '  It is large.',
      '  The second gap is open.',
      '  The second share is a guess.',
      'x',
    ]);
  });
});

describe('a link whose words are the answer', () => {
  const link = 'https://site.example/?a=[1]&b=(2)';

  it('in Markdown', () => {
    expect(markdownLink(calculator, run({ ...given, shape: 'round' }), 'mm', link)).toBe(
      '[A sample: area 1875 ± 8 mm²; from shape: round, width 50 mm](https://site.example/?a=[1]&b=%282%29)',
    );
    expect(
      markdownLink(
        { ...calculator, title: 'A *b* [c] <d> `e` \\ _f_' },
        run({ width: 'x' }),
        'mm',
        'x',
      ),
    ).toBe('[A \\*b\\* \\[c\\] \\<d\\> \\`e\\` \\\\ \\_f\\_](x)');
  });

  it('in BBCode', () => {
    expect(bbcodeLink(calculator, run({ ...given, shape: 'round' }), 'mm', link)).toBe(
      '[url=https://site.example/?a=%5B1%5D&b=(2)]A sample: area 1875 ± 8 mm²; from shape: round, width 50 mm[/url]',
    );
    expect(bbcodeLink({ ...calculator, title: 'A [b] c' }, run({ width: 'x' }), 'mm', 'x')).toBe(
      '[url=x]A b c[/url]',
    );
  });

  it('has every result that leads', () => {
    const rest = { ...calculator.results['rest']!, lead: true };
    const two = { ...calculator, results: { ...calculator.results, rest } };
    const all = { ...given, shape: 'round' };
    expect(markdownLink(two, run(all), 'mm', 'x')).toBe(
      '[A sample: area 1875 ± 8 mm², width left 5.0 ± 0.3 mm over; from shape: round, width 50 mm, depth 30 mm](x)',
    );
  });

  it('has what stands on a title block with the word that its figure needs', () => {
    const findTdc = calculatorBySlug('find-tdc');
    const [first] = leadParts(findTdc, evaluate(findTdc, {}, { lengths: 'mm' }), 'mm');
    expect(first!.figure).toMatch(/^[−\d.]+° on the disc$/);
  });

  it('gives what leads a line each', () => {
    expect(leadLines(calculator, run(given), 'mm')).toEqual(['Area: 1875 ± 8 mm²']);
    expect(leadLines(calculator, run({ width: '500' }), 'mm')).toEqual([]);
  });

  it('says whose figures it rests on', () => {
    const words = (texts: Record<string, string>) =>
      markdownLink(calculator, run(texts), 'mm', 'x');
    expect(words({})).toContain('(worked example)');
    expect(words({ width: '50' })).toContain('(with the example’s shape)');
  });
});

it('a link says what was chosen as a sentence would, and nothing twice', () => {
  const calculator = calculatorBySlug('piston-position');
  const texts = { travel: '.125in', given: 'other', stroke: '66.7', rod: '125.4' };
  const evaluation = evaluate(calculator, texts, { lengths: 'mm' });
  const words = markdownLink(calculator, evaluation, 'mm', 'x');
  expect(words).toContain(
    'from piston travel 3.175 mm (given as .125 in), it was given for another engine, ',
  );
  expect(words).not.toContain('you have');
});

it('a letter that is a name keeps its case after the name of its row', () => {
  const pattern = calculatorBySlug('hole-pattern');
  const labels = resultLines(pattern, run({}, {}, pattern), 'mm').map(({ label }) => label);
  expect(labels).toContain('Hole 2, X');
  expect(labels.filter((label) => /, [a-z]$/u.test(label))).toEqual([]);
});
