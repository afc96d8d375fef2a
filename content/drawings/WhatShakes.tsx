import { hundredth } from '../../calculators/maths/numeric/steps.ts';
import { arrowHead } from '../../calculators/picture/label.tsx';
import { LineDrawing } from '../../calculators/picture/line-drawing.tsx';
import { cranks, leftOver, type Crank } from '../cranks.ts';

const PANEL = { wide: 178, high: 190 } as const;
const PITCH = 34;
const MIDDLE = 84;
const FORCE = 34;
const CYLINDER = { top: 84, foot: 112 } as const;
const FOOT = 136;

function left(crank: Crank): string {
  const { force, couple } = leftOver(crank, 'primary');
  if (force > 0) return 'pushes, does not rock';
  return couple > 0 ? 'no push, rocks' : 'no push, no rocking';
}

/** A row of cylinders from the side with cylinder 1 at its top, and what each pushes with. */
function Panel({ crank, x, y }: { readonly crank: Crank; readonly x: number; readonly y: number }) {
  const { pins } = crank;
  const start = MIDDLE - ((pins.length - 1) * PITCH) / 2;
  const half = (pins.length * PITCH) / 2;
  const rocks = leftOver(crank, 'primary').couple > 0;
  return (
    <g transform={`translate(${x} ${y})`}>
      <text class="axis-text" x={4} y={14}>
        {crank.name}
      </text>
      <text x={4} y={31}>
        {left(crank)}
      </text>
      <path
        class="part"
        d={`M${MIDDLE - half} ${CYLINDER.foot}H${MIDDLE + half}V${FOOT}H${MIDDLE - half}Z`}
      />
      {pins.map((pin, i) => {
        const at = start + i * PITCH;
        const push = Math.cos((pin * Math.PI) / 180);
        const from = push > 0 ? CYLINDER.top - 4 : FOOT + 3;
        const to = hundredth(from - push * FORCE);
        return (
          <g key={at}>
            <path
              class="part"
              d={`M${at - 12} ${CYLINDER.foot}V${CYLINDER.top}H${at + 12}V${CYLINDER.foot}Z`}
            />
            {Math.abs(push) > 0.01 ? (
              <>
                <path class="force-shaft" d={`M${at} ${from}V${to}`} />
                <path
                  class="force-head"
                  d={arrowHead([at, from], [at, to + 4 * Math.sign(-push)], 10, 4)}
                />
              </>
            ) : null}
          </g>
        );
      })}
      {rocks ? (
        <>
          <path
            class="motion"
            d={`M${MIDDLE - half - 10} 124A${half + 10} ${half + 10} 0 0 1 ${MIDDLE - half - 4} 96`}
          />
          <path
            class="motion-head"
            d={arrowHead([MIDDLE - half - 8, 104], [MIDDLE - half - 2, 90])}
          />
          <path
            class="motion"
            d={`M${MIDDLE + half + 10} 108A${half + 10} ${half + 10} 0 0 1 ${MIDDLE + half + 4} 136`}
          />
          <path
            class="motion-head"
            d={arrowHead([MIDDLE + half + 8, 128], [MIDDLE + half + 2, 142])}
          />
        </>
      ) : null}
    </g>
  );
}

/** What four cranks shake with, once a turn: pushes that add, that cancel, and that rock. */
export default function WhatShakes() {
  return (
    <LineDrawing
      id="what-shakes"
      title="The primary forces of four engines, with cylinder 1 at its top"
      description="Each engine from its side, cylinder 1 on the left at its top, an arrow for the push of each piston. Twin at 180 degrees: one up on the left, one down on the right; they cancel and rock the engine. Twin at 360 degrees: both up; they add, and nothing rocks. Triple at 120 degrees: one up, the others down with half as much each; no push is left, and it rocks. Four at 90 degrees: one up, the next down, two with nothing at this moment; no push is left, and it rocks."
      height={2 * PANEL.high + 4}
    >
      {cranks.map((crank, i) => (
        <Panel
          key={crank.name}
          crank={crank}
          x={(i % 2) * PANEL.wide}
          y={Math.floor(i / 2) * PANEL.high}
        />
      ))}
    </LineDrawing>
  );
}
