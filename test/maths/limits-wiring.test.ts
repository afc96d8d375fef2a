import { hoursAt, hoursByRule } from '../../calculators/maths/wiring/battery.ts';
import { fuseFor } from '../../calculators/maths/wiring/fuse.ts';
import { americanGaugeArea } from '../../calculators/maths/wiring/gauge.ts';
import { settledCurrent, voltsLeft } from '../../calculators/maths/wiring/supply.ts';
import {
  copperResistance,
  greatestResistance,
  smallestWire,
  STANDARD_WIRES,
  warmth,
} from '../../calculators/maths/wiring/wire.ts';
import { holdsTo, range } from './limits.ts';

const supply = { volts: 12, coils: 3, ohms: 4, others: 0 };

holdsTo([
  {
    of: ['temperature'],
    run: warmth,
    takes: [-234.4, 20, 1e6],
    refuses: [-234.5, -300, NaN, Infinity],
    says: range('The temperature of the wire', 'more than -234\\.5 °C'),
  },
  {
    of: ['length'],
    run: (length) => copperResistance(length, 1, 20),
    takes: [0, 1e6],
    refuses: [-0.1, NaN, Infinity],
    says: range('The length of wire', '0 m or more'),
  },
  {
    of: ['length'],
    run: (length) => greatestResistance(STANDARD_WIRES[0]!, length, 20),
    takes: [0, 1e6],
    refuses: [-0.1, NaN, Infinity],
    says: range('The length of wire', '0 m or more'),
  },
  {
    of: ['area'],
    run: (area) => copperResistance(1, area, 20),
    takes: [0.001, 1e6],
    refuses: [0, -1, NaN, Infinity],
    says: range('The cross-section of the wire', 'more than 0 mm²'),
  },
  {
    code: 'no-wire',
    of: ['length', 'loss'],
    run: (least) => smallestWire(({ bears }) => bears >= least),
    takes: [0, 73],
    refuses: [73.1],
    says: /Even 16 mm² would lose more than is allowed, or bear too little/,
  },
  {
    of: ['current'],
    run: (current) => fuseFor(current, 0.7),
    takes: [0.001, 28],
    refuses: [0, -1, NaN, Infinity],
    says: range('The current through the fuse', 'more than 0 A'),
  },
  {
    code: 'no-fuse',
    of: ['current', 'coils'],
    run: (current) => fuseFor(current, 0.7),
    takes: [28],
    refuses: [28.1],
    says: /A blade fuse of 40 A does not carry 28\.1 A for long/,
  },
  {
    of: ['load'],
    run: (load) => fuseFor(1, load),
    takes: [0.1, 1],
    refuses: [0, -0.1, 1.01, NaN],
    says: range('The share of its rating that a fuse carries', 'more than 0 and at most 1'),
  },
  {
    of: ['gauge'],
    run: americanGaugeArea,
    takes: [-3, 0, 40],
    refuses: [-3.1, 41, NaN],
    says: range('The American gauge of the wire', 'from -3 to 40'),
  },
  {
    of: ['volts'],
    run: (volts) => settledCurrent({ ...supply, volts }, 0.1),
    takes: [0.001, 1e6],
    refuses: [0, -1, NaN, Infinity],
    says: range('The voltage', 'more than 0 V'),
  },
  {
    of: ['coils'],
    run: (coils) => settledCurrent({ ...supply, coils }, 0.1),
    takes: [0, 1e6],
    refuses: [-1, NaN, Infinity],
    says: range('The number of coils', '0 or more'),
  },
  {
    of: ['ohms'],
    run: (ohms) => settledCurrent({ ...supply, ohms }, 0.1),
    takes: [0.001, 1e6],
    refuses: [0, -1, NaN, Infinity],
    says: range('The resistance of a coil and its ballast', 'more than 0 ohm'),
  },
  {
    of: ['others'],
    run: (others) => settledCurrent({ ...supply, others }, 0.1),
    takes: [0, 1e6],
    refuses: [-0.1, NaN, Infinity],
    says: range('The other current', '0 A or more'),
  },
  {
    of: ['series'],
    run: (series) => settledCurrent(supply, series),
    takes: [0, 1e6],
    refuses: [-0.1, NaN, Infinity],
    says: range('The resistance of wire and contacts', '0 ohm or more'),
  },
  {
    code: 'nothing-left',
    of: ['current', 'others', 'length', 'contacts'],
    run: (current) => voltsLeft(12, current, 2),
    takes: [0, 5.99],
    refuses: [6, 7, NaN],
    says: /Wire and contacts of 2 ohm cannot carry .*: at 12 V no more than 6 A would flow/,
  },
  {
    of: ['capacity'],
    run: (capacity) => hoursAt(capacity, 1),
    takes: [0.001, 1e6],
    refuses: [0, -1, NaN, Infinity],
    says: range('The capacity of the battery', 'more than 0 Ah'),
  },
  {
    of: ['current'],
    run: (current) => hoursAt(9, current),
    takes: [0.001, 1e6],
    refuses: [0, -1, NaN, Infinity],
    says: range('The current drawn', 'more than 0 A'),
  },
  {
    of: ['ratedHours'],
    run: (rated) => hoursByRule(9, 1, rated, 1.2),
    takes: [0.001, 1e6],
    refuses: [0, -1, NaN, Infinity],
    says: range('The hours for which the capacity is given', 'more than 0 h'),
  },
  {
    of: ['exponent'],
    run: (exponent) => hoursByRule(9, 1, 10, exponent),
    takes: [1, 100],
    refuses: [0.99, NaN, Infinity],
    says: range('The exponent of the rule', '1 or more'),
  },
]);
