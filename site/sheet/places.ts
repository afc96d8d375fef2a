/** What the sheet links to, as the page was built with it. */
export interface Places {
  /** By slug: the calculator's title and those of its keys that a sheet can fill. */
  readonly calculators: Readonly<
    Record<string, { readonly title: string; readonly keys: readonly string[] }>
  >;
  readonly articles: Readonly<Record<string, string>>;
}
