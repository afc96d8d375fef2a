/** A text that was to go to the clipboard, and whether it did. */
export interface Copied {
  readonly what: string;
  readonly text: string;
  readonly done: boolean;
  /** Why there was nothing to copy. */
  readonly refused?: string;
}

/** Copies a text; where the browser refuses, says so, and the text is to be shown. */
export async function copyText(what: string, text: string): Promise<Copied> {
  try {
    await navigator.clipboard.writeText(text);
    return { what, text, done: true };
  } catch {
    return { what, text, done: false };
  }
}

/** How a copy went, in a sentence. */
export function copiedWords(copied: Copied | undefined): string {
  if (copied === undefined) return '';
  if (copied.refused !== undefined) return `Nothing was copied. ${copied.refused}`;
  return copied.done
    ? `${copied.what} copied.`
    : `This browser did not let the page copy. Copy the ${copied.what.toLowerCase()} below.`;
}
