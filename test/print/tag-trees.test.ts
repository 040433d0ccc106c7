import { readdirSync } from 'node:fs';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { makeHandout } from '../../src/handout/index.js';
import { makeChangeOrderPdf, makeHandoutPdf } from '../../src/print/index.js';
import { smallBook } from '../book/small-house.js';
import { readTagTree, type Tag } from '../parity/read-tags.js';
import { changedBook } from './changed-book.js';
import { bookSheets, goldenFolder, otherSheets, sheetTags } from './tag-tree.js';
import { putDown } from './tool.js';

vi.setConfig({ hookTimeout: 120_000 });

describe('tags of', () => {
  const trees = new Map<string, Tag>();
  beforeAll(async () => {
    const [house, changed] = [smallBook(), changedBook()];
    const [trade, order] = [house.trades[0], changed.changeOrders[0]];
    if (!trade || !order) throw new Error('the small house has no trade or no change order');
    const made = {
      'change-order': await makeChangeOrderPdf(changed, order),
      'handout-card': await makeHandoutPdf(makeHandout(house, trade)),
    };
    for (const [kind, { pdf }] of Object.entries(made)) trees.set(kind, readTagTree(putDown(pdf).tags()));
  });

  test.each(otherSheets)('a sheet of the kind %s are those that were read before they were kept', (kind, heading) => {
    const { now, kept } = sheetTags(trees.get(kind), kind, heading);
    expect(now).toBe(kept);
  });
});

test('no tree is kept of a sheet that there is not', () => {
  const kinds = [...bookSheets, ...otherSheets].map(([kind]) => `${kind}.tags.txt`);
  expect(readdirSync(goldenFolder).toSorted()).toEqual(kinds.toSorted());
});
