/** The drawings' own measures of the body, mm, as no figure depends on them. */

/** The pivot below the gasket face, and the seat above the pivot. */
export const PIVOT = 3;
export const NEEDLE = 9;
/** The tang stands so far above the arm, and the needle on it. */
export const TANG = 1.8;
/** Metal of the body above the face. */
export const BODY = 12;
