import { describe, expect, it } from 'vitest';
import { lookUp } from '../../src/core/book/index.js';
import { makeSheets } from '../../src/print/sheets/index.js';
import { makeToDecide } from '../../src/print/sheets/to-decide.js';
import { demoBook } from '../demo-house.js';

const book = await demoBook('2026-04-20');
const { choices } = makeToDecide(lookUp(book));

describe('what is to be decided on paper', () => {
  it('is every open place that has something to choose between, by day', () => {
    const open = book.selections.filter(({ state, alternatives }) => state === 'open' && alternatives.length > 1);
    expect(choices).toHaveLength(open.length);
    const days = open.map(({ decision }) => decision.by).toSorted();
    expect(choices.map(({ isLate }) => isLate)).toEqual(
      days.map((by) => open.some(({ decision }) => decision.by === by && decision.state === 'late')),
    );
  });

  it('has a row for each option that is considered there', () => {
    const names = new Map(book.options.map(({ id, name }) => [id, name]));
    for (const { room, options } of choices) {
      const own = book.selections.filter(
        ({ room: slug, state }) =>
          state === 'open' && room.endsWith(book.rooms.find((one) => one.slug === slug)?.name ?? '?'),
      );
      const offered = own.map(({ category, alternatives }) =>
        alternatives.map(({ option }) => names.get(`${category}/${option}`)),
      );
      expect(offered).toContainEqual(options.map(({ name }) => name));
    }
  });

  it('stands in a copy that was not issued, and in no issue', () => {
    expect(makeSheets(book).toDecide?.choices).toHaveLength(choices.length);
    const stamp = { number: 1, purpose: 'sign-off', date: '2026-04-20', digest: 'a'.repeat(64) } as const;
    expect(makeSheets(book, stamp).toDecide).toBeUndefined();
  });
});
