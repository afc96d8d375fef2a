/**
 * What the line drawings of the articles show, held against the mechanism: what is fixed stays, what
 * touches touches, what is clear is clear, and what has a scale is to it.
 */
import { parseHTML } from 'linkedom';
import type { FunctionComponent } from 'preact';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { demoBarrel } from '../../calculators/demo/barrel.ts';
import { demoCam } from '../../calculators/demo/cam.ts';
import { demoEngine, DEMO_CYLINDERS } from '../../calculators/demo/engine.ts';
import { demoFloat } from '../../calculators/demo/float.ts';
import { demoHead } from '../../calculators/demo/head.ts';
import { demoPlate } from '../../calculators/demo/plate.ts';
import { travelAt } from '../../calculators/maths/crank/slider-crank.ts';
import { inputs as plate } from '../../calculators/plate/plate-layout/inputs.ts';
import { gasket } from '../../content/cover-gasket.ts';
import { cranks, leftOver } from '../../content/cranks.ts';
import { bed } from '../../content/test-bed.ts';
import BlankOnTheLathe from '../../content/drawings/BlankOnTheLathe.tsx';
import ClearTube from '../../content/drawings/ClearTube.tsx';
import ContactsInThreeStates from '../../content/drawings/ContactsInThreeStates.tsx';
import CrankEnds from '../../content/drawings/CrankEnds.tsx';
import CrankOutOfTrue from '../../content/drawings/CrankOutOfTrue.tsx';
import DividersOnThePlate from '../../content/drawings/DividersOnThePlate.tsx';
import DividingHead from '../../content/drawings/DividingHead.tsx';
import FloatGauged from '../../content/drawings/FloatGauged.tsx';
import FourThrottleZones from '../../content/drawings/FourThrottleZones.tsx';
import GasketCut from '../../content/drawings/GasketCut.tsx';
import InsulatedScrew from '../../content/drawings/InsulatedScrew.tsx';
import LampAtThePoints from '../../content/drawings/LampAtThePoints.tsx';
import LeakTest from '../../content/drawings/LeakTest.tsx';
import OneTurn from '../../content/drawings/OneTurn.tsx';
import PistonMeasured from '../../content/drawings/PistonMeasured.tsx';
import PlateWithThreeSets from '../../content/drawings/PlateWithThreeSets.tsx';
import PositiveStop from '../../content/drawings/PositiveStop.tsx';
import PressingTheFloatPin from '../../content/drawings/PressingTheFloatPin.tsx';
import RecessOrBoss from '../../content/drawings/RecessOrBoss.tsx';
import RingGapInBore from '../../content/drawings/RingGapInBore.tsx';
import RingPegAndPorts from '../../content/drawings/RingPegAndPorts.tsx';
import SetOfPoints from '../../content/drawings/SetOfPoints.tsx';
import ShankUnderTheSlide from '../../content/drawings/ShankUnderTheSlide.tsx';
import SkirtAtTheInlet from '../../content/drawings/SkirtAtTheInlet.tsx';
import SolderInTheSquish from '../../content/drawings/SolderInTheSquish.tsx';
import SparkAtThePlug from '../../content/drawings/SparkAtThePlug.tsx';
import TagSoldered from '../../content/drawings/TagSoldered.tsx';
import TestBed from '../../content/drawings/TestBed.tsx';
import ThreeCoilCircuit from '../../content/drawings/ThreeCoilCircuit.tsx';
import ThreeHeads from '../../content/drawings/ThreeHeads.tsx';
import TwoWaysToStop from '../../content/drawings/TwoWaysToStop.tsx';
import WhatShakes from '../../content/drawings/WhatShakes.tsx';
import { sheetsOf, type ShapeMark, type Sheet } from '../pictures/support/marks.ts';
import { boxOf, distance, middleOf, pointsOf, shapesOf } from '../pictures/support/shapes.ts';
import type { Point } from '../pictures/support/paths.ts';

const sheetOf = (Drawing: FunctionComponent): Sheet => sheetsOf(render(<Drawing />))[0]!;
const pageOf = (Drawing: FunctionComponent): Document =>
  parseHTML(`<body>${render(<Drawing />)}</body>`).document;

/** Each closed or open line of a shape by itself, as a shape. */
const pieces = (shape: ShapeMark): ShapeMark[] =>
  shape.lines.map((line) => ({ ...shape, lines: [line] }));

type Box = ReturnType<typeof boxOf>;
const wide = ({ left, right }: Box): number => right - left;
const high = ({ top, bottom }: Box): number => bottom - top;

/** Whether two upright boxes share more than an edge. */
const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right - 0.01 &&
  b.left < a.right - 0.01 &&
  a.top < b.bottom - 0.01 &&
  b.top < a.bottom - 0.01;

/** Round shapes of about one radius. */
const circles = (sheet: Sheet, radius: number, ...names: string[]): ShapeMark[] =>
  shapesOf(sheet, ...names).filter((shape) => {
    const box = boxOf(shape);
    return Math.abs(wide(box) / 2 - radius) < 0.2 && Math.abs(high(box) / 2 - radius) < 0.2;
  });

const numbers = (text: string): number[] => (text.match(/-?\d+(?:\.\d+)?/g) ?? []).map(Number);

/** Whether a point lies within a line that closes. */
function within([x, y]: Point, line: readonly Point[]): boolean {
  let inside = false;
  line.forEach(([x1, y1], i) => {
    const [x2, y2] = line[(i + 1) % line.length]!;
    if (y1 > y !== y2 > y && x < x1 + ((y - y1) * (x2 - x1)) / (y2 - y1)) inside = !inside;
  });
  return inside;
}

