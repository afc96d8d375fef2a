import type { Action } from './types.ts';

/** Causes in spark and timing that several symptoms share. Common practice throughout. */

export const contacts: Action = {
  id: 'contacts',
  cause: 'Contacts that do not close the circuit: oil, dirt, burnt faces, or the film of new ones',
  act: 'Clean both contacts with a clean cloth and a little solvent. New ones carry a protective film, which comes off the same way. Shut, they should lose less than 0.2 V. Then set the gap, and after it the timing.',
  step: 'gap',
  calculator: 'breaker-cam',
  article: 'how-the-points-make-the-spark',
};

export const gap: Action = {
  id: 'gap',
  cause: 'The points gap is not what it should be',
  act: 'Set the gap at the top of the lobe, tighten, and measure it again. Then set the timing: a wider gap fires earlier.',
  step: 'gap',
  measured: 'out',
  calculator: 'breaker-cam',
  article: 'gap-dwell-and-timing',
  figures: ['dwell-angle'],
};

export const condenser: Action = {
  id: 'condenser',
  cause: 'A bad condenser, a wrong one, or one without its earth',
  act: 'Fit another of about the usual value, for 1000 V DC or more, bare metal to bare metal. Look again: a small, dull flicker at the contacts is right. The insulation tester at 500 V must show a few megohms when it is hot; after that touch its wire to its case before you hold it.',
  step: 'condenser',
  calculator: 'coil-charge',
  article: 'coils-and-condensers',
};

export const insulation: Action = {
  id: 'insulation',
  cause: 'The insulated side of the set touches earth',
  act: 'Take coil, condenser and leads off the set, and put card between its contacts. From terminal to plate the insulation tester at 500 V should show many megohms; less than one is damp, dirt, a bent tag or a cracked bush. Clean it, or change the bush.',
  step: 'insulation',
  measured: 'out',
  article: 'making-a-breaker-plate',
};

export const feed: Action = {
  id: 'feed',
  cause: 'No feed: battery, fuse, switch, connector or wire',
  act: 'Measure volts to earth from the battery on: after the fuse, after the switch, at the coil. The first place without them names the part before it. With the points shut no more than about half a volt should be lost on the way, on 6 V half of that.',
  step: 'wiring',
  calculator: 'wiring',
  article: 'battery-to-plug',
  figures: ['volts'],
};

export const earth: Action = {
  id: 'earth',
  cause: 'A bad earth of plate, engine or battery',
  act: 'Measure from the battery’s earth post to the plate, ignition on and points shut: more than about 0.2 V is a bad earth. Clean plate, crankcase and frame to bare metal, tighten, and measure again.',
  step: 'wiring',
  calculator: 'wiring',
  article: 'battery-to-plug',
  figures: ['volts'],
};

export const cutOut: Action = {
  id: 'cut-out',
  cause: 'The switch, or the wire to it, stops the spark',
  act: 'Mend the switch or the rubbed wire. Put its wire back, and prove that the switch stops every spark before the engine can start.',
  step: 'stop',
  article: 'how-the-points-make-the-spark',
};

export const noCutOut: Action = {
  ...cutOut,
  cause: 'The switch does not stop every coil',
  act: 'Mend the switch or its wire, and prove that it stops the spark of every plug before the engine can start.',
};

export const coil: Action = {
  id: 'coil',
  cause: 'The coil is open inside, or has shorted turns',
  act: 'Measure its primary cold, both low-tension leads off, less what the meter’s own leads show. Then measure from its lead to its terminal: no reading at all is a broken secondary. Change a coil that is off its figure.',
  step: 'coil',
  calculator: 'coil-charge',
  article: 'coils-and-condensers',
};

export const hotCoil: Action = {
  ...coil,
  id: 'hot-coil',
  cause: 'A coil or a condenser that fails when hot',
  act: 'Change coil, then condenser, each for one that is known to be sound, a neighbour’s or a new one, and run it hot again: see whether the fault goes along. The resistance is compared cold; a failure that comes with heat is found by exchange.',
};

