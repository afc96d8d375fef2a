import { siteAddress } from '../browser/site-address.ts';

/** The address of a calculator's page with a state: from the root where the build makes it relative. */
export function pageAddress(slug: string, query: string): string {
  const path = `calculators/${slug}/?${query}`;
  return typeof document === 'undefined' ? `/${path}` : siteAddress(path);
}
