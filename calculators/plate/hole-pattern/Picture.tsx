import { useState } from 'preact/hooks';
import type { PictureProps } from '../../frame/types.ts';
import { displayUnit, toDisplay, units, type LengthDisplay } from '../../frame/units.ts';
import { fixed } from '../../frame/format.ts';
import type { Drawing } from '../../drawing/shapes.ts';
import { beside, round, textBox, type Box } from '../../picture/boxes.ts';
import { Dimension } from '../../picture/dimension.tsx';
import { DrawingShapes, placeOf } from '../../picture/drawing.tsx';
import { HolePicker, type HoleSpot } from '../../picture/hole-picker.tsx';
import { hundredth } from '../../maths/numeric/steps.ts';
import { textWidth } from '../../picture/text-width.ts';
import { bandMark, pointsAlong } from './band-mark.ts';
import { BandWidth } from './BandWidth.tsx';
import { BEYOND, partOf } from './drawing.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

const WIDTH = 360;
const TALLEST = 400;
/** Room for the dimensions at the left and below, and for what stands out at the other sides. */
const ROOM = { left: 66, right: 16, top: 16, bottom: 46 } as const;

/** How far off its hole a number may stand, in user units. */
const FURTHER = [0, 8, 16, 26, 38, 52, 70] as const;

const figure = (value: number, lengths: LengthDisplay): string =>
  fixed(toDisplay(value, 'mm', lengths), lengths === 'in' ? 3 : 2);
const withLabel = (value: number, lengths: LengthDisplay): string =>
  `${figure(value, lengths)} ${units[displayUnit('mm', lengths)].label}`;

