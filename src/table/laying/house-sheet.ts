import type { LookUp } from '../../core/book/index.js';
import { words, type Sheet } from '../../sheet/index.js';
import { isFilled } from '../part.js';
import { areas } from './areas.js';
import { outsideFaces } from './outside-faces.js';
import { wallThicknesses } from './thicknesses.js';
import { betweenRooms } from './walls-between.js';

/** The house as its rooms' own tapes lay it out: areas, outside faces, walls between rooms. */
export function houseSheet(look: LookUp): Sheet {
  const { groups } = look.book.laid;
  const apart =
    groups.length > 1
      ? ' Rooms that no door, open side or well joins to the rest are drawn apart: where they stand is not known.'
      : '';
  return {
    format: 'bookmatch/sheet/1',
    id: 'house',
    title: 'The house',
    paper: 'portrait',
    blocks: [
      {
        block: 'prose',
        tone: 'lead',
        of: [
          words(
            `Laid out from the rooms as they were measured, by the doors, open sides and wells that join them.${apart} It says where rooms lie; what is built is drawn by the architect.`,
          ),
        ],
      },
      ...[areas, outsideFaces, wallThicknesses, betweenRooms].map((table) => table.lay(look)).filter(isFilled),
    ],
  };
}
