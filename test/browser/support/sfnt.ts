/** The names of the tables of a font, by the directory at its start (ISO/IEC 14496-22, Open Font Format). */
export function tablesOf(font: Buffer): string[] {
  return Array.from({ length: font.readUInt16BE(4) }, (_, i) =>
    font.toString('latin1', 12 + 16 * i, 16 + 16 * i),
  );
}

/** Where a table begins. */
function startOf(font: Buffer, name: string): number {
  const place = tablesOf(font).indexOf(name);
  if (place < 0) throw new Error(`The font has no table ${name}`);
  return font.readUInt32BE(12 + 16 * place + 8);
}

/** Segmented coverage, the form of `cmap` that reaches the signs of mathematics. */
const SEGMENTED = 12;

/** The numbers of all signs that a font holds. */
export function signsOf(font: Buffer): Set<number> {
  const cmap = startOf(font, 'cmap');
  const signs = new Set<number>();
  for (let i = 0; i < font.readUInt16BE(cmap + 2); i += 1) {
    const at = cmap + font.readUInt32BE(cmap + 4 + 8 * i + 4);
    if (font.readUInt16BE(at) !== SEGMENTED) continue;
    for (let group = 0; group < font.readUInt32BE(at + 12); group += 1) {
      const [from, to] = [0, 4].map((step) => font.readUInt32BE(at + 16 + 12 * group + step));
      for (let sign = from!; sign <= to!; sign += 1) signs.add(sign);
    }
  }
  return signs;
}
