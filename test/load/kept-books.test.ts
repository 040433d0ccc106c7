import { expect, test } from 'vitest';
import { composeBook, makeComposer, type ComposedBook } from '../../src/disk/load/index.js';
import { measureFiles } from '../../src/disk/load/load-house.js';
import { keptLayouts } from '../../src/core/takeoff/index.js';
import { demoBook } from '../demo-house.js';
import { editedRecords } from './edited-demo.js';

const day = '2026-04-20';

/** All that is said of a house, with what is worked out when it is read. */
function said({ book, problems }: ComposedBook): string {
  return JSON.stringify([book, problems]);
}

test('what is kept between Books gives the Book that is made of the records alone, whatever was edited', async () => {
  const { sources } = await demoBook(day);
  const kept = makeComposer();
  const layOut = keptLayouts();
  const composed = editedRecords(sources, 14).map(({ what, sources: edited }) => {
    const straight = composeBook(measureFiles(edited), day, { layOut });
    return { what, straight, book: kept.compose(kept.read(edited), day) };
  });
  expect(composed.filter(({ straight }) => straight.book).length, 'edits that leave a Book').toBeGreaterThan(9);
  // Only now is read what others were made after: it must still be of its own records.
  for (const { what, straight, book } of composed) expect(said(book) === said(straight), what).toBe(true);
});
