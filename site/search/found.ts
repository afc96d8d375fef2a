/** A part of an article, which can be found by itself. */
export interface Part {
  readonly heading: string;
  /** The heading’s id on the article’s page. */
  readonly id: string;
  /** The telling words of its text. */
  readonly words: string;
}

/** A thing that can be found. */
export interface Found {
  /** Address below the site's root. */
  readonly url: string;
  readonly kind: 'calculator' | 'article' | 'term' | 'practice' | 'fault' | 'step' | 'page';
  readonly title: string;
  /** Shown under the title. */
  readonly purpose: string;
  /** Other names, as they are typed, each apart from the next by a comma. */
  readonly also?: string;
  /** The telling words of what else it says. */
  readonly words?: string;
  readonly parts?: readonly Part[];
}

export interface SearchIndex {
  readonly documents: readonly Found[];
  /** Words and phrases of which each means the same as its neighbours. */
  readonly alike: readonly (readonly string[])[];
}