/** Names of rooms and ways, in which nothing is drawn. */
const A_ROOM = /port|hole|passage|inlet|plug|way$|bowl|dome|^true top$/;
/** Half of the widest line, and the pitch of a spring. */
const NEAR = 7;

describe('a line from a name', () => {
  const modules = import.meta.glob<{ default: FunctionComponent }>('../../content/drawings/*.tsx', {
    eager: true,
  });
  it.each(
    Object.entries(modules).map(([path, { default: Drawing }]) => [
      path.split('/').at(-1)!,
      Drawing,
    ]),
  )('ends on what is drawn: %s', (_, Drawing) => {
    const sheet = sheetOf(Drawing as FunctionComponent);
    const leaders = shapesOf(sheet, 'leader');
    for (const leader of leaders) {
      const tip = pointsOf(leader).at(-1)!;
      const words = sheet.texts.find(({ order }) => order > leader.order)!.words;
      if (A_ROOM.test(words)) continue;
      const things = sheet.shapes.filter(
        (shape) =>
          !shape.classes.includes('leader') &&
          !pointsOf(shape).every((point) => distance(point, tip) < 10),
      );
      const near = things.some(({ lines }) =>
        lines.some(
          (line) =>
            within(tip, line) ||
            line.some((from, i) => i > 0 && toSegment(tip, line[i - 1]!, from) < NEAR),
        ),
      );
      expect(near, `${words}, at ${tip.map(Math.round).join(', ')}`).toBe(true);
    }
  });
});

/** From a point to a stretch of line. */
function toSegment([x, y]: Point, [x1, y1]: Point, [x2, y2]: Point): number {
  const long = (x2 - x1) ** 2 + (y2 - y1) ** 2;
  const along = long === 0 ? 0 : ((x - x1) * (x2 - x1) + (y - y1) * (y2 - y1)) / long;
  const at = Math.min(1, Math.max(0, along));
  return Math.hypot(x - x1 - at * (x2 - x1), y - y1 - at * (y2 - y1));
}

it('three states of the points: the fixed contact stays, heel and contacts touch when they should', () => {
  const page = pageOf(ContactsInThreeStates);
  const state = (i: number) => {
    const of = (name: string): number[] =>
      numbers(page.querySelector(`.state-${String(i)} .${name}`)!.getAttribute('d')!);
    const [, top] = of('contact-upper') as [number, number];
    const [, face] = of('contact-lower') as [number, number];
    const [, , tipX, tip] = of('heel') as [number, number, number, number];
    const cam = of('cam');
    // The upper of the two places at which the cam's outline crosses the line below the tip.
    const over = cam.flatMap((y, at): number[] => {
      if (at % 2 === 0 || at < 3) return [];
      const [x1, y1, x2] = [cam[at - 3]!, cam[at - 2]!, cam[at - 1]!];
      if (x1 > tipX === x2 > tipX) return [];
      return [y1 + ((tipX - x1) * (y - y1)) / (x2 - x1)];
    });
    const thick = of('contact-upper')[3]!;
    return {
      apart: face - (top + thick),
      clear: Math.min(...over) - tip,
      still: page.querySelector(`.state-${String(i)} .contact-lower`)!.getAttribute('d'),
    };
  };
  const [shut, opening, open] = [state(1), state(2), state(3)];
  expect(opening.still).toBe(shut.still);
  expect(open.still).toBe(shut.still);
  expect(shut.apart).toBeCloseTo(0, 1);
  expect(opening.apart).toBeCloseTo(0, 1);
  expect(open.apart).toBeGreaterThan(5);
  expect(opening.clear).toBeCloseTo(0, 0);
  expect(open.clear).toBeCloseTo(0, 0);
  // Shut, the heel is clear by what is spent of the lift, at the heel's side of the lever.
  expect(shut.clear / open.apart).toBeCloseTo((demoCam.lift - demoCam.gap) / 1.25 / demoCam.gap, 1);
});

describe('one turn in four places', () => {
  const page = pageOf(OneTurn);
  const phase = (i: number) => {
    const of = (name: string) => page.querySelector(`.phase-${String(i)} ${name}`);
    const [bigX, bigY, pinX, pinY] = numbers(of('.part-rod')!.getAttribute('d')!) as [
      number,
      number,
      number,
      number,
    ];
    const piston = numbers(of('.part-moving')!.getAttribute('d')!);
    return {
      rod: Math.hypot(bigX - pinX, bigY - pinY),
      big: [bigX, bigY] as const,
      crown: piston[2]!,
      walls: [...page.querySelectorAll(`.phase-${String(i)} > .part`)][0]!.getAttribute('d'),
      open: [...page.querySelectorAll(`.phase-${String(i)} g.open`)].length,
      transfer: of('.port-transfer') !== null,
    };
  };
  const all = [1, 2, 3, 4].map(phase);

  it('has one rod, one crank and one barrel', () => {
    const centre = numbers(page.querySelector('.phase-1 circle.edge')!.outerHTML).slice(0, 2);
    expect(centre).toHaveLength(2);
    for (const { rod, walls, big } of all) {
      expect(rod).toBeCloseTo(all[0]!.rod, 1);
      expect(walls).toBe(all[0]!.walls);
      expect(distance(big, centre as unknown as Point)).toBeCloseTo(
        (all[0]!.rod * demoEngine.stroke) / 2 / demoEngine.rod,
        1,
      );
    }
  });

  it('opens inlet, exhaust and transfers where crown and skirt uncover them', () => {
    expect(all.map(({ open }) => open)).toEqual([1, 0, 1, 1]);
    expect(all.map(({ transfer }) => transfer)).toEqual([false, false, false, true]);
    const geometry = { stroke: demoEngine.stroke, rodLength: demoEngine.rod, pinOffset: 0 };
    const down = (angle: number) => travelAt(geometry, angle);
    const scale = all[0]!.rod / demoEngine.rod;
    expect(all[2]!.crown - all[1]!.crown).toBeCloseTo((down(108) - down(82)) * scale, 1);
  });
});

