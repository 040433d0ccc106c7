import prettier from 'eslint-config-prettier';
import tseslint from 'typescript-eslint';

/** Rooms that compute and nothing else: the same input gives the same output, on any day and any machine. */
const pure = ['base', 'core', 'draw', 'draft', 'try', 'sheet', 'table', 'handout', 'slip', 'write'].map(
  (room) => `src/${room}/**/*.{ts,tsx}`,
);

export default tseslint.config(
  { ignores: ['_site/', '_demo/', 'dist/', 'fonts/', 'node_modules/', 'test/golden/', 'src/core/records/raw/'] },
  ...tseslint.configs.recommended,
  {
    rules: {
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_' }],
      'max-lines': ['warn', { max: 300, skipBlankLines: true, skipComments: true }],
      eqeqeq: 'error',
      'no-duplicate-imports': 'error',
    },
  },
  {
    files: pure,
    rules: {
      'no-restricted-globals': [
        'error',
        'Date',
        'process',
        'globalThis',
        'console',
        'fetch',
        'setTimeout',
        'performance',
      ],
      'no-restricted-properties': [
        'error',
        { object: 'Math', property: 'random', message: 'A pure room gives the same output every time.' },
      ],
      'no-restricted-syntax': [
        'error',
        {
          selector: "CallExpression[callee.property.name='localeCompare']",
          message: 'Compare with < so that every machine sorts alike.',
        },
        {
          selector: 'ImportDeclaration[source.value=/^node:/]',
          message: 'A pure room reads no disk and starts no program.',
        },
      ],
    },
  },
  prettier,
);
