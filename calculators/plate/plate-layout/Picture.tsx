import { useMemo, useState } from 'preact/hooks';
import { fixed, showFixed, unbroken } from '../../frame/text/format.ts';
import type { PictureProps } from '../../frame/types.ts';
import type { LengthDisplay } from '../../frame/text/units.ts';
import { arrowHead } from '../../picture/label.tsx';
import {
  BarLengths,
  barBox,
  DrawingShapes,
  millimetresOf,
  placeOf,
  sizeOf,
} from '../../drawing/on-screen.tsx';
import { Handle } from '../../picture/common/handle.tsx';
import { intoRange, hundredth, onStep } from '../../maths/numeric/steps.ts';
import { beside, round } from '../../picture/boxes.ts';
import type { Box } from '../../picture/common/overlap.ts';
import { useAtRest } from '../../picture/redraw/frozen.ts';
import { plateOf } from './compute.ts';
import { diameterLabels } from './diameters.ts';
import { lettered, plateLines, slotSize } from './drawing.ts';
import { namesOnPaper } from './names-on-paper.ts';
import { HolePicker, type HoleSpot } from '../../picture/hole-picker.tsx';
import { inputs } from './inputs.ts';
import { feltOf, feltTogether, roomOf, setLabels, strikesOf } from './set-labels.ts';
import type { results } from './results.ts';

const WIDTH = 340;
/** With more holes than this only those of set 1 and the picked one bear their numbers. */
const ROOM_FOR_LABELS = 16;
/** Radius of the dot by which the picked hole is dragged. */
const HANDLE = 8;

const length = (value: number, lengths: LengthDisplay, among: readonly number[] = []): string =>
  showFixed(value, 'mm', 2, lengths, among);

interface SetHole extends HoleSpot {
  readonly set: number;
  readonly hole: number;
}

const wrapped = (angle: number): number => ((((angle + 180) % 360) + 360) % 360) - 180;

