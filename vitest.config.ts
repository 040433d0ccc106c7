import { defineConfig } from 'vitest/config';
import { LongestFirst } from './test/longest-first.js';

/** Files that put others in place of modules, each in a graph of its own. All others share one graph in a worker: to import the
 *  program takes longer than most of them. */
const alone = [
  'test/cli/changed-program.test.ts',
  'test/cli/killed.test.ts',
  'test/load/books-made.test.ts',
  'test/site/drawn-once.test.ts',
  'test/store/nested.test.ts',
  'test/store/one-at-a-time-slow.test.ts',
  'test/store/put-in-place.test.ts',
  'test/store/replaced.test.ts',
  'test/store/unreadable.test.ts',
];

const common = { testTimeout: 120_000, hookTimeout: 180_000 };

export default defineConfig({
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: {
    // One more than vitest takes by itself: the main process waits most of the time.
    maxWorkers: '100%',
    globalSetup: 'test/own-temporary-folder.ts',
    sequence: { sequencer: LongestFirst },
    projects: [
      { extends: true, test: { ...common, name: 'alone', include: alone } },
      {
        extends: true,
        test: {
          ...common,
          name: 'shared',
          include: ['test/**/*.test.{ts,tsx}'],
          exclude: alone,
          isolate: false,
          setupFiles: 'test/usual-locale.ts',
        },
      },
    ],
  },
});
