import astro from 'eslint-plugin-astro';
import tseslint from 'typescript-eslint';

/** What a test does to a page, and what it may then read too early. */
const ACT = '/^(click|tap|fill|press|type|check|uncheck|selectOption|blur|insertText)$/';
const READ =
  '/^(inputValue|textContent|innerText|count|isVisible|isHidden|isDisabled|isEnabled|isChecked|getAttribute)$/';
const TOO_EARLY = [
  `ExpressionStatement[expression.type="AwaitExpression"][expression.argument.callee.property.name=${ACT}]`,
  '+ ExpressionStatement > CallExpression',
  'CallExpression[callee.name="expect"] > AwaitExpression > CallExpression',
  `> MemberExpression[property.name=${READ}]`,
].join(' ');

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
    rules: {
      'no-restricted-properties': [
        'error',
        { property: 'readText', message: 'All tests share one clipboard: ask `copied(page)`.' },
      ],
      'no-restricted-syntax': [
        'error',
        {
          selector: TOO_EARLY,
          message: 'The page may answer later: await expect.poll(() => …).',
        },
      ],
    },
  },
);
