/**
 * The published contract: keys that links in forum posts hold, and names that others read results
 * by. Rows may be added; none may ever be taken away or change its meaning.
 */
export const contract: readonly (readonly [slug: string, inputs: string, results: string])[] = [
  [
    'piston-position',
    'from stroke rod offset travel angle arc rotor tilt given given-stroke given-rod given-offset given-rotor',
    'angle travel arc degrees-per-tenth dial-reading given-travel',
  ],
  ['find-tdc', 'method before after', 'tdc-reading disc-correction spread'],
  [
    'breaker-cam',
    'lobes speed-ratio lift rise top profile gap',
    'dwell-angle dwell-percent opens crank-degrees-per-gap',
  ],
  [
    'coil-charge',
    'volts resistance inductance dwell-angle lobes speed-ratio rpm',
    'charge-time current energy current-percent',
  ],
  [
    'plate-setting',
    'cylinders stroke rod offset target fired-1 fired-3 fired-8 slot-radius',
    'plate-move error-1 error-3 set-move-1 set-move-3 spread',
  ],
  [
    'plate-layout',
    'sets start firing-order spacing-2 outside bore radius-1 angle-1 drill-1',
    'x-1-1 y-1-1 x-2-1 y-2-1 chord-1 square corner',
  ],
  [
    'hole-pattern',
    'holes hole-1 hole-12 distances a-1 b-1 distance-1 distance-40 span',
    'x-1 y-1 x-3 y-3 misfit-1 misfit-3 rms',
  ],
  ['degree-disc', 'outside inside rotor stroke rod marks', ''],
  [
    'float-level',
    'pivot-to-needle pivot-to-float float-mass float-area float-depth height seat head density',
    'level tang level-per-head',
  ],
  [
    'air-and-jet',
    'temperature pressure altitude humidity jet',
    'density relative-density jet-area-ratio jet',
  ],
  [
    'needle-and-clip',
    'jet-bore needle-diameter taper clip-pitch clips throttle',
    'annulus annulus-per-clip',
  ],
  ['slide-balance', 'slides opening-1 opening-3 thread', 'turn-1 turn-3 spread'],
  ['fuel-and-oil', 'fuel ratio already already-ratio', 'oil mixed-ratio'],
  [
    'port-timing',
    'stroke rod offset deck port-1 port-2',
    'opens-1 opens-2 duration-1 duration-2 blowdown',
  ],
  [
    'compression',
    'bore stroke rod deck head-volume exhaust-opens',
    'swept ratio trapped-ratio squish head-volume-for',
  ],
  [
    'time-area',
    'bore stroke rod offset deck rpm exhaust-edge exhaust-width exhaust-height exhaust-corner ' +
      'exhaust-count transfer-edge transfer-width transfer-height transfer-corner ' +
      'transfer-count inlet-edge inlet-width inlet-height inlet-corner inlet-count',
    'exhaust-time-area transfer-time-area inlet-time-area blowdown-time-area',
  ],
  ['squish-velocity', 'bore stroke rod squish bowl clearance rpm', 'peak mean peak-angle'],
  [
    'firing-order',
    'cylinders firing-order pin-1 pin-3 pin-8 lean-1 lean-3 place-1 place-3 reciprocating stroke rod rpm',
    'top-1 top-3 order-1 order-3 interval-1 interval-3 set-1 set-3 primary secondary ' +
      'primary-couple secondary-couple',
  ],
  [
    'piston-clearance',
    'bore piston bore-expansion piston-expansion bore-temperature piston-temperature measured-at ' +
      'ring-gap ring-expansion ring-temperature',
    'cold per-mille hot ring-gap-hot',
  ],
  [
    'wiring',
    'volts current length area temperature contacts coils resistance inductance dwell-percent ' +
      'lobes speed-ratio rpm capacity share',
    'drop drop-percent at-load coil-current shut-current hours',
  ],
  ['jet-set', 'jets bore-1 bore-3 wanted', 'chosen-1 chosen-3 spread'],
];
