/** A page of the site, from the home page that this page names. */
export function siteAddress(path: string): string {
  const here = document.querySelector<HTMLLinkElement>('link[rel="start"]');
  return new URL(path, here?.href ?? location.origin).href;
}
