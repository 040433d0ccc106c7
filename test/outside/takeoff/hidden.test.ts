import { expect } from 'vitest';
import { loadBook } from '../../../src/disk/load/index.js';
import type { IsoDate } from '../../../src/base/units/index.js';
import { published } from '../published.js';

const hand = 'worked by hand from the records of the demo house';

async function netOf(selection: string): Promise<number | undefined> {
  const { book } = await loadBook('.', '2026-04-20' as IsoDate);
  return book?.selections.find(({ id }) => id === selection)?.takeoff[0]?.net;
}

published(
  {
    what: 'insulation of a gable behind a chimney breast: 24 × 14 + 24 × 8 / 2 = 432, less windows of 2 × 5.5 × 7 + 2 × 5.5 × 4 = 121: 311 sq ft',
    source: hand,
    mark: 'C',
  },
  async () => {
    expect(await netOf('great-room/insulation/north')).toBeCloseTo(311, 6);
  },
);

// Walls 4, 9'-7 1/2", 11'-1 1/2", 13'-7 1/2" and 11'-1 1/2" by 9 ft, and the ceiling of 13.625 × 11.125. One opening is over 32 sq ft:
// D02, 5 × 8. The bookcase of 10 × 7.5 stands before board that is hung first.
published(
  {
    what: 'board of a study: 49.5 × 9 + 13.625 × 11.125 less a door of 40, a bookcase of 75 left in: 557.08 sq ft',
    source: hand,
    mark: 'C',
  },
  async () => {
    expect(await netOf('study/gypsum-board/walls')).toBeCloseTo(49.5 * 9 + 13.625 * 11.125 - 40, 6);
  },
);
