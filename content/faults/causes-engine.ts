import type { Action } from './types.ts';

/** Causes in the engine itself that several symptoms share. Common practice throughout. */

export const clearance: Action = {
  id: 'clearance',
  cause: 'Piston clearance off',
  act: 'Measure the piston square to its pin, where its skirt is widest, and the least width of the bore, both at about 20 °C. Have a tight bore honed; a loose one needs a larger piston.',
  step: 'clearance',
  measured: 'out',
  article: 'proving-a-mixed-engine',
};

export const squish: Action = {
  id: 'squish',
  cause: 'Squish off: the crown comes too near to the head, or stays too far from it',
  act: 'Measure it with solder on both sides along the pin, over the top by hand. Correct it by the gasket, and prove the head joint again.',
  step: 'squish',
  measured: 'out',
  calculator: 'compression',
  article: 'squish-and-compression',
};

export const compression: Action = {
  id: 'compression',
  cause: 'Compression low or unlike the others: ring, gasket, head volume',
  act: 'Compare the cylinders by a gauge, slides full open. At the low one measure head volume and ring gap. A ring that is stuck, worn or wide lets the charge past; a head joint that leaks shows a grey track.',
  step: 'compression',
  calculator: 'compression',
  article: 'squish-and-compression',
  figures: ['head-volume', 'ring-gap'],
};

export const highCompression: Action = {
  id: 'high-compression',
  cause: 'Too much compression for the fuel',
  act: 'Measure the head volumes, and work out the compression with deck and squish. A thicker head gasket brings it down; then measure the squish again.',
  step: 'head-volume',
  calculator: 'compression',
  article: 'squish-and-compression',
};

export const exhaustPort: Action = {
  id: 'exhaust-port',
  cause: 'The exhaust opens elsewhere than it should, or is choked with carbon',
  act: 'Read on the disc where each exhaust opens. Look into pipe and port with a torch: clear the carbon with the piston at the bottom, and blow nothing into the engine.',
  step: 'exhaust',
  calculator: 'port-timing',
  article: 'ports-by-the-degree',
};

export const play: Action = {
  id: 'play',
  cause: 'Play in big end, little end or main bearings',
  act: 'Rock the crank over the top with an indicator on the crown, and lift the rod by hand. Up-and-down play to feel at the big end ends the run: have the crank rebuilt before it is started again. Then try the gudgeon pin, and the run-out of the crank.',
  step: 'rod-play',
  calculator: 'find-tdc',
  article: 'proving-a-mixed-engine',
};

export const hotPlug: Action = {
  id: 'hot-plug',
  cause: 'Something glows: a plug of too hot a grade, or carbon in the head',
  act: 'Fit the plug the maker gives, and scrape the head clean. If it still runs on, look for a weak mixture and for early timing.',
  step: 'plug',
  article: 'coils-and-condensers',
};

export const cooling: Action = {
  id: 'cooling',
  cause: 'The cooling: blocked fins, a cowl off, or standing still',
  act: 'Clean the fins to their roots, put every cowl back, and never let an air-cooled engine stand and run for more than two or three minutes without a fan on it.',
  step: 'run',
  article: 'which-circuit-at-which-throttle',
};

export const usual: Action = {
  id: 'usual',
  cause: 'Nothing: it is usual in a two-stroke',
  act: 'Leave it alone. At small openings much burnt gas stays in the cylinder, and it fires at every other turn. Read the plugs after a run under load.',
  step: 'run',
  article: 'which-circuit-at-which-throttle',
};

export const reed: Action = {
  id: 'reed',
  cause: 'A reed that does not shut: a petal chipped, bent, or off its seat',
  act: 'Reed block out. Against the light no petal may stand off its seat by more than its figure, and none may be chipped or cracked. Turn the petals over or change them, lock their screws, and prove the crankcase by the leak tests.',
  step: 'reeds',
  article: 'proving-a-mixed-engine',
};
