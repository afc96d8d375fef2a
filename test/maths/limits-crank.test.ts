import { bobWeight, pistonForce, shaking } from '../../calculators/maths/crank/engine-balance.ts';
import { topAngles } from '../../calculators/maths/crank/firing-order.ts';
import { holdsTo, range } from './limits.ts';

const pistons = { reciprocatingMass: 165, stroke: 51, rodLength: 104, speed: 6000 };
const throws = (count: number) =>
  Array.from({ length: count }, (_, i) => ({ pin: 0, lean: 0, place: 100 * i }));
const zeros = (count: number): number[] => Array.from({ length: count }, () => 0);

holdsTo([
  {
    of: ['cylinders'],
    run: (count) => topAngles(zeros(count), zeros(count)),
    takes: [1, 8],
    refuses: [0, 9],
    says: range('The number of cylinders', 'from 1 to 8'),
  },
  {
    of: ['cylinders'],
    run: (count) => shaking(throws(count), pistons, 0.5),
    takes: [1, 8],
    refuses: [0, 9],
    says: range('The number of cylinders', 'from 1 to 8'),
  },
  {
    of: ['pin-2'],
    run: (pin) => topAngles([0, pin], [0, 0]),
    takes: [-360, 0, 360],
    refuses: [-361, 361, NaN, Infinity],
    says: range('The angle of pin 2', 'from -360 to 360 °'),
  },
  {
    of: ['lean-1'],
    run: (lean) => topAngles([0], [lean]),
    takes: [-360, 0, 360],
    refuses: [-361, 361, NaN, Infinity],
    says: range('The lean of cylinder 1', 'from -360 to 360 °'),
  },
  {
    of: ['reciprocatingMass'],
    run: (reciprocatingMass) => pistonForce({ ...pistons, reciprocatingMass }),
    takes: [0.001, 1e9],
    refuses: [0, -1, NaN, Infinity],
    says: range('The reciprocating mass', 'more than 0 g'),
  },
  {
    of: ['speed'],
    run: (speed) => pistonForce({ ...pistons, speed }),
    takes: [0, 1e6],
    refuses: [-1, NaN, Infinity],
    says: range('The speed', '0 rpm or more'),
  },
  {
    of: ['balanceFactor'],
    run: (factor) => shaking(throws(2), pistons, factor),
    takes: [0, 1],
    refuses: [-0.01, 1.01, NaN, Infinity],
    says: range('The balance factor', 'from 0 to 1'),
  },
  {
    of: ['rotatingMass'],
    run: (mass) => bobWeight(mass, 165, 0.5),
    takes: [0, 1e9],
    refuses: [-1, NaN, Infinity],
    says: range('The rotating mass', '0 g or more'),
  },
  {
    code: 'rod-too-short',
    of: ['rodLength', 'stroke'],
    run: (rodLength) => shaking(throws(1), { ...pistons, rodLength }, 0),
    takes: [26],
    refuses: [25.5, 10],
    says: /rod/,
  },
]);
