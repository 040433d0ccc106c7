import type { LookUp } from '../core/book/index.js';
import { words, type Sheet } from '../sheet/index.js';
import { doors } from './doors.js';
import { hardware } from './hardware.js';
import { openings } from './openings.js';
import { part } from './part.js';

/** With what hinges are bought: that is told once for the house where all doors have it so. */
function hingeWords({ book }: LookUp): string {
  const ways = new Set(book.schedules.doors.flatMap(({ hinges }) => hinges?.with ?? []));
  const [way] = ways;
  if (ways.size !== 1 || way === undefined || way === 'twice') return '';
  return ` Hinges are counted by the height of each leaf, and bought once, with the ${way}.`;
}

const rule =
  'Hinges are given as seen from the room named first, which lies below the wall in the little drawing. Hand is the side of the hinges as one pushes the door open; makers’ words differ, so order by the facts beside it. A rough opening is the door and what its maker’s sheet adds; the framer confirms it. Keys of trim are those of the finish schedule.';

/** Doors with their hardware, windows and other openings. */
export function openingSheet(look: LookUp): Sheet {
  return {
    format: 'bookmatch/sheet/1',
    id: 'openings',
    title: 'Doors and openings',
    paper: 'landscape',
    blocks: [
      { block: 'prose', tone: 'lead', of: [words(`${rule}${hingeWords(look)}`)] },
      ...part(look, { id: 'door', title: 'Doors', of: doors }),
      ...part(look, { id: 'hardware-sets', title: 'Hardware sets', of: hardware }),
      ...part(look, { id: 'window', title: 'Windows and other openings', of: openings }),
    ],
  };
}
