import { SITE_NAME } from '../frame/site-name.ts';

/** The eight bytes of the signature, then the header's length, name, 13 bytes of data and sum. */
const HEADER_END = 8 + 4 + 4 + 13 + 4;

/** The check sum of a chunk, bit by bit: its name and data are short (PNG, annex D: ISO 3309). */
function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit += 1) crc = (crc >>> 1) ^ (crc & 1 ? 0xedb88320 : 0);
  }
  return (crc ^ 0xffffffff) >>> 0;
}

/** A chunk of text under one of the keywords that the PNG standard names (11.3.3). */
function textChunk(keyword: 'Author' | 'Software', text: string): Uint8Array {
  const content = new TextEncoder().encode(`tEXt${keyword}\0${text}`);
  const chunk = new Uint8Array(content.length + 8);
  const view = new DataView(chunk.buffer);
  view.setUint32(0, content.length - 4);
  chunk.set(content, 4);
  view.setUint32(content.length + 4, crc32(content));
  return chunk;
}

/** A PNG that names the site as its author and as what made it. */
export async function withMaker(png: Blob): Promise<Blob> {
  const bytes = new Uint8Array(await png.arrayBuffer());
  return new Blob(
    [
      bytes.slice(0, HEADER_END),
      textChunk('Author', SITE_NAME) as BlobPart,
      textChunk('Software', SITE_NAME) as BlobPart,
      bytes.slice(HEADER_END),
    ],
    { type: png.type },
  );
}
