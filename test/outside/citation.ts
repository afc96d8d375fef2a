/** What names a work that somebody can take from a shelf: a standard’s body, or an author’s initials. */
const WORK =
  /\b(?:ISO|IEC|EN|BS|ASTM|ASME|NIST|JCGM|OIML|NADCA|ATSDR|KEMET|NIOSH|TM|AC|OD)\b[ ,/]|\b[A-Z]\. (?:[A-Z]\. )*[A-Z]\p{L}+/u;
/** An edition, a year, or the very state of a collection; or the plain word that it has none. */
const DATED =
  /\b(?:1[89]|20)\d\d\b|\bedition\b|\bcommit [\da-f]{7}|\b(?:edition|year)s? not known\b/i;
/** Where in the work, or the plain word that it is not known. */
const PLACED =
  /\b(?:pages?|clauses?|sections?|tables?|annex|appendix|schedule|equations?|examples?|problem|figure|column|data set|file|paragraph)\b|§ ?\d|\bnot known\b/i;

/** Works within one line, which a semicolon or a full stop parts. */
const worksOf = (line: string): string[] => line.split(/;\s|(?<=[\p{Ll}\d)])\. (?=\p{Lu}\p{Ll})/u);

const lacks = (work: string): string[] => [
  ...(DATED.test(work) ? [] : ['neither edition nor year']),
  ...(PLACED.test(work) ? [] : ['no page, section, clause or table']),
];

/** What one who would look up a citation is not told. */
export const untold = (citation: string): string[] =>
  lacks(citation).map((what) => `${what}: ${citation}`);

/** The same of each work in a list of sources; what names no work has nothing to be told. */
export const untoldIn = (line: string): string[] =>
  worksOf(line)
    .filter((work) => WORK.test(work))
    .flatMap(untold);