/** The part to scale with the places of a picked hole, dimensioned from hole 1. */
export function Picture(props: PictureProps<typeof inputs, typeof results>) {
  const { values: v, lengths, idPrefix } = props;
  const [chosen, setPicked] = useState(2);
  const { shapes, reach, places, edges, openings } = partOf(v);
  const picked = Math.min(chosen, places.length - 1);
  const [wide, high] = [reach.right - reach.left, reach.top - reach.bottom];
  const scale = Math.min(
    (WIDTH - ROOM.left - ROOM.right) / wide,
    (TALLEST - ROOM.top - ROOM.bottom) / high,
  );
  const spare = (WIDTH - ROOM.left - ROOM.right - wide * scale) / 2;
  const drawing: Drawing = {
    title: '',
    left: reach.left - (ROOM.left + spare) / scale,
    bottom: reach.bottom - ROOM.bottom / scale,
    width: WIDTH / scale,
    height: high + (ROOM.top + ROOM.bottom) / scale,
    shapes,
  };
  const view = { drawing, scale };
  const at = placeOf(view);
  const height = ROOM.top + ROOM.bottom + high * scale;
  const spots = places.map((place, i): HoleSpot => ({
    ...at(place.x, place.y),
    radius: (v.hole[i]! / 2) * scale,
    name: String(i + 1),
    words: `Hole ${String(i + 1)} at X ${withLabel(place.x, lengths)}, Y ${withLabel(place.y, lengths)}, diameter ${withLabel(v.hole[i]!, lengths)}`,
  }));
  const spot = spots[picked]!;
  const origin = spots[0]!;
  const foot = height - ROOM.bottom + 30;
  const side = ROOM.left + spare - 14;
  const across = figure(places[picked]!.x, lengths);
  const reached = Math.abs(spot.x - origin.x);
  // Words wider than what they dimension would lie on its extension lines.
  const narrow = reached >= 1 && reached < textWidth(across) + 6;
  const rightmost = Math.max(spot.x, origin.x) + 18;
  const aside =
    rightmost + textWidth(across) < WIDTH - 4
      ? rightmost
      : Math.min(spot.x, origin.x) - 18 - textWidth(across);
  const sheet: Box = { left: 2, top: 2, right: WIDTH - 2, bottom: height - 2 };
  const rims = spots.map((each) => round(each.x, each.y, each.radius + BEYOND * scale + 1));
  const onEdges = [...edges, ...openings.flat().map(({ edge }) => edge)]
    .flatMap(pointsAlong)
    .map(([x, y]) => {
      const on = at(x, y);
      return round(on.x, on.y, 4);
    });
  const taken: Box[] = [
    ...rims,
    { left: sheet.left, right: sheet.right, top: height - ROOM.bottom + 8, bottom: sheet.bottom },
    { left: sheet.left, right: ROOM.left + spare - 8, top: sheet.top, bottom: sheet.bottom },
    ...extensions(origin, spot, foot, side),
    ...onEdges,
  ];
  const labels = new Map(
    [spot, ...spots.filter((each) => each !== spot)].flatMap((each) => {
      const full = `${each.name}: ⌀${figure(v.hole[picked]!, lengths)}`;
      // The hole that is picked is never without its number: it stands further off if it must.
      const tries =
        each === spot
          ? [[full, 0] as const, ...FURTHER.map((away) => [each.name, away] as const)]
          : [[each.name, 0] as const];
      const found = tries
        .map(([words, away]) => ({
          words,
          at: labelAt(each, words, BEYOND * scale + 1 + away, sheet, taken),
        }))
        .find(({ at: place }) => place);
      if (!found?.at) return [];
      taken.push(found.at.box);
      return [[each.name, { ...found.at, words: found.words }] as const];
    }),
  );
  const band =
    v.band === undefined
      ? undefined
      : bandMark(openings, v.band, `band ${figure(v.band, lengths)}`, at, {
          sheet,
          taken,
          marks: [...rims, ...[...labels.values()].map(({ box }) => box)],
        });

  return (
    <div class="picture-block">
      <svg
        class="plot"
        viewBox={`0 0 ${String(WIDTH)} ${height.toFixed(2)}`}
        role="group"
        aria-label={`The part with ${String(places.length)} holes, to scale`}
      >
        <DrawingShapes {...view} />
        <HolePicker
          spots={spots}
          picked={picked}
          labels={labels}
          width={WIDTH}
          height={height}
          idPrefix={idPrefix}
          onPick={setPicked}
        />
        {Math.abs(spot.x - origin.x) < 1 ? null : (
          <Dimension
            along="x"
            from={[origin.x, origin.y]}
            to={[spot.x, spot.y]}
            line={foot}
            words={narrow ? '' : across}
          />
        )}
        {narrow ? (
          <text x={hundredth(aside)} y={hundredth(foot + 4)}>
            {across}
          </text>
        ) : null}
        {Math.abs(spot.y - origin.y) < 1 ? null : (
          <Dimension
            along="y"
            from={[origin.x, origin.y]}
            to={[spot.x, spot.y]}
            line={side}
            words={figure(places[picked]!.y, lengths)}
            side="left"
          />
        )}
        {band === undefined ? null : <BandWidth {...band} />}
      </svg>
      <p class="picture-words">
        {spot.words}.
        {v.band === undefined || openings.length === 0
          ? ''
          : ` The band is ${withLabel(v.band, lengths)} wide.`}{' '}
        Pick a hole to see its place. Dimensions in {lengths === 'in' ? 'inches' : 'millimetres'},
        from hole 1.
      </p>
    </div>
  );
}

/** Where the words of a hole stand: in a quarter of it where it is wide enough, or else beside it, so far away. */
function labelAt(
  { x, y, radius }: HoleSpot,
  words: string,
  away: number,
  sheet: Box,
  taken: readonly Box[],
) {
  const room = radius * Math.SQRT1_2;
  if (room > textWidth(words) + 6 && room > 18) {
    const [left, base] = [x + 4, y - 5];
    return { x: left, y: base, box: textBox(words, left, base) };
  }
  return beside({ x, y, radius: radius + away }, words, sheet, taken);
}

/** Where the lines run from holes to dimensions: no label lies on them. */
function extensions(origin: HoleSpot, spot: HoleSpot, foot: number, side: number): Box[] {
  return [origin, spot].flatMap(({ x, y }): Box[] => [
    { left: x - 2, right: x + 2, top: y, bottom: foot },
    { left: side, right: x, top: y - 2, bottom: y + 2 },
  ]);
}
