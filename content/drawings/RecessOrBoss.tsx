import { demoPlate } from '../../calculators/demo/plate.ts';
import { Cut, Hatching } from '../../calculators/picture/cut.tsx';
import { Label } from '../../calculators/picture/label.tsx';
import { DRAWING_WIDTH, LineDrawing } from '../../calculators/picture/line-drawing.tsx';
import { through, type Place } from './parts/polar.ts';

/** User units for a millimetre. */
const SCALE = 2.5;
const PANEL = 168;
const CX = DRAWING_WIDTH / 2;
const SHAFT = 20;
const rim = (demoPlate.outside / 2) * SCALE;
const bore = (demoPlate.bore / 2) * SCALE;
/** The seat on the case, the plate's top, and the top of the recess. */
const Y = { seat: 112, plate: 92, recess: 98, boss: 96, foot: 140 } as const;
const AIR = 7;

interface PanelProps {
  readonly by: 'rim' | 'bore';
  readonly top: number;
}

/** Plate and case cut through the middle of the crankshaft. */
function Panel({ by, top }: PanelProps) {
  const recess = rim + (by === 'rim' ? 0 : AIR);
  const boss = bore - (by === 'bore' ? 0 : AIR);
  const half = (side: 1 | -1): Place[] => [
    [CX + side * (SHAFT + 4), Y.foot],
    [CX + side * (SHAFT + 4), Y.boss],
    [CX + side * boss, Y.boss],
    [CX + side * boss, Y.seat],
    [CX + side * recess, Y.seat],
    [CX + side * recess, Y.recess],
    [CX + side * 152, Y.recess],
    [CX + side * 152, Y.foot],
  ];
  const plate = (side: 1 | -1): string =>
    `M${CX + side * bore} ${Y.plate}H${CX + side * rim}V${Y.seat}H${CX + side * bore}Z`;
  return (
    <g transform={`translate(0 ${top})`}>
      <Hatching id={`located-${by}-case`} />
      <Hatching id={`located-${by}-plate`} leans="left" />
      <text class="axis-text" x={4} y={16}>
        {by === 'rim' ? 'A recess takes the rim' : 'A boss takes the bore'}
      </text>
      <Cut
        d={`${through(half(-1), true)}${through(half(1), true)}`}
        hatching={`located-${by}-case`}
      />
      <Cut d={`${plate(-1)}${plate(1)}`} hatching={`located-${by}-plate`} />
      <path
        class="edge edge-filled"
        d={`M${CX - SHAFT} ${Y.foot + 6}V58H${CX + SHAFT}V${Y.foot + 6}`}
      />
      <path class="centre-line" d={`M${CX} 50V${Y.foot + 14}`} />
      <path
        class="motion"
        d={
          by === 'rim'
            ? `M${CX - rim} ${Y.recess}V${Y.seat}M${CX + rim} ${Y.recess}V${Y.seat}`
            : `M${CX - bore} ${Y.boss}V${Y.seat}M${CX + bore} ${Y.boss}V${Y.seat}`
        }
      />
      <Label
        words="fits"
        at={by === 'rim' ? [352, 62] : [CX + bore + 26, 62]}
        anchor={by === 'rim' ? 'end' : 'start'}
        to={by === 'rim' ? [CX + rim, Y.recess + 5] : [CX + bore, Y.boss + 4]}
        ends="arrow"
      />
      <Label
        words="air"
        at={by === 'rim' ? [CX + bore + 26, 62] : [352, 62]}
        anchor={by === 'rim' ? 'start' : 'end'}
        to={by === 'rim' ? [CX + bore - AIR / 2, Y.seat - 6] : [CX + rim + AIR / 2, Y.seat - 6]}
      />
      <Label words="plate" at={[60, 62]} to={[CX - rim + 34, Y.plate + 9]} />
      <Label words="case" at={[4, 62]} to={[CX - 143, Y.recess + 20]} />
      <Label words="shaft" at={[116, 34]} to={[CX - SHAFT + 8, 74]} />
    </g>
  );
}

/** The two ways to centre a plate: by its rim in a recess or by its bore on a boss, never by both. */
export default function RecessOrBoss() {
  return (
    <LineDrawing
      id="recess-or-boss"
      title="What centres the plate: a recess or a boss"
      description="Two drawings of a plate on its case, cut through the shaft. First the rim of the plate fits a recess of the case, and the bore stands clear of the boss all round. Then the bore fits the boss, and the rim stands clear of the recess all round. In both the plate’s face lies on its seat in the case. The air is drawn larger than it is."
      height={2 * PANEL - 8}
    >
      <Panel by="rim" top={0} />
      <Panel by="bore" top={PANEL} />
    </LineDrawing>
  );
}
