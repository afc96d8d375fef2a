/**
 * Petrol and oil by volume. A ratio is parts of petrol to one part of oil: 25 means 25 : 1, which is
 * 40 ml of oil to the litre of petrol. Volumes in litres, oil too.
 */
import { MathsError } from '../numeric/errors.ts';
import { sayNumber } from '../numeric/rounding.ts';
import { assertWithin, type Limits } from '../numeric/within.ts';

/** Premix that is already in the tank. */
export interface InTank {
  /** Litres of the mix, petrol and oil together, 0 or more. */
  readonly volume: number;
  /** Its ratio. */
  readonly ratio: number;
}

export const emptyTank: InTank = { volume: 0, ratio: 25 };

const limitsOfRatio = (quantity: string): Limits => ({
  quantity,
  words: 'The ratio of petrol to oil',
  unit: 'to 1',
  min: 0,
  above: true,
  why: 'It is parts of petrol to one of oil, such as 25. A figure in per cent is another scale: 4% is 25 to 1.',
});

function assertVolume(quantity: string, words: string, volume: number): void {
  assertWithin(
    {
      quantity,
      words,
      unit: 'litres',
      min: 0,
      why: 'A volume cannot be less than nothing. Check the figure and its unit.',
    },
    volume,
  );
}

/**
 * Oil for some petrol.
 *
 * @param petrol Litres of petrol without oil, 0 or more.
 * @param ratio Above 0.
 * @returns Litres of oil.
 * @throws MathsError `out-of-range`.
 */
export function oilFor(petrol: number, ratio: number): number {
  assertVolume('fuel', 'The petrol', petrol);
  assertWithin(limitsOfRatio('ratio'), ratio);
  return petrol / ratio;
}

/** The ratio that a share of oil in per cent of the petrol's volume means: 4 is 25 : 1. */
export function ratioOfPercent(percent: number): number {
  assertWithin(
    {
      quantity: 'percent',
      words: 'The share of oil',
      unit: '%',
      min: 0,
      above: true,
      why: 'It is oil in per cent of the petrol: 4% is 25 to 1, 2% is 50 to 1.',
    },
    percent,
  );
  return 100 / percent;
}

/** Oil in per cent of the petrol's volume: 25 : 1 is 4. */
export function percentOfRatio(ratio: number): number {
  return 100 / ratio;
}

/** Petrol and oil in a volume of premix. */
export function partsOf({ volume, ratio }: InTank): { petrol: number; oil: number } {
  assertVolume('already', 'What is already in the tank', volume);
  assertWithin(limitsOfRatio('alreadyRatio'), ratio);
  const oil = volume / (ratio + 1);
  return { petrol: volume - oil, oil };
}

/**
 * The ratio in the tank after petrol and oil have been put to what was there.
 *
 * @throws MathsError `empty` where there is no petrol at all; `no-oil` where there is no oil at all;
 *   `out-of-range`.
 */
export function mixedRatio(petrol: number, oil: number, tank: InTank = emptyTank): number {
  assertVolume('fuel', 'The petrol', petrol);
  assertVolume('oil', 'The oil', oil);
  const there = partsOf(tank);
  const allPetrol = petrol + there.petrol;
  const allOil = oil + there.oil;
  if (allPetrol === 0) {
    throw new MathsError(
      'empty',
      ['fuel', 'already'],
      'There is no petrol in the tank and none to be put in, so there is nothing to mix. Enter a volume of petrol above 0.',
    );
  }
  if (allOil === 0) {
    throw new MathsError(
      'no-oil',
      ['oil', 'fuel'],
      'There would be no oil in the tank at all, and the engine would seize. Enter the oil.',
    );
  }
  return allPetrol / allOil;
}

/**
 * The oil to put in together with some petrol so that the whole tank comes to a ratio.
 *
 * @param petrol Litres of petrol to put in.
 * @param ratio Wanted in the whole tank.
 * @returns Litres of oil.
 * @throws MathsError `too-much-oil` where the mix already there holds more oil than the whole tank
 *   should; the sentence names the petrol that would bring it right. `out-of-range`.
 */
export function oilToReach(petrol: number, ratio: number, tank: InTank): number {
  const there = partsOf(tank);
  const oil = oilFor(petrol + there.petrol, ratio) - there.oil;
  if (oil < -1e-12 * (there.oil + petrol)) {
    const enough = ratio * there.oil - there.petrol;
    throw new MathsError(
      'too-much-oil',
      ['fuel', 'ratio'],
      `The mix in the tank holds more oil than the whole needs at ${sayNumber(ratio)} to 1, even with no oil added. Put in at least ${sayNumber(enough)} litres of petrol in all, or leave it: a little more oil than wanted does no harm, too little does.`,
    );
  }
  return Math.max(0, oil);
}
