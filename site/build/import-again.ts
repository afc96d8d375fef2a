import type { Plugin } from 'vite';

const IMPORT = /\bimport\((["'`]\.\/[^"'`$]+\.js["'`])\)/g;

/**
 * A browser may remember for as long as a page is open that a script could not be fetched, and never
 * ask for it again. So each import that fails is tried once more, under an address that the browser
 * has not failed at.
 */
export const retryImports = (code: string): string =>
  code.replaceAll(
    IMPORT,
    (whole, file: string) =>
      `${whole}.catch(()=>import(new URL(${file}+"?"+Date.now(),import.meta.url).href))`,
  );

/** Comes after the builder's own pass, which finds the imports that a script makes. */
export function importAgain(): Plugin {
  return {
    name: 'import-again',
    apply: 'build',
    enforce: 'post',
    applyToEnvironment: ({ name }) => name === 'client',
    generateBundle: {
      order: 'post',
      handler(_, bundle) {
        for (const file of Object.values(bundle)) {
          if (file.type === 'chunk') file.code = retryImports(file.code);
        }
      },
    },
  };
}
