/**
 * A check that reads a page once, right after something was done to it, may read what stood there
 * before: whether it passes is then a matter of which is quicker. This rule follows what a test
 * awaits, in the order in which it is written, and complains of `expect(await …)` when nothing
 * was waited for since the last act. The address is written a moment after the page has answered,
 * and told to the driver a moment later still: it is never read once.
 */

/** What a test does to a page: methods of the driver, and the tests' own words for them. */
const ACTS = new Set([
  ...['click', 'dblclick', 'tap', 'fill', 'clear', 'press', 'pressSequentially', 'type', 'check'],
  ...['uncheck', 'setChecked', 'selectOption', 'setInputFiles', 'insertText', 'dispatchEvent'],
  ...['focus', 'blur', 'hover', 'dragTo', 'drag', 'goBack', 'goForward', 'back', 'down', 'move'],
  ...['up', 'wheel', 'reload', 'setViewportSize'],
]);
/** The address of a part of the page that is there already: it is gone to without a load. */
const goesToPart = (call, word, source) =>
  word === 'goto' && call.arguments.some((given) => source.getText(given).includes('#'));
/** Named so, a helper of a test acts too. */
const ACTING = /^(?:type|press|tap|drag|choose|send|enter)(?:[A-Z].*)?$/;

/** What answers at once with what there is, and so waits for nothing. */
const READS = new Set([
  ...['inputValue', 'textContent', 'innerText', 'innerHTML', 'allTextContents', 'allInnerTexts'],
  ...['count', 'isVisible', 'isHidden', 'isDisabled', 'isEnabled', 'isChecked', 'isEditable'],
  ...['getAttribute', 'boundingBox', 'evaluate', 'evaluateAll', 'url', 'title', 'read', 'all'],
  ...['run', 'address', 'screenshot', 'content'],
]);

/** The last word of what is called: `page.mouse.down` is `down`. */
function wordOf(call) {
  if (call?.type !== 'CallExpression') return undefined;
  const { callee } = call;
  if (callee.type === 'Identifier') return callee.name;
  if (callee.type !== 'MemberExpression' || callee.property.type !== 'Identifier') return undefined;
  return callee.property.name;
}

/** Whether a value goes into `expect(…)`, if by way of a sum or a list. */
function isChecked(node) {
  for (let at = node; at.parent; at = at.parent) {
    const { parent } = at;
    if (parent.type === 'CallExpression' && parent.callee.name === 'expect') {
      return parent.arguments[0] === at;
    }
    if (/Statement$|Function|Declaration$|Declarator$/.test(parent.type)) return false;
  }
  return false;
}

export const tooEarly = {
  meta: {
    type: 'problem',
    schema: [],
    messages: { early: 'The page may answer later: await expect.poll(() => …).' },
  },
  create(context) {
    /** Whether something was done and nothing waited for, by function, the innermost last. */
    const acted = [];
    const enter = () => acted.push(false);
    const leave = () => acted.pop();
    return {
      ':function': enter,
      ':function:exit': leave,
      'AwaitExpression:exit'(node) {
        const call = node.argument;
        const word = wordOf(call);
        const method = call.type === 'CallExpression' && call.callee.type === 'MemberExpression';
        if (isChecked(node)) {
          if (acted.at(-1)) context.report({ node, messageId: 'early' });
        } else if (
          method
            ? ACTS.has(word) || goesToPart(call, word, context.sourceCode)
            : ACTING.test(word ?? '')
        ) {
          acted[acted.length - 1] = true;
        } else if (!(method && READS.has(word))) {
          acted[acted.length - 1] = false;
        }
      },
      'CallExpression[callee.property.name="url"][arguments.length=0]'(node) {
        if (isChecked(node)) context.report({ node, messageId: 'early' });
      },
      'CallExpression[callee.name=/^(query|hash)$/]'(node) {
        if (isChecked(node)) context.report({ node, messageId: 'early' });
      },
    };
  },
};
