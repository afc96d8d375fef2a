import type { Plugin } from 'vite';

/** What a definition holds for the served page, the search and paper alone, which no script reads. */
export const SERVED_ONLY = ['purpose', 'alsoCalled', 'ready', 'limits', 'articles'] as const;

const DEFINITION = /\/calculators\/[^/]+\/[^/]+\/calculator\.tsx$/;

/** A node of the syntax tree, as far as it is looked at. */
interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly [part: string]: unknown;
}

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && typeof (value as Node).type === 'string';

/** The literal that `defineCalculator` is called with. */
function definitionIn(node: Node): Node | undefined {
  if (node.type === 'CallExpression' && (node['callee'] as Node)['name'] === 'defineCalculator') {
    return (node['arguments'] as Node[])[0];
  }
  for (const part of Object.values(node)) {
    for (const each of Array.isArray(part) ? part : [part]) {
      const found = isNode(each) ? definitionIn(each) : undefined;
      if (found) return found;
    }
  }
  return undefined;
}

/** The code of a definition without what only the served page needs. */
export function withoutServed(code: string, tree: unknown): string {
  const definition = definitionIn(tree as Node);
  if (definition?.type !== 'ObjectExpression') {
    throw new Error('A calculator’s definition is not a literal given to defineCalculator.');
  }
  const names: readonly string[] = SERVED_ONLY;
  return (definition['properties'] as Node[])
    .filter(({ key }) => isNode(key) && names.includes(key['name'] as string))
    .reduceRight((rest, { start, end }) => {
      const after = /^\s*,/.exec(rest.slice(end))?.[0].length ?? 0;
      return rest.slice(0, start) + rest.slice(end + after);
    }, code);
}

/** Leaves out of the scripts what only the served page needs of a definition. */
export function servedOnly(): Plugin {
  return {
    name: 'gudgeon:served-only',
    apply: 'build',
    enforce: 'post',
    applyToEnvironment: ({ name }) => name === 'client',
    transform(code, id) {
      if (!DEFINITION.test(id.split('?')[0]!)) return undefined;
      return { code: withoutServed(code, this.parse(code)), map: null };
    },
  };
}
