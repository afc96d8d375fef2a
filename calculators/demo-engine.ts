/**
 * The demo engine: invented, a club's three-cylinder air-cooled engine built without a manual. Every
 * figure of it that a default, the engine sheet, a picture or an article shows stands here once.
 * Lengths in mm, angles in degrees, volumes in cc.
 */
export const demoEngine = { stroke: 51, rod: 104, offset: 0 } as const;

/** Another invented engine, for which a figure was given. */
export const demoOther = { stroke: 56, rod: 110, offset: 0 } as const;

export const DEMO_CYLINDERS = 3;
/** Speed at which what goes by the clock is shown, rpm. */
export const DEMO_SPEED = 6000;

/** Edges from the deck down; `deck` is the crown below it at the top. */
export const demoBarrel = {
  bore: 52,
  deck: 0.4,
  skirt: 58,
  exhaust: 32.5,
  exhaustHeight: 18,
  transfer: 41,
  transferHeight: 10,
  inlet: 80.2,
  inletHeight: 18,
  /** After the top, as read from a disc: what edge and deck come to. */
  exhaustOpens: 97.9,
  /** Before the top, as read from a disc: what skirt and port's lower edge come to. */
  inletOpens: 75,
} as const;

/** Piston and ring in their bore, on the bench at 20 °C. Readings are above the bore's own figure. */
export const demoClearance = {
  piston: 51.935,
  ringGap: 0.2,
  standard: 52,
  heights: [8, 25, 45],
  along: [0.02, 0.01, 0],
  across: [0.035, 0.02, 0.005],
} as const;

/** By how much cylinders 2 and on differ from the first. */
export const demoUnevenness = {
  deck: [0.15, -0.05, 0.1, 0.05, 0, 0.1, -0.05],
  port: [0.2, -0.2, 0, 0.1, -0.1, 0.2, 0],
  inlet: [0.2, -0.1, 0, 0.1, -0.1, 0, 0.2],
  volume: [0.3, -0.2, 0.1, -0.1, 0.2, 0, -0.2],
} as const;

/** Play of the crank in its case and of the rods on it, mm, with what either may be off. */
export const demoCrankcase = {
  runOut: 0.03,
  endFloat: 0.2,
  endFloatWithin: 0.1,
  sidePlay: 0.35,
  sidePlayWithin: 0.15,
} as const;

/** Crank and pistons. Degrees from pin 1 the way it turns; mm from cylinder to cylinder; g. */
export const demoCrank = {
  pins: [0, 240, 120],
  pitch: 88,
  reciprocating: 165,
  rotating: 190,
  /** Share of what goes up and down that the weights balance, %. */
  factor: 50,
} as const;

export const demoHead = {
  volume: 9.3,
  gasket: 1,
  gasketBore: 54,
  bowl: 36,
  /** What deck and gasket come to. */
  squish: 1.4,
  /** What head, gasket and deck come to. */
  clearance: 12.4,
} as const;

export const demoCam = {
  lobes: 1,
  speedRatio: 1,
  lift: 1,
  rise: 50,
  top: 120,
  /** Diameter of its low part. */
  base: 22,
  gap: 0.35,
  /** What cam and gap come to. */
  dwell: 200,
  /** Gaps tried, and how far before the top the points then opened. */
  trialGaps: [0.25, 0.3, 0.35, 0.4, 0.45, 0.5],
  trialAngles: [18, 19.5, 22, 23.5, 25.5, 27],
} as const;

/** V, Ω and mH; A; µF of the condenser. */
export const demoCoil = {
  volts: 12,
  resistance: 4,
  inductance: 8,
  limit: 4,
  condenser: 0.22,
} as const;

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

/** Before the top: the piston's travel, and what it comes to as a disc and the rotor's rim show it. */
export const demoTiming = {
  travel: 2.2,
  angle: 21.5,
  arc: 17.8,
  rotor: 95,
  tolerance: 1,
  /** The cylinders as found: by indicator, and the same by a disc. */
  fired: [2.55, 2, 2.25, 2.1, 2.4, 2.05, 2.3, 2.2],
  firedAngles: [23, 20.5, 22, 21, 22.5, 21, 22, 21.5],
} as const;

/** Finding the top: how far down the piston was stopped, and the disc's readings there. */
export const demoTop = { height: 8, before: 44, after: 40 } as const;

export const demoPlate = {
  outside: 92,
  bore: 28,
  /** From the middle to the fixing screw of a set, and so to the slot it clamps. */
  slotRadius: 31.5,
} as const;

/**
 * The cover over the points, copied from its old gasket: four screws, the hole in its middle, and
 * more for whoever asks for them. Places as they are; readings to the twentieth of a caliper, each as
 * far out as a careful hand has it.
 */
export const demoCover = {
  holes: 5,
  distances: 10,
  diameters: [6.5, 6.5, 6.5, 6.5, 30, 4.2, 4.2, 8, 5, 5, 4.2, 4.2],
  places: [
    [0, 0],
    [66, 0],
    [72.3, 48.5],
    [-4.1, 52.6],
    [33.1, 29.1],
    [34, -7],
    [80, 22],
    [30, 62],
    [-14, 26],
    [55, 58],
    [12, 30],
    [54, 24],
  ],
  readTo: 0.05,
  errors: [0.02, -0.03, 0.04, -0.02, 0.03, 0, -0.04, 0.03, 0.01, -0.03, 0.02],
  land: 6,
} as const;

/** One of three alike. Lengths in mm, mass in g, area in mm², density in kg/m³. */
export const demoFloat = {
  height: 24,
  pivotToNeedle: 8,
  pivotToFloat: 32,
  mass: 9,
  area: 1000,
  depth: 20,
  seat: 2,
  head: 300,
  density: 745,
  tolerance: 0.3,
  /** The carburettors as found. */
  found: [24.4, 23.5, 24.1, 24.2, 23.8, 24],
} as const;

export const demoJets = {
  main: 1.1,
  pilot: 0.4,
  /** Stamped on it. */
  mainNumber: 110,
  needleJet: 2.6,
  needle: 2.51,
  taper: 1.5,
  straight: 4,
  clip: 3,
  clips: 5,
  clipPitch: 1,
  slideTravel: 24,
} as const;

/**
 * A drawer of jets, all stamped alike or nearly so: by pin, mm; by the seconds that 100 cc take under
 * 300 mm; by the number on them. The first is measured the same each way.
 */
export const demoDrawer = {
  bores: [1.1, 1.125, 1.08, 1.115, 1.105, 1.17, 1.09, 1.14],
  times: [62, 59.5, 64.5, 60.5, 61.5, 55, 63, 57.5],
  numbers: [110, 112, 108, 112, 110, 115, 110, 112],
  volume: 100,
  head: 300,
  coefficient: 0.7,
} as const;

export const demoSlides = {
  /** Of each slide, and the play of each cable as found and the least to keep. */
  cutaway: 2,
  play: [1.2, 1.2, 1.2, 1.2, 1.2, 1.2],
  leastPlay: 1,
  /** Pitch of the cable's adjuster. */
  thread: 1,
  /** The slides as found: mm by drill, and the same by gauge, kPa. */
  found: [2.6, 2.5, 2.9, 2.7, 2.4, 2.6],
  vacuums: [30, 31, 27, 29, 32, 30],
} as const;

/** Parts of petrol to one of oil. */
export const DEMO_RATIO = 25;
