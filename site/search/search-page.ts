import { hyphenedApart } from '../browser/hyphened.ts';
import { pageAnswers } from '../opening/answering.ts';
import { makeFinder } from './finder.ts';
import type { Found, SearchIndex } from './found.ts';

const MOST = 20;
const KINDS: Readonly<Record<Found['kind'], string>> = {
  calculator: 'Calculator',
  article: 'Article',
  term: 'Glossary',
  practice: 'Practice bench',
  fault: 'Fault finder',
  step: 'Step of the job',
  page: 'Page',
};

const form = document.querySelector<HTMLFormElement>('#search-form')!;
const box = form.querySelector<HTMLInputElement>('input[name="q"]')!;
const told = document.getElementById('search-conversion')!;
const state = document.getElementById('search-state')!;
const list = document.getElementById('search-list')!;
const often = document.getElementById('search-often')!;
const home = document.querySelector<HTMLLinkElement>('link[rel="start"]')!.href;

let finder: Promise<(question: string) => Found[]> | undefined;
const ready = (): Promise<(question: string) => Found[]> =>
  (finder ??= fetch(new URL('search-index.json', home))
    .then((answer) => {
      if (!answer.ok) throw new TypeError(answer.statusText);
      return answer.json() as Promise<SearchIndex>;
    })
    .then(makeFinder));

function item({ url, kind, title, purpose }: Found): HTMLLIElement {
  const line = document.createElement('li');
  const link = document.createElement('a');
  link.href = new URL(url, home).href;
  link.append(
    ...hyphenedApart(title).map((piece, i) => {
      if (i % 2 === 0) return piece;
      const whole = document.createElement('one-line');
      whole.textContent = piece;
      return whole;
    }),
  );
  const below = document.createElement('span');
  // No line's end parts a figure from its unit.
  below.textContent = `${KINDS[kind]}. ${purpose}`.replaceAll(/(\d) (?=\S{1,3}\b)/g, '$1\u00A0');
  line.append(link, below);
  return line;
}

/** Tells a figure of the question in other units. */
async function tellFigure(question: string): Promise<void> {
  const text = /\d/.test(question)
    ? (await import('./conversion.ts')).conversionOf(question)
    : undefined;
  if (box.value === question) told.textContent = text ?? '';
}

async function show(): Promise<void> {
  const question = box.value;
  // Without its part the list is shown all the same.
  tellFigure(question).catch(() => undefined);
  often.hidden = question.trim() !== '';
  if (question.trim() === '') {
    list.replaceChildren();
    state.textContent = '';
    return;
  }
  try {
    const find = await ready();
    if (box.value !== question) return;
    const found = find(question);
    list.replaceChildren(...found.slice(0, MOST).map(item));
    const count = found.length === 1 ? '1 thing found' : `${found.length} things found`;
    state.textContent =
      found.length === 0
        ? 'Nothing found. Try another word for it, or a shorter one.'
        : `${count}${found.length > MOST ? `; the best ${MOST} are shown` : ''}.`;
  } catch (error) {
    finder = undefined;
    // What could not be fetched is a TypeError, by the Fetch standard; anything else is a fault.
    if (!(error instanceof TypeError)) {
      reportError(error);
      state.textContent =
        'The search has a fault, which is the site’s and not yours. The articles, calculators and glossary have pages of their own.';
      return;
    }
    state.textContent =
      'The list to search in could not be fetched. Check the connection and type again; the articles, calculators and glossary have pages of their own.';
  }
}

/** The address keeps the question, so that a search can be linked and comes back on reload. */
function remember(): void {
  const query = box.value.trim() === '' ? '' : `?q=${encodeURIComponent(box.value)}`;
  history.replaceState(null, '', `${location.pathname}${query}`);
}

form.addEventListener('submit', (event) => {
  event.preventDefault();
  remember();
  void show();
});
box.addEventListener('input', () => {
  remember();
  void show();
});
if (box.value === '') box.value = new URLSearchParams(location.search).get('q') ?? '';
void show();
pageAnswers();