export const polarity: Action = {
  id: 'polarity',
  cause: 'The two low-tension wires of the coil are swapped',
  act: 'Change them over; a coil with two leads has no right way round. On a coil marked + and −, the terminal of the same sign as the earthed pole of the battery goes to the points. The centre of the plug should be negative: otherwise it asks for more voltage. If they are right, try another coil: insulation that breaks down inside does not show on an ohmmeter.',
  step: 'polarity',
  article: 'coils-and-condensers',
};

export const rotorKey: Action = {
  id: 'rotor-key',
  cause: 'The rotor has turned on its taper, or its key is sheared',
  act: 'Draw the rotor off with its own puller. Fit a new key, clean both tapers dry of oil, and draw the nut up to the maker’s torque: the taper holds the rotor, the key only places it. Then set the timing anew.',
  step: 'timing',
  article: 'how-the-points-make-the-spark',
};

export const magnet: Action = {
  id: 'magnet',
  cause: 'Points that open away from the magnet’s pull, weak magnets, or a condenser',
  act: 'See that the points open where the magnet has just left the coil’s core: plate and rotor at their marks, the gap at its figure. Try another condenser. Magnets that hardly hold a spanner are for those who remagnetise them.',
  step: 'timing',
  article: 'how-the-points-make-the-spark',
};

export const lead: Action = {
  id: 'lead',
  cause: 'Plug cap or lead',
  act: 'Cut 5 mm off the end of the lead, screw the cap on again, and see that the lead sits in the coil. Measure through the cap alone: a plain one shows next to nothing, one with a resistor some thousand ohms. Change one that is open, cracked or tracked.',
  step: 'plug',
  article: 'coils-and-condensers',
};

export const plug: Action = {
  id: 'plug',
  cause: 'The plug: fouled, cracked, out of gap, or of another grade',
  act: 'Fit a new dry plug of the grade the maker gives, its gap set. A colder plug fouls in a freshly oiled crankcase.',
  step: 'plug',
  article: 'coils-and-condensers',
};

export const leads: Action = {
  id: 'leads',
  cause: 'Leads swapped: the spark comes to a cylinder whose piston is elsewhere',
  act: 'Follow each lead from its coil to the plug of the same cylinder, and each coil’s wire to its own set. The sheet prints the leads in firing order. Turn forwards to each set’s opening: the piston of that cylinder must be just below its top. The two leads of one coil may be changed over without harm. Where all leads are right, the spark itself comes at a wrong place: see to the rotor’s key and taper, then to cam and plate.',
  step: 'leads',
  article: 'setting-several-cylinders',
};

export const early: Action = {
  id: 'early',
  cause: 'It fires too early',
  act: 'Set the gap first, then the plate, then each set in its slot. A set is later when it is moved the way the cam turns.',
  step: 'timing',
  measured: 'early',
  calculator: 'plate-setting',
  article: 'setting-several-cylinders',
};

export const late: Action = {
  id: 'late',
  cause: 'It fires too late',
  act: 'Set the gap first: it closes up as the heel wears, and fires later. Then the plate, then each set in its slot. A set is earlier when it is moved against the way the cam turns.',
  step: 'timing',
  measured: 'late',
  calculator: 'plate-setting',
  article: 'setting-several-cylinders',
};

export const top: Action = {
  id: 'top',
  cause: 'The disc stands off the true top, or was set on another cylinder',
  act: 'Find the true top of each cylinder between two stops, turn the disc to it, and read every timing anew.',
  step: 'top',
  measured: 'out',
  calculator: 'find-tdc',
  article: 'finding-top-dead-centre',
};

export const bounce: Action = {
  id: 'bounce',
  cause: 'The points bounce, or the coil has no time to fill',
  act: 'Look for a spring too soft to keep the arm on the cam, and an arm that is stiff on its pivot. Then see in the calculator how much of its current the coil reaches at that speed.',
  step: 'gap',
  calculator: 'coil-charge',
  article: 'gap-dwell-and-timing',
  figures: ['dwell-angle', 'resistance', 'inductance'],
};
