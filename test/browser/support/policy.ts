import { createHash } from 'node:crypto';

/** The directives of a content security policy, by name. */
function directivesOf(policy: string): Map<string, string[]> {
  return new Map(
    policy
      .split(';')
      .map((part) => part.trim().split(/\s+/))
      .filter(([name]) => name)
      .map(([name, ...sources]) => [name!.toLowerCase(), sources]),
  );
}

const hashOf = (text: string): string =>
  `'sha256-${createHash('sha256').update(text).digest('base64')}'`;

/** What a policy lets through that this site never needs, each in words. */
export function laxities(policy: string): string[] {
  const directives = directivesOf(policy);
  const wants = ['default-src', 'script-src', 'style-src', 'base-uri', 'form-action'];
  const missing = wants.filter((name) => !directives.has(name)).map((name) => `no ${name}`);
  const loose = [...directives].flatMap(([name, sources]) =>
    sources
      .filter((source) => /^'unsafe-|^\*|^https?:|^data:|^blob:|\./.test(source))
      .filter((source) => !(name === 'img-src' && /^(?:data|blob):$/.test(source)))
      .map((source) => `${name} allows ${source}`),
  );
  const open =
    directives.get('default-src')?.join() === "'none'" ? [] : ['default-src is not none'];
  return [...missing, ...loose, ...open];
}

/** What in a page the policy would stop, or would have to be loosened for. */
export function inlined(document: Document, policy: string): string[] {
  const directives = directivesOf(policy);
  const stopped = (selector: string, directive: string): string[] =>
    [...document.querySelectorAll(selector)]
      .map((element) => element.textContent ?? '')
      .filter((text) => !directives.get(directive)?.includes(hashOf(text)))
      .map((text) => `${directive} stops ${text.slice(0, 60)}`);
  const data = ':not([type="application/ld+json"])';
  const attributes = [...document.querySelectorAll('*')].flatMap((element) =>
    [...element.attributes]
      .filter(({ name, value }) => /^(?:style$|on)/i.test(name) || /^\s*javascript:/i.test(value))
      .map(({ name, value }) => `<${element.localName}> has ${name}="${value}"`),
  );
  return [
    ...stopped(`script:not([src])${data}`, 'script-src'),
    ...stopped('style', 'style-src'),
    ...attributes,
  ];
}
