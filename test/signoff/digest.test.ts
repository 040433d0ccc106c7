import { shortDigest, type Cents } from '../../src/base/units/index.js';
import { expect, test } from 'vitest';
import type { Book } from '../../src/core/book/index.js';
import { digestOf, roomDigests, tradeDigests } from '../../src/signoff/index.js';
import { demoBook } from '../demo-house.js';
import { makeFixture } from '../print/fixture.js';

test('a digest is SHA-256 of the canonical text', () => {
  // printf '{"a":1,"b":[true,null]}' | sha256sum
  expect(digestOf({ b: [true, null], a: 1, c: undefined })).toBe(
    '1cc69c7fa23616ca2ec3ee70d24390a6225c8832db8a4c814c7e0e7f942f8668',
  );
});

test('the short digest is twelve digits in groups that can be read out', () => {
  expect(shortDigest(`4f2a91c077be${'0'.repeat(52)}`)).toBe('4F2A-91C0-77BE');
});

test('the demo house has the same digests on every day', async () => {
  const books = await Promise.all(['2026-01-02', '2026-04-20', '2027-02-28'].map(demoBook));
  const digests = books.map(digestsOf);
  expect(digests[1]).toEqual(digests[0]);
  expect(digests[2]).toEqual(digests[0]);
  // The day is of some effect, or the test shows nothing.
  expect(digestOf(books[0])).not.toBe(digestOf(books[1]));
  const all = [...Object.values(digests[0]?.rooms ?? {}), ...Object.values(digests[0]?.trades ?? {})];
  expect(new Set(all).size).toBe(all.length);
});

test('a choice in one room changes that room and its trade, and no other room or trade', () => {
  const before = digestsOf(makeFixture());
  const after = digestsOf(change({ chosen: 'maple', counted: 'maple' }));
  expect(differing(before.rooms, after.rooms)).toEqual(['great-room']);
  expect(differing(before.trades, after.trades)).toEqual(['flooring']);
});

test('a price changes the room and not the trade: its handout has no money', () => {
  const before = digestsOf(makeFixture());
  const after = digestsOf(change({ change: 99 as Cents }));
  expect(differing(before.rooms, after.rooms)).toEqual(['great-room']);
  expect(differing(before.trades, after.trades)).toEqual([]);
});

test('an option that gets dearer or another text changes the rooms that use it', () => {
  const fixture = makeFixture();
  const options = fixture.options.map((one) => (one.slug === 'white-oak' ? { ...one, freight: 500 as Cents } : one));
  const after = digestsOf({ ...fixture, options });
  // White oak is chosen in the great room and the standard of the pantry.
  expect(differing(digestsOf(fixture).rooms, after.rooms)).toEqual(['great-room', 'pantry']);
  expect(differing(digestsOf(fixture).trades, after.trades)).toEqual([]);
});

test.each<[string, Partial<Book['selections'][number]>]>([
  ['an order', { state: 'ordered' }],
  ['who chose and when', { chosenBy: 'owner', chosenOn: '2026-02-01' }],
  ['a line of the record', { line: 99, source: 'content/rooms/moved.md' }],
  ['what else was considered', { considering: ['maple'] }],
])('%s after the choice does not undo what was agreed', (_what, facts) => {
  const before = digestsOf(makeFixture());
  expect(digestsOf(change(facts)).rooms).toEqual(before.rooms);
});

test('an open choice counts with what is considered', () => {
  const fixture = makeFixture();
  const selections = fixture.selections.map((one) =>
    one.category === 'ceiling-board' ? { ...one, considering: ['fir-tg'] } : one,
  );
  expect(differing(digestsOf(fixture).rooms, digestsOf({ ...fixture, selections }).rooms)).toEqual(['great-room']);
});

function digestsOf(book: Book) {
  return { rooms: roomDigests(book), trades: tradeDigests(book) };
}

/** The fixture with other facts of the great room's floor. */
function change(facts: Partial<Book['selections'][number]>): Book {
  const fixture = makeFixture();
  const selections = fixture.selections.map((one) =>
    one.id === 'great-room/floor/floor' ? { ...one, ...facts } : one,
  );
  return { ...fixture, selections };
}

function differing(a: Readonly<Record<string, string>>, b: Readonly<Record<string, string>>): readonly string[] {
  return Object.keys(a).filter((key) => a[key] !== b[key]);
}
