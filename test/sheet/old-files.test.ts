import { describe, expect, it } from 'vitest';
import { figureKeys } from '../../calculators/sheet/figures.ts';
import { order } from '../../calculators/sheet/steps.ts';
import { progressOf } from '../../calculators/sheet/progress.ts';
import { parseDocument } from './parse-document.ts';

/** Names in files that people keep: none is ever dropped, and none changes its meaning. */
const published = {
  figures:
    'cylinders bore stroke rod offset lobes speed-ratio lift rise top gap gap-tolerance dwell-angle target timing-tolerance top-tolerance slot-radius rotor plate-outside plate-bore plate-tolerance volts resistance resistance-tolerance inductance plug-gap plug-gap-tolerance height height-tolerance seat head jet jet-tolerance needle-jet needle-diameter taper clip-pitch clip thread slide-tolerance deck squish squish-tolerance head-volume head-volume-tolerance exhaust-opens exhaust-tolerance leak-drop ratio shaft-run-out end-float end-float-tolerance side-play side-play-tolerance inlet-opens inlet-tolerance reeds reed-gap insulation plate-run-out condensers condenser condenser-tolerance fed-coils feed-drop pilot-jet pilot-tolerance cutaway cutaway-tolerance least-play compression-tolerance piston-clearance piston-clearance-tolerance ring-gap ring-gap-tolerance air-screw idle-lift set-2 set-3 set-4 set-5 set-6 set-7 set-8 earth'.split(
      ' ',
    ),
  steps:
    'measure top plate coil gap timing float jets clip slides squish head-volume exhaust leak plug stop fuel start after oil clearance ring-gap screws leads run-out end-float rod-play pin-play pegs inlet reeds suction insulation plate-fit condenser polarity strip clean pilot cutaway cables compression wiring run hot hours'.split(
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
    expect(engine).toMatchObject(file.engines[0]!);
    expect(progressOf(engine!).plate.state).toBe('unjudged');
  });

  it('of a job that was done to its end opens with what is new to do, and nothing of it undone', () => {
    const done = { found: [], left: [], done: true, checked: 1, changed: 1 };
    const whole = {
      ...file,
      engines: [
        { ...file.engines[0]!, readings: { oil: done, fuel: done, start: done, after: done } },
      ],
    };
    const [engine] = parseDocument(JSON.stringify(whole)).engines;
    const progress = progressOf(engine!);
    expect([progress.oil.state, progress.start.state]).toEqual(['pass', 'pass']);
    expect([progress.run.state, progress.strip.state, progress['end-float'].state]).toEqual(
      Array(3).fill('open'),
    );
  });

  it('finds every name it may hold', () => {
    expect(published.figures.filter((key) => !(figureKeys as string[]).includes(key))).toEqual([]);
    expect(published.steps.filter((id) => !(order as string[]).includes(id))).toEqual([]);
  });
});
