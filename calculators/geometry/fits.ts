import { fixed } from '../frame/text/format.ts';

/** Clearance of an aluminium piston in air-cooled iron, thousandths of the bore; common practice. */
export const FIT = { least: 1, most: 1.5 } as const;
/** Gap of a ring, per cent of the bore; common practice. */
const RING = { least: 0.3, most: 0.5 } as const;

const usual = `${fixed(RING.least, 1)} to ${fixed(RING.most, 1)}% of the bore is common practice.`;

/** What speaks against a ring gap of so many per cent of the bore; nothing where it is usual. */
export function ringGapDoubt(share: number): string | undefined {
  if (share < RING.least)
    return `The ring gap is narrow: ${usual} Narrow is the worse side, since ends that meet break the ring.`;
  if (share > RING.most)
    return `The ring gap is wide: ${usual} Wide only leaks; look at how far the bore has worn.`;
  return undefined;
}

export const RING_IS_USUAL = `The ring gap is usual: ${usual}`;
