import { activeEngine } from '../../calculators/sheet/store.ts';
import { rememberedLengths, watchLengths } from '../opening/preferences.ts';
import { keptStore } from '../sheet/keeper.ts';
import { contradiction, ownLines } from './own-lines.ts';

/** Writes the figures of the engine in use beside each action; nothing where no sheet is kept. */
export function showOwnFigures(): void {
  const engine = activeEngine(keptStore());
  if (!engine) return;
  const lengths = rememberedLengths();
  const whose = engine.invented ? `${engine.name} (invented)` : engine.name;
  for (const place of document.querySelectorAll<HTMLElement>('[data-own]')) {
    const { step = '', figures = '', measured } = place.dataset;
    const lines = ownLines(engine, step, figures.split(' '), lengths);
    const name = document.createElement('b');
    name.textContent = `By the sheet of ${whose}: `;
    const missing = 'its figure is not entered yet.';
    place.replaceChildren(name, lines.length === 0 ? missing : `${lines.join('. ')}.`);
    const against = contradiction(engine, step, measured);
    if (against !== undefined) {
      const warning = document.createElement('strong');
      warning.textContent = against;
      place.append(' ', warning);
    }
    place.hidden = false;
  }
}

watchLengths(showOwnFigures);
