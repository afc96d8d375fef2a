import DxfParser, { type ILineEntity, type ITextEntity } from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import { papers, placing } from '../../calculators/drawing/papers.ts';
import {
  line,
  text,
  type Drawing,
  type Layer,
  type Shape,
} from '../../calculators/drawing/shapes.ts';
import { tilesOf } from '../../calculators/drawing/tiles.ts';
import { toDxf } from '../../calculators/drawing/to-dxf.ts';
import { toSvg } from '../../calculators/drawing/to-svg.ts';
import { withoutBars } from '../../calculators/drawing/without-bars.ts';

const drawn = (width: number, height: number, ...shapes: readonly Shape[]): Drawing => ({
  ...{ title: 'Test', left: 0, bottom: 0, width, height, shapes },
});

/** On A4 a window is 182 × 259 mm upright and 269 × 172 mm across, and neighbours share 10 mm. */
const onA4 = (width: number, height: number) =>
  tilesOf(drawn(width, height), { width: 210, height: 297 }, 10);

describe('a drawing over several sheets', () => {
  it('lies the way that takes fewer', () => {
    const wide = onA4(250, 150);
    expect(wide.sheet).toEqual({ width: 297, height: 210 });
    expect(wide.tiles).toHaveLength(1);
    const high = onA4(300, 200);
    expect(high.sheet).toEqual({ width: 210, height: 297 });
    expect(high.tiles).toHaveLength(2);
  });

  it('goes row by row from the top, each from the left, and says so on each', () => {
    const { tiles, window } = onA4(300, 400);
    const [first, second, third, last] = tiles;
    expect(first!.bottom).toBeGreaterThan(third!.bottom);
    expect(first!.left).toBeLessThan(second!.left);
    const words = tiles.map(({ frame }) =>
      frame.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : [])).join(' '),
    );
    expect(words[1]).toContain('Sheet 2 of 4: row 1, column 2.');
    expect(words[2]).toContain('Sheet 3 of 4: row 2, column 1.');
    // The middle of the drawing lies in the middle of the sheets.
    expect((first!.left + last!.left + window.width) / 2).toBeCloseTo(150, 9);
    expect((last!.bottom + first!.bottom + window.height) / 2).toBeCloseTo(200, 9);
  });
});

it('Letter is 8.5 × 11 in, so that what fills A4 from top to bottom does not go on it', () => {
  expect(papers.letter.width / 25.4).toBeCloseTo(8.5, 9);
  expect(papers.letter.height / 25.4).toBeCloseTo(11, 9);
  expect(placing({ width: 100, height: 270 }, 'a4')).toBe('upright');
  expect(placing({ width: 100, height: 270 }, 'letter')).toBeUndefined();
});

/** What a file for a cutter calls each layer, and how it draws it; a name once given out is kept. */
const LAYERS: Readonly<Record<Layer, readonly [name: string, lineType: string]>> = {
  cut: ['CUT', 'Continuous'],
  centre: ['CENTRE', 'CHAIN'],
  mark: ['MARK', 'Continuous'],
  position: ['POSITION', 'Continuous'],
  scrap: ['SCRAP', 'CHAIN2'],
  text: ['TEXT', 'Continuous'],
  dimension: ['DIMENSION', 'Continuous'],
  proving: ['PROVING', 'Continuous'],
};
const every = Object.keys(LAYERS) as Layer[];

describe('what is drawn of each kind', () => {
  const drawing = drawn(
    100,
    100,
    ...every.map((layer, i) => line(layer, 0, i, 10, i)),
    text(50, 50, 3, 'Up', 'start', 90),
  );

  it('has a layer of its own in a DXF, and words stand as they are turned', async () => {
    const dxf = await toDxf(drawing);
    const { entities } = new DxfParser().parseSync(dxf)!;
    const lines = entities.filter(({ type }) => type === 'LINE') as ILineEntity[];
    expect(lines.map(({ layer }) => layer)).toEqual(every.map((layer) => LAYERS[layer][0]));
    for (const [name, lineType] of Object.values(LAYERS)) {
      const record = new RegExp(`\\n2\\s+${name}\\s+70\\s+\\S+\\s+62\\s+\\S+\\s+6\\s+(\\S+)`);
      expect(record.exec(dxf)?.[1], name).toBe(lineType);
    }
    const words = entities.find(({ type }) => type === 'TEXT') as ITextEntity;
    expect(words.rotation).toBe(90);
  });

  it('is dashed in an SVG where nothing is cut along it', () => {
    const svg = toSvg(drawing);
    const dashed = every.filter((layer) =>
      new RegExp(`<g id="${layer}"[^>]*stroke-dasharray`).test(svg),
    );
    expect(dashed).toEqual(['centre', 'scrap']);
  });
});

describe('the room that a shape takes without the bars', () => {
  const reach = (shape: Shape) => {
    const { left, bottom, width, height } = withoutBars(drawn(0, 0, shape));
    return { left, right: left + width, bottom, top: bottom + height };
  };

  it('is that of words on both sides of their middle, of a slot’s width, and of an arc past 0°', () => {
    // Ten letters, none narrower than 3 mm at this height.
    expect(reach(text(0, 0, 5, 'MMMMMMMMMM', 'middle')).left).toBeLessThan(-15);
    const slot = { kind: 'slot', layer: 'cut', x: 0, y: 0, radius: 20, width: 6 } as const;
    const round = reach({ ...slot, from: 0, to: 90 } as Shape);
    expect(round.right).toBeCloseTo(20 + 3 + 1, 9);
    expect(round.top).toBeCloseTo(20 + 3 + 1, 9);
    expect(round.bottom).toBeCloseTo(-3 - 1, 9);
    const arc = { kind: 'arc', layer: 'cut', x: 0, y: 0, radius: 20, from: 350, to: 10 } as const;
    expect(reach(arc as Shape).right).toBeCloseTo(21, 9);
  });
});
