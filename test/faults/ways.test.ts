import { expect, it } from 'vitest';
import { symptoms } from '../../content/faults/symptoms.ts';
import { everyAnswer, isAction, type Answer } from '../../content/faults/types.ts';

/**
 * Where an answer leads, by hand from what its test tells of an engine: words of the question, then the
 * name of the action, or words of the question that follow, for yes and for no. Nothing stands where a
 * way goes on to what is looked at next in any case.
 */
const ways: readonly (readonly [ask: RegExp, yes: RegExp | undefined, no: RegExp | undefined])[] = [
  // Spark.
  [/volts at the coils’ feed/, undefined, /^feed$/],
  [/stop wire off the points/, /^cut-out$/, undefined],
  [/volts at the insulated contact fall/, /lead alone, without its cap/, /points open\?/],
  [/lead alone, without its cap/, /^lead$/, undefined],
  [/its figure, and a reading from lead to terminal/, /^condenser$/, /^coil$/],
  [/volts at the contact with the points open/, /^contacts$/, undefined],
  [/come back with the set’s wire taken off the coil/, undefined, /^coil-open$/],
  [/the condenser alone is off/, /^condenser-short$/, /^insulation$/],
  [/when plug and cap are changed/, /with the plug alone/, /feed of the dead coil/],
  [/go along with the plug alone/, /^plug$/, /^lead$/],
  [/feed of the dead coil/, undefined, /^feed$/],
  [/wires from two sets to their coils/, undefined, /^coil$/],
  [/open and shut, clean, to its gap/, undefined, /^gap$/],
  [/spark with another condenser/, /^condenser$/, /^insulation$/],
  [/good with a new dry plug/, /^plug$/, undefined],
  [/flashing at the contacts\?/, /^condenser$/, undefined],
  [/flashing at the contacts while hot/, /^condenser$/, /^hot-coil$/],
  [
    /its full volts while the points are shut/,
    /gap and dwell/,
    /between the contact and the engine/,
  ],
  [
    /gap and dwell agree|points gaps? (?:are )?at (?:its|their) figure|Are the points gaps/,
    undefined,
    /^gap$/,
  ],
  [/its primary figure, cold/, undefined, /^coil$/],
  [/straight from the lead/, /^lead$/, /^polarity$/],
  [/lost between the contact and the engine/, /^contacts$/, undefined],
  [/0\.2 V lost between plate and battery/, /^earth$/, /^feed$/],
  [/fat and blue-white/, undefined, /^poor(?:-dry)?$/],
  [/spark as its own piston comes just before/, /^(?:timing|flooded)$/, /^leads$/],
  [/own piston’s top, by the figure/, undefined, /^moment$/],
  [/good while it is hot/, /^leak-hot$|drain while hot/, /^hot-coil$|flashing/],
  [/spark as well as (?:its neighbours|the others)/, undefined, /^(?:spark|plug)$/],
  [/each lead go to the cylinder whose set/, /^slow-kick$/, /^leads$/],
  [/switch stop/, undefined, /^cut-out$/],
  [/its plug is changed with a neighbour’s/, /^plug$/, undefined],
  [/is the set clear of earth\?/, undefined, /^insulation$/],
  [/both its windings, cold/, undefined, /^coil$/],
  [/key whole, and the rotor fast/, undefined, /^rotor-key$/],
  [/lead spark by itself/, /^lead$/, /^magnet$/],
  // Timing.
  [/stand at zero at the true top/, undefined, /^top$/],
  [/earlier than (?:the|its) figure/, /^early$/, undefined],
  [/later than its figure/, /^late$/, undefined],
  [/gap and timing (?:of every cylinder )?at their figures/, /^leak-small$|float height/, /^late$/],
  [/fire at the same figure/, /^float$/, /^spread$/],
  [/timing at (?:its|the) figure/, /^jets-all$|main jet/, /^timing(?:-all)?$/],
  [/only when it turns fast/, /^bounce$/, undefined],
  // Fuel and air.
  [/plugs wet with fuel/, /once it has been blown dry/, /bowl’s drain/],
  [/once it has been blown dry/, /^flooded$/, undefined],
  [/fuel run at|fuel at the bowl’s drain/, undefined, /^no-fuel$/],
  [/bowls? (?:stay full|fill as fast)/, /^hot-plug$|leak test|opened by hand/, /^no-fuel$/],
  [/fuel mixture down the plug hole/, /crankcase hold/, /fat and blue-white/],
  [
    /leak test|crankcase hold its pressure|under pressure and under suction/,
    /^(?:compression|main-jet|clearance)$|\?$/,
    /^air-leak$/,
  ],
  [/wide open and the choke off/, /choke come off/, /good while it is hot/],
  [/choke (?:come off fully|fully off)/, /^float$|\?$/, /^choke$/],
  [/revs hang, or rise/, /slide fall on its stop/, /stall once it is warm/],
  [/stall once it is warm/, /choke come off/, /idle screws a turn further in/],
  [/idle screws a turn further in/, /slides stand open alike/, /air screw half a turn change/],
  [/slide fall on its stop/, /^air-leak$|\?$/, /^slide$/],
  [/slides together|slides stand open alike|reach full opening/, /^air-screw$|\?$/, /^slides$/],
  [/slide open before the others/, /^slides$/, undefined],
  [/air screw half a turn change/, undefined, /^pilot$/],
  [/air screws out half a turn help/, /^air-screw$/, /^float$/],
  [/air and idle screws alike/, undefined, /^air-screw$/],
  [/fuel level what it should be|float height at its figure/, undefined, /^float$/],
  [/float height of that carburettor/, /^plug$/, /^float-one$/],
  [/plug of the cold cylinder wet/, /its plug is changed/, /bowl fill/],
  [/slide is opened by hand/, /^pilot$/, undefined],
  [/get hot alike in the first minute/, undefined, /^cold-pilot$/],
  [/better with the choke a little on/, /bowl stay full/, /slides together/],
  [/just off idle/, /^pilot$/, undefined],
  [/between an eighth and a quarter/, /cutaway$/, /^rich-clip$|three quarters/],
  [/below three quarters/, /^clip$/, /^main-jet$/],
  [/only at small openings or without load/, /clear by a quarter/, /choke fully off/],
  [/clear by a quarter of the opening/, /^usual$/, undefined],
  [/the same on every cylinder/, /quarter and three quarters/, /of that carburettor/],
  [/between a quarter and three quarters/, /^clip$/, undefined],
  [/air filter clean/, /^large-jet$/, /^air-filter$/],
  [/main jet and its needle clip like|main jets the size/, undefined, /^main-jet$/],
  [/fuel fresh|oil in the fuel/, undefined, /^fuel$/],
  [/tapped lightly/, /^grit$/, undefined],
  [/fuel inside the float/, /^sunk-float$/, undefined],
  [/hold the head of fuel/, /^head$/, /^valve$/],
  [/Is it petrol/, /overflow/, /smoke that goes on/],
  [/out of the overflow/, /^valve$/, /^joint$/],
  // The engine itself.
  [/Has it reeds/, /^reed$/, /^pilot$/],
  [/compression alike/, /^exhaust-port$/, /^compression$/],
  [/run under load that was cut off/, undefined, /^read-anew$/],
  [/white, blistered, or with grey specks/, /earlier than/, /a plug wet/],
  [/Is a plug wet/, /spark as well/, /black and dry/],
  [/dry away from the paper/, /^float$/, /^oil$/],
  [/black and dry/, undefined, /^right$/],
  [/one cylinder only/, /^clip$|before the others/, /^large-jet$|oil in the fuel/],
  [/look white, or is the head crusted/, /^hot-plug$/, undefined],
  [/fins and cowls clean/, undefined, /^cooling$/],
  [/squish at its figure/, /^(?:high-compression|mains)$/, /^squish(?:-small)?$/],
  [/through two turns, plugs out/, undefined, /^squish$/],
  [/play at a big end/, /^play$/, undefined],
  [/worst cold/, /^clearance$/, undefined],
  [/does the gearbox lose oil/, /^gear-seal$/, undefined],
  [/black and wet at the joint/, /^gasket$/, /^air-leak$/],
];

const nameOf = (answer: Answer): string => (isAction(answer) ? answer.id : answer.ask);

it.each(symptoms.map((symptom) => [symptom.id, symptom] as const))(
  '%s: yes and no lead each where the test of the question points',
  (_, symptom) => {
    for (const { answer } of everyAnswer(symptom)) {
      if (isAction(answer)) continue;
      const found = ways.filter(([ask]) => ask.test(answer.ask));
      expect(found, `one row of \`ways\` in this file for: ${answer.ask}`).toHaveLength(1);
      const [, yes, no] = found[0]!;
      for (const [next, to] of [
        [answer.yes, yes],
        [answer.no, no],
      ] as const) {
        if (to === undefined) expect(isAction(next), `${answer.ask} ${nameOf(next)}`).toBe(false);
        else expect(nameOf(next), answer.ask).toMatch(to);
      }
    }
  },
);
