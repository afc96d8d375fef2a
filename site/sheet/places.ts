import type { Fillable } from '../../calculators/sheet/fill.ts';

/** What the sheet links to, as the page was built with it. */
export interface Places {
  /** By slug: the calculator's title and what the sheet fills into it. */
  readonly calculators: Readonly<Record<string, { readonly title: string } & Fillable>>;
  readonly articles: Readonly<Record<string, string>>;
}
