import { describe, expect, it } from 'vitest';
import { line, type Drawing } from '../../calculators/drawing/shapes.ts';
import { withNote } from '../../calculators/drawing/with-note.ts';

const plain: Drawing = {
  ...{ title: 'Test', left: -50, bottom: -40, width: 100, height: 80 },
  shapes: [line('cut', -50, -40, 50, 40)],
};

describe('the note below a drawing', () => {
  it('lies wholly on the sheet, and below all that was drawn', () => {
    const noted = withNote(plain, 'Whose the figures are');
    const [note] = noted.shapes.flatMap((shape) => (shape.kind === 'text' ? [shape] : []));
    expect(note!.text).toBe('Whose the figures are');
    expect(note!.y).toBeGreaterThan(noted.bottom + note!.height / 2);
    expect(note!.y + note!.height).toBeLessThan(plain.bottom);
    expect(note!.x).toBeGreaterThan(noted.left);
    // The sheet grows downwards by what the note takes, and nothing that was on it is cut off.
    expect(noted.bottom + noted.height).toBe(plain.bottom + plain.height);
    expect(noted.bottom).toBeLessThan(plain.bottom);
    expect([noted.left, noted.width]).toEqual([plain.left, plain.width]);
  });

  it('is not there where there is nothing to say', () => {
    expect(withNote(plain, undefined)).toBe(plain);
  });
});
