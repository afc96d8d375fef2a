import type { Step } from './steps.ts';

/** From the bare plate to the timing. */
export const pointsSteps = {
  plate: {
    stage: 'plate',
    title: 'Prove the breaker plate',
    why: 'Each set must stand where its cylinder fires. What the holes are off, the slots have to take up, and a slot reaches only a few degrees.',
    how: [
      'Say in the sheet where each set belongs, counted from set 1 the way the cam turns. Only an engine that fires evenly has them evenly round the plate.',
      'A vee, or crank pins at odd angles: set the disc, turn forwards from the top of cylinder 1 to the top of each other one, and take those degrees; half of them on a half-speed shaft.',
      'Measure from one point of each set (its fixing hole, or the tip of its heel) to the same point of the next, the way the cam turns, round the whole plate.',
    ],
    tool: 'Dividing head or rotary table, or dividers and the chord from the drawing',
    caution:
      'Drilling sheet throws sharp swarf and can snatch the plate round: clamp it, wear eye protection, no gloves at the drill, and take off the burrs.',
    reading: {
      label: 'From the set before, the way the cam turns',
      per: 'Set',
      unit: 'deg',
      min: 1,
      max: 360,
      why: 'sets share one turn of the plate',
      step: 0.1,
      judging: 'spacing',
      tolerance: 'plate-tolerance',
      tooHigh: 'Move this set in its slot, against the way the cam turns (earlier), by',
      tooLow: 'Move this set in its slot, the way the cam turns (later), by',
      moves:
        'A set that is moved meets the lobe elsewhere: its gap, and then its timing, are to be set after it. Where the slot does not reach, drill the hole anew.',
    },
    after: {},
    waitsFor: ['leak'],
    calculators: ['plate-layout', 'degree-disc'],
    articles: ['making-a-breaker-plate'],
  },
  coil: {
    stage: 'points',
    title: 'Measure the coils',
    why: 'A coil of less resistance draws more current and burns the points; one of more gives a poor spark. Timing set on a coil that is failing will not hold.',
    how: [
      'Coil cold, it and the workshop at about 20 °C. Disconnect both low-tension leads.',
      'Touch the meter’s leads together and take off what it shows; then measure between the terminals.',
      'A second reading warm, and a spark test hot, is another test, for a coil that fails only when hot. It is not compared with this figure.',
      'The condenser: a film or original type of about the usual value, for 1000 V DC or more. It is bolted bare metal to bare metal beside its points, or at the coil, its lead short, away from heat and from anything that turns.',
    ],
    tool: 'Meter with a low ohm range',
    caution:
      'Battery disconnected. A coil that is running, or whose points have just opened, gives a dangerous shock: never hold a plug lead by hand.',
    reading: {
      label: 'Primary resistance',
      per: 'Coil',
      unit: 'ohm',
      min: 0,
      max: 1000,
      why: 'a coil outside that is open or is not an ignition coil’s primary',
      step: 0.1,
      judging: 'figure',
      target: 'resistance',
      tolerance: 'resistance-tolerance',
      tooHigh:
        'Clean the terminals, take off what the meter’s own leads read, and measure again; a coil still above it is to be changed. It is high by',
      tooLow:
        'See that nothing else is connected across it and that the leads do not touch, and measure again; a coil still below it has shorted turns, or is another coil, and is to be changed. It is low by',
      moves:
        'Another coil is to be proved again: that it sparks, and that the switch stops it. Of less resistance, it draws more current through points and condenser.',
    },
    after: {},
    calculators: ['coil-charge'],
    articles: ['coils-and-condensers'],
  },
  gap: {
    stage: 'points',
    title: 'Set the points gap',
    why: 'The gap sets the dwell (how long the points stay shut), and so the spark. It also moves the timing: a wider gap opens earlier. So it comes before the timing.',
    how: [
      'Contacts first: clean, meeting square and over their whole faces; the arm free on its pivot; the spring whole and pressing firmly. New contacts carry a protective film: wipe it off with a clean cloth and solvent.',
      'An insulation tester at 500 V (1000 V where you have it) proves the set, with coil, condenser and leads off it. An ohmmeter finds only a dead short.',
      'Turn forwards to the top of the lobe, where the gap is widest. Set the fixed contact, tighten, and measure again: tightening moves it.',
      'Under a flywheel: turn until the widest gap shows in its window, and work through that. Where magnets pull a steel blade aside, use one of brass or plastic.',
    ],
    tool: 'Feeler blades, or indicator on the moving contact',
    caution:
      'Ignition off and plugs out before the crank is turned; points that open with the current on throw a spark and give a shock at the plug lead. Forwards only where the rotor’s nut is the place to turn at: turned backwards it may undo.',
    reading: {
      label: 'Gap',
      per: 'Set',
      unit: 'mm',
      min: 0,
      max: 5,
      why: 'no points open wider',
      step: 0.01,
      judging: 'figure',
      target: 'gap',
      tolerance: 'gap-tolerance',
      tooHigh: 'Close the gap, which makes it fire later, by',
      tooLow: 'Open the gap, which makes it fire earlier, by',
      moves: 'The gap moves the timing: set that after it.',
    },
    after: {
      leak: 'A seal behind the plate is reached with the plate off, and the plate goes back a little different.',
      plate: 'A set that was moved on the plate meets the lobe elsewhere, and its gap changes.',
    },
    movedBy: {
      timing:
        'A set that was moved in its slot comes nearer to the cam or further from it, and its gap changes. A plate turned as a whole changes it only where it does not run true.',
    },
    calculators: ['breaker-cam'],
    articles: ['gap-dwell-and-timing'],
  },
  timing: {
    stage: 'points',
    title: 'Set the timing, plate first, then each set',
    why: 'Too early, an engine knocks (the charge goes off by itself), holes a piston and kicks back; too late, it runs hot and short of power. Cylinders that differ shake.',
    how: [
      'Turn forwards until the points open, and read the piston below its top. A lamp from the points to earth, ignition on, lights as they open; a tester with a battery of its own, coil lead off, goes out or falls silent.',
      'Turn the plate by the amount given and lock it. Then move each set in its own slot. Against the way the cam turns is earlier.',
      'Then gap and timing once more, since a set moved in its slot changes its gap.',
    ],
    tool: 'Indicator in the plug hole, lamp or buzzer across the points',
    caution:
      'Plugs out, leads earthed away from the plug holes. An engine set too early kicks back hard enough to break an ankle or a wrist. At live points a meter sees several hundred volts: one rated for that, and fingers off. A strobe makes what turns look still: hands, sleeves and leads away.',
    reading: {
      label: 'Fires before the top (− after it)',
      per: 'Cylinder',
      unit: 'mm',
      min: -100,
      max: 100,
      why: 'it cannot fire further from the top than the piston goes',
      step: 0.02,
      judging: 'timing',
      target: 'target',
      tolerance: 'timing-tolerance',
      tooHigh: 'Make it fire later by',
      tooLow: 'Make it fire earlier by',
      moves: 'A set that is moved in its slot changes its gap: gap and timing once more after it.',
    },
    after: {
      measure: 'Stroke and rod turn the piston position into degrees.',
      top: 'The figure is counted from true top dead centre; an error there is in every timing.',
      leak: 'A seal behind the plate is reached with the plate off, and the plate goes back a little different.',
      plate: 'A set that was moved on the plate fires elsewhere.',
      gap: 'A wider gap opens the points earlier, a narrower one later.',
    },
    calculators: ['plate-setting', 'piston-position'],
    articles: ['setting-several-cylinders', 'what-a-degree-is-worth'],
    series: { 'plate-setting': 'fired' },
  },
} as const satisfies Record<string, Step>;
