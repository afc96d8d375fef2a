/** Part of the list to be ticked before the first start. */
export interface ListPart {
  readonly title: string;
  readonly items: readonly string[];
}

export const checklist: readonly ListPart[] = [
  {
    title: 'The place',
    items: [
      'Outdoors, away from doors and windows. Exhaust holds carbon monoxide, which has no smell and kills; a garage with its door open is not outdoors.',
      'No flame, heater, grinder or cigarette within reach of petrol vapour, which is heavier than air and runs along the ground.',
      'The machine stands so that it cannot roll, fall or drive off: driven wheel clear of the ground, gear in neutral, nobody in line with wheel or chain.',
      'Neighbours, children and animals warned and kept back.',
    ],
  },
  {
    title: 'At hand',
    items: [
      'Extinguisher for burning liquids (class B: foam, powder or carbon dioxide), its seal whole, where you can reach it without passing the engine. Never water on burning petrol.',
      'Ear protection on, eye protection on, boots that hold the ankle, gloves that are not loose.',
      'A helper who knows the switch, the fuel tap and the extinguisher, and can call for help.',
      'A board or plate for each inlet, to stop an engine that runs away.',
      'Thermometer or a wet brush for the heads, plug spanner, a spare set of plugs, rag in a lidded can.',
    ],
  },
  {
    title: 'Two ways to stop, both proved',
    items: [
      'The switch: with a plug outside and earthed, away from the plug hole, the spark goes when it is thrown.',
      'The air: every slide falls shut by itself, with the bars turned both ways, and the board for each inlet has been tried in its place.',
      'The fuel tap shuts. It is the third way only: a full bowl runs an engine on for longer than you want to wait.',
    ],
  },
  {
    title: 'The engine',
    items: [
      'Every step of the order of work is done, and none is to be checked again.',
      'It turns over by hand through two full turns, plugs out, with nothing that touches or tightens.',
      'Gearbox oil in; in a petroil engine oil in the fuel, measured; with a pump, its line bled and its pump seen to deliver.',
      'No fuel drips anywhere with the tap open for five minutes.',
      'Nuts of head, barrel, carburettors and exhaust to their torque; lock wires and clips in place.',
      'Guards on; nothing loose near primary drive, flywheel, chain or fan.',
    ],
  },
  {
    title: 'The first minute',
    items: [
      'Leads on their plugs, never held by hand: the high voltage can hurt, throws you against what turns or is hot, and is a danger to anyone with a pacemaker, who keeps away.',
      'Kick with the instep over the lever and the knee a little bent, thumb on the same side of the bar as the fingers: a kick-back straightens a stiff leg and breaks it.',
      'Half a minute at a small opening, no load. Then stop it with the switch, on purpose, and see that it stops.',
      'Feel near each exhaust port for heat, with the back of the hand and not touching: a cold one does not fire, the hottest one is weak or late.',
      'Look for leaks, listen for air, take out the plugs and look at them side by side.',
      'Let it cool, then run it again for longer. After that check head nuts, gap and timing cold.',
    ],
  },
];
