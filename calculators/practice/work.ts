import { bare, type Act, type Bench, type Found, type Note } from './bench.ts';
import type { Engine } from './engine.ts';
import {
  dialShows,
  dialZeroed,
  discShows,
  discZeroed,
  lampWord,
  pointerZeroed,
  rising,
  zeroError,
} from './instruments.ts';

/** A reading as it stands to be written down. */
const reading = (engine: Engine, bench: Bench): Note => ({
  cylinder: bench.cylinder,
  dial: dialShows(engine, bench),
  disc: discShows(engine, bench),
  ...(engine.task === 'disc' && { opposite: discShows(engine, bench, 'B') }),
  standing: bench.pointer - bench.discShift,
  lamp: lampWord(engine, bench),
  way: bench.way,
  rising: rising(engine, bench),
});

/** What is remembered of a set when the lamp was seen to change. */
function foundAgain(engine: Engine, bench: Bench, before: Found | undefined): Found {
  return {
    way: bench.way,
    zeroError: zeroError(engine, bench),
    upright: bench.upright,
    times: (before?.times ?? 0) + (bench.way > 0 ? 1 : 0),
  };
}

/** Most that may be written on the pad. */
const PAD = 40;

/** The bench after an act of the reader. */
export function work(engine: Engine, bench: Bench, act: Act): Bench {
  const acts = bench.acts + 1;
  if (act.act === 'zero') return { ...dialZeroed(engine, bench), acts };
  if (act.act === 'disc-zero') return { ...discZeroed(engine, bench), acts };
  if (act.act === 'pointer-zero') return { ...pointerZeroed(engine, bench), acts };
  if (act.act === 'note') {
    const notes = [...bench.notes, reading(engine, bench)].slice(-PAD);
    return { ...bench, notes, acts, said: `Written on the pad, line ${notes.length}.` };
  }
  const after = { ...bare(engine, bench, act), acts };
  const seen =
    act.act === 'turn' &&
    after.inHole === 'indicator' &&
    lampWord(engine, after) !== lampWord(engine, bench);
  if (!seen) return after;
  const set = after.cylinder;
  const again = foundAgain(engine, after, after.found[set]);
  return { ...after, found: after.found.map((each, i) => (i === set ? again : each)) };
}
