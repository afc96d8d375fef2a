/** Edges from the deck down; `deck` is the crown below it at the top. */
export const demoBarrel = {
  bore: 52,
  deck: 0.4,
  skirt: 58,
  exhaust: 32.5,
  exhaustHeight: 18,
  transfer: 41,
  transferHeight: 10,
  inlet: 80.2,
  inletHeight: 18,
  /** After the top, as read from a disc: what edge and deck come to. */
  exhaustOpens: 97.9,
  /** Before the top, as read from a disc: what skirt and port's lower edge come to. */
  inletOpens: 75,
} as const;
