import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import type { FigureKey } from '../../calculators/sheet/figures.ts';
import { idleFigures } from '../../calculators/sheet/idle-figures.ts';
import { wantedFigures } from '../../calculators/sheet/judge.ts';
import { newEngine } from '../../calculators/sheet/model.ts';
import { jobOf } from '../../calculators/sheet/progress.ts';
import { PrintSheet } from '../../site/sheet/PrintSheet.tsx';

type Figures = Partial<Record<FigureKey, number>>;

describe('figures of what the engine has not', () => {
  // By hand, from what each answer of the sheet says that the engine has not got.
  it.each<[string, Figures, FigureKey[]]>([
    ['nothing is said, and so no reeds', {}, ['reed-gap']],
    ['no reeds', { reeds: 0 }, ['reed-gap']],
    [
      'reeds, and so no edge that opens the inlet',
      { reeds: 6 },
      ['inlet-opens', 'inlet-tolerance'],
    ],
    ['no condenser', { condensers: 0 }, ['condenser', 'condenser-tolerance', 'reed-gap']],
    ['a magneto', { 'fed-coils': 0 }, ['feed-drop', 'reed-gap']],
    ['one carburettor', { cylinders: 2, carburettors: 1 }, ['reed-gap', 'slide-tolerance']],
    ['one set', { cylinders: 2, sets: 1 }, ['plate-tolerance', 'reed-gap']],
  ])('%s', (_, figures, idle) => {
    const engine = { ...newEngine('e-1', 'Own'), figures };
    const found = idleFigures(engine).filter((key) => key !== undefined);
    expect(found.sort()).toEqual(idle);
    // Nothing that another step of it needs.
    const asked = jobOf(engine).flatMap((id) => wantedFigures(id, engine));
    expect(found.filter((key) => asked.includes(key))).toEqual([]);
  });

  it('stand on no paper, but for one that was written', () => {
    const paper = (figures: Figures): string =>
      renderToString(<PrintSheet engine={{ ...newEngine('e-1', 'Own'), figures }} lengths="mm" />);
    expect(paper({ reeds: 6 })).toContain('Most gap under a reed');
    expect(paper({ reeds: 0 })).not.toContain('Most gap under a reed');
    expect(paper({ reeds: 0, 'reed-gap': 0.2 })).toContain('Most gap under a reed');
  });
});
