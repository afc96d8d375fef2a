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
          'Rich, or much of the last burnt gas is still inside. At small openings it is usual in a two-stroke.',
        first: 'Nothing, unless it goes on with the slide a quarter open; then needle and float.',
      },
      {
        sign: 'Revs rise by themselves or hang when the slide is shut',
        means: 'Air from somewhere else than the slide: a leak, or a slide that does not shut.',
        first: 'Stop it at once. Then the slides and the leak test.',
      },
      {
        sign: 'Sharp rattle under load, like gravel in a tin',
        means: 'Knocking: fired too early, too weak, too hot or too highly compressed.',
        first: 'Shut off at once. Then timing, then leaks, then squish.',
      },
      {
        sign: 'Hard metallic knock, once a turn, also without load',
        means: 'Something touches or has play: crown on head, big end, piston.',
        first: 'Stop it at once and do not start it again. Squish, then big end.',
      },
      {
        sign: 'Spitting back through a carburettor',
        means: 'Weak, late or far too early on that cylinder.',
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
        sign: 'No smoke at all from a petroil engine, first run',
        means: 'Perhaps no oil in the fuel.',
        first: 'Stop it at once. Mixture in the tank.',
      },
    ],
  },
  {
    title: 'Plugs',
    note: 'Only after a run under load, cut off with the switch and the slide shut together. After idling a plug shows nothing but idling. Fuels of today colour less than old pictures show. Hot: gloves.',
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
        sign: 'Black and dry, sooty',
        means: 'Rich, or a plug too cold for the work.',
        first: 'Choke, needle clip, jet.',
      },
      {
        sign: 'White or blistered, grey specks',
        means: 'Weak, too early or too hot. Grey specks are metal off the crown.',
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
        means: 'Weak or late there, or it does the work of the others.',
        first: 'Slides together, its jet, its timing, its seals.',
      },
      {
        sign: 'All too hot, red exhaust pipes',
        means: 'Late timing burns in the pipe; or weak.',
        first: 'Timing, then jets and fuel level.',
      },
    ],
  },
];
