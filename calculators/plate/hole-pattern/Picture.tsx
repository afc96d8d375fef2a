import { useState } from 'preact/hooks';
import type { PictureProps } from '../../frame/types.ts';
import { displayUnit, toDisplay, units, type LengthDisplay } from '../../frame/text/units.ts';
import { fixed, unbroken } from '../../frame/text/format.ts';
import { hundredth } from '../../maths/numeric/steps.ts';
import type { Drawing } from '../../drawing/shapes.ts';
import { lengthOf } from '../../maths/plate/edge-parts.ts';
import type { Place } from '../../maths/plate/place.ts';
import type { Reach, StraightEdge } from '../../maths/plate/land-outline.ts';
import { round } from '../../picture/boxes.ts';
import type { Box } from '../../picture/common/overlap.ts';
import { Dimension } from '../../picture/dimension.tsx';
import { DrawingShapes, placeOf } from '../../drawing/on-screen.tsx';
import { HolePicker, type HoleSpot } from '../../picture/hole-picker.tsx';
import { textWidth } from '../../picture/common/text-width.ts';
import { bandMark, pointsAlong } from './band-mark.ts';
import { BandWidth } from './BandWidth.tsx';
import { BEYOND, linesOf, partOf } from './drawing.ts';
import type { inputs } from './inputs.ts';
import { namesInPicture } from './picture-names.ts';
import type { results } from './results.ts';

const WIDTH = 360;
const TALLEST = 400;
/** Room for the dimensions at the left and below, and for what stands out at the other sides. */
const ROOM = { left: 66, right: 16, top: 16, bottom: 46 } as const;

const figure = (value: number, lengths: LengthDisplay): string =>
  fixed(toDisplay(value, 'mm', lengths), lengths === 'in' ? 3 : 2);
const withLabel = (value: number, lengths: LengthDisplay): string =>
  `${figure(value, lengths)} ${units[displayUnit('mm', lengths)].label}`;

/** The part to scale with the places of a picked hole, dimensioned from hole 1. */
export function Picture(props: PictureProps<typeof inputs, typeof results>) {
  const { values: v, lengths, idPrefix } = props;
  const [chosen, setPicked] = useState(2);
  const part = partOf(v);
  const { shapes, places, openings } = part;
  const reach = withCentreLines(part.reach, places, v.hole);
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
    shapes: shapes.filter(({ layer }) => layer !== 'position'),
  };
  const view = { drawing, scale };
  const at = placeOf(view);
  const height = ROOM.top + ROOM.bottom + high * scale;
  const unmade = new Set(shapes.flatMap(({ layer, name }) => (layer === 'position' ? [name] : [])));
  const spots = places.map((place, i): HoleSpot => ({
    ...at(place.x, place.y),
    radius: (v.hole[i]! / 2) * scale,
    name: String(i + 1),
    unmade: unmade.has(`hole-${String(i + 1)}`),
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
  const whole: Box = { left: 2, top: 2, right: WIDTH - 2, bottom: height - 2 };
  // The words of dimensions have the left and the foot of the sheet; all others have the rest.
  const sheet: Box = { ...whole, left: ROOM.left + spare - 8, bottom: height - ROOM.bottom + 8 };
  const lines = linesOf(v, part);
  const struck = extensions(origin, spot, foot, side);
  const names = namesInPicture(view, {
    sheet,
    picked,
    holes: places.map(({ x, y }, i) => ({
      x,
      y,
      radius: v.hole[i]! / 2,
      words: i === picked ? `${String(i + 1)}: ⌀${figure(v.hole[i]!, lengths)}` : String(i + 1),
    })),
    cut: lines.cut,
    centre: lines.centre,
    struck,
  });
  const marks: Box[] = [
    ...spots.map((each) => round(each.x, each.y, each.radius + BEYOND * scale + 1)),
    ...names.flatMap((name) => [name.box, ...name.along]),
  ];
  const band =
    v.band === undefined
      ? undefined
      : bandMark(openings, v.band, `band ${figure(v.band, lengths)}`, at, {
          sheet: whole,
          taken: [
            ...marks,
            { ...whole, top: sheet.bottom },
            { ...whole, right: sheet.left },
            ...struck.map(boxOn),
            ...lines.cut.flatMap((edge) =>
              pointsAlong(edge, lengthOf(edge) * scale).map(([x, y]) => {
                const on = at(x, y);
                return round(on.x, on.y, 4);
              }),
            ),
          ],
          marks,
        });

  const leaders = names.map(({ leader }) => leader).join('');
  return (
    <div class="picture-block">
      <svg
        class="plot"
        viewBox={`0 0 ${String(WIDTH)} ${height.toFixed(2)}`}
        role="group"
        aria-label={`The part with ${String(places.length)} holes, to scale`}
      >
        <DrawingShapes {...view} />
        {leaders === '' ? null : <path class="leader" d={leaders} />}
        <HolePicker
          spots={spots}
          picked={picked}
          labels={new Map(names.map((name) => [name.name, name]))}
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
        {unbroken(spot.words)}.
        {v.band === undefined || openings.length === 0
          ? ''
          : ` The band is ${unbroken(withLabel(v.band, lengths))} wide.`}{' '}
        <span class="hint">Pick a hole to see its place. </span>
        Dimensions in {lengths === 'in' ? 'inches' : 'millimetres'}, from hole 1.
      </p>
    </div>
  );
}

/** What the part reaches over with the centre lines of its holes. */
function withCentreLines(
  { left, right, bottom, top }: Reach,
  places: readonly Place[],
  diameters: readonly number[],
): Reach {
  const arms = diameters.map((diameter) => diameter / 2 + BEYOND);
  return {
    left: Math.min(left, ...places.map(({ x }, i) => x - arms[i]!)),
    right: Math.max(right, ...places.map(({ x }, i) => x + arms[i]!)),
    bottom: Math.min(bottom, ...places.map(({ y }, i) => y - arms[i]!)),
    top: Math.max(top, ...places.map(({ y }, i) => y + arms[i]!)),
  };
}

/** Where the lines run from holes to dimensions: no label lies on them. */
function extensions(
  origin: HoleSpot,
  spot: HoleSpot,
  foot: number,
  side: number,
): readonly StraightEdge[] {
  return [origin, spot].flatMap(({ x, y }): StraightEdge[] => [
    { kind: 'line', x1: x, y1: y, x2: x, y2: foot },
    { kind: 'line', x1: side, y1: y, x2: x, y2: y },
  ]);
}

const boxOn = ({ x1, y1, x2, y2 }: StraightEdge): Box => ({
  left: Math.min(x1, x2) - 2,
  right: Math.max(x1, x2) + 2,
  top: Math.min(y1, y2) - 2,
  bottom: Math.max(y1, y2) + 2,
});
