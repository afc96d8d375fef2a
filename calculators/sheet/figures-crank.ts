import type { SheetFigure } from './figures.ts';

const group = 'Crank and rod';
const start = 'a start and not a limit';

const within = (label: string): SheetFigure => ({
  group,
  label,
  help: 'How far it may be off, either way, and still pass. For a range of common practice: half its width.',
  unit: 'mm',
  min: 0.001,
  max: 2,
  why: 'an indicator or a feeler reads no finer, and a wider allowance would pass anything',
  step: 0.01,
});

export const crankFigures = {
  'shaft-run-out': {
    group,
    label: 'Most run-out of a mainshaft',
    help: `Highest less lowest reading in one turn, close to the web. No manual: up to 0.03 mm is common practice, ${start}. Less where points or a magneto ride on the shaft.`,
    unit: 'mm',
    min: 0.001,
    max: 0.5,
    why: 'a crank is never quite true, and one further out shakes the engine',
    step: 0.01,
  },
  'end-float': {
    group,
    label: 'End float of the crank',
    help: `Cold, along the shaft. No manual: 0.1 to 0.3 mm where shims set it is common practice, ${start}; the less in an aluminium case, which grows away from a steel crank as it warms. 0 where a bearing holds the shaft by itself.`,
    unit: 'mm',
    min: 0,
    max: 2,
    why: 'a crank with more wanders',
    step: 0.01,
  },
  'end-float-tolerance': within('End float within\u00A0±'),
  'side-play': {
    group,
    label: 'Side play at the big end',
    help: `Between rod and web. No manual: 0.2 to 0.5 mm is common practice, ${start}; more for a rod that is guided at its small end.`,
    unit: 'mm',
    min: 0.02,
    max: 5,
    why: 'with less the rod runs hot, and with more it has lost its washers',
    step: 0.05,
  },
  'side-play-tolerance': within('Side play within\u00A0±'),
} as const satisfies Record<string, SheetFigure>;
