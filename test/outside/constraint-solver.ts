import { GcsWrapper, init_planegcs_module, type SketchPrimitive } from '@salusoft89/planegcs';
import type { PistonInBarrel } from '../../calculators/maths/cylinder/port-timing.ts';

/**
 * The slider-crank drawn as a sketch and solved by a constraint solver, which knows distances and
 * coordinates and none of our formulas. It gives the crank angle from true top dead centre at which
 * the crown stands at a height.
 */
const solver = await init_planegcs_module();

export const SOLVER = '@salusoft89/planegcs 1.3.0, the sketch constraint solver of FreeCAD';

interface Place {
  readonly x: number;
  readonly y: number;
}

function solve(primitives: SketchPrimitive[], wanted: string): Place {
  const wrapper = new GcsWrapper(new solver.GcsSystem());
  try {
    wrapper.set_convergence_threshold(1e-15);
    wrapper.push_primitives_and_params(primitives);
    if (wrapper.solve() > 1) throw new Error('The sketch could not be solved.');
    wrapper.apply_solution();
    const point = wrapper.sketch_index.get_sketch_point(wanted);
    return { x: point.x, y: point.y };
  } finally {
    wrapper.destroy_gcs_module();
  }
}

const tops = new Map<PistonInBarrel, Place>();

/** Pin at true top dead centre, sought once for each engine. */
function topOfPin(barrel: PistonInBarrel): Place {
  const known = tops.get(barrel) ?? solvedTop(barrel);
  tops.set(barrel, known);
  return known;
}

/** Crank and rod in line with each other, the pin on its line. */
function solvedTop({ stroke, rodLength, pinOffset }: PistonInBarrel): Place {
  return solve(
    [
      { id: 'main', type: 'point', x: 0, y: 0, fixed: true },
      { id: 'pin', type: 'point', x: pinOffset, y: rodLength + stroke / 2, fixed: false },
      { id: 'line', type: 'coordinate_x', p_id: 'pin', x: pinOffset },
      {
        id: 'reach',
        type: 'p2p_distance',
        p1_id: 'main',
        p2_id: 'pin',
        distance: rodLength + stroke / 2,
      },
    ],
    'pin',
  );
}

/**
 * Degrees after true top dead centre, 0 to 360, at which the crown stands `edge` mm below the deck.
 */
export function solvedAngle(barrel: PistonInBarrel, edge: number, side: 'down' | 'up'): number {
  const { stroke, rodLength, pinOffset, deckClearance } = barrel;
  const top = topOfPin(barrel);
  const pinHeight = top.y - (edge - deckClearance);
  const big = solve(
    [
      { id: 'main', type: 'point', x: 0, y: 0, fixed: true },
      { id: 'pin', type: 'point', x: pinOffset, y: pinHeight, fixed: true },
      { id: 'big', type: 'point', x: (side === 'down' ? 0.5 : -0.5) * stroke, y: 0, fixed: false },
      { id: 'throw', type: 'p2p_distance', p1_id: 'main', p2_id: 'big', distance: stroke / 2 },
      { id: 'rod', type: 'p2p_distance', p1_id: 'big', p2_id: 'pin', distance: rodLength },
    ],
    'big',
  );
  const angle = degreesFromUp(big) - degreesFromUp(top);
  return angle < 0 ? angle + 360 : angle;
}

function degreesFromUp({ x, y }: Place): number {
  return (Math.atan2(x, y) * 180) / Math.PI;
}
