import astro from 'eslint-plugin-astro';
import tseslint from 'typescript-eslint';
import { tooEarly } from './too-early.mjs';

export default tseslint.config(
  { ignores: ['dist/', '.astro/', '.cache/', 'node_modules/'] },
  ...tseslint.configs.strict,
  ...astro.configs.recommended,
  {
    rules: {
      '@typescript-eslint/no-non-null-assertion': 'off',
      '@typescript-eslint/no-unused-vars': [
        'error',
        { argsIgnorePattern: '^_', varsIgnorePattern: '^_' },
      ],
      eqeqeq: ['error', 'always', { null: 'ignore' }],
      'no-console': 'error',
    },
  },
  { files: ['test/**', '.config/**', '*.mjs'], rules: { 'no-console': 'off' } },
  {
    files: ['test/browser/**'],
    plugins: { project: { rules: { 'too-early': tooEarly } } },
    rules: {
      'no-restricted-properties': [
        'error',
        { property: 'readText', message: 'All tests share one clipboard: ask `copied(page)`.' },
      ],
      'project/too-early': 'error',
    },
  },
);
