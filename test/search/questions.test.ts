import { describe, expect, it } from 'vitest';
import { makeFinder } from '../../site/search/finder.ts';
import { wholeIndex } from './whole-index.ts';

const find = makeFinder(wholeIndex);
const urls = (question: string): string[] => find(question).map(({ url }) => url);

/** What a builder types, and what answers it: every address within the first three. */
const ANSWERS: readonly (readonly [question: string, ...answers: string[]])[] = [
  // A stranger's walk, in a learner's words.
  ['way up on the piston', 'sheet/#step-pegs'],
  ['which way up does the piston go', 'sheet/#step-pegs'],
  ['which way round does the piston go', 'sheet/#step-pegs'],
  ['what gap should my points be', 'sheet/#step-gap', 'glossary/#points-gap'],
  ['gap changed, timing off?', 'calculators/breaker-cam/'],
  ['degrees before top in mm', 'calculators/piston-position/'],
  ['0.012 inch in mm', 'search/?q=15+thou'],
  ['plug wires mixed up', 'sheet/#step-leads'],
  ['which carburettor jet should I use', 'calculators/jet-set/'],
  ['which jet', 'calculators/jet-set/'],
  ['jet 110', 'calculators/jet-set/', 'sheet/#step-jets'],
  ['how much oil in 5 litres', 'calculators/fuel-and-oil/'],
  ['carb overflows', 'faults/#floods'],
  ['float height', 'sheet/#step-float', 'calculators/float-level/'],
  ['engine screams and will not stop', 'faults/#runs-away', 'first-start/#runaway'],
  ['engine wont stop', 'faults/#runs-away', 'first-start/#runaway'],
  ['revs up by itself', 'faults/#runs-away', 'first-start/#runaway'],
  ['engine screams', 'faults/#runs-away', 'first-start/#runaway'],
  ['can I use old petrol', 'articles/fuel-and-oil/#how-long-it-keeps'],
  ['what is dwell', 'glossary/#dwell-angle'],
  ['coil gets hot', 'glossary/#ignition-coil'],
  ['condenser bad how to tell', 'sheet/#step-condenser'],
  ['how tight should the piston be', 'sheet/#step-clearance', 'calculators/piston-clearance/'],
  ['compression too low', 'sheet/#step-compression'],
  ['air leak test', 'sheet/#step-leak', 'sheet/#step-suction'],
  ['crank seal leaking', 'sheet/#step-leak'],
  ['exhaust port timing', 'calculators/port-timing/'],
  ['squish with solder', 'sheet/#step-squish'],
  ['battery drains', 'calculators/wiring/'],
  ['battery goes flat', 'calculators/wiring/'],
  ['what fuse size', 'calculators/wiring/'],
  ['it kicks back', 'faults/#kicks-back'],
  ['I want to start it tonight', 'first-start/'],
  // Words that found nothing, or something else.
  ['castor oil', 'glossary/#castor-oil'],
  ['deflector piston', 'glossary/#deflector-piston'],
  ['decompressor', 'glossary/#decompressor'],
  ['piston arrow', 'glossary/#piston-arrow', 'sheet/#step-pegs'],
  ['exhaust smokes', 'first-start/#signs'],
  ['points spark blue', 'faults/#poor-spark'],
  ['timing light', 'glossary/#strobe'],
  ['wont idle', 'faults/#will-not-idle'],
  ['one cylinder dead', 'faults/#one-dead'],
  ['hard to start hot', 'faults/#hot-start'],
  ['set timing without dial gauge', 'sheet/#step-timing', 'calculators/degree-disc/'],
  ['cigarette paper', 'glossary/#test-lamp'],
  // The same things asked otherwise.
  ['my bike dies when it gets warm', 'faults/#hot-start'],
  ['engine bogs when I open the throttle', 'faults/#bogs'],
  ['how do I know which way the piston faces', 'sheet/#step-pegs'],
  ['spark plug is wet', 'faults/#plugs'],
  ['how many thou for the points', 'sheet/#step-gap'],
  ['what should the ring gap be', 'sheet/#step-ring-gap', 'glossary/#ring-gap'],
  ['where do I find top dead centre', 'sheet/#step-top', 'calculators/find-tdc/'],
  ['no compression on one side', 'sheet/#step-compression'],
  ['how to clean a jet', 'sheet/#step-clean'],
  ['how long does mixed fuel last', 'articles/fuel-and-oil/#how-long-it-keeps'],
  ['points keep burning', 'faults/#poor-spark', 'sheet/#step-condenser'],
  ['how to check crank seals', 'sheet/#step-leak', 'sheet/#step-suction'],
  ['which plug lead goes to which cylinder', 'sheet/#step-leads'],
  ['carbs out of sync', 'sheet/#step-slides', 'calculators/slide-balance/'],
  ['throttle sticks open', 'faults/#runs-away', 'sheet/#step-cables'],
  ['how do I stop it', 'first-start/#runaway', 'sheet/#step-stop'],
  ['does it matter which way round the coil is connected', 'sheet/#step-polarity'],
  ['piston slap', 'faults/#metal-noise', 'sheet/#step-clearance'],
  ['blue smoke', 'first-start/#signs'],
  ['piston stuck in the bore', 'sheet/#step-oil'],
  ['how to make a breaker plate', 'articles/making-a-breaker-plate/'],
  ['what does 40:1 mean', 'glossary/#oil-ratio'],
  ['how long will my battery last', 'calculators/wiring/'],
  ['does a thicker base gasket change timing', 'calculators/port-timing/'],
  ['how much play in the throttle cable', 'sheet/#step-cables'],
  ['it vibrates badly', 'faults/#uneven'],
  ['engine runs but wont rev', 'faults/#short-of-power'],
  ['is it running lean', 'glossary/#weak'],
];

describe('a question in a builder’s own words', () => {
  it.each(wholeIndex.documents.map(({ title, url }) => [title, url]))(
    '“%s” finds its own: %s',
    (title, url) => {
      expect(urls(title).slice(0, 3)).toContain(url);
    },
  );

  it.each(ANSWERS)(
    '“%s” finds what answers it among the first three: %s',
    (question, ...answers) => {
      const found = urls(question).slice(0, 3);
      for (const answer of answers) expect(found, found.join(' ')).toContain(answer);
    },
  );
});
