import { drawnAlike } from '../draw/index.js';
import { keyLevels, type KeyLevel } from '../core/book/index.js';
import { ref } from '../sheet/index.js';
import { cleared } from './cleared.js';
import type { HandoutLevel } from './handout.js';
import type { Work } from './work.js';

const nothing = { facets: [], timbers: [], skylights: [] };

/** The levels of the house for a trade's small key plans: where rooms lie and how they are called, not what stands in them. */
export function levels({ look }: Work): readonly HandoutLevel[] {
  return keyLevels(look).map((level) => {
    const rooms = level.rooms.map((room) => ({ ...room, features: [], overhead: nothing }));
    const plain: KeyLevel = { ...level, rooms };
    const copy = cleared(plain);
    // Where no word is left out, its drawings are those of the book.
    if (JSON.stringify(copy) === JSON.stringify(plain)) drawnAlike(copy.outline, level.outline);
    return {
      ...copy,
      rooms: copy.rooms.map((room, index) => ({ ...room, slug: ref(level.rooms[index]?.slug ?? '') })),
    };
  });
}
