import {
  againstWords,
  doubtedBefore,
  figuresAtHand,
  openBefore,
  type AgainstFire,
} from '../../calculators/sheet/against.ts';
import { spotFragment } from '../../calculators/sheet/due.ts';
import { wound } from '../../calculators/sheet/clock.ts';
import { beginList, tickLine } from '../../calculators/sheet/edit-log.ts';
import { dayWords, tickedLines } from '../../calculators/sheet/log.ts';
import type { Engine } from '../../calculators/sheet/model.ts';
import { progressOf } from '../../calculators/sheet/progress.ts';
import { activeEngine, withEngine } from '../../calculators/sheet/store.ts';
import { rememberedLengths } from '../opening/preferences.ts';
import { siteAddress } from '../browser/site-address.ts';
import { secondsNow, today } from '../browser/today.ts';
import { KEY } from '../opening/keeps-sheet.ts';
import { Keeper, keptStore } from './keeper.ts';

const boxes = (): HTMLInputElement[] => [
  ...document.querySelectorAll<HTMLInputElement>('input[data-line]'),
];

/** The day of the last tick of each line, by the log. */
const daysOf = ({ log }: Engine): Map<string, string> =>
  new Map(log.flatMap((entry) => (entry.kind === 'ticked' ? [[entry.line, entry.on]] : [])));

const openWords = (open: number): string =>
  open === 1
    ? 'one step of the sheet is not done'
    : `${String(open)} steps of the sheet are not done`;

/** Writes these parts at a place, anew only where they have changed: it is said aloud. */
function putAt(place: Element | null, parts: readonly Node[]): void {
  const next = document.createElement('div');
  next.append(...parts);
  if (place && next.innerHTML !== place.innerHTML) place.replaceChildren(...next.childNodes);
}

const paragraph = (text: string): HTMLParagraphElement => {
  const part = document.createElement('p');
  part.textContent = text;
  return part;
};

const listOf = (lines: readonly HTMLLIElement[]): HTMLUListElement => {
  const list = document.createElement('ul');
  list.append(...lines);
  return list;
};

/** The figures of the engine that belong beside the list, also on paper. */
function showFigures(engine: Engine): void {
  const lines = figuresAtHand(engine, rememberedLengths()).map((words) => {
    const line = document.createElement('li');
    line.textContent = words;
    return line;
  });
  const whose = engine.invented ? `${engine.name}” (invented)` : `${engine.name}”`;
  putAt(document.querySelector('[data-list-figures]'), [
    paragraph(`By the sheet of “${whose}:`),
    listOf(lines),
  ]);
}

/** A step that stands against a first start, with its way there. */
function againstLine(mark: string, { spot, title, asks }: AgainstFire): HTMLLIElement {
  const link = document.createElement('a');
  link.href = siteAddress(`sheet/#${spotFragment(spot)}`);
  link.textContent = title;
  const line = document.createElement('li');
  line.append(`${mark} `, link, `: ${asks}`);
  return line;
}

/** What the order of work has against a first start, in words, each with its way there. */
function showAgainst(engine: Engine): boolean {
  const progress = progressOf(engine);
  const against = againstWords(engine, progress.start.against, rememberedLengths());
  const open = openBefore(engine, progress).length;
  const lines = against.map((each) => againstLine('✕', each));
  const doubted = doubtedBefore(engine, progress, rememberedLengths()).map((each) =>
    againstLine('▲', each),
  );
  putAt(document.querySelector('[data-list-against]'), [
    ...(lines.length === 0
      ? []
      : [
          paragraph(
            `Do not fire “${engine.name}” yet: its sheet has something to prove or to put right first.`,
          ),
          listOf(lines),
        ]),
    ...(doubted.length === 0
      ? []
      : [
          paragraph('Done, but doubted in the sheet: look once more before you start it.'),
          listOf(doubted),
        ]),
    ...(open === 0 ? [] : [paragraph(`In all ${openWords(open)} before the first fire.`)]),
  ]);
  return open > 0;
}

/** Ticks the boxes as the log of the engine in use has them, and says whose it is. */
function show(): void {
  const engine = activeEngine(keptStore());
  const said = document.querySelector<HTMLElement>('[data-list-state]');
  const anew = document.querySelector<HTMLElement>('[data-list-anew]');
  if (!engine || !said || !anew) return;
  const ticked = tickedLines(engine);
  const days = daysOf(engine);
  showFigures(engine);
  const isOpen = showAgainst(engine);
  for (const box of boxes()) {
    const line = box.dataset.line!;
    box.checked = ticked.has(line);
    const day = box.closest('.check')?.querySelector('[data-day]');
    const untrue = isOpen && box.dataset.order !== undefined;
    const words = untrue
      ? 'ticked, but not done: the sheet has steps that are open, as said above'
      : dayWords(days.get(line) ?? '');
    if (day) day.textContent = box.checked ? ` ${words}` : '';
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
