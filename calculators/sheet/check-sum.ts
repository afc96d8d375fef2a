/** The generator of CRC-32, its bits in the order in which they are sent (IEEE 802.3, clause 3.2.9). */
const GENERATOR = 0xedb88320;

/**
 * The CRC-32 of a text of plain letters, as eight hexadecimal digits. Any change within 32
 * neighbouring bits shows, so a letter changed or two swapped always does; any other change is
 * missed once in 2³².
 */
export function checkSum(text: string): string {
  let sum = 0xffffffff;
  for (let at = 0; at < text.length; at += 1) {
    sum ^= text.charCodeAt(at) & 0xff;
    for (let bit = 0; bit < 8; bit += 1) sum = (sum >>> 1) ^ (sum & 1 ? GENERATOR : 0);
  }
  return (~sum >>> 0).toString(16).padStart(8, '0');
}
