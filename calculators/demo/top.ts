/** Finding the top: how far down the piston was stopped, and the disc's readings there. */
export const demoTop = { height: 8, before: 44, after: 40 } as const;