it('a plate lies on its seat, and fits by its rim or by its bore but never by both', () => {
  const sheet = sheetOf(RecessOrBoss);
  const cuts = shapesOf(sheet, 'cut');
  expect(cuts).toHaveLength(4);
  for (const [i, fits] of (['rim', 'bore'] as const).entries()) {
    const [case_, plates] = [pieces(cuts[2 * i]!), pieces(cuts[2 * i + 1]!).map(boxOf)];
    for (const [side, box] of plates.entries()) {
      const points = pointsOf(case_[side]!);
      // Seats lie at one height, and the plate on them.
      const seat = points.filter(([, y]) => Math.abs(y - box.bottom) < 0.01);
      expect(seat.length).toBeGreaterThanOrEqual(2);
      const [outer, inner] = side === 0 ? [box.left, box.right] : [box.right, box.left];
      const apart = (x: number): number => Math.min(...seat.map(([at]) => Math.abs(at - x)));
      const [rim, bore] = [apart(outer), apart(inner)];
      if (fits === 'rim') expect([rim < 0.01, bore > 3]).toEqual([true, true]);
      else expect([bore < 0.01, rim > 3]).toEqual([true, true]);
    }
  }
});

describe('the insulated screw together', () => {
  const sheet = sheetOf(InsulatedScrew);
  const right = (shape: ShapeMark): boolean => boxOf(shape).left > 178;
  const parts = (name: string): Box[] =>
    shapesOf(sheet, name).filter(right).flatMap(pieces).map(boxOf);

  it('touches the earthed set nowhere with what is live', () => {
    const outlines = (name: string) =>
      shapesOf(sheet, name)
        .filter(right)
        .flatMap(({ lines }) => lines);
    const set = outlines('cut');
    expect(set).toHaveLength(2);
    for (const live of outlines('edge-filled')) {
      for (const half of set) {
        const near = live.flatMap((at) =>
          half.map((from, i) => toSegment(at, from, half[(i + 1) % half.length]!)),
        );
        const other = half.flatMap((at) =>
          live.map((from, i) => toSegment(at, from, live[(i + 1) % live.length]!)),
        );
        expect(Math.min(...near, ...other)).toBeGreaterThan(4);
      }
    }
  });

  it('leaves no room between its parts', () => {
    const set = parts('cut')[0]!;
    const insulation = parts('part').filter(({ left }) => left < 282 - 5);
    const [upper, bush, lower] = [...insulation].sort((a, b) => a.top - b.top);
    expect(upper!.bottom).toBeCloseTo(set.top, 6);
    expect([bush!.top, bush!.bottom]).toEqual([set.top, set.bottom]);
    expect(lower!.top).toBeCloseTo(set.bottom, 6);
  });
});

it('a soldered tag and its screw touch the set nowhere', () => {
  const sheet = sheetOf(TagSoldered);
  const [left, right, screw] = shapesOf(sheet, 'cut');
  const set = [left!, right!].map(boxOf);
  const shank = pointsOf(screw!).filter(([, y]) => y > set[0]!.top && y < set[0]!.bottom);
  expect(shank).toEqual([]);
  const live = shapesOf(sheet, 'edge-filled').flatMap(pieces).map(boxOf);
  for (const one of live) for (const half of set) expect(overlap(one, half)).toBe(false);
  const insulation = shapesOf(sheet, 'part')
    .map(boxOf)
    .filter(({ top }) => top > 230);
  const filling = insulation.filter(
    (box) => box.top === set[0]!.top && box.bottom === set[0]!.bottom,
  );
  expect(filling).toHaveLength(2);
});

it('a lamp of its own is lit while the points are shut, one to earth while they are open', () => {
  const page = pageOf(LampAtThePoints);
  const panels = [...page.querySelectorAll('svg > g')].filter((g) => g.querySelector('.points'));
  const seen = panels.map((g) => ({
    open: g.querySelector('.points.open') !== null,
    lit: g.querySelector('.lamp-lit') !== null,
    still: g.querySelector('.contact-still')!.getAttribute('d'),
    flows: g.querySelector('path.current')?.getAttribute('d') ?? '',
  }));
  expect(seen.map(({ open, lit }) => [open, lit])).toEqual([
    [false, true],
    [true, false],
    [false, false],
    [true, true],
  ]);
  expect(new Set(seen.map(({ still }) => still)).size).toBe(1);
  // Current goes down the wire of the points, at 250, while they are shut and not when they are open.
  expect(seen.map(({ flows }) => /H250V/.test(flows))).toEqual([true, false, true, false]);
  expect(seen.map(({ flows }) => flows !== '')).toEqual([true, false, true, true]);
});

