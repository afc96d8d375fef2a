import { demoPlate } from '../../calculators/demo/plate.ts';
import { Cut, Hatching } from '../../calculators/picture/cut.tsx';
import { Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';
import { Move } from './parts/motion.tsx';
import { through, type Place } from './parts/polar.ts';

/** User units for a millimetre. */
const SCALE = 2.5;
const AXIS = 184;
/** Along the axis, from the spindle outwards. */
const X = { chuck: 8, jaws: 34, disc: 78, blank: 112, face: 134, finished: 128 } as const;

const rim = (demoPlate.outside / 2) * SCALE;
const bore = (demoPlate.bore / 2) * SCALE;
const sawn = rim + 2 * SCALE;
const drilled = bore - 5 * SCALE;
const disc = rim - 6 * SCALE;
const hole = bore + 4 * SCALE;
const screw = 29 * SCALE;

/** The same on both sides of the axis. */
const both = (draw: (side: 1 | -1) => string): string => draw(-1) + draw(1);
const ring = (from: number, to: number, inner: number, outer: number): string =>
  both((side) =>
    through(
      [
        [from, AXIS + side * inner],
        [to, AXIS + side * inner],
        [to, AXIS + side * outer],
        [from, AXIS + side * outer],
      ],
      true,
    ),
  );

const Tool = ({ places }: { readonly places: readonly Place[] }) => (
  <path class="edge edge-filled tool" d={through(places, true)} />
);

/** The blank screwed to a backing disc, and the three cuts made without letting go of it. */
export default function BlankOnTheLathe() {
  const screwAt = (side: 1 | -1): string =>
    `M${X.disc - 9} ${AXIS + side * screw - 9}h9v5H${X.face - 9}v8H${X.disc}v5h-9z`;
  return (
    <LineDrawing
      id="blank-on-lathe"
      title="The blank on the lathe: rim, bore and seat in one setting"
      description="The chuck holds a backing disc, which is smaller than the finished rim. The blank is screwed to its front by screws from behind, which end inside the metal, so that nothing stands out in front. The broken outline is the blank as sawn, with its middle drilled. Three tools cut one after another: along the rim and past the plate, along the bore and into the hollow of the backing disc, and across the face for the seat. The blank is not let go of between them."
      height={356}
    >
      <Hatching id="blank-backing" />
      <Hatching id="blank-plate" leans="left" />
      <path class="edge edge-filled" d={`M${X.chuck} ${AXIS - 74}h26v148h-26z`} />
      <Cut
        d={both((side) =>
          through(
            [
              [X.jaws + 8, AXIS + side * 14],
              [X.disc + 16, AXIS + side * 14],
              [X.disc + 16, AXIS + side * hole],
              [X.blank, AXIS + side * hole],
              [X.blank, AXIS + side * disc],
              [X.disc, AXIS + side * disc],
              [X.disc, AXIS + side * 34],
              [X.jaws + 8, AXIS + side * 34],
            ],
            true,
          ),
        )}
        hatching="blank-backing"
      />
      <path
        class="edge edge-filled"
        d={both((side) => `M${X.jaws} ${AXIS + side * 34}h34v${side * 14}h-14v${side * 14}h-20z`)}
      />
      <Cut d={ring(X.blank, X.finished, bore, rim)} hatching="blank-plate" />
      <path
        class="edge edge-hidden"
        d={both(
          (side) =>
            `M${X.blank} ${AXIS + side * rim}V${AXIS + side * sawn}H${X.face}V${AXIS + side * drilled}H${X.blank}V${AXIS + side * bore}`,
        )}
      />
      <path
        class="edge edge-thin"
        d={`M${X.disc + 16} ${AXIS - hole}v${2 * hole}M${X.blank} ${AXIS - hole}v${2 * hole}M${X.finished} ${AXIS - bore}v${2 * bore}`}
      />
      <path class="edge edge-filled" d={both(screwAt)} />
      <path class="centre-line" d={`M2 ${AXIS}H300`} />
      <Tool
        places={[
          [X.finished + 2, AXIS - rim],
          [X.finished + 12, AXIS - rim - 10],
          [X.finished + 12, AXIS - rim - 40],
          [X.finished + 30, AXIS - rim - 40],
          [X.finished + 30, AXIS - rim - 4],
        ]}
      />
      <Move from={[X.finished - 2, AXIS - rim - 24]} to={[X.disc, AXIS - rim - 24]} />
      <Tool
        places={[
          [X.finished + 2, AXIS - bore],
          [X.finished + 10, AXIS - bore + 3],
          [X.finished + 10, AXIS - 20],
          [270, AXIS - 20],
          [270, AXIS - 7],
          [X.finished + 2, AXIS - 7],
        ]}
      />
      <Tool
        places={[
          [X.finished, AXIS + bore + 10],
          [X.finished + 10, AXIS + bore + 26],
          [X.finished + 60, AXIS + bore + 26],
          [X.finished + 60, AXIS + bore + 8],
        ]}
      />
      <Move from={[X.finished - 4, AXIS - 24]} to={[X.disc + 20, AXIS - 24]} />
      <Move from={[X.finished + 36, AXIS + bore + 34]} to={[X.finished + 36, AXIS + rim - 4]} />
      <Label words="1  rim" at={[186, 48]} to={[X.finished + 24, 62]} />
      <Label words="2  bore" at={[206, 134]} to={[190, AXIS - 14]} />
      <Label words="3  seat" at={[222, 248]} to={[176, AXIS + bore + 18]} />
      <Label words="chuck" at={[4, 92]} to={[20, 122]} />
      <Label words="backing disc," at={[4, 310]} to={[X.disc + 12, 270]} />
      <Label words="smaller than the rim" at={[4, 326]} />
      <Label words="screws, from behind" at={[4, 16]} to={[X.disc - 7, AXIS - screw - 6]} />
      <Label words="plate" at={[186, 318]} to={[X.finished - 8, 288]} />
      <Label words="blank, as sawn" at={[186, 342]} to={[X.face, AXIS + sawn - 1]} ends="arrow" />
    </LineDrawing>
  );
}
