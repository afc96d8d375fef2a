/** What the engine shows, what it means, and what to check first. */
export interface Sign {
  readonly sign: string;
  readonly means: string;
  readonly first: string;
}

export interface SignGroup {
  readonly title: string;
  readonly note: string;
  readonly signs: readonly Sign[];
}

/** Signs of the trade: common practice, as no measurement stands behind most of them. */
export const signGroups: readonly SignGroup[] = [
  {
    title: 'Sound',
    note: 'Through ear protection, and with a stick or a hose to the ear only well away from moving parts.',
    signs: [
      {
        sign: 'Every other beat missing at small opening, even and without load (four-stroking)',
        means:
          'Rich (too much petrol for its air), or much of the last burnt gas is still inside. At small openings it is usual in a two-stroke.',
        first: 'Nothing, unless it goes on with the slide a quarter open; then needle and float.',
      },
      {
        sign: 'Revs rise by themselves or hang when the slide is shut',
        means:
          'It begins to run away: air from somewhere else than the slide, by a leak or a slide that does not shut.',
        first: 'Stop it at once, as at the head of this page. Then the slides and the leak test.',
      },
      {
        sign: 'Sharp rattle under load, like gravel in a tin',
        means:
          'Knocking: the charge goes off by itself. Fired too early, weak (lean: too little petrol for its air), too hot or too highly compressed.',
        first: 'Shut off at once. Then timing, then leaks, then squish.',
      },
      {
        sign: 'Hard metallic knock, once a turn, also without load',
        means: 'Something touches or has play: crown on head, big end, piston.',
        first: 'Stop it at once and do not start it again. Squish, then big end.',
      },
      {
        sign: 'Spitting back through a carburettor',
        means: 'Weak (lean), late or far too early on that cylinder.',
        first: 'Fuel reaching it, then timing of that cylinder.',
      },
      {
        sign: 'Bangs in the exhaust',
        means: 'Charges that did not fire, lit by a later one.',
        first: 'Spark of each cylinder: plug, gap, coil.',
      },
    ],
  },
  {
    title: 'Spark',
    note: 'Look in the dark, every plug in its cap on bare metal, away from the plug holes, fuel shut. At the plug and at the contacts the same colour means different things.',
    signs: [
      {
        sign: 'At the plug: short, fat, blue-white, with a snap',
        means: 'Good.',
        first: 'Nothing.',
      },
      {
        sign: 'At the plug: thin, yellow or orange, silent',
        means: 'Too little voltage or current.',
        first: 'Gap and contacts, condenser, coil, battery, cap and lead.',
      },
      {
        sign: 'At the contacts: a small, dull flicker as they open',
        means: 'As it should be.',
        first: 'Nothing.',
      },
      {
        sign: 'At the contacts: bright, steady, blue-white flashing',
        means: 'A bad condenser, or a wrong one.',
        first: 'Another condenser, and its earth.',
      },
    ],
  },
  {
    title: 'Smoke',
    note: 'From downwind you breathe carbon monoxide: look from upwind.',
    signs: [
      {
        sign: 'Blue-white at first, less when warm',
        means: 'Oil left in the crankcase and exhaust from building it. It goes.',
        first: 'Nothing for the first minutes.',
      },
      {
        sign: 'Blue-white that goes on, with the smell of gearbox oil',
        means: 'The gearbox-side crankshaft seal draws oil.',
        first: 'Leak test, and the level in the gearbox falling.',
      },
      {
        sign: 'Black, with a smell of petrol',
        means: 'Rich.',
        first: 'Float height and valve, choke fully off, needle clip.',
      },
      {
        sign: 'No smoke at all, first run, from a petroil engine (oiled by oil mixed into its petrol)',
        means: 'Perhaps no oil in the fuel.',
        first: 'Stop it at once. Mixture in the tank.',
      },
    ],
  },
  {
    title: 'Plugs',
    note: 'To read a plug is to take it out and look at the nose of its insulator and at the electrodes. Only after a run under load, cut off with the switch and the slide shut together: after idling a plug shows nothing but idling. Fuels of today colour less than old pictures show. Hot: gloves.',
    signs: [
      {
        sign: 'All alike, tan to grey',
        means: 'As it should be.',
        first: 'Nothing.',
      },
      {
        sign: 'Black and wet, one plug',
        means: 'That cylinder did not fire, or floods.',
        first: 'Its spark, then its float.',
      },
      {
        sign: 'Black and wet, all of them, at the first start',
        means: 'Oil left from building it, or flooded; or plugs of too cold a grade.',
        first: 'Clear the crankcase, dry plugs of the maker’s grade.',
      },
      {
        sign: 'Black and dry, sooty',
        means: 'Rich, or a plug too cold for the work.',
        first: 'Choke, needle clip, jet.',
      },
      {
        sign: 'White or blistered, grey specks',
        means: 'Weak (lean), too early or too hot. Grey specks are metal off the crown.',
        first:
          'Do not run it again before timing, leaks and jet are checked, and the crown looked at.',
      },
      {
        sign: 'One unlike the others',
        means: 'That cylinder differs: leave what they share alone.',
        first: 'Its timing, its slide, its jet, its leak test.',
      },
    ],
  },
  {
    title: 'Temperature',
    note: 'With a thermometer at the same place of each head, under the plug. Compare cylinders; the figure itself depends on the place.',
    signs: [
      {
        sign: 'One cylinder cold after a minute',
        means: 'It does not fire.',
        first: 'Spark, then fuel.',
      },
      {
        sign: 'One cylinder clearly hotter',
        means: 'Weak (lean), early or late there, or it does the work of the others.',
        first: 'Slides together, its jet, its timing, its seals.',
      },
      {
        sign: 'All too hot, red exhaust pipes',
        means: 'Late timing burns in the pipe; or weak (lean).',
        first: 'Timing, then jets and fuel level.',
      },
    ],
  },
];
