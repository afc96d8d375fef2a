/** Attributes of the pictures that the browser also has as properties, for reading only. */
const NAMES = ['x', 'y', 'x1', 'y1', 'x2', 'y2', 'cx', 'cy', 'r'];
const INTERFACES = [
  [SVGGraphicsElement, ['transform']],
  [SVGLineElement, NAMES],
  [SVGCircleElement, NAMES],
  [SVGRectElement, NAMES],
  [SVGTextPositioningElement, NAMES],
] as const;

/**
 * Lets the properties be written, which sets the attribute. Preact tries the property first, and
 * each refusal costs ten times what the attribute does: a quarter of a frame while a picture is
 * dragged.
 */
for (const [{ prototype }, names] of INTERFACES) {
  for (const name of names) {
    const own = Object.getOwnPropertyDescriptor(prototype, name);
    if (!own?.get || own.set || !own.configurable) continue;
    Object.defineProperty(prototype, name, {
      ...own,
      set(this: SVGElement, value: unknown) {
        if (value === '') this.removeAttribute(name);
        else this.setAttribute(name, String(value));
      },
    });
  }
}
