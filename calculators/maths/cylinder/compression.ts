/**
 * Compression ratios. Two are in use for a two-stroke engine and must not be mixed up.
 *
 * The geometric ratio counts the whole stroke: volume at the bottom over volume at the top. The
 * trapped ratio counts only from where the exhaust port closes, since nothing is compressed while it
 * is open. On one engine the trapped ratio is always the smaller.
 *
 * Source of both names: G. P. Blair, The Basic Design of Two-Stroke Engines, SAE R-104, 1990,
 * chapter 1 (recalled from memory).
 */
import { assertDiameter, cylinderVolume } from './cylinder-volume.ts';
import { circleArea } from '../numeric/circle-area.ts';
import { MathsError } from '../numeric/errors.ts';
import { sayNumber } from '../numeric/rounding.ts';
import { assertNumber } from '../numeric/within.ts';
import { bdcAfter, totalTravel, travelAt, type SliderCrank } from '../crank/slider-crank.ts';

/** The parts of the space above the piston at top dead centre. */
export interface ClearanceParts {
  /** Bore, mm. */
  readonly bore: number;
  /** Volume of the head alone, up to its joint face, cc. More than 0. */
  readonly headVolume: number;
  /** Thickness of the head gasket as squeezed, mm, 0 or more. 0 for a ground joint. */
  readonly gasketThickness: number;
  /** Bore of the head gasket, mm. Not less than the bore of a gasket that has a thickness. */
  readonly gasketBore: number;
  /** Deck down to the crown's edge at top dead centre, mm; negative above the deck. */
  readonly deckClearance: number;
  /** Volume of the dome above the crown's edge, cc; a dish is negative. */
  readonly domeVolume: number;
}

/** Swept volume in cc: bore area times the piston's whole travel, stroke included pin offset. */
export function sweptVolume(g: SliderCrank, bore: number): number {
  assertDiameter('bore', 'bore', bore);
  return cylinderVolume(bore, totalTravel(g));
}

/** Volume in cc of all parts of the clearance space that are not the head itself. */
export function belowHeadVolume(parts: Omit<ClearanceParts, 'headVolume'>): number {
  const { bore, gasketThickness, gasketBore, deckClearance, domeVolume } = parts;
  assertDiameter('bore', 'bore', bore);
  assertGasket(parts);
  assertNumber('deckClearance', 'deck clearance', deckClearance, 'Enter 0 if there is none.');
  assertNumber('domeVolume', 'volume of the dome', domeVolume, 'Enter 0 if there is none.');
  return (
    cylinderVolume(gasketBore, gasketThickness) + cylinderVolume(bore, deckClearance) - domeVolume
  );
}

/**
 * The whole volume above the piston at top dead centre, cc.
 *
 * @throws MathsError `head-volume`; `no-clearance` where dome and deck leave nothing; `gasket-bore`;
 *   `gasket-thickness`.
 */
export function clearanceVolume(parts: ClearanceParts): number {
  const { headVolume } = parts;
  if (!(headVolume > 0 && headVolume < Infinity)) {
    throw new MathsError(
      'head-volume',
      ['headVolume'],
      `The head must hold more than 0 cc, not ${sayNumber(headVolume)} cc. Measure it with a burette and a flat plate over the joint face.`,
    );
  }
  const below = belowHeadVolume(parts);
  const whole = headVolume + below;
  if (!(whole > 0)) {
    throw new MathsError(
      'no-clearance',
      ['headVolume', 'domeVolume', 'deckClearance'],
      `The head’s ${sayNumber(headVolume)} cc with ${sayNumber(below)} cc for gasket, deck and dome leaves ${sayNumber(whole)} cc above the piston, and there must be more than 0. Check the sign of the deck (below is +) and of the dome (a dish is −).`,
    );
  }
  return whole;
}

/** Geometric compression ratio: (swept + clearance) / clearance, volumes in cc, more than 0. */
export function geometricRatio(swept: number, clearance: number): number {
  assertVolumes(swept, clearance);
  return (swept + clearance) / clearance;
}

/**
 * Trapped compression ratio: as the geometric one, but counted from where the piston shuts the
 * exhaust port. The piston is at the same height there as where the port opened.
 *
 * @param exhaustOpens Degrees after true top dead centre at which the exhaust opens on the way down,
 *   more than 0 and at most bottom dead centre, where it gives the geometric ratio.
 * @throws MathsError `exhaust-opens`, or as `sweptVolume` and `geometricRatio`.
 */
