/** An order in groups of so many cylinders that fire together. */
export const inGroups = (order: readonly number[], size: number): readonly (readonly number[])[] =>
  Array.from({ length: order.length / size }, (_, i) => order.slice(i * size, (i + 1) * size));

/** The one form in which a firing order is shown: `1-3-2-4`, and `1+4-2+3` where two fire together. */
export const orderText = (order: readonly number[], together = 1): string =>
  inGroups(order, together)
    .map((group) => group.join('+'))
    .join('-');

/** A firing order as one figure: 132 is 1-3-2, and 10423 is 1+4-2-3, a nought joining those that fire together. */
export const orderFigure = (value: number): string =>
  String(value)
    .replaceAll(/(\d)(?=[1-9])/g, '$1-')
    .replaceAll(/-?0-?/g, '+');

/** How many cylinders each set fires, where all fire as many; 1 where that is not so. */
export const firedByEach = (cylinders: number, sets: number): number =>
  sets < cylinders && cylinders % sets === 0 ? cylinders / sets : 1;
