const all = (): HTMLDetailsElement[] => [
  ...document.querySelectorAll<HTMLDetailsElement>('main details'),
];

/** Opens what a link's fragment names, with all that it lies in. */
function reveal(): void {
  const named = document.getElementById(decodeURIComponent(location.hash.slice(1)));
  if (!named) return;
  for (let part: Element | null = named; part; part = part.parentElement) {
    if (part instanceof HTMLDetailsElement) part.open = true;
  }
  named.scrollIntoView();
}

let asked = false;

/** Fetches the sheet's code once, when the first answer is opened. */
async function askSheet(): Promise<void> {
  if (asked) return;
  asked = true;
  try {
    const { showOwnFigures } = await import('./own-figures.ts');
    showOwnFigures();
  } catch {
    // Without the sheet's code the page stands as it was served; the next opening asks again.
    asked = false;
  }
}

/** The whole finder goes on paper; on the screen only one answer of a question stands open. */
let before: { part: HTMLDetailsElement; open: boolean; name: string }[] = [];
addEventListener('beforeprint', () => {
  before = all().map((part) => ({ part, open: part.open, name: part.name }));
  for (const { part } of before) {
    part.removeAttribute('name');
    part.open = true;
  }
});
addEventListener('afterprint', () => {
  for (const { part, open, name } of before) {
    part.open = open;
    if (name !== '') part.name = name;
  }
  before = [];
});

addEventListener('hashchange', reveal);
document.addEventListener('toggle', () => void askSheet(), { capture: true, once: false });
reveal();
