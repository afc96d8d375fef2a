import { describe, expect, it } from 'vitest';
import { figureKeys } from '../../calculators/sheet/figures.ts';
import { order } from '../../calculators/sheet/steps.ts';
import { progressOf } from '../../calculators/sheet/progress.ts';
import { parseDocument } from '../../calculators/sheet/validate.ts';

/** Names in files that people keep: none is ever dropped, and none changes its meaning. */
const published = {
  figures:
    'cylinders bore stroke rod offset lobes speed-ratio lift rise top gap gap-tolerance dwell-angle target timing-tolerance top-tolerance slot-radius rotor plate-outside plate-bore plate-tolerance volts resistance resistance-tolerance inductance plug-gap plug-gap-tolerance height height-tolerance seat head jet jet-tolerance needle-jet needle-diameter taper clip-pitch clip thread slide-tolerance deck squish squish-tolerance head-volume head-volume-tolerance exhaust-opens exhaust-tolerance leak-drop ratio'.split(
      ' ',
    ),
  steps:
    'measure top plate coil gap timing float jets clip slides squish head-volume exhaust leak plug stop fuel start after'.split(
      ' ',
    ),
};

const reading = (...found: number[]) => ({ found, left: [], done: false, checked: 1, changed: 0 });

/** A file of version 2, in the order in which the job was once done. */
const file = {
  format: 'engine-sheet',
  version: 2,
  engines: [
    {
      id: 'old-1',
      name: 'Kept before',
      invented: true,
      notes: '',
      firingOrder: [1, 2],
      figures: { cylinders: 2, stroke: 51, rod: 104, 'plate-tolerance': 0.8 },
      readings: {
        plate: reading(180, 180),
        gap: reading(0.4, 0.4),
        squish: reading(1.2, 1.2),
        exhaust: reading(95, 95),
      },
      kept: [],
      unread: {},
      clock: 4,
    },
  ],
};

describe('a file from before', () => {
  it('opens, with its readings where they were', () => {
    const [engine] = parseDocument(JSON.stringify(file)).engines;
    expect(engine).toEqual(file.engines[0]);
    expect(progressOf(engine!).plate.state).toBe('unjudged');
  });

  it('finds every name it may hold', () => {
    expect(published.figures.filter((key) => !(figureKeys as string[]).includes(key))).toEqual([]);
    expect(published.steps.filter((id) => !(order as string[]).includes(id))).toEqual([]);
  });
});