/** The plate in its stock, to scale; a hole is picked, and dragged together with its like. */
export function Picture(props: PictureProps<typeof inputs, typeof results>) {
  const { values: v, results: computed, lengths, idPrefix, set, commit } = props;
  const [picked, setPicked] = useState(0);
  const plate = plateOf(v);
  const lines = plateLines({ plate, allowance: v.allowance, lengths });
  const { still } = lines;
  // Only paper shows them, and to find their places costs more than all else of a drag's frame.
  const names = useAtRest(() => namesOnPaper(plate, lines.shapes, lines));
  const drawing = lettered(lines, names);
  const slots = slotSize(plate, lengths);
  const scale = WIDTH / drawing.width;
  const view = { drawing, scale };
  const place = placeOf(view);
  const { width, height } = sizeOf(view);
  const x = computed.x as readonly (readonly number[])[];
  const y = computed.y as readonly (readonly number[])[];
  const directions = computed.direction as readonly number[];

  const spots = x.flatMap((row, s) =>
    row.map((across, h): SetHole => {
      const up = y[s]![h]!;
      const name = `${String(s + 1)}-${String(h + 1)}`;
      return {
        set: s,
        hole: h,
        ...place(across, up),
        radius: (v.drill[h]! / 2) * scale,
        name,
        words: `Hole ${name} at X ${length(across, lengths, [up])}, Y ${length(up, lengths, [across])}, drill ${length(v.drill[h]!, lengths)}`,
      };
    }),
  );
  const spot = spots[Math.min(picked, spots.length - 1)]!;
  const number = String(spot.hole + 1);

  /** Of a hole, or of the handle on it. */
  const roundOf = (each: SetHole): number => Math.max(each.radius, each === spot ? HANDLE : 0) + 1;
  const bars = barBox(view);
  const sheet: Box = { left: 1, top: 1, right: width - 1, bottom: height - 1 };
  /** Names already given a place, and the holes that no name may lie on. */
  const taken: Box[] = spots.map((each) => round(each.x, each.y, roundOf(each)));
  const ofStill = useMemo(() => feltOf(still, place), [still]);
  const ofMoved = feltOf(
    lines.shapes.filter((shape) => !still.includes(shape)),
    place,
  );
  const felt = feltTogether(ofStill, ofMoved);
  const strikes = strikesOf(felt);
  const sets = setLabels(
    strikes,
    place,
    directions,
    v.outside / 2,
    sheet,
    spots.map((each) => ({ ...each, radius: roundOf(each) })),
  );
  taken.push(...sets.map(roomOf), ...(bars ? [bars] : []));
  const named =
    spots.length <= ROOM_FOR_LABELS
      ? spots
      : spots.filter((each) => each.set === 0 || each === spot);
  const labels = new Map(
    [spot, ...named.filter((each) => each !== spot)].flatMap((each) => {
      const at = beside({ ...each, radius: roundOf(each) }, each.name, sheet, taken, strikes);
      if (!at) return [];
      taken.push(at.box);
      return [[each.name, at] as const];
    }),
  );

  const across = (diameter: number) => ({
    radius: diameter / 2,
    words: `⌀ ${showFixed(diameter, 'mm', 1, lengths)}`,
  });
  const diameters = diameterLabels(
    [
      across(v.outside),
      ...[
        ...new Set([...v.radius.slice(0, v.holes), ...(v.slots > 0 ? [v['slot-radius']] : [])]),
      ].map((radius) => across(2 * radius)),
      ...(v.bore > 0 ? [across(v.bore)] : []),
    ],
    {
      shapes: drawing.shapes,
      struck: felt.edges,
      place,
      rim: v.outside / 2,
      edges: sheet,
      taken,
    },
  );

  const drag = (toX: number, toY: number): void => {
    const to = millimetresOf(view)(toX, toY);
    const direction = (Math.atan2(to.y, to.x) * 180) / Math.PI;
    set(`radius-${number}`, intoRange(inputs.radius, onStep(Math.hypot(to.x, to.y), 0.1)));
    set(`angle-${number}`, onStep(wrapped(direction - directions[spot.set]!), 0.5));
  };

  return (
    <div class="picture-block">
      <svg
        class="plot true-scale"
        viewBox={`0 0 ${String(width)} ${String(height)}`}
        width={`${drawing.width.toFixed(3)}mm`}
        height={`${drawing.height.toFixed(3)}mm`}
        role="group"
        aria-label={`${drawing.title}, to scale, in its square of stock`}
      >
        <DrawingShapes {...view} />
        <g class="on-screen" aria-hidden="true">
          {sets.map(({ words, x: left, y: base }) => (
            <text key={words} x={left} y={base}>
              {words}
            </text>
          ))}
        </g>
        <g class="on-screen" aria-hidden="true">
          {diameters.map(({ words, x: left, y: base, tail, tip, shelf }, i) => (
            <g key={i}>
              <path
                class="leader"
                d={`M${hundredth(shelf.x)} ${hundredth(shelf.y)}L${hundredth(tail.x)} ${hundredth(tail.y)}L${hundredth(tip.x)} ${hundredth(tip.y)}`}
              />
              <path class="size-head" d={arrowHead([tail.x, tail.y], [tip.x, tip.y])} />
              <text x={hundredth(left)} y={hundredth(base)}>
                {words}
              </text>
            </g>
          ))}
        </g>
        <BarLengths {...view} />
        <HolePicker
          spots={spots}
          picked={spots.indexOf(spot)}
          labels={labels}
          width={width}
          height={height}
          idPrefix={idPrefix}
          onPick={setPicked}
        />
        <Handle
          x={spot.x}
          y={spot.y}
          label={`Hole ${number} of every set, angle from the set’s line`}
          value={v.angle[spot.hole]!}
          min={inputs.angle.min}
          max={inputs.angle.max}
          step={0.5}
          valueText={`${fixed(v.angle[spot.hole]!, 1)} degrees, ${length(v.radius[spot.hole]!, lengths)} from the centre`}
          onDrag={drag}
          onStep={(value) => set(`angle-${number}`, onStep(value, 0.5))}
          onEnd={commit}
        />
      </svg>
      <p class="picture-words">
        {unbroken(spot.words)}.
        <span class="hint">
          {' '}
          Pick a hole; drag it in every set.
          {slots === undefined ? '' : ` ${unbroken(slots)}.`}
        </span>
      </p>
    </div>
  );
}
