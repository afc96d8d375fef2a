/** The framework leaves alone what stands in an element that has this. */
export const AS_SERVED = { __html: '' };
