import { defineConfig } from 'vitest/config';

/** Tests of what only computes: those that a worker runs share one module graph, which halves their time. Others run each in
 *  a graph of its own: they replace modules, or keep a folder, a browser or a clock to themselves. */
const pure = [
  'book',
  'calendar',
  'caution',
  'compare',
  'draw',
  'fact',
  'feature',
  'geometry',
  'measure',
  'price',
  'problem',
  'records',
  'scope',
  'sheet',
  'svg',
  'table',
  'takeoff',
  'units',
].map((folder) => `test/${folder}/**/*.test.{ts,tsx}`);

const shared = { testTimeout: 120_000, hookTimeout: 180_000 };

export default defineConfig({
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: {
    // One more than vitest takes by itself: the main process waits most of the time.
    maxWorkers: '100%',
    projects: [
      { extends: true, test: { ...shared, name: 'pure', include: pure, isolate: false } },
      { extends: true, test: { ...shared, name: 'whole', include: ['test/**/*.test.{ts,tsx}'], exclude: pure } },
    ],
  },
});
