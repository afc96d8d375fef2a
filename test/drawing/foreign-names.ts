/** Names of the libraries that make files here, of other programs that draw, and of addresses. */
const FOREIGN =
  /pdf-?lib|hopding|@[a-z]+\/[a-z]|tarikjabiri|dxf-?writer|autodesk|autocad|inkscape|illustrator|adobe|sharp|libvips|skia|chrom(?:e|ium)|mozilla|https?:\/\/(?!www\.w3\.org\/|purl\.org\/dc\/)/i;

/** The first name in a file's text that is not the site's own. */
export const foreignName = (text: string): string | undefined => FOREIGN.exec(text)?.[0];
