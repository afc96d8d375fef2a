import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { LengthDisplay } from '../../calculators/frame/text/units.ts';

/** How the reader has lengths shown: the bench is in millimetres, and so is what is done on it. */
export const Lengths = createContext<LengthDisplay>('mm');

export const useLengths = (): LengthDisplay => useContext(Lengths);
