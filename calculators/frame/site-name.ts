/** What every file made here names as its maker. */
export const SITE_NAME = 'Gudgeon';

/** Namespace of the Dublin Core's elements (ISO 15836-1), whose `creator` says who made a file. */
export const DUBLIN_CORE = 'http://purl.org/dc/elements/1.1/';
