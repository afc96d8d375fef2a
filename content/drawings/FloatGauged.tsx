import { Cut, Hatching } from '../../calculators/picture/cut.tsx';
import { Dimension } from '../../calculators/picture/dimension.tsx';
import { arrowHead, Label } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';
import { through, type Place } from './parts/polar.ts';

/** From along the face, counted from the pivot, and away from the face, to the sheet. */
type Lay = (along: number, away: number) => Place;

const NEEDLE = 44;
const ARM = 15;
const FLOAT = { near: 26, far: 84, from: 92, to: 176 } as const;
const BODY = { from: -28, to: 200, thick: 36 } as const;

const onItsSide: Lay = (along, away) => [118 + away, 60 + along];
const upsideDown: Lay = (along, away) => [84 + along, 428 - away];

const outline = (lay: Lay, places: readonly Place[], shut = true): string =>
  through(
    places.map(([along, away]) => lay(along, away)),
    shut,
  );

/** The carburettor's body with float and valve, laid out as it is held. */
function Body({ id, lay }: { readonly id: string; readonly lay: Lay }) {
  const { from, to, thick } = BODY;
  const [pivotX, pivotY] = lay(0, ARM);
  return (
    <g>
      <Hatching id={`${id}-casting`} />
      <Cut
        d={
          outline(lay, [
            [from, 0],
            [NEEDLE - 6, 0],
            [NEEDLE - 6, -thick],
            [from, -thick],
          ]) +
          outline(lay, [
            [NEEDLE + 6, 0],
            [to, 0],
            [to, -thick],
            [NEEDLE + 6, -thick],
          ])
        }
        hatching={`${id}-casting`}
      />
      <path
        class="edge edge-filled needle-valve"
        d={outline(lay, [
          [NEEDLE - 4.5, 8],
          [NEEDLE - 4.5, -12],
          [NEEDLE, -24],
          [NEEDLE + 4.5, -12],
          [NEEDLE + 4.5, 8],
        ])}
      />
      <path
        class="edge"
        d={
          outline(
            lay,
            [
              [0, 0],
              [0, ARM],
            ],
            false,
          ) +
          outline(
            lay,
            [
              [0, ARM],
              [FLOAT.from, ARM],
              [FLOAT.from, FLOAT.near],
            ],
            false,
          )
        }
      />
      <path
        class="motion"
        d={outline(
          lay,
          [
            [NEEDLE - 16, ARM],
            [NEEDLE - 8, 8],
            [NEEDLE + 9, 8],
          ],
          false,
        )}
      />
      <circle class="edge edge-filled" cx={pivotX} cy={pivotY} r={4} />
      <path
        class="part"
        d={outline(lay, [
          [FLOAT.from, FLOAT.near],
          [FLOAT.to, FLOAT.near],
          [FLOAT.to, FLOAT.far],
          [FLOAT.from, FLOAT.far],
        ])}
      />
    </g>
  );
}

/** Gauging a float: on its side, where the pin is not pressed in, and upside down, where it is. */
export default function FloatGauged() {
  const side = onItsSide;
  const over = upsideDown;
  return (
    <LineDrawing
      id="float-gauged"
      title="How the body is held when a float is gauged, and which edge is meant"
      description="Two drawings of one carburettor body with its float, the chamber taken off. First on its side, the pivot uppermost: the float hangs, and the tang just touches the pin of the valve. The height is measured square to the gasket face, to the near edge of the float or to the far one. Then upside down: the whole weight of the float lies on the valve, and a sprung pin is pressed in. The tang, the tongue that bears on the valve, is what is bent."
      height={478}
    >
      <text class="axis-text" x={4} y={14}>
        On its side: the tang just touches
      </text>
      <Body id="gauged-side" lay={side} />
      <Dimension
        from={side(FLOAT.to, 0)}
        to={side(FLOAT.to, FLOAT.near)}
        along="x"
        line={254}
        words=""
      />
      <Dimension
        from={side(BODY.to, 0)}
        to={side(FLOAT.to, FLOAT.far)}
        along="x"
        line={282}
        words="far"
      />
      <Label words="near" at={[150, 254]} />
      <Label words="pivot" at={[190, 44]} to={side(-2, ARM + 3)} ends="arrow" />
      <Label words="tang" at={[190, 76]} to={side(NEEDLE - 10, 11)} ends="arrow" />
      <Label words="valve" at={[190, 108]} to={side(NEEDLE, 3)} />
      <Label words="float" at={[260, 160]} to={side(128, 60)} />
      <Label words="gasket" at={[4, 52]} />
      <Label words="face" at={[4, 68]} to={side(-16, 0)} ends="arrow" />
      <text class="axis-text" x={4} y={322}>
        Upside down: the float’s weight is on it
      </text>
      <Body id="gauged-over" lay={over} />
      <path class="motion" d="M218 372V398" />
      <path class="motion-head" d={arrowHead([218, 372], [218, 404])} />
      <Label words="weight" at={[268, 386]} />
      <Label words="pin pressed in" at={[4, 352]} to={over(NEEDLE, 9)} ends="arrow" />
    </LineDrawing>
  );
}
