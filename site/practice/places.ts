/** Titles of the articles and calculators that the bench names, by slug. */
export interface Places {
  readonly articles: Readonly<Record<string, string>>;
  readonly calculators: Readonly<Record<string, string>>;
}
