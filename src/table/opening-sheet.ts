import type { LookUp } from '../book/index.js';
import { words } from '../sheet/index.js';
import type { Block, Sheet } from '../sheet/index.js';
import { doors } from './doors.js';
import { hardware } from './hardware.js';
import { openings } from './openings.js';
import type { Schedule } from './schedule.js';

const rule =
  'Hinges are given as seen from the room named first, which lies below the wall in the little drawing. Hand is the side of the hinges as one pushes the door open; makers’ words differ, so order by the facts beside it. A rough opening is the door and what its maker’s sheet adds; the framer confirms it. Keys of trim are those of the finish schedule.';

/** Doors with their hardware, windows and other openings. */
export function openingSheet(look: LookUp): Sheet {
  const part = (id: string, title: string, of: Schedule): Block[] => {
    const table = of.lay(look);
    return table.groups.length === 0 ? [] : [{ block: 'section', id, title, of: [table] }];
  };
  return {
    format: 'bookmatch/sheet/1',
    id: 'openings',
    title: 'Doors and openings',
    paper: 'landscape',
    blocks: [
      { block: 'prose', tone: 'lead', of: [words(rule)] },
      ...part('door', 'Doors', doors),
      ...part('hardware-sets', 'Hardware sets', hardware),
      ...part('window', 'Windows and other openings', openings),
    ],
  };
}
