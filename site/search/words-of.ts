/** The words of an article, without its code (which ends at a blank line), figures, formulas and tags. */
export function wordsOf(mdx: string): string {
  return mdx
    .replaceAll(/^(?:import|export) [\s\S]*?(?:\n\s*\n|$(?![\s\S]))/gm, '')
    .replaceAll(/\{(?:[^{}]|\{[^{}]*\})*\}/g, ' ')
    .replaceAll(/<\/?[A-Za-z][^>]*>/g, ' ')
    .replaceAll(/&\w+;|[#*_`|>[\]()]/g, ' ')
    .replaceAll(/\s+/g, ' ')
    .trim();
}
