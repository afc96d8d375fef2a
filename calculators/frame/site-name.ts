/** What every file made here names as its maker. */
export const SITE_NAME = 'Gudgeon';
