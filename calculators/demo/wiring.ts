/**
 * From battery to coils: m there and back, mm², mΩ of switch, fuse and joints together, °C of the
 * wire, Ah. Per cent of each turn of the cam that the points are shut, and rpm at idle.
 */
export const demoWiring = {
  length: 3.2,
  area: 1,
  contacts: 30,
  temperature: 30,
  capacity: 9,
  dwellPercent: 55.6,
  idle: 1200,
} as const;
