/**
 * The demo engine: invented, a club's three-cylinder air-cooled engine built without a manual. Every
 * figure of it that a default, the engine sheet, a picture or an article shows stands once in this
 * folder, by the part that it belongs to, so that a page fetches only the parts it shows. Lengths in
 * mm, angles in degrees, volumes in cc.
 */
export const demoEngine = { stroke: 51, rod: 104, offset: 0 } as const;

export const DEMO_CYLINDERS = 3;
/** Speed at which what goes by the clock is shown, rpm. */
export const DEMO_SPEED = 6000;

/** Parts of petrol to one of oil. */
export const DEMO_RATIO = 25;
