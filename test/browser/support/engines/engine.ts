/** A page in a browser. `where` is a CSS selector, or an XPath when it starts with `//`; what it names is waited for. */
export interface Tab {
  /** Opens an address and waits until it is loaded. */
  readonly open: (address: string) => Promise<void>;
  readonly reload: () => Promise<void>;
  readonly back: () => Promise<void>;
  readonly address: () => Promise<string>;
  /** Runs a function in the page. It sees nothing of the test but what it is given. */
  readonly run: <Given extends unknown[], Answer>(
    body: (...given: Given) => Answer | Promise<Answer>,
    ...given: Given
  ) => Promise<Answer>;
  /** Runs a script's text in the page, past its content security policy. */
  readonly load: (script: string) => Promise<void>;
  readonly click: (where: string) => Promise<void>;
  /** Types into what has the focus, key by key. */
  readonly type: (text: string) => Promise<void>;
  /** Presses keys together, the last of them once: `press('Control', 'a')`. */
  readonly press: (...keys: Key[]) => Promise<void>;
  /** Takes the middle of something and drags it so many pixels. */
  readonly drag: (where: string, right: number, down: number) => Promise<void>;
  /** What is to be seen, as PNG. */
  readonly screenshot: () => Promise<Uint8Array>;
}

/** A browser that is driven from outside, by its first page. */
export interface Engine extends Tab {
  /** Another page beside the first, which shares all that the browser keeps. */
  readonly tab: () => Promise<Tab & { readonly close: () => Promise<void> }>;
  /** Starts again as a browser that has kept nothing. */
  readonly forget: () => Promise<void>;
  readonly close: () => Promise<void>;
}

/** A browser that keeps what it keeps in a folder. */
export interface Killable extends Engine {
  /** Ends it as a flat battery does: without a word, all its processes at once. */
  readonly kill: () => Promise<void>;
}

export type Key = 'Tab' | 'Control' | 'ArrowRight' | 'ArrowUp' | 'a' | 'v';

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** A kind of browser that tests can be run in where it is installed. */
export interface EngineKind {
  readonly name: string;
  /** What is not installed of it, in a sentence that says how to mend that; none when all is. */
  readonly missing: string | undefined;
  /** Starts one whose view of a page is so large, in pixels. */
  readonly start: (view: Size) => Promise<Engine>;
  /** Starts one that comes back with what it kept in a folder; none where its driver cannot. */
  readonly startIn?: (profile: string, view: Size) => Promise<Killable>;
}

/** The sentence for programs that are not there, each with the Debian package that brings it. */
export function missingSentence(
  name: string,
  needed: readonly { readonly there: boolean; readonly from: string }[],
): string | undefined {
  const packages = needed.filter(({ there }) => !there).map(({ from }) => from);
  return packages.length === 0
    ? undefined
    : `${name} is not here: "apt-get install ${packages.join(' ')}" brings it.`;
}
