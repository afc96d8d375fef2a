import { siteAddress } from '../browser/site-address.ts';
import type { Meanings } from './meanings.ts';

let fetching: Promise<Meanings> | undefined;

/** Fetched once; a fetch that failed is made anew at the next press. */
function meanings(): Promise<Meanings> {
  fetching ??= fetch(siteAddress('terms.json'))
    .then((response) => {
      if (!response.ok) throw new Error(`terms.json: ${response.status}`);
      return response.json() as Promise<Meanings>;
    })
    .catch((error: unknown) => {
      fetching = undefined;
      throw error;
    });
  return fetching;
}

/** The one note of the page, made when it is first needed. */
let note: HTMLElement | undefined;

function noteOf(): HTMLElement {
  if (note) return note;
  note = document.createElement('div');
  note.className = 'term-note';
  note.popover = 'auto';
  note.tabIndex = -1;
  note.setAttribute('role', 'note');
  document.body.append(note);
  return note;
}

function show(link: HTMLAnchorElement, term: string, meaning: string): void {
  const place = noteOf();
  const name = document.createElement('strong');
  name.textContent = term;
  const words = document.createElement('p');
  words.append(name, ` ${meaning}`);
  const more = document.createElement('a');
  more.href = link.href;
  more.textContent = 'In the glossary';
  const shut = document.createElement('button');
  shut.type = 'button';
  shut.textContent = 'Close';
  shut.addEventListener('click', () => {
    place.hidePopover();
    link.focus();
  });
  const ways = document.createElement('p');
  ways.className = 'term-ways';
  ways.append(more, shut);
  place.replaceChildren(words, ways);
  place.showPopover();
  place.focus();
}

/** Tells a term in the note. Rejects where its meaning cannot be had. */
export async function explain(link: HTMLAnchorElement): Promise<void> {
  const known = (await meanings())[new URL(link.href).hash.slice(1)];
  if (!known) throw new Error(`No meaning of ${link.href}`);
  show(link, known.term, known.meaning);
}
