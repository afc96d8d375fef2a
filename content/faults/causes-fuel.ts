import type { Action } from './types.ts';

/** Causes in fuel and air that several symptoms share. Common practice throughout. */

export const noFuel: Action = {
  id: 'no-fuel',
  cause: 'No fuel reaches the bowl: tap, filter, tank vent or a stuck float valve',
  act: 'Engine cold, no flame: pipe off, its end in a can, tap open. It must run freely for a minute with the tank’s cap on. If it does, the valve is stuck: take it out, clean it and set the float.',
  step: 'float',
  calculator: 'float-level',
  article: 'stripping-and-cleaning',
  figures: ['seat', 'head'],
};

export const pilot: Action = {
  id: 'pilot',
  cause: 'A blocked pilot jet or pilot passage',
  act: 'Take the pilot jet out and look through it at the light. Clean it with solvent, a nylon bristle and air, and prove every passage behind it with air. Then set the air screw to its turns.',
  step: 'pilot',
  article: 'stripping-and-cleaning',
  figures: ['air-screw'],
};

export const airScrew: Action = {
  id: 'air-screw',
  cause: 'Air screw or idle screw off its setting',
  act: 'Seat the air screw without force and turn it out by its turns. Set the idle screw so that the slide just lifts. Engine hot, find the highest steady speed with the air screw, and set the idle anew.',
  step: 'screws',
  article: 'which-circuit-at-which-throttle',
};

export const float: Action = {
  id: 'float',
  cause: 'The fuel level is off',
  act: 'Measure the float height with the tang just touching the needle, and bend the tang until it is right.',
  step: 'float',
  calculator: 'float-level',
  article: 'float-height-and-fuel-level',
};

export const sunkFloat: Action = {
  id: 'sunk-float',
  cause: 'A float with fuel inside',
  act: 'Change it. Never heat or solder one that has held petrol: the vapour inside it explodes. Then set the height anew.',
  step: 'float',
  calculator: 'float-level',
  article: 'float-height-and-fuel-level',
};

export const valve: Action = {
  id: 'valve',
  cause: 'The float valve does not shut: dirt, or a ring worn into the needle’s cone',
  act: 'Wash needle and seat, and look at the cone with a glass: a bright ring is wear. Change needle and seat together, and set the float height.',
  step: 'float',
  calculator: 'float-level',
  article: 'float-height-and-fuel-level',
  figures: ['seat', 'head'],
};

export const bowlJoint: Action = {
  id: 'joint',
  cause: 'A joint, pipe, tap or drain screw that weeps',
  act: 'Tap shut, engine cold, no flame. Wipe it dry, dust it with chalk, open the tap and see where the chalk darkens first. Change that gasket, washer or pipe. Nothing may drip in five minutes before it is started.',
  step: 'clean',
  article: 'stripping-and-cleaning',
};

export const choke: Action = {
  id: 'choke',
  cause: 'The choke is on, or does not come off',
  act: 'Free its flap, plunger or tickler so that it falls fully off. A plunger must sit on its seat: look for a ring of wear there.',
  step: 'clean',
  article: 'stripping-and-cleaning',
};

export const airLeak: Action = {
  id: 'air-leak',
  cause: 'Air leaks in past a seal, gasket or flange',
  act: 'Prove crankcase and cylinder by the leak test, under pressure and under suction, before any jet is touched. Soapy water shows the place under pressure. Change the seal or the gasket, and true the flange.',
  step: 'leak',
  measured: 'out',
  article: 'proving-a-mixed-engine',
};

export const slide: Action = {
  id: 'slide',
  cause: 'A slide that hangs, or a cable too short',
  act: 'Find what holds it: grit, a bent slide, a dry or frayed cable, an adjuster too far out, a clip out of place. Every slide must fall on its stop by itself, with the bars turned both ways.',
  step: 'cables',
  calculator: 'slide-balance',
  article: 'opening-all-slides-together',
};

export const slides: Action = {
  id: 'slides',
  cause: 'The slides do not open together',
  act: 'Bring them together at a small opening by the cable adjusters, and see that each still shuts on its idle screw.',
  step: 'slides',
  measured: 'out',
  calculator: 'slide-balance',
  article: 'opening-all-slides-together',
};

export const smallJet: Action = {
  id: 'main-jet',
  cause:
    'Weak (lean: too little petrol for its air) at wide openings: main jet blocked or too small',
  act: 'Measure its bore with the largest pin that drops in by its own weight, and clean it. Then work out the jet for the air of the day. Never hold full throttle to find out: a weak two-stroke seizes.',
  step: 'jets',
  calculator: 'air-and-jet',
  article: 'which-circuit-at-which-throttle',
};

export const largeJet: Action = {
  id: 'large-jet',
  cause: 'Rich (too much petrol for its air) at wide openings: main jet too large, or worn',
  act: 'Measure its bore with the largest pin that drops in by its own weight. Work out the jet for the air of the day, and come down one size at a time.',
  step: 'jets',
  calculator: 'air-and-jet',
  article: 'which-circuit-at-which-throttle',
};

export const clip: Action = {
  id: 'clip',
  cause: 'The needle clip is in another groove, or needle and needle jet are worn',
  act: 'Count the grooves from the top, 1 the highest: all cylinders alike. Up is leaner, down is richer. An oval needle jet runs rich whatever else is set: change it with its needle.',
  step: 'clip',
  calculator: 'needle-and-clip',
  article: 'needles-and-jets-by-area',
};

export const cutaway: Action = {
  id: 'cutaway',
  cause: 'A slide with another cutaway, or one that is worn',
  act: 'Measure the cutaways beside each other: all cylinders alike. More cutaway is weaker, less is richer. A slide that rattles in its bore draws air beside it.',
  step: 'cutaway',
  article: 'which-circuit-at-which-throttle',
};

export const airFilter: Action = {
  id: 'air-filter',
  cause: 'A blocked air filter',
  act: 'Clean it, or fit a new one. Never leave it off to mend a rich mixture: the jets were chosen with it.',
  step: 'jets',
  calculator: 'air-and-jet',
  article: 'which-circuit-at-which-throttle',
};

export const oldFuel: Action = {
  id: 'fuel',
  cause: 'Old fuel, water in it, or the wrong mixture',
  act: 'Drain tank and bowls into a closed can, outdoors and cold. Look for water at the bottom of a glass of it. Fill with fresh fuel, its oil measured.',
  step: 'fuel',
  calculator: 'fuel-and-oil',
  article: 'fuel-and-oil',
};

export const flooded: Action = {
  id: 'flooded',
  cause: 'Cylinder or crankcase is flooded',
  act: 'Tap shut, ignition off, plugs out and their leads earthed. Slides full open, turn it by hand until the plug holes blow dry, faces and sparks away from them. Slides shut, dry plugs in, and find why it floods.',
  step: 'float',
  calculator: 'float-level',
  article: 'float-height-and-fuel-level',
};