describe('two ways to stop', () => {
  const sheet = sheetOf(TwoWaysToStop);
  it('the bar lies on both contacts while it is held, and clear of them when it is let go', () => {
    const contacts = circles(sheet, 3, 'edge-filled').map(boxOf);
    expect(contacts).toHaveLength(4);
    const bars = shapesOf(sheet, 'edge')
      .flatMap(pieces)
      .map(boxOf)
      .filter((box) => high(box) === 0 && wide(box) === 46);
    const clear = bars.map((bar) => contacts[0]!.top - bar.bottom);
    expect(clear[0]).toBeLessThan(2);
    expect(clear[1]).toBeGreaterThan(8);
    expect(shapesOf(sheet, 'current')).toHaveLength(1);
  });
  it('the board swings on its hinge, and lies flat over the mouth when it falls', () => {
    const [up, down] = shapesOf(sheet, 'part').filter((shape) => high(boxOf(shape)) > 40);
    const long = (shape: ShapeMark): number =>
      Math.max(
        ...pointsOf(shape).map((a) => Math.max(...pointsOf(shape).map((b) => distance(a, b)))),
      );
    expect(long(down!)).toBeCloseTo(long(up!), 0);
    const mouths = shapesOf(sheet, 'cut').map(boxOf).slice(2);
    const [edge, top, foot] = [mouths[0]!.right, mouths[0]!.top, mouths[1]!.bottom];
    const box = boxOf(down!);
    expect(box.left).toBeCloseTo(edge, 0);
    expect(box.top).toBeLessThan(top);
    expect(box.bottom).toBeGreaterThan(foot);
    expect(boxOf(up!).bottom).toBeLessThan(foot);
  });
});

it('the skirt’s edge is level with the bottom of the inlet where it shuts, and above it at the top', () => {
  const cuts = shapesOf(sheetOf(SkirtAtTheInlet), 'cut');
  const [wall, open, shutWall, shut] = cuts.map((cut) => pieces(cut).map(boxOf));
  const scale = high(wall!.at(-1)!) / (98 - demoBarrel.inlet);
  expect(boxOf(cuts[3]!).bottom).toBeCloseTo(shutWall!.at(-1)!.top, 1);
  expect(wall!.at(-1)!.top - boxOf(cuts[1]!).bottom).toBeCloseTo(
    (demoBarrel.inlet - demoBarrel.skirt - demoBarrel.deck) * scale,
    1,
  );
  expect(open!.length).toBe(shut!.length);
  expect(high(boxOf(cuts[1]!))).toBeCloseTo(demoBarrel.skirt * scale, 1);
  expect(wall!.map((box) => high(box))).toEqual(shutWall!.map((box) => high(box)));
});

it('solder lies on the crown clear of the head, and is pressed to the squish at the top', () => {
  const sheet = sheetOf(SolderInTheSquish);
  const cuts = shapesOf(sheet, 'cut');
  const solders = shapesOf(sheet, 'solder').slice(-2);
  const [before, after] = [0, 1].map((i) => {
    const [head, , piston] = cuts.slice(3 * i, 3 * i + 3).map(boxOf);
    const solder = pointsOf(solders[i]!);
    const atEdge = solder.filter(([x]) => x < 80).map(([, y]) => y);
    return {
      face: head!.bottom,
      crown: piston!.top,
      top: Math.min(...atEdge),
      foot: Math.max(...atEdge),
    };
  });
  expect(before!.foot).toBeCloseTo(before!.crown, 6);
  expect(before!.top).toBeGreaterThan(before!.face);
  expect(after!.foot).toBeCloseTo(after!.crown, 6);
  expect(after!.top).toBeCloseTo(after!.face, 6);
  const joint = boxOf(shapesOf(sheet, 'joint').at(-1)!);
  expect((after!.crown - after!.face) / high(joint)).toBeCloseTo(
    demoHead.squish / demoHead.gasket,
    6,
  );
});

it('the tang just touches the pin of the valve, on its side and upside down, on the same float', () => {
  const sheet = sheetOf(FloatGauged);
  const valves = shapesOf(sheet, 'needle-valve').map(boxOf);
  const tangs = shapesOf(sheet, 'motion').slice(0, 2).map(boxOf);
  const floats = shapesOf(sheet, 'part').map(boxOf);
  expect(tangs[0]!.left).toBeCloseTo(valves[0]!.right, 6);
  expect(tangs[1]!.bottom).toBeCloseTo(valves[1]!.top, 6);
  expect(wide(floats[0]!)).toBeCloseTo(high(floats[1]!), 6);
  expect(high(floats[0]!)).toBeCloseTo(wide(floats[1]!), 6);
});

it('the crown lies on the stop, and crank and rod are as long after the top as before it', () => {
  const sheet = sheetOf(PositiveStop);
  const piston = boxOf(shapesOf(sheet, 'part-moving')[0]!);
  const stop = shapesOf(sheet, 'edge-filled')
    .map(boxOf)
    .find((box) => wide(box) === 10)!;
  expect(Math.abs(stop.bottom - piston.top)).toBeLessThan(1.2);
  const [big, pin] = pointsOf(shapesOf(sheet, 'part-rod')[0]!);
  const [centre, other, same] = pointsOf(shapesOf(sheet, 'edge-hidden')[0]!);
  expect(distance(other!, same!)).toBeCloseTo(distance(big!, pin!), 1);
  expect(distance(other!, centre!)).toBeCloseTo(distance(big!, centre!), 1);
  expect(distance(big!, pin!) / distance(big!, centre!)).toBeCloseTo(
    (2 * demoEngine.rod) / demoEngine.stroke,
    1,
  );
  expect(big![0] + other![0]).toBeCloseTo(2 * centre![0], 1);
});

