import { attempt, ifThere } from '../../frame/attempt.ts';
import { sliderCrank } from '../../position/engine-inputs.ts';
import { impossible, type Absent, type ComputedOf, type ValuesOf } from '../../frame/types.ts';
import {
  belowHeadVolume,
  clearanceForRatio,
  clearanceVolume,
  geometricRatio,
  headVolumeFor,
  skimFor,
  squishClearance,
  sweptVolume,
  trappedVolume,
} from '../../maths/cylinder/compression.ts';
import { cylinderVolume } from '../../maths/cylinder/cylinder-volume.ts';
import { buretteVolume, plugHoleVolume } from '../../maths/cylinder/head-volume.ts';
import { spreadOf } from '../../maths/cylinder/port-layout.ts';
import { sayNumber } from '../../maths/numeric/rounding.ts';
import type { inputs } from './inputs.ts';
import type { results } from './results.ts';

export type Values = ValuesOf<typeof inputs>;

function plugHole(v: Values): number {
  switch (v['plug-allowance']) {
    case 'none':
      return 0;
    case 'measured':
      return v['plug-hole'];
    case 'thread':
      return plugHoleVolume(v['plug-thread'], v['plug-pitch'], v['plug-reach']);
  }
}

/** Gasket, deck and dome of a cylinder whose crown stands `deckClearance` mm below the deck. */
const partsOf = (v: Values, deckClearance: number) => ({
  bore: v.bore,
  gasketThickness: v.gasket,
  gasketBore: v['gasket-bore'],
  deckClearance,
  domeVolume: v.dome,
});

/** Clearance volume from the liquid measured, in the way it was measured. */
function clearanceOf(v: Values, liquid: number, deckClearance: number): number {
  const measured = buretteVolume(liquid, plugHole(v));
  return v.measured === 'whole'
    ? measured
    : clearanceVolume({ ...partsOf(v, deckClearance), headVolume: measured });
}

const liquidOf = (v: Values): number =>
  v.measured === 'whole' ? v['whole-volume'] : v['head-volume'];

const squishOf = (v: Values): number =>
  v['squish-from'] === 'solder' ? v.solder : squishClearance(v.deck, v.gasket, v['band-depth']);

/** Diameter of the space that a skim takes its volume from. */
const skimmedAcross = (v: Values): number => (v['skim-face'] === 'flat' ? v['bowl-mouth'] : v.bore);

/** A flat head's band moves with its face, so that only the bowl loses by a skim. */
const squishLost = (v: Values, skim: number): number => (v['skim-face'] === 'flat' ? 0 : skim);

function wantedHead(v: Values, swept: number, trapped: number, clearance: number) {
  const wanted = attempt(() =>
    clearanceForRatio(v['wanted-scheme'] === 'trapped' ? trapped : swept, v['wanted-ratio']),
  );
  const skim = ifThere(wanted, (volume) =>
    attempt(() => skimFor(clearance - volume, skimmedAcross(v))),
  );
  return {
    'head-volume-for': ifThere(wanted, (volume) =>
      attempt(() => headVolumeFor(volume, partsOf(v, v.deck))),
    ),
    'skim-for': skim,
    'squish-for': ifThere(skim, (by) => squishOf(v) - squishLost(v, by)),
  };
}

/** Clearance volume after skim and gaskets, or why there is none. */
function changedClearance(v: Values, clearance: number): number | Absent {
  const change = v['gasket-change'];
  if (v.gasket + change < 0) {
    return impossible(
      `A gasket of ${sayNumber(v.gasket)} mm cannot be thinner by ${sayNumber(-change)} mm. Take off ${sayNumber(v.gasket)} mm at the most.`,
    );
  }
  const across = v.gasket > 0 ? v['gasket-bore'] : v.bore;
  const left =
    clearance -
    cylinderVolume(skimmedAcross(v), v.skim) +
    cylinderVolume(across, change) +
    cylinderVolume(v.bore, v['base-gasket-change']);
  return left > 0
    ? left
    : impossible(
        `That skim and those gaskets would leave ${sayNumber(left)} cc above the piston, and there must be more than 0. Take off less.`,
      );
}

/** What is left above the exhaust when a base gasket has moved it, cc, or why nothing is. */
function changedTrapped(v: Values, swept: number, trapped: number): number | Absent {
  const left = trapped - cylinderVolume(v.bore, v['base-gasket-change']);
  return left > 0
    ? Math.min(left, swept)
    : impossible(
        'A base gasket so much thicker would lift the exhaust above the piston’s top. Take a thinner one.',
      );
}

function afterChange(v: Values, swept: number, trapped: number, clearance: number) {
  const volume = changedClearance(v, clearance);
  return {
    'ratio-after': ifThere(volume, (left) => geometricRatio(swept, left)),
    'trapped-after': ifThere(volume, (left) =>
      ifThere(changedTrapped(v, swept, trapped), (above) => geometricRatio(above, left)),
    ),
    'squish-after': ifThere(
      volume,
      () => squishOf(v) - squishLost(v, v.skim) + v['gasket-change'] + v['base-gasket-change'],
    ),
  };
}

function cylinders(v: Values, swept: number, trapped: number, first: number) {
  const volumes = attempt(() => [
    first,
    ...v['other-volume'].map((liquid, index) => clearanceOf(v, liquid, v['other-deck'][index]!)),
  ]);
  const ratios = ifThere(volumes, (all) => all.map((volume) => geometricRatio(swept, volume)));
  return {
    'cylinder-clearance': volumes,
    'cylinder-ratio': ratios,
    'cylinder-trapped': ifThere(volumes, (all) =>
      all.map((volume) => geometricRatio(trapped, volume)),
    ),
    'cylinder-match': ifThere(volumes, (all) => all.map((volume) => Math.max(...all) - volume)),
    'ratio-spread': ifThere(ratios, spreadOf),
  };
}

export function compute(v: Values): ComputedOf<typeof results> {
  const engine = sliderCrank(v);
  const swept = sweptVolume(engine, v.bore);
  const trapped = trappedVolume(engine, v.bore, v['exhaust-opens']);
  const clearance = clearanceOf(v, liquidOf(v), v.deck);
  return {
    ratio: geometricRatio(swept, clearance),
    'trapped-ratio': geometricRatio(trapped, clearance),
    squish: squishOf(v),
    swept,
    'swept-all': swept * v.cylinders,
    'swept-trapped': trapped,
    clearance,
    'head-alone': attempt(() => clearance - belowHeadVolume(partsOf(v, v.deck))),
    ...wantedHead(v, swept, trapped, clearance),
    ...afterChange(v, swept, trapped, clearance),
    ...cylinders(v, swept, trapped, clearance),
  };
}
