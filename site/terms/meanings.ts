/** What a term means, by the id of its glossary entry. */
export type Meanings = Readonly<
  Record<string, { readonly term: string; readonly meaning: string }>
>;
