import { toQuery } from '../../calculators/frame/address.ts';
import type { AnyCalculator } from '../../calculators/frame/types.ts';
import type { Evaluation } from '../../calculators/frame/evaluate.ts';
import { siteAddress } from '../browser/site-address.ts';

/** The whole address of a calculator in a state. */
export const addressOf = ({ slug }: AnyCalculator, evaluation: Evaluation): string =>
  `${new URL(siteAddress(`calculators/${slug}/`), location.href).href}?${toQuery(evaluation)}`;
