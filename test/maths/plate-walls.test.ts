import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assertWalls, walls, type Plate } from '../../calculators/maths/plate/plate-walls.ts';
import { codeOf } from './code-of.ts';

const plate: Plate = {
  outsideDiameter: 90,
  boreDiameter: 28,
  angles: [0, 120, 240],
  holes: [{ pitchRadius: 30, holeAngle: 0, drill: 4 }],
  slots: [],
};
const wallBetween = (changed: Partial<Plate>, first: string, second: string): number =>
  walls({ ...plate, ...changed }).find(
    ({ between }) => between[0] === first && between[1] === second,
  )!.wall;

describe('walls', () => {
  it('measures from a hole to the rim and to the bore', () => {
    expect(wallBetween({}, 'hole 1 of set 1', 'the rim')).toBe(45 - 30 - 2);
    expect(wallBetween({}, 'hole 1 of set 1', 'the bore')).toBe(30 - 2 - 14);
  });

  it('measures between two holes of one set', () => {
    const holes = [
      { pitchRadius: 30, holeAngle: 0, drill: 4 },
      { pitchRadius: 30, holeAngle: 180, drill: 6 },
    ];
    expect(wallBetween({ angles: [0], holes }, 'hole 1 of set 1', 'hole 2 of set 1')).toBeCloseTo(
      60 - 5,
      12,
    );
  });

  it('measures radially from a hole to a slot that passes it', () => {
    const slots = [{ slotRadius: 38, slotWidth: 4, slotAngle: 5, slotSweep: 8 }];
    expect(wallBetween({ slots }, 'hole 1 of set 1', 'slot 1')).toBeCloseTo(8 - 2 - 2, 12);
  });

  it('measures to the end of a slot that stops short of the hole', () => {
    const slots = [{ slotRadius: 30, slotWidth: 4, slotAngle: 70, slotSweep: 10 }];
    expect(wallBetween({ slots }, 'hole 1 of set 1', 'slot 1')).toBeCloseTo(30 - 4, 12);
  });

  it('measures radially wherever along its arc the hole lies', () => {
    // A hole at 45° and 30 mm, a slot at 36 mm from 30° to 50°: 6 mm between their middles.
    for (const [holeAngle, slotAngle] of [
      [45, 40],
      [35, 40],
      [10, 0],
      [-10, 0],
      [170, -179],
    ] as const) {
      const holes = [{ pitchRadius: 30, holeAngle, drill: 4 }];
      const slots = [{ slotRadius: 36, slotWidth: 4, slotAngle, slotSweep: 12 }];
      expect(wallBetween({ angles: [0], holes, slots }, 'hole 1 of set 1', 'slot 1')).toBeCloseTo(
        6 - 2 - 2,
        12,
      );
    }
  });

  it('measures to the nearer end of a slot, on either side of it', () => {
    // 10° between the hole and the slot's end on a circle of 30 mm: a chord of 60 sin 5° = 5.2293 mm.
    for (const holeAngle of [20, -20]) {
      const holes = [{ pitchRadius: 30, holeAngle, drill: 4 }];
      const slots = [{ slotRadius: 30, slotWidth: 4, slotAngle: 0, slotSweep: 10 }];
      expect(wallBetween({ angles: [0], holes, slots }, 'hole 1 of set 1', 'slot 1')).toBeCloseTo(
        1.2293,
        4,
      );
    }
  });

  it('names what decides a wall, and an angle between sets only where it does', () => {
    const found = walls({
      ...plate,
      angles: [0, 120],
      holes: [
        { pitchRadius: 30, holeAngle: 0, drill: 4 },
        { pitchRadius: 30, holeAngle: 30, drill: 4 },
      ],
      slots: [{ slotRadius: 38, slotWidth: 4, slotAngle: 5, slotSweep: 8 }],
    });
    const deciding = (first: string, second: string) =>
      found.find(({ between }) => between[0] === first && between[1] === second)!.quantities;
    const one = ['pitchRadius-1', 'holeAngle-1', 'drill-1'];
    const two = ['pitchRadius-2', 'holeAngle-2', 'drill-2'];
    const slot = ['slotRadius', 'slotWidth', 'slotSweep', 'slotStart'];
    expect(deciding('hole 1 of set 2', 'hole 2 of set 2')).toEqual([...one, ...two]);
    expect(deciding('hole 1 of set 1', 'hole 2 of set 2')).toEqual([...one, ...two, 'spacing-2']);
    expect(deciding('hole 1 of set 1', 'slot 1')).toEqual([...one, ...slot]);
    expect(deciding('hole 1 of set 2', 'slot 1')).toEqual([...one, ...slot, 'spacing-2']);
  });

  it('is thinnest first and the same however the plate is turned', () => {
    fc.assert(
      fc.property(fc.double({ min: -360, max: 360, noNaN: true }), (turn) => {
        const slots = [{ slotRadius: 39, slotWidth: 4, slotAngle: 60, slotSweep: 10 }];
        const first = walls({ ...plate, slots });
        const turned = walls({
          ...plate,
          angles: plate.angles.map((angle) => angle + turn),
          slots: slots.map((slot) => ({ ...slot, slotAngle: slot.slotAngle + turn })),
        });
        turned.forEach(({ wall }, i) => {
          expect(wall).toBeCloseTo(first[i]!.wall, 8);
          if (i > 0) expect(wall).toBeGreaterThanOrEqual(turned[i - 1]!.wall);
        });
      }),
    );
  });

  it('gets thinner by half of what the drill gains', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 10, noNaN: true }), (drill) => {
        const holes = [{ pitchRadius: 30, holeAngle: 0, drill }];
        expect(wallBetween({ holes }, 'hole 1 of set 1', 'the rim')).toBeCloseTo(
          15 - drill / 2,
          12,
        );
      }),
    );
  });
});

