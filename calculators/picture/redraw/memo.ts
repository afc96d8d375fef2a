import { Component, h, type FunctionComponent } from 'preact';

/** A component that is left as it is while its properties are alike, so many levels deep. */
export function memo<P extends object>(
  Inner: FunctionComponent<P>,
  depth = 1,
): new () => Component<P> {
  return class extends Component<P> {
    override shouldComponentUpdate(now: P): boolean {
      return !alike(this.props, now, depth);
    }
    override render() {
      return h(Inner, this.props);
    }
  };
}

const isPlain = (value: unknown): value is object => typeof value === 'object' && value !== null;

/** Whether two values are alike in every part, so many levels deep. */
function alike(a: unknown, b: unknown, depth: number): boolean {
  if (Object.is(a, b)) return true;
  if (depth === 0 || !isPlain(a) || !isPlain(b)) return false;
  const before = Object.entries(a);
  return (
    before.length === Object.keys(b).length &&
    before.every(([key, value]) => alike(value, (b as Record<string, unknown>)[key], depth - 1))
  );
}
