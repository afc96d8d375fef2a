import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { articles } from './prose.ts';

/** Every text that a reader meets: its path and what it says, without the comments of code. */
const texts = ['content', 'calculators', 'site/pages'].flatMap((root) => {
  const folder = new URL(`../../${root}/`, import.meta.url);
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.(?:mdx|yaml|tsx?|astro)$/.test(file))
    .map((file) => ({
      path: `${root}/${file}`,
      text: readFileSync(new URL(file, folder), 'utf8')
        .replace(/\/\*[\s\S]*?\*\//g, ' ')
        .replace(/^\s*\/\/.*$/gm, ' '),
    }));
});

/** What no text may say, with the reason. */
const never: readonly (readonly [words: RegExp, why: string])[] = [
  [/\bclutch in\b/i, 'means the lever pulled to one reader and let out to another'],
  [/\bto reckon with\b/i, 'is not plain English'],
  [
    /\bplug on the engine\b/i,
    'reads as screwed in: say out, in its cap, earthed away from the holes',
  ],
  [/\bmeasure it warm\b|at the temperature at which it will work/i, 'a coil is compared cold'],
  [/\bfor 600 V\b/i, 'a condenser sees up to 800 V on the site’s own sum: 1000 V DC'],
  [
    /\bblue spark(?:s|ing)? (?:at|as|from) the(?:y| points| contacts)/i,
    'blue is the good colour at the plug, and the bad one at the contacts',
  ],
  [/\b(?:screws?|held|hold)\b[^.]*\bthrough parts that will be cut away/i, 'the blank flies'],
  [/\bholes across from each other\b/i, 'three sets do not stand so'],
  [/\bstart a degree or two late\b/i, 'late of what? Say the figure, in degrees and mm'],
  [/\bcolder plug\b(?! fouls)/i, 'a colder plug fouls in a freshly oiled crankcase'],
  [/\bglove on a stick\b/i, 'an inlet can draw it in: a flat, rigid board'],
  [/\bboth brakes\b/i, 'the brake of the driven wheel is the one that stalls the engine'],
  [/\bslides (?:come )?before (?:the )?jets\b/i, 'the sheet measures the jets before the slides'],
  [
    /\d [^.]{0,40}\b(?:is|are) usual\b(?![^\n]{0,90}\(common practice\))/i,
    'a figure of the trade is marked as common practice where it stands',
  ],
  [/\bhot and weak\b/i, '"weak" means lean here: say short of power'],
  [/\bone forum\b|\bforums? says?\b/i, 'a forum is no source'],
  [/millimetres along the slot divided by its radius are degrees/i, 'those are radians'],
  [/\bhalf of after less before\b/i, 'has to be read twice: (after − before) / 2'],
  [/\bplug leads off\b/i, 'an engine that is turned with a lead open to nothing spoils its coil'],
  [/\bacross the pin\b/i, 'is read as along it: a piston is measured square to its pin'],
  [/\bthird of a pilot jet\b/i, 'the film of the article takes a fifth'],
  [
    /\ba cast one (?:less|wants less)|less for a cast one\.|a cast one\.'/i,
    'tight seizes: only one with much silicon may have less',
  ],
  [/\ball else in the chapter holds\b/i, 'a disc valve is not timed evenly about the top'],
  [/\bmore than a minute or two\b/i, 'the sheet lets a standing engine run for two or three'],
  [
    /\bwider gap(?: opens the points| opens| fires)? later\b(?!, which no cam does)|\bnarrower (?:gap|one)(?: opens| fires)? earlier\b/i,
    'a wider gap opens earlier: the lobe has less far to lift',
  ],
  [/\bheel wears,? and fires earlier\b/i, 'the gap closes as the heel wears, and opens later'],
  [
    /\blater(?: when it is moved)?,? against the (?:way|direction)|\bearlier(?: when it is moved)?,? (?:the way|with the cam)|(?<!against )\bthe way the cam turns,?(?: which is| is| \()? ?earlier|against the way the cam turns,?(?: which is| is| \()? ?later/i,
    'against the way the cam turns is earlier',
  ],
  [
    /\b(?:up|up the needle)(?:,? which)? is richer\b|\b(?:down|down the needle)(?:,? which)? is (?:leaner|weaker)\b/i,
    'a clip further up lets the needle down, which is leaner',
  ],
  [
    /\bmore cutaway(?:,? which)? is (?:richer)|\bless cutaway(?:,? which)? is (?:weaker|leaner)|\bless is weaker\b/i,
    'more cutaway lets more air under the slide, which is weaker',
  ],
  [/\bOut is richer\b/, 'an air screw that is turned out lets in more air'],
  [/\b(?:centre|it) (?:of the plug )?should be positive\b/i, 'a plug fires more readily negative'],
  [
    /\bother sign than the earthed pole\b|\bof the opposite sign\b/i,
    'the same sign goes to the points',
  ],
  [/\bEarly timing burns in the pipe\b/i, 'late timing does'],
];

describe('no text says', () => {
  it.each(never)('%s', (words) => {
    expect(texts.filter(({ text }) => words.test(text)).map(({ path }) => path)).toEqual([]);
  });
});

/** What an article must say, since the act it teaches needs it. */
const always: readonly (readonly [slug: string, ...said: RegExp[]])[] = [
  [
    'where-the-piston-is',
    /larger figure is an \*\*earlier\*\* spark/,
    /offset is \*\*\+\*\* on this site when/,
    /keep fingers out of the ports/i,
    /nut or bolt that holds the rotor/,
  ],
  [
    'finding-top-dead-centre',
    /never turn the engine backwards by a nut or bolt/i,
    /never with the starter/,
    /\*\*What \+ means here\.\*\*/,
    /\*take it off\* a reading before the zero/,
    /forwards is the way the engine turns when it runs/i,
  ],
  ['what-a-degree-is-worth', /nut or bolt that holds the/, /fewer millimetres and fewer degrees/],
  [
    'making-a-breaker-plate',
    /never hold the work by a part that will be cut away/i,
    /rim, the bore and the seat without letting go/,
    /balance it/i,
    /light first cuts/,
    /no gloves/i,
    /Insulation tester\*\*[^\n]*at 500 V/,
    /coil, condenser and all leads disconnected/,
    /for every vee, measure from top to top/,
    /out after a whole turn/,
    /aluminium alloy of \{mm\(leastEngagement\(4, 'aluminium'\)\)\} or more for M4/,
  ],
  [
    'needles-and-jets-by-area',
    /flat strip/,
    /the same wear is \{fixed\(wornBy \/ aGroove, 1\)\}/,
    /no clip mends it here/,
  ],
  [
    'stripping-and-cleaning',
    /a nylon bristle or a strand of soft copper, pushed and never turned/,
    /Heat that soaks through does little/,
    /1 to 1\.5 turns out \(common practice\)/,
  ],
  ['fuel-and-oil', /Half of the petrol into the clean can/, /Never put oil and petrol separately/],
  [
    'which-circuit-at-which-throttle',
    /where its taper starts up to \{clipUntil\} per cent of throttle, and no further/,
    /Start 1 to 1\.5 turns out \(common practice\)/,
    /about 0\.5 to 1 mm \(common practice\)/,
  ],
  ['squish-and-compression', /0\.8 to 1\.2 mm, about/],
  [
    'clearances',
    /From 1\.0 to 1\.5 thousandths of the bore is common practice/,
    /From 0\.3 to 0\.5 per cent of the bore is common practice/,
  ],
  ['float-height-and-fuel-level', /2 to 6 mm below the joint/],
  ['proving-a-mixed-engine', /7 kPa/],
  [
    'how-the-points-make-the-spark',
    /all plugs out, each plug in its cap and earthed on bare metal away from the plug holes/,
    /rated for 1000 V/,
    /At the \*\*contacts\*\* a bright blue-white flash is \*bad\*/,
    /pacemaker/,
  ],
  [
    'gap-dwell-and-timing',
    /protective film/,
    /white spirit burns/i,
    /meet full face/,
    /check the spring/i,
    /behind a flywheel/i,
    /heel hangs clear of the cam/,
    /kicks back/,
  ],
  [
    'setting-several-cylinders',
    /does the reverse/,
    /rated for 1000 V/,
    /a strobe makes moving parts look still/i,
    /never turn the engine backwards by a nut or bolt/i,
    /\*against\* the direction in which the cam turns/,
    /exhaust gas kills/,
  ],
  [
    'coils-and-condensers',
    /\*\*cold\*\*, with coil and workshop at about 20 °C/,
    /1000 V DC or more/,
    /\*\*Where it goes\.\*\*/,
    /0\.4 to 0\.6 mm/,
    /bright, steady, blue-white flashing/,
    /exhaust gas kills/,
  ],
];

it.each(always)('%s says what its work needs', (slug, ...said) => {
  const { text } = articles.find((article) => article.slug === slug)!;
  const plain = text.replace(/<\/?em>/g, '*').replace(/<\/?Term\b[^>]*>/g, '');
  for (const words of said) expect(plain).toMatch(words);
});

/** What a calculator must say: which way a sign goes, and what hurts whoever does the opposite. */
const told: readonly (readonly [folder: string, ...said: RegExp[]])[] = [
  [
    'position/find-tdc',
    /Add it, with its sign, to a reading past zero; take it, with its sign, off a reading before zero/,
    /\+ the way the engine turns, − against it/,
    /lies this far after the true top \(− before\)/,
    /Positive stop: turn the crank backwards until the piston meets the stop from the other side/,
    /Never turn an engine backwards by the nut or bolt of its rotor/,
    /by hand and never with the starter/,
    /plugs out, the ignition off and the fuel away before you turn the crank/,
  ],
  [
    'position/piston-position',
    /set too early kicks back/,
    /take the later one/,
    /a leaning plunger moves further than the piston/,
    /Plugs out, their leads earthed, ignition off and fuel shut before/,
  ],
  [
    'points/coil-charge',
    /An iron core near its limit has less, so that the last of the current comes sooner/,
    /left on with the points shut get hot enough to burn/,
    /pacemaker keep away/,
  ],
  ['points/breaker-cam', /Ignition off and plug out while you set/, /Do not leave the ignition on/],
  [
    'points/plate-setting',
    /set too early kicks back/,
    /a plug lead not earthed gives a shock/,
    /rated for 1000 V/,
  ],
  [
    'points/wiring',
    /a British one may have half as much copper again/,
    /Never leave the ignition on with the engine still/,
    /within a hand’s breadth of its live post/,
    /Never fit a larger fuse, or foil/,
    /Undo the earth lead first and do it up last/,
    /Copper has 4 per cent more resistance for 10 °C more/,
  ],
  [
    'carburettors/needle-and-clip',
    /A lower groove holds the needle higher: richer/,
    /when the clip goes one groove lower, at this throttle; \+ is richer/,
    /(?:\+ is a larger ring, which is richer[\s\S]*){2}/,
    /one that sticks open runs the engine away/,
  ],
  [
    'carburettors/air-and-jet',
    /Too small a jet starves it of both, and the engine seizes/,
    /Too small a jet seizes the engine: the larger one first/,
    /the larger jet first\./,
  ],
  [
    'carburettors/jet-set',
    /Flow jets with water or paraffin, never with petrol/,
    /Never push a drill, a needle or a steel wire through/,
    /Begin with the larger of two sets/,
    /\(\+\slarger\)/,
  ],
  [
    'carburettors/float-level',
    /\+ towards the needle, which lowers the fuel/,
    /negative above the face/,
    /Never bend it by pressing the float against the needle/,
    /vapour is heavier than air/,
    /A float that does not shut the valve fills the cylinder/,
  ],
  [
    'carburettors/slide-balance',
    /\+ lifts the slide/,
    /to turn all cable adjusters in alike/,
    /with a leak or a worn piston shows less vacuum at the same opening/,
    /Take every shank out, and count them/,
    /only in the open air, since the exhaust holds carbon monoxide/,
    /A slide held open runs the engine away/,
  ],
  [
    'geometry/squish-velocity',
    /A smaller clearance for the sake of this figure lets crown and head meet/,
    /A comparison between like heads and not a prediction/,
    /make the real velocity smaller/,
  ],
  [
    'geometry/time-area',
    /the exhaust’s must be the higher one/,
    /A comparison between like engines and not a prediction/,
  ],
  [
    'geometry/compression',
    /What meets at a hand’s push breaks at speed/,
    /More compression than the fuel and the cooling bear brings knocking/,
    /where there is none, begin low/,
  ],
  [
    'geometry/piston-clearance',
    /A piston that seizes locks the wheel/,
    /never with a flame beside petrol/,
  ],
  [
    'geometry/port-timing',
    /a thinner one brings the head down to the piston by as much/,
    /Metal cut from a port cannot be put back/,
    /Chamfer every edge/,
  ],
  ['plate/degree-disc', /take it off before the engine is started/],
  ['plate/firing-order', /Keep fingers away from webs/, /stand out of the plane of the flywheel/],
  ['plate/hole-pattern', /may hold asbestos\. Never scrape, sand, wire-brush or blow one off dry/],
  [
    'plate/plate-layout',
    /never with fingers or an air line/,
    /no gloves, no loose sleeves/,
    /take the chuck key out/,
    /Clamp thin plate on wood before you drill it/,
  ],
  [
    'start/fuel-and-oil',
    /vapour is heavier than air/,
    /can on the ground and the nozzle touching it/,
    /Too little oil seizes the engine/,
    /Never a drinking bottle/,
  ],
];

it('of every calculator something is told', () => {
  const own = texts.flatMap(({ path }) => {
    const [, folder] = /^calculators\/(.*)\/calculator\.tsx$/.exec(path) ?? [];
    return folder ?? [];
  });
  expect(
    told.map(([folder]) => folder).sort(),
    'a calculator has a row of `told` in this file: its signs, and the cautions of its work',
  ).toEqual(own.sort());
});

it.each(told)('%s says what its work needs', (folder, ...said) => {
  const own = texts.filter(({ path }) => path.startsWith(`calculators/${folder}/`));
  const all = own.map(({ text }) => text).join('\n');
  for (const words of said) expect(all).toMatch(words);
});

/** The first numbered act that turns the engine, and what is to be off and out before it. */
it('warns before the first act that turns the crank', () => {
  const turning = articles.flatMap(({ slug, text }) => {
    const act =
      /^ *\d+\. [^\n]*\b[Tt]urn (?:the (?:crank|engine|piston)|(?:it )?forwards|by hand)/m.exec(
        text,
      );
    return act ? [{ slug, before: text.slice(0, act.index + act[0].length) }] : [];
  });
  expect(turning.length).toBeGreaterThan(5);
  for (const { slug, before } of turning) {
    expect(before, slug).toMatch(/\bplugs?\b[^.]* out\b|\bPlugs?<\/Term> out\b/i);
  }
});

/** Turning back, and what it must not be done by, in one article. */
it('warns wherever an engine is turned backwards', () => {
  const turned = articles.filter(({ text }) =>
    /\bturn (?:it )?back(?:wards)?\b|go back a quarter/i.test(text),
  );
  expect(turned.length).toBeGreaterThan(2);
  for (const { slug, text } of turned) expect(text, slug).toMatch(/nut or bolt that holds/);
});