describe('what cannot be drilled', () => {
  const refuse = (changed: Partial<Plate>) => () => {
    assertWalls(walls({ ...plate, ...changed }));
  };

  it('lets a sound plate pass', () => {
    expect(refuse({})).not.toThrow();
    expect(refuse({ boreDiameter: 0 })).not.toThrow();
    expect(refuse({ holes: [] })).not.toThrow();
  });

  it('names a hole that leaves the plate', () => {
    expect(refuse({ holes: [{ pitchRadius: 44, holeAngle: 0, drill: 4 }] })).toThrow(
      expect.objectContaining({
        code: 'hole-off-plate',
        quantities: ['pitchRadius-1', 'holeAngle-1', 'drill-1', 'outsideDiameter'],
        message: expect.stringMatching(/^Hole 1 of set 1 reaches 1 mm past the rim/),
      }),
    );
  });

  it('takes a hole that just touches the rim for one that leaves it', () => {
    expect(codeOf(refuse({ holes: [{ pitchRadius: 43, holeAngle: 0, drill: 4 }] }))).toBe(
      'hole-off-plate',
    );
  });

  it('names a hole that cuts the bore', () => {
    expect(codeOf(refuse({ holes: [{ pitchRadius: 15, holeAngle: 0, drill: 4 }] }))).toBe(
      'hole-in-bore',
    );
  });

  it('names two holes of one set that collide', () => {
    const holes = [
      { pitchRadius: 30, holeAngle: 0, drill: 4 },
      { pitchRadius: 33, holeAngle: 0, drill: 4 },
    ];
    expect(refuse({ holes })).toThrow(
      expect.objectContaining({
        code: 'holes-collide',
        message: expect.stringMatching(/run into each other by 1 mm/),
      }),
    );
  });

  it('names holes of neighbouring sets that collide', () => {
    expect(refuse({ angles: [0, 5] })).toThrow(
      expect.objectContaining({
        code: 'holes-collide',
        quantities: ['pitchRadius-1', 'holeAngle-1', 'drill-1', 'spacing-2'],
      }),
    );
  });

  it('names a slot that runs into a hole', () => {
    const slots = [{ slotRadius: 32, slotWidth: 4, slotAngle: 0, slotSweep: 10 }];
    expect(refuse({ slots })).toThrow(/Hole 1 of set 1 and slot 1 run into each other/);
  });

  it('names slots that run into each other', () => {
    const slots = [0, 20].map((slotAngle) => ({
      slotRadius: 38,
      slotWidth: 4,
      slotAngle,
      slotSweep: 10,
    }));
    expect(refuse({ slots })).toThrow(/Slot 1 and slot 2/);
  });

  it.each([
    [{ outsideDiameter: 0 }, 'outside-not-positive'],
    [{ outsideDiameter: Number.NaN }, 'not-a-number'],
    [{ boreDiameter: 90 }, 'bore-out-of-range'],
    [{ boreDiameter: -1 }, 'bore-out-of-range'],
    [{ slots: [{ slotRadius: 0, slotWidth: 4, slotAngle: 0, slotSweep: 5 }] }, 'slot-out-of-range'],
    [
      { slots: [{ slotRadius: 38, slotWidth: 4, slotAngle: 0, slotSweep: 91 }] },
      'slot-out-of-range',
    ],
    [
      { slots: [{ slotRadius: 38, slotWidth: 4, slotAngle: 0, slotSweep: -1 }] },
      'slot-out-of-range',
    ],
  ])('refuses %o', (changed, code) => {
    expect(codeOf(refuse(changed))).toBe(code);
  });
});
