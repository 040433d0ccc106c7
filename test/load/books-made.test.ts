import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { makeBook } from '../../src/core/book/make-book.js';
import { priceChoices } from '../../src/core/book/price-choices.js';
import { HouseUnderGit } from '../cli/house-under-git.js';

vi.mock(import('../../src/core/book/make-book.js'), async (real) => {
  const room = await real();
  return { ...room, makeBook: vi.fn(room.makeBook) };
});
vi.mock(import('../../src/core/book/price-choices.js'), async (real) => {
  const room = await real();
  return { ...room, priceChoices: vi.fn(room.priceChoices) };
});

const room = 'content/rooms/study.md';
let house: HouseUnderGit;

beforeEach(() => {
  house = new HouseUnderGit();
});
afterEach(() => house.remove());

/** Runs a command that must succeed; answers how many houses it made a Book of, and how many it only priced. None twice. */
async function made(line: string): Promise<{ readonly books: number; readonly priced: number }> {
  vi.clearAllMocks();
  const said = await house.run(line);
  expect(said).toMatchObject({ code: 0 });
  const [books, priced] = [makeBook, priceChoices].map((one) => vi.mocked(one).mock.calls.map(([records]) => records));
  for (const houses of [books, priced]) {
    const distinct = new Set(houses?.map(({ sources }) => JSON.stringify(sources)));
    expect(distinct.size, 'no house is made twice').toBe(houses?.length);
  }
  return { books: books?.length ?? 0, priced: priced?.length ?? 0 };
}

async function choose(from: string, to: string): Promise<void> {
  house.edit(room, `chosen: ${from}`, `chosen: ${to}`);
  house.commit(`The owner takes ${to}`);
  await house.run('compare HEAD~1 HEAD --draft --reason "The sample looked better."');
  house.commit('Change order proposed');
}

describe('a command makes the Book of each house once', () => {
  test('check, with two change orders whose versions overlap', async () => {
    await choose('pine', 'oak');
    // Where rooms alone differ, the newer rooms among the older records are the newer house, which is priced already.
    expect(await made('check')).toEqual({ books: 3, priced: 0 });
    await choose('oak', 'pine');
    // On disk, and the two versions of the new change order: what the first one gave was kept by the check before.
    expect(await made('check')).toEqual({ books: 3, priced: 0 });
  });

  test('compare: a version that is what lies on disk, and an issue that is its commit', async () => {
    expect(await made('compare HEAD')).toEqual({ books: 1, priced: 0 });
    house.edit(room, 'chosen: pine', 'chosen: oak');
    expect(await made('compare HEAD')).toEqual({ books: 2, priced: 0 });
    house.edit('content/house.md', 'overage-markup: 15 %', 'overage-markup: 14 %');
    expect(await made('compare HEAD'), 'choices apart from terms').toEqual({ books: 2, priced: 1 });
  });

  test('check and handout, with the last issue and the one before', async () => {
    await house.run('issue --for pricing');
    house.edit(room, 'chosen: pine', 'chosen: oak');
    house.commit('The owner takes oak');
    await house.run('issue --for sign-off');
    expect(await made('check'), 'on disk and both issues').toEqual({ books: 3, priced: 0 });
    expect(await made('handout carpentry --json'), 'since the issue before').toEqual({ books: 2, priced: 0 });
    expect(await made('compare issue-1 issue-2')).toEqual({ books: 2, priced: 0 });
  });
});
