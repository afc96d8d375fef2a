import { coldBuild } from './cold-build.ts';

/** The parts of the benchmark. The first builds the site for itself, since it times that. */
const parts = {
  site: () => import('./bench.ts'),
  compare: async () => {
    const { compare } = await import('./compare/compare.ts');
    await compare(await built());
  },
  lighthouse: async () => {
    const { lighthouse } = await import('./lighthouse.ts');
    await lighthouse(await built());
  },
} as const satisfies Record<string, () => Promise<unknown>>;

await using stack = new AsyncDisposableStack();
let building: Promise<string> | undefined;
const built = (): Promise<string> => (building ??= buildOnce());
async function buildOnce(): Promise<string> {
  const { dist, remove } = await coldBuild();
  stack.defer(remove);
  return dist;
}

const asked = process.argv.slice(2);
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
