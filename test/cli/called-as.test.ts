import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { bookmatch } from './command-line.js';

const usage = ['new', 'option', 'floor', '--house', '/'];

test.each([
  ['bookmatch', 'npm run bookmatch --'],
  ['npx', 'npx bookmatch'],
])('called by %s, it says what to type for the commands that it names', async (event, typed) => {
  const { said } = await bookmatch(usage, { environment: { npm_lifecycle_event: event } });
  expect(said).toContain('bookmatch new DIR');
  expect(said.endsWith(`Where it says bookmatch, type: ${typed}\n`)).toBe(true);
});

test('called by its name, or naming no command, it says nothing of that', async () => {
  expect((await bookmatch(usage)).said).not.toContain('Where it says');
  const { said } = await bookmatch(['--version'], { environment: { npm_lifecycle_event: 'npx' } });
  expect(said).toBe(`${(JSON.parse(readFileSync('package.json', 'utf8')) as { version: string }).version}\n`);
});
