import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

interface Rule {
  readonly path: RegExp;
  readonly headers: readonly (readonly [name: string, value: string])[];
}

/** The rules in a site's `_headers`: a path with `*` for anything, then indented headers. */
export function headerRules(directory: string): Rule[] {
  const file = join(directory, '_headers');
  const text = existsSync(file) ? readFileSync(file, 'utf8') : '';
  const blocks = text.replaceAll(/^#.*\n?/gm, '').split(/\n(?=\/)/);
  return blocks
    .map((block) => block.trim().split('\n'))
    .filter(([path]) => path)
    .map(([path, ...lines]) => ({
      path: new RegExp(`^${path!.trim().split('*').map(RegExp.escape).join('.*')}$`),
      headers: lines.map((line) => {
        const at = line.indexOf(':');
        return [line.slice(0, at).trim(), line.slice(at + 1).trim()] as const;
      }),
    }));
}
