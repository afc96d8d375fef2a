/** Another invented engine, for which a figure was given. */
export const demoOther = { stroke: 56, rod: 110, offset: 0 } as const;
