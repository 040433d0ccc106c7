import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { featureKinds } from '../../src/core/feature/index.js';
import { cases } from './cases.js';

const empty = 'text-empty';
const leave = 'write it, or leave the key out where it may be absent';
const astray = 'see whether a digit or a point went astray';

describe('a text of which nothing is to be seen, or that cannot be shown', () => {
  const unseen = `rooms/study.md:2:7 ${empty} 'name' is empty: nothing of it can be seen | ${leave}`;
  const held = (sign: string): string =>
    `rooms/study.md:2:7 text-sign 'name' holds a sign that cannot be shown (${sign}) | type it anew, without that sign`;
  cases('content/rooms/study.md', [
    ['name: Study', 'name: ""', `rooms/study.md:2:7 ${empty} 'name' is empty | ${leave}`],
    ['name: Study', 'name: " \\t "', unseen],
    ['name: Study', 'name: "\\u200b\\u2060"', unseen],
    ['name: Study', 'name: "\\u00ad"', unseen],
    ['name: Study', 'name: \u3164', unseen],
    ['name: Study', 'name: "\\u2028"', unseen],
    ['name: Study', 'name: "\\u0000"', unseen],
    ['name: Study', 'name: "Stu\\u0000dy"', held('U+0000')],
    ['name: Study', 'name: "Study \\ud800"', held('U+D800')],
    ['name: Study', 'name: "\\u202eydutS"', held('U+202E')],
    // Joiners within words belong to some scripts, and to pictures of several signs.
    ['name: Study', 'name: "\\u0915\\u094d\\u200d\\u0937"'],
  ]);
});

describe('a figure that is more than any house has', () => {
  cases('content/rooms/study.md', [
    [
      `width: 6'-0", height: 5'-0"`,
      `width: 99999999'-0", height: 5'-0"`,
      `rooms/study.md:11:63 length-unreadable '99999999'-0"' is longer than any house | see whether a digit went astray, or feet stand for inches`,
    ],
    [
      'pitch: 6/12',
      'pitch: 6000000/12',
      `rooms/study.md:8:64 pitch-unreadable '6000000/12' is steeper than any roof | see whether rise and run stand in their places`,
    ],
  ]);
  cases('content/house.md', [
    [
      'sum: $1,486,000',
      'sum: $1,486,000,000,000',
      `house.md:11:8 money-unreadable '$1,486,000,000,000' is more money than any house costs | ${astray}`,
    ],
    ['sum: $1,486,000', 'sum: $1,000,000,000,000'],
    [
      'days: 40',
      'days: 40000000',
      `house.md:35:57 number-large 'days' is 40000000, which is more than any house has | write 1,000,000 at most`,
    ],
    [
      'review: 5 days',
      'review: 99999 days',
      `house.md:32:11 days-unreadable '99999 days' is longer than any job | see whether a digit went astray`,
    ],
  ]);
  cases('content/options/ceiling-board/fir-tg-1x6.md', [
    [
      '24 sq ft',
      '24000000 sq ft',
      `options/ceiling-board/fir-tg-1x6.md:7:30 quantity-unreadable '24000000 sq ft' is more than any house has | ${astray}`,
    ],
    [
      '2.1 lb / sq ft',
      '2,100,000 lb / sq ft',
      `options/ceiling-board/fir-tg-1x6.md:12:9 weight-unreadable '2,100,000 lb / sq ft' is more than any house has | ${astray}`,
    ],
  ]);
});

it('every form of a value in the schemas has a name: what is wrong with it is told by the form that comes nearest', () => {
  const folder = join(import.meta.dirname, '..', '..', 'schemas');
  const schemas = readdirSync(folder)
    .filter((name) => name !== 'book.schema.json')
    .map((name) => JSON.parse(readFileSync(join(folder, name), 'utf8')) as unknown);
  const unnamed: unknown[] = [];
  const look = (part: unknown): void => {
    if (typeof part !== 'object' || part === null) return;
    const { oneOf } = part as { oneOf?: readonly { readonly $ref?: string }[] };
    unnamed.push(...(oneOf ?? []).filter(({ $ref }) => $ref === undefined));
    Object.values(part).forEach(look);
  };
  [...schemas, ...featureKinds.map(({ schema }) => schema)].forEach(look);
  expect(unnamed).toEqual([]);
});
