/**
 * What a source may not be: a page that shares others' documents, a forum, a wiki, a blog or
 * somebody's own page, a free host, an address, or a guess at what a book may have been.
 */
const NO_SOURCE = [
  /\b(?:forum|message board|post on|blogs?|vlog)\b/i,
  /wiki|reddit|quora|stack ?(?:exchange|overflow)|youtube|facebook|medium\.com/i,
  /scribd|slideshare|yumpu|issuu|calameo|docstoc|dokumen|docslib|coursehero|course hero|chegg|studocu/i,
  /holooly|askfilo|brainly|homework|numerade/i,
  /wixsite|weebly|wordpress|blogspot|blogger|geocities|neocities|tripod|angelfire|github\.io/i,
  /gist\b|pastebin|codepen|jsfiddle/i,
  /https?:|www\.|\b[a-z0-9-]+\.(?:com|net|org|info|space|xyz|ws|io|de|uk)\b/i,
  /anonymous|believed to be|second-?hand/i,
] as const;

/** The first thing in a citation that disqualifies it. */
export const standing = (source: string): string | undefined =>
  NO_SOURCE.map((pattern) => pattern.exec(source)?.[0]).find((hit) => hit !== undefined);
