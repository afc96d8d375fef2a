import { decimalsApart, fixed } from '../frame/text/format.ts';

/** Clearance of an aluminium piston in air-cooled iron, thousandths of the bore; common practice. */
export const FIT = { least: 1, most: 1.5 } as const;
/** Gap of a ring, per cent of the bore; common practice. */
const RING = { least: 0.3, most: 0.5 } as const;

/** Squish up to 7000 rpm, per cent of the bore; common practice. */
const SQUISH = { least: 1.5, most: 2 } as const;

const usual = `${fixed(RING.least, 1)} to ${fixed(RING.most, 1)}% of the bore is common practice.`;

/** What speaks against a ring gap of so many per cent of the bore; nothing where it is usual. */
export function ringGapDoubt(share: number): string | undefined {
  if (share < RING.least)
    return `The ring gap is narrow: ${usual} Narrow is the worse side, since ends that meet break the ring.`;
  if (share > RING.most)
    return `The ring gap is wide: ${usual} Wide only leaks; look at how far the bore has worn.`;
  return undefined;
}

/** What speaks against a squish that stands clear, of so many per cent of the bore; nothing where it is wide enough. */
export const squishDoubt = (share: number): string | undefined =>
  share > 0 && share < SQUISH.least
    ? `The squish is ${fixed(share, decimalsApart(share, SQUISH.least, 1))}% of the bore, and ${fixed(SQUISH.least, 1)} to ${fixed(SQUISH.most, 1)}% is common practice up to 7000 rpm. At speed, play and stretch take tenths of a millimetre of it, and the crown may touch the head.`
    : undefined;

export const RING_IS_USUAL = `The ring gap is usual: ${usual}`;
