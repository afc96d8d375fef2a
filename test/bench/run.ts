import { coldBuild, type ColdBuild } from './cold-build.ts';

/** Calculators that alone are timed, as told by `only=wiring,jet-set`; all where none is named. */
const only = process.argv
  .flatMap((name) => (name.startsWith('only=') ? name.slice('only='.length).split(',') : []))
  .filter(Boolean);

/** The parts of the benchmark. */
const parts = {
  bytes: async () => {
    const { bytes } = await import('./bytes.ts');
    await bytes(await built());
  },
  times: async () => {
    const { times } = await import('./times.ts');
    await times(await built(), only);
  },
  compare: async () => {
    const { compare } = await import('./compare/compare.ts');
    await compare((await built()).dist);
  },
  lighthouse: async () => {
    const { lighthouse } = await import('./lighthouse.ts');
    await lighthouse((await built()).dist);
  },
} as const satisfies Record<string, () => Promise<unknown>>;

await using stack = new AsyncDisposableStack();
let building: Promise<ColdBuild> | undefined;
const built = (): Promise<ColdBuild> => (building ??= buildOnce());
async function buildOnce(): Promise<ColdBuild> {
  const cold = await coldBuild();
  stack.defer(cold.remove);
  return cold;
}

const asked = process.argv.slice(2).filter((name) => !name.startsWith('only='));
const unknown = asked.filter((name) => !Object.hasOwn(parts, name));
if (unknown.length > 0) {
  console.error(
    `The benchmark has no part “${unknown.join('”, “')}”. Its parts: ${Object.keys(parts).join(', ')}.`,
  );
  process.exitCode = 1;
} else {
  for (const [name, part] of Object.entries(parts)) {
    if (asked.length === 0 || asked.includes(name)) await part();
  }
}