it('a peg over a window lets an end spring out, one over metal holds both in', () => {
  const sheet = sheetOf(RingPegAndPorts);
  const [metalWrong, metalRight] = shapesOf(sheet, 'cut');
  const pegs = shapesOf(sheet, 'joint').map(middleOf);
  const centres = circles(sheet, 57).map(middleOf);
  const rings = shapesOf(sheet, 'ring');
  const outwards = (i: number, radius: number): Point => {
    const [[cx, cy], [x, y]] = [centres[i]!, pegs[i]!];
    const long = Math.hypot(x - cx, y - cy);
    return [cx + ((x - cx) * radius) / long, cy + ((y - cy) * radius) / long];
  };
  const inMetal = (metal: ShapeMark, at: Point): boolean =>
    metal.lines.some((line) => within(at, line));
  expect(inMetal(metalWrong!, outwards(0, 73))).toBe(false);
  expect(inMetal(metalRight!, outwards(1, 73))).toBe(true);
  const furthest = rings.map((ring, i) =>
    Math.max(...pointsOf(ring).map((point) => distance(point, centres[i]!))),
  );
  expect(furthest[0]).toBeGreaterThan(68);
  expect(furthest[1]).toBeLessThan(66);
});

it('a ring lies square where the crown pushes it, and fits its bore', () => {
  const sheet = sheetOf(RingGapInBore);
  const [ring, square, crown, tilted] = shapesOf(sheet, 'part');
  expect(boxOf(square!).top - boxOf(crown!).bottom).toBeLessThan(3);
  expect(high(boxOf(square!))).toBe(6);
  expect(high(boxOf(tilted!))).toBeGreaterThan(20);
  const barrel = shapesOf(sheet, 'cut')[0]!;
  const middle = middleOf(barrel);
  const outer = Math.max(...pointsOf(ring!).map((point) => distance(point, middle)));
  const bore = Math.min(...pointsOf(barrel).map((point) => distance(point, middle)));
  expect(bore - outer).toBeGreaterThan(0);
  expect(bore - outer).toBeLessThan(2);
});

it('three sets stand a third of a turn apart, each screw in its slot and each heel at the cam', () => {
  const sheet = sheetOf(PlateWithThreeSets);
  const centre = middleOf(circles(sheet, 138)[0]!);
  const turn = (shape: ShapeMark): number => {
    const points = pointsOf(shape);
    const mean = [0, 1].map(
      (i) => points.reduce((sum, p) => sum + p[i as 0 | 1], 0) / points.length,
    );
    return (Math.atan2(mean[1]! - centre[1], mean[0]! - centre[0]) * 180) / Math.PI;
  };
  const bases = shapesOf(sheet, 'set-base').map(turn);
  expect(bases).toHaveLength(3);
  for (const i of [0, 1]) {
    expect((bases[i]! - bases[i + 1]! + 720) % 360).toBeCloseTo(120, 0);
  }
  const slots = shapesOf(sheet, 'edge-thin').filter(({ lines }) => lines[0]!.length > 12);
  for (const screw of circles(sheet, 7, 'edge-filled')) {
    expect(slots.some(({ lines }) => within(middleOf(screw), lines[0]!))).toBe(true);
  }
  const arms = shapesOf(sheet, 'edge').filter(
    ({ lines, classes }) => classes.length === 1 && lines[0]!.length === 3,
  );
  expect(arms).toHaveLength(3);
  // Each heel hangs at the lobe, just clear of where its top comes round.
  const cam = pointsOf(shapesOf(sheet, 'cam')[0]!).map((point) => distance(point, centre));
  for (const arm of arms) {
    const clear = distance(pointsOf(arm)[1]!, centre) - Math.max(...cam);
    expect(clear).toBeGreaterThan(0);
    expect(clear).toBeLessThan(5);
  }
});

it('the dividers’ points stand on the pitch circle, the chord apart', () => {
  const sheet = sheetOf(DividersOnThePlate);
  const rim = circles(sheet, 124.2)[0]!;
  const centre = middleOf(rim);
  const scale = wide(boxOf(rim)) / demoPlate.outside;
  const legs = shapesOf(sheet, 'edge-filled').filter(({ lines }) => lines.length === 2)[0]!;
  const tips = legs.lines.map((line) => line[1]!);
  for (const tip of tips)
    expect(distance(tip, centre) / scale).toBeCloseTo(demoPlate.slotRadius, 1);
  expect(distance(tips[0]!, tips[1]!) / scale).toBeCloseTo(
    2 * demoPlate.slotRadius * Math.sin(Math.PI / DEMO_CYLINDERS),
    1,
  );
});

it('the sector arms hold the holes of the step between them, and the worm has one tooth a turn', () => {
  const sheet = sheetOf(DividingHead);
  const holes = circles(sheet, 4, 'edge-thin').map(middleOf);
  const title = pageOf(DividingHead).querySelector('.axis-text')!.textContent;
  const [turns, step, circle] = numbers(title) as [number, number, number];
  expect(holes).toHaveLength(circle);
  expect(turns + step / circle).toBeCloseTo(plate.worm.default / DEMO_CYLINDERS, 9);
  const centre = middleOf(circles(sheet, 108)[0]!);
  const angle = ([x, y]: Point): number =>
    (Math.atan2(x - centre[0], centre[1] - y) * 180) / Math.PI;
  const here = angle(middleOf(shapesOf(sheet, 'joint')[0]!));
  const next = angle(middleOf(circles(sheet, 8, 'motion')[0]!));
  expect((next - here + 360) % 360).toBeCloseTo((step * 360) / circle, 0);
  const arms = shapesOf(sheet, 'edge').find(
    ({ lines }) => lines.length === 2 && lines[0]!.length === 2,
  )!;
  const [first, last] = arms.lines.map((line) => angle(line[1]!));
  const between = holes.filter((hole) => {
    const on = (angle(hole) - first! + 360) % 360;
    return on < (last! - first! + 360) % 360;
  });
  // So many spaces have one hole more.
  expect(between).toHaveLength(step + 1);
});

