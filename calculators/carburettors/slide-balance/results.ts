import type { Results } from '../../frame/types.ts';

export const results = {
  spread: {
    label: 'Spread as found',
    unit: 'mm',
    help: 'Widest less narrowest opening; by gauges, worked out from what one turn does.',
    lead: true,
    decimals: 2,
  },
  work: {
    label: 'Turns in all',
    unit: 'none',
    help: 'Of all adjusters together.',
    lead: true,
    decimals: 2,
  },
  'give-back': {
    label: 'Then give back, all alike',
    unit: 'mm',
    help: 'By how much to turn all cable adjusters in alike, so that the tightest cable keeps its least free play. The balance stays.',
    decimals: 2,
  },
  tightest: {
    label: 'Tightest cable after balancing',
    unit: 'mm',
    help: 'Free play left before anything is given back; negative holds its slide open.',
    decimals: 2,
  },
  turn: {
    label: 'Turns (+ opens)',
    unit: 'none',
    help: 'Of its adjuster; + lifts the slide.',
    table: 'slides',
    decimals: 2,
    signed: true,
  },
  'free-after': {
    label: 'Free play after it',
    unit: 'mm',
    help: 'Before anything is given back.',
    table: 'slides',
    decimals: 2,
  },
} as const satisfies Results;