export function trappedRatio(
  g: SliderCrank,
  bore: number,
  clearance: number,
  exhaustOpens: number,
): number {
  return geometricRatio(trappedVolume(g, bore, exhaustOpens), clearance);
}

/** Swept volume in cc above the exhaust port's top edge. Errors as `trappedRatio`. */
export function trappedVolume(g: SliderCrank, bore: number, exhaustOpens: number): number {
  assertDiameter('bore', 'bore', bore);
  const bottom = bdcAfter(g);
  if (!(exhaustOpens > 0 && exhaustOpens <= bottom)) {
    throw new MathsError(
      'exhaust-opens',
      ['exhaustOpens'],
      `The exhaust must open more than 0° and at most ${sayNumber(bottom)}° after top dead centre, not at ${sayNumber(exhaustOpens)}°. From a duration, take half of it off 180°.`,
    );
  }
  return cylinderVolume(bore, Math.min(travelAt(g, exhaustOpens), totalTravel(g)));
}

/**
 * The clearance volume in cc that gives a ratio.
 *
 * @param swept Swept volume in cc; the trapped one for a trapped ratio.
 * @param ratio More than 1.
 * @throws MathsError `ratio`.
 */
export function clearanceForRatio(swept: number, ratio: number): number {
  if (!(ratio > 1 && ratio < Infinity)) {
    throw new MathsError(
      'ratio',
      ['wantedRatio'],
      `A compression ratio must be more than 1, not ${sayNumber(ratio)}. Enter 7.5 for 7.5 to 1.`,
    );
  }
  assertVolumes(swept, 1);
  return swept / (ratio - 1);
}

/**
 * The volume in cc that the head alone must have for a clearance volume.
 *
 * @throws MathsError `ratio-out-of-reach` where gasket, deck and dish alone are more than that.
 */
export function headVolumeFor(
  clearance: number,
  parts: Omit<ClearanceParts, 'headVolume'>,
): number {
  const below = belowHeadVolume(parts);
  if (!(clearance > below)) {
    throw new MathsError(
      'ratio-out-of-reach',
      ['wantedRatio', 'gasketThickness', 'deckClearance', 'domeVolume'],
      `This ratio leaves ${sayNumber(clearance)} cc above the piston, and gasket, deck and dish alone take ${sayNumber(below)} cc, so no head is small enough. Ask for less, or make the gasket thinner.`,
    );
  }
  return clearance - below;
}

/** How far metal must come off, mm, for the clearance volume to lose `volume` cc. */
export function skimFor(volume: number, faceDiameter: number): number {
  assertDiameter('faceDiameter', 'space at the face to be skimmed', faceDiameter);
  return (volume * 1000) / circleArea(faceDiameter);
}

/**
 * Squish clearance in mm as the parts add up: deck, gasket, and the depth of the squish band below
 * the head's joint face. Negative or 0 means that piston and head meet.
 */
export function squishClearance(
  deckClearance: number,
  gasketThickness: number,
  bandDepth: number,
): number {
  for (const [name, value] of Object.entries({ deckClearance, gasketThickness, bandDepth })) {
    assertNumber(name, 'height for the squish clearance', value, 'Enter it in millimetres, or 0.');
  }
  return deckClearance + gasketThickness + bandDepth;
}

function assertGasket({ bore, gasketThickness, gasketBore }: Omit<ClearanceParts, 'headVolume'>) {
  if (!(gasketThickness >= 0 && gasketThickness < Infinity)) {
    throw new MathsError(
      'gasket-thickness',
      ['gasketThickness'],
      `The gasket must be 0 mm thick or more, not ${sayNumber(gasketThickness)} mm. Measure one that has been squeezed; enter 0 for a joint without a gasket.`,
    );
  }
  if (gasketThickness === 0) return;
  assertDiameter('gasketBore', 'gasket’s bore', gasketBore);
  if (gasketBore < bore) {
    throw new MathsError(
      'gasket-bore',
      ['gasketBore', 'bore'],
      `A gasket bore of ${sayNumber(gasketBore)} mm would stand inside the cylinder’s ${sayNumber(bore)} mm, where the piston can strike it and the edge glows. It must be ${sayNumber(bore)} mm or more: fit a larger gasket, or measure it again.`,
    );
  }
}

function assertVolumes(swept: number, clearance: number): void {
  if (!(swept > 0 && clearance > 0)) {
    throw new MathsError(
      'volume-not-positive',
      ['headVolume', 'bore', 'stroke'],
      'A ratio needs a swept volume and a clearance volume above 0 cc. Check the bore, the stroke and the head volume.',
    );
  }
}
