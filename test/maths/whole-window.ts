import { uncoveredArea, type PortWindow } from '../../calculators/maths/cylinder/port-area.ts';

/** Area of a window that is open from end to end, mm². */
export const windowArea = (window: PortWindow): number => uncoveredArea(window, window.height);
