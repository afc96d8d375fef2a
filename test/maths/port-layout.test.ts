import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  layoutTiming,
  lowerInlet,
  raiseBarrel,
  raiseExhaust,
  raiseTransfers,
  spreadOf,
  type PortLayout,
} from '../../calculators/maths/cylinder/port-layout.ts';
import { squishClearance } from '../../calculators/maths/cylinder/compression.ts';
import { barrels } from './barrels.ts';
import { thrown } from './thrown.ts';

const layouts = fc
  .record({
    barrel: barrels,
    exhaust: fc.double({ min: 0.5, max: 0.7, noNaN: true }),
    lead: fc.double({ min: 0.05, max: 0.2, noNaN: true }),
    inlet: fc.double({ min: 0.2, max: 0.6, noNaN: true }),
  })
  .map(({ barrel, exhaust, lead, inlet }): PortLayout => {
    const { stroke, deckClearance } = barrel;
    return {
      barrel,
      exhaust: deckClearance + exhaust * stroke,
      transfers: [
        deckClearance + (exhaust + lead) * stroke,
        deckClearance + (exhaust + lead) * stroke + 0.2,
      ],
      inlet: {
        kind: 'piston',
        skirtLength: 1.1 * stroke,
        bottomEdge: deckClearance + (1.1 + inlet) * stroke,
      },
    };
  });

const small = fc.double({ min: 0.05, max: 1, noNaN: true });

describe('raising the barrel', () => {
  it('shortens the inlet and lengthens exhaust and transfers', () => {
    fc.assert(
      fc.property(layouts, small, (layout, by) => {
        const before = layoutTiming(layout);
        const after = layoutTiming(raiseBarrel(layout, by));
        expect(after.inlet!.duration).toBeLessThan(before.inlet!.duration);
        expect(after.exhaust.duration).toBeGreaterThan(before.exhaust.duration);
        after.transfers.forEach((transfer, index) => {
          expect(transfer.duration).toBeGreaterThan(before.transfers[index]!.duration);
        });
      }),
    );
  });

  it('is undone by lowering it as much', () => {
    fc.assert(
      fc.property(layouts, small, (layout, by) => {
        const back = layoutTiming(raiseBarrel(raiseBarrel(layout, by), -by));
        expect(back.blowdown).toBeCloseTo(layoutTiming(layout).blowdown, 8);
      }),
    );
  });

  it('adds the same to the squish clearance', () => {
    expect(squishClearance(0.3 + 0.5, 0.8, 0)).toBeCloseTo(squishClearance(0.3, 0.8, 0) + 0.5, 12);
  });
});

describe('cutting one kind of port', () => {
  it('changes that port and the blowdown, and no other', () => {
    fc.assert(
      fc.property(layouts, small, (layout, by) => {
        const before = layoutTiming(layout);
        const exhaust = layoutTiming(raiseExhaust(layout, by));
        expect(exhaust.exhaust.duration).toBeGreaterThan(before.exhaust.duration);
        expect(exhaust.transfers).toEqual(before.transfers);
        expect(exhaust.blowdown).toBeGreaterThan(before.blowdown);

        const transfers = layoutTiming(raiseTransfers(layout, by));
        expect(transfers.exhaust).toEqual(before.exhaust);
        expect(transfers.blowdown).toBeLessThan(before.blowdown);

        const inlet = layoutTiming(lowerInlet(layout, by));
        expect(inlet.inlet!.duration).toBeGreaterThan(before.inlet!.duration);
        expect(inlet.blowdown).toBe(before.blowdown);
      }),
    );
  });
});

describe('a layout', () => {
  const barrel = { stroke: 51, rodLength: 104, pinOffset: 0, deckClearance: 0 };
  const disc = { kind: 'disc', discOpens: 130, discCloses: 50 } as const;

  it('has no inlet timing with a reed', () => {
    const layout = { barrel, exhaust: 30, transfers: [38], inlet: { kind: 'reed' } } as const;
    expect(layoutTiming(layout).inlet).toBeUndefined();
    expect(lowerInlet(layout, 1)).toEqual(layout);
  });

  it('leaves a disc alone when the barrel moves', () => {
    const layout: PortLayout = { barrel, exhaust: 30, transfers: [38], inlet: disc };
    expect(layoutTiming(layout).inlet).toEqual({ opens: -130, closes: 50, duration: 180 });
    expect(layoutTiming(raiseBarrel(layout, 1)).inlet).toEqual(layoutTiming(layout).inlet);
  });

  it('counts the blowdown to the first transfer and the lag from the last', () => {
    const { blowdown, exhaustLag, exhaust, transfers } = layoutTiming({
      barrel: { ...barrel, pinOffset: 1 },
      exhaust: 30,
      transfers: [39, 38],
      inlet: disc,
    });
    expect(blowdown).toBeCloseTo(transfers[1]!.opens - exhaust.opens, 12);
    expect(exhaustLag).toBeCloseTo(exhaust.closes - transfers[1]!.closes, 12);
    expect(exhaustLag).not.toBeCloseTo(blowdown, 2);
  });

  it('gives a negative blowdown where the transfer opens first', () => {
    expect(
      layoutTiming({ barrel, exhaust: 38, transfers: [30], inlet: disc }).blowdown,
    ).toBeLessThan(0);
  });

  it('needs a transfer', () => {
    const none: PortLayout = { barrel, exhaust: 30, transfers: [], inlet: disc };
    const error = thrown(() => layoutTiming(none));
    expect(error.code).toBe('no-transfer');
    expect(error.quantities).toEqual(['transfers']);
  });

  it('tells how far several differ', () => {
    expect(spreadOf([3, 1, 2.5])).toBe(2);
    expect(spreadOf([7])).toBe(0);
  });
});
