/** Part of the list to be ticked before the first start. */
export interface ListPart {
  readonly title: string;
  readonly items: readonly string[];
}

/** The line that the engine sheet can gainsay. */
export const ORDER_DONE =
  'Every step of the order of work before the first fire is done, and none is to be checked again.';

export const checklist: readonly ListPart[] = [
  {
    title: 'The place',
    items: [
      'Outdoors, away from doors and windows. Exhaust holds carbon monoxide, which has no smell and kills; a garage with its door open is not outdoors.',
      'No flame, heater, grinder or cigarette within reach of petrol vapour, which is heavier than air and runs along the ground.',
      'The machine stands so that it cannot roll, fall or drive off: driven wheel clear of the ground, gear in neutral, nobody in line with wheel or chain. A stationary engine is bolted down, its belt or load off.',
      'Neighbours, children and animals warned and kept back.',
    ],
  },
  {
    title: 'At hand',
    items: [
      'Extinguisher for burning liquids (class B: foam, powder or carbon dioxide), its seal whole, where you can reach it without passing the engine. Never water on burning petrol.',
      'Ear protection on, eye protection on, boots that hold the ankle, gloves that are not loose.',
      'A helper who knows the switch, the fuel tap and the extinguisher, and can call for help.',
      'A flat rigid board for each inlet, to stop an engine that runs away (revs by itself and does not heed the twistgrip). No glove and no rag: either can be drawn in.',
      'Thermometer or a wet brush for the heads, plug spanner, a dry spare set of plugs, rag in a lidded can.',
    ],
  },
  {
    title: 'Ways to stop, all proved',
    items: [
      'The switch: every plug in its cap, on bare metal of the engine and away from the plug holes, fuel shut. Turn the engine over: each plug sparks, and the spark stops when the switch is thrown.',
      'The air: every slide, or what else shuts off the air, falls shut by itself, with the bars turned both ways where it has any, and the board for each inlet has been tried in its place.',
      'The load: pull the clutch lever (the drive is free), top gear, the brake of the driven wheel hard on, let the clutch lever out (the drive takes hold). Rehearsed with the engine off, and that brake holds the wheel. An engine without a clutch cannot be stalled so: switch and board are then all there is, each proved twice before this is ticked.',
      'The fuel tap shuts. It is the last way only: a full bowl runs an engine on for longer than you want to wait.',
    ],
  },
  {
    title: 'The engine',
    items: [
      ORDER_DONE,
      'The crankcase is empty. Plugs out, fuel and ignition off, drain screw out where there is one; turn it over by hand until nothing more is blown out of the plug holes, faces and sparks away from them. Oil or petrol that fills a cylinder bends a rod.',
      'It turns over by hand through two full turns, plugs out, with nothing that touches or tightens. Forwards: turned backwards by its nut or bolt, a rotor may come undone.',
      'Plugs with a thread as long as that of the head: a longer one meets the piston. Of the grade the maker gives, not colder ones: a cold plug fouls in a freshly oiled crankcase.',
      'Gearbox oil in, and coolant where water cools it. In a petroil engine, one that is oiled by oil mixed into its petrol: the oil measured and in the fuel. With an oil pump: its line bled, and the pump seen to deliver.',
      'No fuel drips anywhere with the tap open for five minutes. Then the tap shut until you start.',
      'Nuts of head, barrel, carburettors and exhaust to their torque; lock wires and clips in place.',
      'Guards on; nothing loose near primary drive, flywheel, chain or fan.',
    ],
  },
  {
    title: 'The first minute',
    items: [
      'Leads on their plugs, never held by hand: the high voltage can hurt, throws you against what turns or is hot, and is a danger to anyone with a pacemaker, who keeps away.',
      'Kick with the instep over the lever and the knee a little bent, thumb on the same side of the bar as the fingers: a kick-back straightens a stiff leg and breaks it.',
      'By a rope or a handle: never wound round the hand, thumb on the same side as the fingers, pulled up from compression and never pushed down. The handle comes off by itself as the engine fires: its dog and shaft are clean and oiled, and you let go at the first firing. Common practice, unless the maker says otherwise.',
      'Half a minute at a small opening, no load. Then stop it with the switch, on purpose, and see that it stops.',
      'Feel near each exhaust port for heat, with the back of the hand and not touching: a cold one does not fire; the hottest one is weak (lean: too little petrol for its air) or fires late.',
      'A strobe makes what turns look still: hands, hair, sleeves and leads away from it. A meter at live points sees several hundred volts: one rated for that, and fingers off.',
      'Look for leaks, listen for air. Take the plugs out and lay them side by side in the order of the cylinders: a wet one did not fire, one that differs points to its cylinder. Their colour is read later, after a run under load.',
      'Let it cool, then run it again for longer. After that check head nuts, gap and timing cold.',
    ],
  },
];
