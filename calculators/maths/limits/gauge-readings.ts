/** What a gauge can show from the gasket face to the float, mm: a level asked for is set by such a reading. */
export const GAUGE_READINGS = { min: -50, max: 100 } as const;
