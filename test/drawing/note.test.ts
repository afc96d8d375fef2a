import { describe, expect, it } from 'vitest';
import { evaluate } from '../../calculators/frame/evaluate.ts';
import { whoseFile } from '../../calculators/frame/whose-field.ts';
import { calculators } from '../../site/all-calculators.ts';
import { allGiven, reading } from '../calculators/states.ts';
import { renderPdf } from './render-pdf.ts';

const drawn = calculators.filter(({ downloads }) => downloads);

describe.each(drawn.map((calculator) => [calculator.slug, calculator] as const))(
  'the files of %s',
  (_, calculator) => {
    const state = evaluate(calculator, {}, reading);

    it('say that their figures are an example’s, on every sheet in which they are drawn', async () => {
      const note = whoseFile(state.fields)!;
      expect(note).toBe('All figures are an invented example’s.');
      for (const { name, make } of calculator.downloads!) {
        const file = await make(state.values as never, 'mm', note);
        if (typeof file === 'string') {
          expect(file, name).toContain(name.endsWith('.dxf') ? 'invented example' : note);
        } else {
          const words = (await renderPdf(Buffer.from(file), 36)).map((sheet) => sheet.words);
          expect(words.join('\n'), name).toContain(note);
        }
      }
    });

    it('say nothing where all are given, and name the rest where some are', () => {
      expect(whoseFile(allGiven(calculator, state).fields)).toBeUndefined();
      const first = state.fields.find(({ kind }) => kind === 'figure')!;
      const some = evaluate(calculator, { [first.key]: first.text }, reading);
      expect(whoseFile(some.fields)).toMatch(/^Still an invented example’s: .*\.$/);
    });
  },
);