it('the chord of the gasket goes from hole to hole, and all holes lie in its ring', () => {
  const sheet = sheetOf(GasketCut);
  const inside = boxOf(shapesOf(sheet, 'edge-hidden')[0]!);
  const scale = wide(inside) / demoPlate.outside;
  const holes = circles(sheet, (gasket.hole / 2) * scale, 'edge-filled').map(middleOf);
  expect(holes).toHaveLength(gasket.screws);
  const [from, to] = pointsOf(shapesOf(sheet, 'size-line')[0]!);
  for (const end of [from!, to!]) {
    expect(Math.min(...holes.map((hole) => distance(hole, end)))).toBeLessThan(0.1);
  }
  const centre: Point = [(inside.left + inside.right) / 2, (inside.top + inside.bottom) / 2];
  for (const hole of holes) {
    const out = distance(hole, centre) / scale;
    expect(out - gasket.hole / 2).toBeGreaterThan(demoPlate.outside / 2);
    expect(out + gasket.hole / 2).toBeLessThan(gasket.outside / 2);
  }
});

it('the fuel stands equally high in chamber and tube, by the middle of its surface', () => {
  const sheet = sheetOf(ClearTube);
  const [chamber, tube] = shapesOf(sheet, 'liquid');
  const level = boxOf(chamber!).top;
  const { top } = boxOf(tube!);
  const surface = pointsOf(tube!).filter(([, y]) => y < level + 5);
  expect(Math.max(...surface.map(([, y]) => y))).toBeCloseTo(level, 0);
  expect(top).toBeLessThan(level);
  expect(boxOf(shapesOf(sheet, 'fuel-line')[0]!).top).toBe(level);
});

it('the shank fills the way from the floor to the slide', () => {
  const sheet = sheetOf(ShankUnderTheSlide);
  const shank = boxOf(circles(sheet, 9, 'edge-filled')[0]!);
  const slide = boxOf(shapesOf(sheet, 'part-moving')[0]!);
  const floor = boxOf(pieces(shapesOf(sheet, 'cut')[0]!).at(-1)!).top;
  expect(shank.top).toBeCloseTo(slide.bottom, 1);
  expect(shank.bottom).toBeCloseTo(floor, 1);
  expect(shank.right).toBeLessThan(slide.right);
});

it('the float’s pin leaves into the hole of the block, on which its post lies', () => {
  const sheet = sheetOf(PressingTheFloatPin);
  const [, post, , block] = shapesOf(sheet, 'cut');
  const [pin, punch] = shapesOf(sheet, 'edge-filled');
  const parts = pieces(block!).map(boxOf);
  expect(boxOf(post!).bottom).toBeCloseTo(parts[0]!.top, 6);
  const hole = parts[1]!.left - parts[0]!.right;
  expect(wide(boxOf(pin!))).toBeLessThan(hole);
  expect(boxOf(pin!).bottom).toBeGreaterThan(parts[0]!.top);
  const tip = pointsOf(punch!).filter(([, y]) => y === boxOf(punch!).bottom);
  const thin = Math.max(...tip.map(([x]) => x)) - Math.min(...tip.map(([x]) => x));
  const head = pointsOf(pin!).filter(([, y]) => y === boxOf(pin!).top);
  expect(thin).toBeLessThan(Math.max(...head.map(([x]) => x)) - Math.min(...head.map(([x]) => x)));
  expect(boxOf(punch!).bottom).toBeCloseTo(boxOf(pin!).top, 6);
});

it('crown and band stand the squish apart, the gasket between barrel and head', () => {
  const sheet = sheetOf(ThreeHeads);
  const cuts = shapesOf(sheet, 'cut');
  const pistons = shapesOf(sheet, 'edge-filled').map(boxOf);
  const joints = shapesOf(sheet, 'joint').map(boxOf);
  for (const i of [0, 1, 2]) {
    const [head, barrel] = [boxOf(cuts[2 * i]!), boxOf(cuts[2 * i + 1]!)];
    expect(joints[i]!.top).toBeCloseTo(head.bottom, 6);
    expect(joints[i]!.bottom).toBeCloseTo(barrel.top, 6);
    expect((pistons[i]!.top - head.bottom) / high(joints[i]!)).toBeCloseTo(
      demoHead.squish / demoHead.gasket,
      6,
    );
    expect(wide(pistons[i]!)).toBeLessThan(wide(barrel));
  }
});

it('the pushes of each crank add up to what is left of them', () => {
  const page = pageOf(WhatShakes);
  const panels = [...page.querySelectorAll('svg > g')];
  expect(panels).toHaveLength(cranks.length);
  panels.forEach((panel, i) => {
    const pushes = [...panel.querySelectorAll('.force-shaft')].map((shaft) => {
      const [, from, to] = numbers(shaft.getAttribute('d')!) as [number, number, number];
      return from - to;
    });
    const one = pushes[0]!;
    const sum = pushes.reduce((all, push) => all + push, 0) / one;
    const { force, couple } = leftOver(cranks[i]!, 'primary');
    expect(sum).toBeCloseTo(force, 1);
    expect(panel.querySelector('.motion') !== null).toBe(couple > 0.01);
  });
});

