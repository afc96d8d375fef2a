interface Action {
  readonly label: string;
  readonly act: () => void;
}

/** Kinds of notices that were closed by hand stay closed until the tab is. */
const closedKey = (kind: string): string => `gudgeon.closed.${kind}`;

function isClosed(kind: string): boolean {
  try {
    return sessionStorage.getItem(closedKey(kind)) !== null;
  } catch {
    return false;
  }
}

function keepClosed(kind: string): void {
  try {
    sessionStorage.setItem(closedKey(kind), '');
  } catch {
    // Storage is full or forbidden: the next page says it once more.
  }
}

const place = (): HTMLElement => document.getElementById('notices')!;
const ofKind = (kind: string): HTMLElement | null =>
  place().querySelector<HTMLElement>(`[data-kind="${kind}"]`);

/** Takes a notice away. */
export function clearNotice(kind: string): void {
  ofKind(kind)?.remove();
}

/**
 * Shows a line at the foot of the window; one of a kind at a time. It is read out politely. One that
 * asks for nothing, once closed, is not shown again in this visit.
 */
export function showNotice(kind: string, text: string, action?: Action): void {
  clearNotice(kind);
  if (!action && isClosed(kind)) return;
  const line = document.createElement('div');
  line.className = 'notice';
  line.dataset.kind = kind;
  const words = document.createElement('p');
  words.textContent = text;
  line.append(words);
  const press = (label: string, act: () => void): void => {
    const button = document.createElement('button');
    button.type = 'button';
    button.textContent = label;
    button.addEventListener('click', act);
    line.append(button);
  };
  if (action) press(action.label, action.act);
  press(action ? 'Later' : 'Close', () => {
    if (!action) keepClosed(kind);
    line.remove();
  });
  place().append(line);
}
