/**
 * Millimetres in one of each unit of length. Exact.
 *
 * Source: A. Thompson and B. N. Taylor, Guide for the Use of the International System of Units,
 * NIST Special Publication 811 (2008), Appendix B.8: inch 25.4 mm, foot 304.8 mm, mil 25.4 µm. The
 * thou of the workshop is the mil of that table.
 */
export const MILLIMETRES_PER = {
  mm: 1,
  cm: 10,
  m: 1000,
  µm: 0.001,
  in: 25.4,
  thou: 0.0254,
  ft: 304.8,
  km: 1_000_000,
} as const satisfies Record<string, number>;
