import { h, options, type ComponentChild, type VNode } from 'preact';
import { measuresApart } from './measures.ts';

/** What holds sentences. Names, buttons and boxes are short, and some lay out each of their parts. */
const SENTENCES = new Set<unknown>([
  'p',
  'li',
  'dt',
  'dd',
  'th',
  'td',
  'caption',
  'figcaption',
  'b',
  'h3',
  'strong',
]);

/** A sentence whose figures each keep to their unit at a line's end. */
export const held = (text: string): ComponentChild => {
  const pieces = measuresApart(text);
  // An empty text would be written anew at each drawing: a status be heard again, and every rule that
  // asks what is empty have its elements styled anew.
  if (pieces.length === 1) return text || null;
  // In an array of its own, so that what stands after it keeps its place whatever the text says.
  return pieces.map((piece, i) => (i % 2 === 0 ? piece || null : h('one-line', {}, piece)));
};

const heldChild = (child: ComponentChild): ComponentChild =>
  typeof child === 'string' ? held(child) : Array.isArray(child) ? child.map(heldChild) : child;

/**
 * No line's end parts a figure from its unit, in any sentence that a component writes: each stands in
 * an element that does not break. The text itself stays as it is, for whoever copies it or hears it.
 */
const before = options.vnode;
options.vnode = (vnode: VNode<{ children?: ComponentChild | ComponentChild[] }>) => {
  if (SENTENCES.has(vnode.type)) {
    const { children } = vnode.props;
    vnode.props.children = Array.isArray(children)
      ? children.map(heldChild)
      : heldChild(children as ComponentChild);
  }
  before?.(vnode);
};
