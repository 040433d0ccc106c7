import { expect, test } from 'vitest';
import { freshSlug } from '../../../src/draft/index.js';

test.each(['none', 'outside', 'owner', 'all', 'con', 'AUX', 'Nul', 'com1', 'LPT9'])(
  'a record named %s gets a file name that means nothing else, on any disk',
  (name) => expect(freshSlug(name, new Set(), 'room-101')).toBe(`${name.toLowerCase()}-2`),
);

test.each([
  ['Console', 'console'],
  ['Con amore', 'con-amore'],
  ['../x', 'x'],
  ['\u{1f6cf}', 'room-101'],
])('%s is %s', (name, slug) => expect(freshSlug(name, new Set(), 'room-101')).toBe(slug));