it('each crank has its pins where they stand, from the end and from the side', () => {
  const page = pageOf(CrankEnds);
  [...page.querySelectorAll('svg > g')].forEach((panel, i) => {
    const { pins } = cranks[i]!;
    const [cx, cy, radius] = numbers(panel.querySelector('circle.edge-thin')!.outerHTML) as [
      number,
      number,
      number,
    ];
    const found = [...panel.querySelectorAll('path.part-rod')].map((rod) => {
      const [, , x, y] = numbers(rod.getAttribute('d')!) as [number, number, number, number];
      expect(Math.hypot(x - cx, y - cy)).toBeCloseTo(radius, 1);
      return (Math.round((Math.atan2(x - cx, cy - y) * 180) / Math.PI) + 360) % 360;
    });
    expect(found).toEqual([...new Set(pins)]);
    const side = panel.querySelector('path.edge:not(.edge-thin)')!.getAttribute('d')!;
    const tops = [...side.matchAll(/H\S+?V(\S+?)H\S+?V/g)].map(([, y]) => cy - Number(y));
    expect(tops.map((top) => Math.round(top))).toEqual(
      pins.map((pin) => Math.round(radius * Math.cos((pin * Math.PI) / 180)) + 0),
    );
  });
});

it('pinched, both shafts lie low at the webs; twisted, one lies high where the other lies low', () => {
  const sheet = sheetOf(CrankOutOfTrue);
  const line = boxOf(shapesOf(sheet, 'centre-line')[0]!).top;
  const shafts = shapesOf(sheet, 'edge-filled').filter(
    (shape) => wide(boxOf(shape)) > 90 && wide(boxOf(shape)) < 110 && high(boxOf(shape)) < 40,
  );
  expect(shafts).toHaveLength(4);
  const at = shafts.map((shape, i) => {
    const [, , above, below] = pointsOf(shape) as [Point, Point, Point, Point];
    return (above[1] + below[1]) / 2 - line - (i < 2 ? 0 : 232);
  });
  expect(at[0]).toBeGreaterThan(3);
  expect(at[1]).toBeCloseTo(at[0]!, 1);
  expect(at[2]! * at[3]!).toBeLessThan(0);
  expect(Math.abs(at[2]!)).toBeCloseTo(Math.abs(at[3]!), 1);
  // Each indicator stands on its shaft.
  const feelers = shapesOf(sheet, 'edge-thin').map((shape) => pointsOf(shape)[0]!);
  for (const [i, [x, y]] of feelers.slice(0, 4).entries()) {
    const gap = Math.min(
      ...pointsOf(shafts[i]!).map((point, j, all) =>
        toSegment([x, y], point, all[(j + 1) % all.length]!),
      ),
    );
    expect(gap).toBeLessThan(0.1);
  }
});

it('rim and bore are cut where the finished plate ends, past the plate and over a smaller disc', () => {
  const sheet = sheetOf(BlankOnTheLathe);
  const [backing, blank] = shapesOf(sheet, 'cut');
  const tools = shapesOf(sheet, 'tool').map(boxOf);
  const upper = boxOf(pieces(blank!)[0]!);
  const scale = high(boxOf(blank!)) / demoPlate.outside;
  expect(tools[0]!.bottom).toBeCloseTo(upper.top, 0);
  expect(tools[1]!.top).toBeCloseTo(upper.bottom, 0);
  expect(tools[2]!.left).toBeCloseTo(upper.right, 1);
  expect(boxOf(backing!).top).toBeGreaterThan(upper.top);
  expect(boxOf(backing!).right).toBeCloseTo(upper.left, 6);
  const [a, b] = pieces(blank!).map(boxOf);
  expect((b!.top - a!.bottom) / scale).toBeCloseTo(demoPlate.bore, 6);
});

it('for the leak test every opening is shut, and the plates lie on their rubber', () => {
  const sheet = sheetOf(LeakTest);
  const barrel = boxOf(shapesOf(sheet, 'cut')[1]!);
  const rubbers = pieces(shapesOf(sheet, 'joint')[0]!).map(boxOf);
  const plates = pieces(shapesOf(sheet, 'part-moving')[1]!).map(boxOf);
  expect(plates).toHaveLength(2);
  for (const [i, rubber] of rubbers.entries()) {
    expect(rubber.left - barrel.right).toBeLessThan(3);
    expect(plates[i]!.left).toBeCloseTo(rubber.right, 6);
    expect([plates[i]!.top, plates[i]!.bottom]).toEqual([rubber.top, rubber.bottom]);
  }
  // The ports are the gaps in the right wall.
  const wall = pieces(shapesOf(sheet, 'cut')[1]!)
    .map(boxOf)
    .filter(({ left }) => left === 200)
    .sort((a, b) => a.top - b.top);
  const gaps = [
    [wall[0]!.bottom, wall[1]!.top],
    [wall[1]!.bottom, 222],
  ];
  for (const [i, [top, foot]] of gaps.entries()) {
    expect(rubbers[i]!.top).toBeLessThan(top!);
    expect(rubbers[i]!.bottom).toBeGreaterThan(foot!);
  }
  const [rodFoot, rodTop] = pointsOf(shapesOf(sheet, 'part-rod')[0]!);
  expect(rodFoot![0]).toBe(rodTop![0]);
});

