import { beginList, tickLine, wound } from '../../calculators/sheet/edit.ts';
import { dayWords, tickedLines } from '../../calculators/sheet/log.ts';
import type { Engine } from '../../calculators/sheet/model.ts';
import { activeEngine, withEngine } from '../../calculators/sheet/store.ts';
import { secondsNow, today } from '../browser/today.ts';
import { Keeper, KEY, keptStore } from './keeper.ts';

const boxes = (): HTMLInputElement[] => [
  ...document.querySelectorAll<HTMLInputElement>('input[data-line]'),
];

/** The day of the last tick of each line, by the log. */
const daysOf = ({ log }: Engine): Map<string, string> =>
  new Map(log.flatMap((entry) => (entry.kind === 'ticked' ? [[entry.line, entry.on]] : [])));

/** Ticks the boxes as the log of the engine in use has them, and says whose it is. */
function show(): void {
  const engine = activeEngine(keptStore());
  const said = document.querySelector<HTMLElement>('[data-list-state]');
  const anew = document.querySelector<HTMLElement>('[data-list-anew]');
  if (!engine || !said || !anew) return;
  const ticked = tickedLines(engine);
  const days = daysOf(engine);
  for (const box of boxes()) {
    const line = box.dataset.line!;
    box.checked = ticked.has(line);
    const day = box.closest('.check')?.querySelector('[data-day]');
    if (day) day.textContent = box.checked ? ` ${dayWords(days.get(line) ?? '')}` : '';
  }
  said.textContent = `The ticks are kept in the log of “${engine.name}”, each with its day. Begin anew at each first start.`;
  anew.hidden = false;
}

/**
 * Alters the engine in use and keeps it at once, since the page may be left in the next moment; only
 * where no engine is found is the second copy waited for. Says what stands in the way.
 */
async function alter(change: (engine: Engine) => Engine): Promise<void> {
  const keeper = new Keeper();
  const loaded = keeper.load();
  const found = activeEngine(loaded.store);
  let { store } = loaded;
  let problem: string | undefined;
  if (found) {
    ({ problem } = keeper.save(withEngine(store, change(wound(found, secondsNow())))).keeping);
  } else {
    const recovered = await keeper.recover(() => loaded.store);
    if (!recovered) return;
    ({ store } = recovered);
    const engine = activeEngine(store);
    if (!engine) return;
    ({ problem } = keeper.save(withEngine(store, change(wound(engine, secondsNow())))).keeping);
  }
  show();
  const said = document.querySelector('[data-list-state]');
  if (problem !== undefined && said) said.textContent = `The tick is not kept. ${problem}`;
}

/** Keeps the ticks of the list of the first start in the log of the engine in use. */
export function keepTicks(): void {
  show();
  // Before the first tick, so that none has to wait for it.
  const keeper = new Keeper();
  const { store } = keeper.load();
  void keeper.recover(() => store).then((recovered) => recovered && show());
  for (const box of boxes()) {
    box.addEventListener('change', () => {
      const { checked } = box;
      void alter((engine) => tickLine(engine, box.dataset.line!, checked, today()));
    });
  }
  document
    .querySelector('[data-list-anew]')
    ?.addEventListener('click', () => void alter((engine) => beginList(engine, today())));
  addEventListener('storage', ({ key }) => {
    if (key === KEY || key === null) show();
  });
}
