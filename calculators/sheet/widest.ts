import type { FigureKey } from './figures.ts';

/**
 * The widest tolerance that still judges something, in the figure's unit, and why. Files of old may
 * hold a wider one, which is kept: nothing is judged by it.
 */
export const widest: Partial<Record<FigureKey, readonly [most: number, why: string]>> = {
  'gap-tolerance': [0.1, 'a wider allowance passes points that fire many degrees apart'],
  'timing-tolerance': [5, 'more lets an engine run hot or kick back'],
  'top-tolerance': [2, 'every timing figure carries this error with it'],
  'plate-tolerance': [5, 'slots take up no more'],
  'condenser-tolerance': [0.2, 'a wider allowance passes a condenser that burns the points'],
  'plug-gap-tolerance': [0.3, 'a wider allowance passes a plug that does not fire'],
  'height-tolerance': [3, 'a wider allowance passes a bowl that floods or runs weak'],
  'jet-tolerance': [0.1, 'the next size of a jet is nearer than that'],
  'pilot-tolerance': [0.05, 'the next size of a pilot jet is nearer than that'],
  'cutaway-tolerance': [0.5, 'the next slide is no further off than that'],
  'slide-tolerance': [1, 'a wider allowance leaves one cylinder pulling the others'],
  'end-float-tolerance': [0.5, 'a wider allowance passes a crank that has lost its shims'],
  'side-play-tolerance': [0.5, 'a wider allowance passes a rod that has lost its washers'],
  'piston-clearance-tolerance': [0.1, 'a wider allowance passes a piston that seizes'],
  'ring-gap-tolerance': [0.5, 'a wider allowance passes a ring that is worn out'],
  'squish-tolerance': [0.5, 'a wider allowance passes a piston that strikes the head'],
  'head-volume-tolerance': [3, 'a wider allowance passes another head'],
  'exhaust-tolerance': [10, 'no gasket moves a port further'],
  'inlet-tolerance': [10, 'no gasket moves a port further'],
  'compression-tolerance': [
    200,
    'a cylinder so far below the others has lost a ring, a gasket or a seal; what the gauge reads goes into the boxes of the readings',
  ],
};