it('shut contacts touch, and the heel hangs clear of the low part of the cam', () => {
  const sheet = sheetOf(SetOfPoints);
  const dots = shapesOf(sheet, 'edge-filled')
    .map(boxOf)
    .filter((box) => wide(box) === 18 && high(box) === 9);
  expect(dots).toHaveLength(2);
  expect(dots[0]!.bottom).toBe(dots[1]!.top);
  const cam = shapesOf(sheet, 'edge-filled').at(-1)!;
  const heel = shapesOf(sheet, 'part').at(-1)!;
  const foot = boxOf(heel).bottom;
  const under = pointsOf(cam).filter(([x]) => Math.abs(x - middleOf(heel)[0]) < 6);
  const clear = Math.min(...under.map(([, y]) => y)) - foot;
  expect(clear).toBeGreaterThan(1);
  expect(clear).toBeLessThan(16 * demoCam.lift);
});

it('the bed is to scale: feet, level over the valve, outlet to bottle, lever outside its foot', () => {
  const sheet = sheetOf(TestBed);
  const feet = shapesOf(sheet, 'part')
    .map(boxOf)
    .filter(({ bottom }) => bottom === 322);
  const scale = (feet[1]!.right - feet[0]!.left) / bed.long;
  expect(scale).toBeCloseTo(0.25, 9);
  const { top, left } = boxOf(shapesOf(sheet, 'liquid')[0]!);
  const dimension = shapesOf(sheet, 'size-line').map(boxOf);
  const upright = dimension.find((box) => Math.abs(high(box) - demoFloat.head * scale) < 0.5);
  expect(upright?.top).toBeCloseTo(top, 0);
  const pipe = shapesOf(sheet, 'edge')
    .flatMap(pointsOf)
    .filter(([x]) => Math.abs(left - x - bed.pipeToBottle * scale) < 0.1);
  expect(pipe.length).toBeGreaterThanOrEqual(2);
  // The view from the end stands below the other, on the lowest ground of the sheet.
  const parts = shapesOf(sheet, 'part').map(boxOf);
  const ground = Math.max(...parts.map(({ bottom }) => bottom));
  const ends = parts.filter(({ bottom }) => bottom === ground);
  const larger =
    (Math.max(...ends.map(({ right }) => right)) - Math.min(...ends.map(({ left: x }) => x))) /
    bed.wide;
  const kick = boxOf(
    shapesOf(sheet, 'motion').find((shape) => boxOf(shape).left > 200 && boxOf(shape).top > 400)!,
  );
  expect(kick.left - Math.max(...ends.map(({ right }) => right))).toBeCloseTo(
    bed.leverOutside * larger,
    0,
  );
});

it('a slide that measures has its four numbers, each once at its part and once in the list', () => {
  const texts = sheetOf(FourThrottleZones).texts.map(({ words }) => words);
  for (const [number, part] of ['pilot', 'cutaway', 'needle', 'main jet'].entries()) {
    const named = texts.filter((words) => words.startsWith(`${String(number + 1)} `));
    expect(named).toHaveLength(2);
    for (const words of named) expect(words).toContain(part);
  }
});

it('only the set that has opened sparks, and only shut sets and its condenser carry current', () => {
  const page = pageOf(ThreeCoilCircuit);
  for (const cylinder of page.querySelectorAll('.cylinder')) {
    const fires = cylinder.classList.contains('fires');
    const shut = cylinder.classList.contains('shut');
    expect(cylinder.querySelector('.spark') !== null).toBe(fires);
    expect(cylinder.querySelector('.points')!.classList.contains('shut')).toBe(shut);
    expect(cylinder.querySelectorAll('path.current')).toHaveLength(shut || fires ? 2 : 0);
  }
  expect(page.querySelectorAll('.cylinder.fires')).toHaveLength(1);
});

it('the spark goes from electrode to electrode', () => {
  const sheet = sheetOf(SparkAtThePlug);
  const centre = shapesOf(sheet, 'edge-filled')
    .map(boxOf)
    .filter((box) => wide(box) === 14 && high(box) === 16);
  const sides = shapesOf(sheet, 'edge-filled')
    .map(boxOf)
    .filter((box) => wide(box) === 64 && high(box) === 60);
  const [strong, weak] = [shapesOf(sheet, 'spark-strong')[0]!, shapesOf(sheet, 'motion')[0]!].map(
    boxOf,
  );
  for (const [i, spark] of [strong!, weak!].entries()) {
    expect(spark.top).toBeCloseTo(centre[i]!.bottom, 6);
    // The side electrode's upper face lies 14 above its lower one.
    expect(Math.abs(spark.bottom - (sides[i]!.bottom - 14))).toBeLessThan(3);
  }
  expect(wide(strong!)).toBeGreaterThan(wide(weak!));
});

it('the jaws touch the skirt where it is widest, and the piston fills the bore across its pin', () => {
  const sheet = sheetOf(PistonMeasured);
  const piston = pointsOf(shapesOf(sheet, 'part')[0]!);
  const jaws = shapesOf(sheet, 'motion-head')
    .flatMap(pieces)
    .map((head) => pointsOf(head)[0]!);
  const [left, right] = [Math.min(...piston.map(([x]) => x)), Math.max(...piston.map(([x]) => x))];
  expect(Math.min(...jaws.slice(0, 2).map(([x]) => x))).toBeCloseTo(left, 1);
  expect(Math.max(...jaws.slice(0, 2).map(([x]) => x))).toBeCloseTo(right, 1);
  const widest = piston.find(([x]) => x === right)!;
  expect(jaws[0]![1]).toBeCloseTo(widest[1], 1);
  const wall = boxOf(shapesOf(sheet, 'edge-thin')[0]!);
  expect(wide(wall)).toBeGreaterThan(right - left);
  expect(wide(wall) - (right - left)).toBeLessThan(30);
});
